// Which computed figures of a house hang on which of those that it gives: each is moved as far as houses differ, and what moves with it further than a good reading can tell hangs on it.
import { computedIds } from '../figures/standing.ts';
import { figureTable, pathsOf, type RangeEnds, type FigureId, type NumberName } from '../figures/index.ts';
import { isRefusal, type Refusal } from '../refusal.ts';
import { numberAt } from './beside.ts';
import type { House } from './house.ts';
import { line, type Line } from './line.ts';
import { withinReading } from './within-reading.ts';

type Way = (house: House) => Line | Refusal;

const APART = 0.1; // part of a figure by which two houses may differ in it where nothing says what is usual; common practice
const STEPS = 5; // steps of its field by which they may differ at least; common practice
const TRIES = 4; // halvings of a move until the house runs

/**
 * How far houses may differ in a figure: what is usual, if that is a range; else a tenth of it, or five steps of its field.
 * @example (([low, high]) => low <= 62 && 62 <= high)(usualMove('heartEnd', 62)) // true (the value lies between its ends)
 */
export function usualMove(figure: NumberName, at: number): RangeEnds {
  const { usual, limits, step } = figureTable[figure];
  const apart = Math.max(APART * Math.abs(at), STEPS * step);
  const [low, high] = usual && usual.range[0] < usual.range[1] ? usual.range : [at - apart, at + apart];
  return [Math.max(limits[0], Math.min(low, at)), Math.min(limits[1], Math.max(high, at))];
}

/** The line with one figure moved towards a value, as far as the house still runs; undefined when it hardly moves. */
function lineAt(house: House, figure: NumberName, value: number, way: Way): Line | undefined {
  let part = 1;
  for (let i = 0; i < TRIES; i++, part /= 2) {
    const at = house[figure] + part * (value - house[figure]);
    if (at === house[figure]) return undefined;
    const moved = way({ ...house, [figure]: at });
    if (!isRefusal(moved)) return moved;
  }
  return undefined;
}

/** The computed figures that one figure moves. */
function movedBy(house: House, before: Line, figure: NumberName, way: Way): readonly FigureId[] {
  const after = usualMove(figure, house[figure]).flatMap((value) => lineAt(house, figure, value, way) ?? []);
  return computedIds.filter((id) => {
    const path = pathsOf(id)[0]!;
    const was = numberAt(before, path);
    return after.some((moved) => {
      const now = numberAt(moved, path);
      return was !== undefined && now !== undefined && !withinReading(id, was, now);
    });
  });
}

const found = new WeakMap<Line, Map<NumberName, readonly FigureId[]>>();

/**
 * The computed figures that hang on some of those that a house gives, each with those on which it hangs, in the order of
 * the line. Each is moved by itself, over what is usual in the trade or, where nothing says that, a tenth of it. A house
 * that does not run has none. `way` reckons a line, the same for the same house; what was found for a line is kept.
 * @example computedFrom(house, []).size // 0 (no figure was asked for)
 */
export function computedFrom(
  house: House,
  figures: readonly NumberName[],
  way: Way = line,
): ReadonlyMap<FigureId, readonly NumberName[]> {
  const before = way(house);
  const hanging = new Map<FigureId, readonly NumberName[]>();
  if (isRefusal(before)) return hanging;
  const kept = found.get(before) ?? found.set(before, new Map()).get(before)!;
  for (const figure of figures) {
    if (!kept.has(figure)) kept.set(figure, movedBy(house, before, figure, way));
    for (const id of kept.get(figure)!) hanging.set(id, [...(hanging.get(id) ?? []), figure]);
  }
  return hanging;
}
