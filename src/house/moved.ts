// What a change of the house moves: the figures of the line as they were and as they are, the one that moved most first.
import { figureIds, figureTable, headOf, pathsOf } from '../core/figures/index.ts';
import { formatNumber } from '../core/format.ts';
import { kinds } from '../core/kinds.ts';
import type { Line } from '../core/line/line.ts';
import { figureValue, kindOfFigure } from './prose.ts';

/** The figures looked at, in the order of the line, with how a sentence names them. */
const watched = figureIds
  .filter((id) => figureTable[id].watched)
  .map((id) => [pathsOf(id)[0]!, headOf(id)[0]!.toLowerCase() + headOf(id).slice(1)] as const);

export interface Moved {
  readonly what: string;
  readonly was: string;
  readonly now: string;
}

const LEAST = 1e-6; // of a figure: less has not moved
const MOST_DIGITS = 3;

/** Two values as text, with as many decimals as tell them apart: two figures of their difference. */
function pair(path: string, a: number, b: number): readonly [was: string, now: string] {
  const { unit } = kinds[kindOfFigure(path)!.kind];
  const digits = Math.min(MOST_DIGITS, Math.max(0, 1 - Math.floor(Math.log10(Math.abs(b - a)))));
  const text = (value: number) => `${formatNumber(value, digits)} ${unit}`.trim();
  return [text(a), text(b)];
}

/** All that changed between two lines: the figures asked for first, then what moved most, as a part of itself. */
export function movedBetween(before: Line, after: Line, first: readonly string[] = []): readonly Moved[] {
  const place = (path: string) => (first.includes(path) ? first.indexOf(path) : first.length);
  return watched
    .flatMap(([path, what]) => {
      const [a, b] = [figureValue(before, path), figureValue(after, path)];
      const part = Math.abs(b - a) / Math.max(Math.abs(a), Math.abs(b));
      if (!(part > LEAST)) return [];
      const [was, now] = pair(path, a, b);
      return was === now ? [] : [{ path, what, was, now, part }];
    })
    .sort((a, b) => place(a.path) - place(b.path) || b.part - a.part)
    .map(({ what, was, now }) => ({ what, was, now }));
}
