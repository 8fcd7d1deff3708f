// A printed card as it is kept, read strictly.
import { list, number, oneOf, quietly, record, text, written } from '../core/reading/given.ts';
import { cardFigures } from '../house/card-figures.ts';
import { saidIns } from './audience-kinds.ts';
import { mostInWalk, type PrintedCard } from './walk.ts';

const name = text(mostInWalk.words, (given) => given !== '');
const says = text(mostInWalk.says);
const figure = record(
  {
    figure: oneOf(cardFigures.map(({ id }) => id)),
    value: number(-Number.MAX_VALUE, Number.MAX_VALUE),
    says,
  },
  { mark: says },
);
const answer = record({ ask: says, says });

/** A printed card of no more figures and answers than these; nothing where any of it cannot be read: half a card would be told as if it held. */
export function readCard(data: unknown, mostFigures: number, mostAnswers: number): PrintedCard | undefined {
  const card = record(
    { room: name, on: written(/^\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01])$/), house: name },
    { saidIn: oneOf(saidIns) },
  );
  const lists = record({ figures: list(figure, mostFigures), answers: list(answer, mostAnswers) });
  const [head, rest] = [quietly(card, data), quietly(lists, data)];
  return head && rest && { ...head, ...rest };
}
