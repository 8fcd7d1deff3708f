// What a card or a file says of a figure of the house, and of a visitor's question.
import { standings } from '../core/figures/standing.ts';
import { figureTable, type FigureId } from '../core/figures/index.ts';
import { formatIn } from '../core/format.ts';
import { unitsOf } from '../core/units.ts';
import { cardFigures, saidOnCard } from '../house/card-figures.ts';
import { factSays, type FactId } from '../house/facts.ts';
import { useKnown } from '../browser/known-store.ts';
import { factsPart } from '../house/parts/facts.ts';
import { usePart } from '../browser/part-store.ts';
import { figureValue, secondFigureText, textOfFigure } from '../house/prose.ts';
import { useHouse } from '../browser/house-store.ts';
import { useUnits } from '../browser/units-store.ts';
import type { SaidIn } from '../walk/audience-kinds.ts';
import { answerText } from '../house/visitor-questions.ts';
import type { WalkQuestion } from './WalkDesk.tsx';

const byId = new Map(cardFigures.map((figure) => [figure.id, figure]));

/** The units of those who come, and what puts figures in them: fetched once somebody has chosen them. */
export interface Theirs {
  readonly saidIn: SaidIn;
  readonly cards: typeof import('../walk/audience-cards.ts');
}

/** What a card says of a figure of the house, in figures and in the units of those who come or else as it is said in the reader's, and how the house knows it. */
export function useCardWords(audience: () => Theirs | undefined = () => undefined) {
  const { line } = useHouse();
  const { standing, counted, isBuiltIn, doubtAt, unknown } = useKnown();
  const unitOf = useUnits();
  const { value: facts } = usePart(factsPart);
  return {
    /** Nothing for a figure that is not the house's own yet; `told` says another value of it in the same way. */
    figure(id: FigureId, told?: number) {
      const figure = byId.get(id);
      if (!figure || (!isBuiltIn() && standing(id) === 'unknown')) return undefined;
      const { kind } = figureTable[id];
      const theirs = audience();
      const [unit, own] = [theirs ? theirs.cards.unitForAudience(kind, theirs.saidIn) : unitOf(kind), counted(id)];
      const value = told ?? own ?? figureValue(line(), figure.path);
      const isOwnUnit = unit.unit === unitsOf(kind)[0]?.unit;
      return {
        label: figure.label,
        value,
        says: theirs
          ? theirs.cards.writtenFor(
              isOwnUnit
                ? textOfFigure(id, value) + secondFigureText(line(), figure.path)
                : theirs.cards.inTheirs(value, unit, standing(id) === 'estimate'),
              theirs.saidIn,
            )
          : isOwnUnit
            ? saidOnCard(figure, line(), value)
            : formatIn(value, kind, unit),
        mark: own !== undefined ? 'as counted' : standing(id) === 'estimate' ? standings.estimate : standing(id) === 'measured' ? 'as measured' : undefined,
      };
    },
    answer({ say }: WalkQuestion): string {
      const told = (path: string) => {
        const doubt = doubtAt(path);
        return secondFigureText(line(), path) + (doubt === undefined ? '' : ` (${doubt})`);
      };
      const theirs = audience();
      const answer = theirs ? theirs.cards.answerFor(say, line(), theirs.saidIn, told) : say;
      return answerText(answer, line(), told, (fact: FactId) => factSays(facts(), fact), unknown());
    },
  };
} // prettier-ignore
