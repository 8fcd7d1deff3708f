// All figures of a house as JSON, for labels, slides and spreadsheets: each with its value, its unit and how it is known.
import { figureTable, headOf, pathsOf, type FigureId } from '../core/figures/index.ts';
import { computedIds, standings, type FigureStanding } from '../core/figures/standing.ts';
import { kinds } from '../core/kinds.ts';
import { numberAt } from '../core/line/beside.ts';
import type { Line } from '../core/line/line.ts';
import { choiceFigures, type ChoiceName, type NumberName } from './figures.ts';
import { figuresThatCount } from './parts/known.ts';

export const FIGURES_FORMAT = 'malt-spirit-handbook/figures';

/** One figure. A computed one that was counted has both values. */
export interface FigureRow {
  readonly id: string;
  readonly label: string;
  readonly value: number | string;
  readonly unit: string;
  readonly standing: string;
  readonly computed?: number;
}

const TOLD = 10; // significant figures: more than any instrument has, and fewer than rounding in the sums leaves
const short = (value: number) => Number(value.toPrecision(TOLD));

/** What is known of each figure, as the page that saves them has it. */
export interface HowKnown {
  readonly standing: (id: FigureId) => FigureStanding;
  readonly counted: (id: FigureId) => number | undefined;
}

/** Every figure of a house: what it gives, its choices, and what is computed or counted, in the order of the line. */
export function allFigures(line: Line, { standing, counted }: HowKnown): readonly FigureRow[] {
  const { house } = line;
  const head = (id: FigureId) => ({
    id,
    label: headOf(id),
    unit: kinds[figureTable[id].kind].unit,
    standing: standings[standing(id)],
  });
  const given = figuresThatCount(house).map((id: NumberName) => ({ ...head(id), value: short(house[id]) }));
  // What a house holds when a figure moves is of the book, and no figure of the house.
  const chosen = (Object.keys(choiceFigures) as ChoiceName[])
    .filter((id) => id !== 'holds')
    .map((id) => ({
      id,
      label: choiceFigures[id].label,
      value: (choiceFigures[id].options as Record<string, string>)[house[id]]!,
      unit: '',
      standing: standings.set,
    }));
  const reckoned = computedIds.flatMap((id) => {
    const computed = numberAt(line, pathsOf(id)[0]!);
    const own = counted(id);
    if (computed === undefined && own === undefined) return [];
    const both = own === undefined || computed === undefined ? {} : { computed: short(computed) };
    return [{ ...head(id), value: short(own ?? computed!), ...both }];
  });
  return [...given, ...chosen, ...reckoned];
}

/** The file that carries them. */
export const figuresFile = (name: string, line: Line, known: HowKnown): string =>
  JSON.stringify({ format: FIGURES_FORMAT, version: 1, name, figures: allFigures(line, known) }, null, 2);
