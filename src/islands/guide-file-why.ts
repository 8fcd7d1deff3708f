// Where a figure of a card comes from, in a line or two: how the house knows it, or the sum that it follows from.
import { figureTable, headOf, isGiven, pathsOf, type FigureId } from '../core/figures/index.ts';
import { computedBeside } from '../core/line/counted-beside.ts';
import { useKnown } from '../browser/known-store.ts';
import { sumComesTo, workedSum } from '../house/hand-sum.ts';
import { figureText, figureValue, textOfFigure } from '../house/prose.ts';
import { useHouse } from '../browser/house-store.ts';
import { sumOf } from '../house/where-from.ts';
import { useCardWords } from './walk-card-words.ts';

const known = {
  measured: 'Measured by the house.',
  set: 'Set by the house.',
  follows: 'Follows from the house’s other figures.',
} as const;
const NO_SUM = 'Reckoned along the whole line, with all that the house keeps; no short sum gives it.';

export interface WhyFigure {
  readonly id: FigureId;
  readonly label: string;
  /** As it is said, and as it is printed. */
  readonly says: string;
  readonly exact: string;
  readonly mark: string | undefined;
  readonly lines: readonly string[];
}

/** What is to be told of figures; nothing of one that is not the house's own yet. */
export function useWhy(): (id: FigureId) => WhyFigure | undefined {
  const { line, name } = useHouse();
  const { standing, counted, hangsOn } = useKnown();
  const { figure } = useCardWords();
  const given = (id: FigureId): string[] => {
    const about = figureTable[id];
    const way = standing(id);
    const how = way === 'measured' || way === 'set' || way === 'follows' ? [known[way]] : [];
    return isGiven(about) ? [[...how, about.meaning].join(' ')] : [];
  };
  const computed = (id: FigureId): string[] => {
    const sum = sumOf(id);
    const done = sum && workedSum(sum, line());
    const path = pathsOf(id)[0]!;
    const own = counted(id);
    const lines = sum && done && sumComesTo(done, path, line()) ? [sum.rule, done.says] : [NO_SUM];
    if (own !== undefined) {
      const value = figureValue(line(), path);
      lines.unshift(`Counted by the house; the sum gives ${figureText(line(), path)}: ${computedBeside(id, own, value)}.`); // prettier-ignore
    }
    const others = own === undefined && standing(id) === 'estimate' ? hangsOn(id).map((each) => lower(headOf(each))) : []; // prettier-ignore
    return others.length === 0
      ? lines
      : [...lines, `Our estimate, as these are not ${name()}’s own yet: ${others.join(', ')}.`];
  };
  return (id) => {
    const told = figure(id);
    if (!told) return undefined;
    const own = counted(id);
    const exact = own === undefined ? figureText(line(), pathsOf(id)[0]!) : textOfFigure(id, own);
    return { id, ...told, exact, lines: isGiven(figureTable[id]) ? given(id) : computed(id) };
  };
}

const lower = (text: string) => text[0]!.toLowerCase() + text.slice(1);
