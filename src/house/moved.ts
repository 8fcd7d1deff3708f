// What a change of the house moves: the figures of the line as they were and as they are, the one that moved most first.
import { figureIds, figureTable, headOf, pathsOf } from '../core/figures/index.ts';
import { formatNumber } from '../core/format.ts';
import { kinds } from '../core/kinds.ts';
import type { Line } from '../core/line/line.ts';
import { countsWhole, FEW_THINGS, figureValue, kindOfFigure, wholeCountOf } from './prose.ts';

/** The figures looked at, in the order of the line, with how a sentence names them. */
const watched = figureIds
  .filter((id) => figureTable[id].watched)
  .map((id) => [pathsOf(id)[0]!, headOf(id)[0]!.toLowerCase() + headOf(id).slice(1)] as const);

export interface MovedFigure {
  readonly what: string;
  readonly was: string;
  readonly now: string;
}

const LEAST = 1e-3; // of a figure: less is unchanged to a reader; of a gravity, of what it stands over water
const MOST_DIGITS = 3;

/** How far a figure moved, as a part of itself; a gravity, as a part of what it stands from 1. */
function partOf(path: string, a: number, b: number): number {
  const water = kindOfFigure(path)!.kind === 'gravity' ? 1 : 0;
  return Math.abs(b - a) / Math.max(Math.abs(a - water), Math.abs(b - water));
}

/** Two values as text, with as many decimals as it takes to see the change, and none of whole things such as bottles. */
function pair(path: string, a: number, b: number, hasMoved: boolean): readonly [was: string, now: string] {
  const { kind } = kindOfFigure(path)!;
  const { unit, digits: own } = kinds[kind];
  const most = Math.max(Math.abs(a), Math.abs(b));
  const isWhole = countsWhole(path) === 'down' || (countsWhole(path) === 'up' && most >= FEW_THINGS);
  const needed = hasMoved ? -Math.floor(Math.log10(Math.abs(b - a))) : 0;
  const digits = isWhole ? 0 : Math.min(MOST_DIGITS, Math.max(most >= 1000 ? 0 : own, needed));
  const text = (value: number) =>
    `${formatNumber(isWhole ? wholeCountOf(path, value) : value, digits)} ${unit}`.trim();
  return [text(a), text(b)];
}

/**
 * All that changed between two lines: the figures asked for first, then what moved most, as a part of itself. One asked
 * for that moved by less than a thousandth is told as unchanged; others are left out.
 */
export function movedBetween(
  before: Line,
  after: Line,
  first: readonly string[] = [],
): readonly MovedFigure[] {
  const place = (path: string) => (first.includes(path) ? first.indexOf(path) : first.length);
  return watched
    .flatMap(([path, what]) => {
      const [a, b] = [figureValue(before, path), figureValue(after, path)];
      const part = partOf(path, a, b);
      if (a === b || (part < LEAST && !first.includes(path))) return [];
      const [was, now] = pair(path, a, b, part >= LEAST);
      if (part >= LEAST && was === now) return [];
      return [{ path, what, was, now: part >= LEAST ? now : 'unchanged', part }];
    })
    .sort((a, b) => place(a.path) - place(b.path) || b.part - a.part)
    .map(({ what, was, now }) => ({ what, was, now }));
}
