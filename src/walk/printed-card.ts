// A printed card as it is kept, read strictly.
import { cardFigures } from '../house/card-figures.ts';
import { saidIns, type SaidIn } from './audience-kinds.ts';
import { most, type PrintedCard } from './walk.ts';

type Data = Readonly<Record<string, unknown>>;
const isData = (data: unknown): data is Data =>
  typeof data === 'object' && data !== null && !Array.isArray(data);
const own = (data: Data, key: string): unknown => (Object.hasOwn(data, key) ? data[key] : undefined);

const isDay = (given: unknown): given is string => typeof given === 'string' && /^\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01])$/.test(given); // prettier-ignore
const isName = (given: unknown): given is string => typeof given === 'string' && given !== '' && given.length <= most.words; // prettier-ignore
const isSays = (given: unknown): given is string => typeof given === 'string' && given.length <= most.says;
const onCards = new Set<unknown>(cardFigures.map(({ id }) => id));
const isFigure = (each: unknown) =>
  isData(each) &&
  onCards.has(own(each, 'figure')) &&
  Number.isFinite(own(each, 'value')) &&
  isSays(own(each, 'says')) &&
  isSays(own(each, 'mark') ?? '');
const isAnswer = (each: unknown) => isData(each) && isSays(own(each, 'ask')) && isSays(own(each, 'says'));

/** A printed card of no more figures and answers than these; nothing where any of it cannot be read: half a card would be told as if it held. */
export function readCard(data: unknown, mostFigures: number, mostAnswers: number): PrintedCard | undefined {
  if (!isData(data)) return undefined;
  const [room, on, house, saidIn, figures, answers] = ['room', 'on', 'house', 'saidIn', 'figures', 'answers'].map((key) => own(data, key));
  const isSound =
    isName(room) &&
    isDay(on) &&
    isName(house) &&
    (saidIn === undefined || saidIns.includes(saidIn as SaidIn)) &&
    Array.isArray(figures) &&
    figures.length <= mostFigures &&
    figures.every(isFigure) &&
    Array.isArray(answers) &&
    answers.length <= mostAnswers &&
    answers.every(isAnswer);
  if (!isSound) return undefined;
  return {
    room,
    on,
    house,
    ...(saidIn === undefined ? {} : { saidIn: saidIn as SaidIn }),
    figures: (figures as PrintedCard['figures']).map(({ figure, value, says, mark }) => ({ figure, value, says, ...(mark === undefined ? {} : { mark }) })),
    answers: (answers as PrintedCard['answers']).map(({ ask, says }) => ({ ask, says })),
  };
} // prettier-ignore
