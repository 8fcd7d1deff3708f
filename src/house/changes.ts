// What changed between two versions of a house: what it gives, what was counted, what is computed, and what a guide says of it.
import { figureTable, headOf, pathsOf, type FigureId } from '../core/figures/index.ts';
import { format } from '../core/format.ts';
import { computedIds, countedIds } from '../core/figures/standing.ts';
import { numberAt } from '../core/line/beside.ts';
import type { House } from '../core/line/house.ts';
import type { Line } from '../core/line/line.ts';
import { cardFigures, saidOnCard } from './card-figures.ts';
import { choiceFigures, figureNames, isChoiceName, numberFigures } from './figures.ts';
import type { Known } from './parts/known.ts';
import { textOfFigure } from './prose.ts';

/** One thing that changed, as text. */
export interface ChangedText {
  readonly what: string;
  readonly was: string;
  readonly now: string;
}
/** A house at a time, with its line. */
export interface AtATime {
  readonly line: Line;
  readonly known: Known;
}
export interface HouseChanges {
  /** What the house gives, in the order of its fields. */
  readonly given: readonly ChangedText[];
  /** What it counted or read, in the order of the line. */
  readonly counted: readonly ChangedText[];
  /** What is computed, as the book prints it: what moved most, as a part of itself, first; what moved alike in the order of the line. */
  readonly computed: readonly ChangedText[];
  /** What a pocket card says otherwise, in the order of the cards. */
  readonly cards: readonly ChangedText[];
}

const LEAST = 1e-4; // of a figure: less has not moved
const MOST_DIGITS = 6;
const NOT_COUNTED = 'not counted';

/** Two values that a house gave, as a table prints them; with more decimals where those would look alike. */
function pair(id: FigureId, a: number, b: number): readonly [was: string, now: string] {
  const [was, now] = [textOfFigure(id, a), textOfFigure(id, b)];
  if (was !== now) return [was, now];
  const digits = Math.min(MOST_DIGITS, Math.max(0, 1 - Math.floor(Math.log10(Math.abs(b - a)))));
  const { kind } = figureTable[id];
  return [format(a, kind, digits), format(b, kind, digits)];
}

function givenChanges(before: House, after: House): readonly ChangedText[] {
  return figureNames.flatMap((name) => {
    if (before[name] === after[name] || name === 'holds') return []; // what gives way is of the book, and no figure of the house
    if (isChoiceName(name)) {
      const { label, options } = choiceFigures[name];
      const words = options as Readonly<Record<string, string>>;
      return [{ what: label, was: words[before[name]]!, now: words[after[name]]! }];
    }
    const [was, now] = pair(name, before[name], after[name]);
    return [{ what: numberFigures[name].label, was, now }];
  });
}

function countedChanges(before: Known, after: Known): readonly ChangedText[] {
  const text = (id: FigureId, value: number | undefined) => value === undefined ? NOT_COUNTED : textOfFigure(id, value); // prettier-ignore
  return countedIds
    .filter((id) => before.counted[id] !== after.counted[id])
    .map((id) => ({ what: headOf(id), was: text(id, before.counted[id]), now: text(id, after.counted[id]) }));
}

function computedChanges(before: Line, after: Line): readonly ChangedText[] {
  return computedIds
    .flatMap((id) => {
      const [a, b] = [before, after].map((line) => numberAt(line, pathsOf(id)[0]!));
      if (a === undefined || b === undefined) return [];
      const part = Math.abs(b - a) / Math.max(Math.abs(a), Math.abs(b));
      if (!(part > LEAST)) return [];
      const [was, now] = [textOfFigure(id, a), textOfFigure(id, b)];
      return was === now ? [] : [{ what: headOf(id), was, now, part }];
    })
    .sort((a, b) => b.part - a.part)
    .map(({ what, was, now }) => ({ what, was, now }));
}

/** What a house's cards say: of a counted figure what was counted. */
function cardChanges(before: AtATime, after: AtATime): readonly ChangedText[] {
  return cardFigures.flatMap((figure) => {
    const [was, now] = [before, after].map(({ line, known }) => saidOnCard(figure, line, known.counted[figure.id]));
    return was === now ? [] : [{ what: figure.label, was: was!, now: now! }];
  });
} // prettier-ignore

/** All that changed from one version to another. */
export const changesBetween = (before: AtATime, after: AtATime): HouseChanges => ({
  given: givenChanges(before.line.house, after.line.house),
  counted: countedChanges(before.known, after.known),
  computed: computedChanges(before.line, after.line),
  cards: cardChanges(before, after),
});

/** The labels of the figures that a house gives otherwise than another; for a sheet that carries a house of its own. */
export const givenOtherwise = (before: House, after: House): readonly string[] =>
  givenChanges(before, after).map(({ what }) => what);
