// Which computed figures of a house hang on which of those that it gives: each is moved as far as houses differ, and what moves with it further than a good reading can tell hangs on it.
import { computedIds } from '../figures/standing.ts';
import { figureTable, pathsOf, type Ends, type FigureId, type NumberName } from '../figures/index.ts';
import type { KindName } from '../kinds.ts';
import { isRefusal } from '../refusal.ts';
import { numberAt } from './beside.ts';
import type { House } from './house.ts';
import { line, type Line } from './line.ts';

const APART = 0.1; // part of a figure by which two houses may differ in it where nothing says what is usual; common practice
const STEPS = 5; // steps of its field by which they may differ at least; common practice
const TRIES = 4; // halvings of a move until the house runs

const PART = 0.005; // of a figure: what a dip or a meter can tell; as spreads.volume in core/figures/define.ts
/** What a good reading can tell, in the kind's own unit, where that is no part of the figure; as the spreads there. */
const told: Partial<Readonly<Record<KindName, number>>> = {
  strength: 0.1, // % vol, a hydrometer
  gravity: 0.0003, // a saccharometer
  plato: 0.1, // g/100 g, the same
  percent: 0.3, // an analysis repeated
  temperature: 0.5, // °C, a thermometer in a pipe
};

/** How far houses may differ in a figure: what is usual, if that is a range; else a tenth of it, or five steps of its field. */
export function usualMove(figure: NumberName, at: number): Ends {
  const { usual, limits, step } = figureTable[figure];
  const apart = Math.max(APART * Math.abs(at), STEPS * step);
  const [low, high] = usual && usual.range[0] < usual.range[1] ? usual.range : [at - apart, at + apart];
  return [Math.max(limits[0], Math.min(low, at)), Math.min(limits[1], Math.max(high, at))];
}

/** The line with one figure moved towards a value, as far as the house still runs; undefined when it hardly moves. */
function lineAt(house: House, figure: NumberName, value: number): Line | undefined {
  let part = 1;
  for (let i = 0; i < TRIES; i++, part /= 2) {
    const at = house[figure] + part * (value - house[figure]);
    if (at === house[figure]) return undefined;
    const moved = line({ ...house, [figure]: at });
    if (!isRefusal(moved)) return moved;
  }
  return undefined;
}

/** True when two values of a figure lie no further apart than a good reading can tell. */
export function withinReading(id: FigureId, one: number, other: number): boolean {
  const { kind } = figureTable[id];
  return Math.abs(other - one) <= (told[kind] ?? PART * Math.max(Math.abs(one), Math.abs(other)));
}

/** The computed figures that one figure moves. */
function movedBy(house: House, before: Line, figure: NumberName): readonly FigureId[] {
  const after = usualMove(figure, house[figure]).flatMap((value) => lineAt(house, figure, value) ?? []);
  return computedIds.filter((id) => {
    const path = pathsOf(id)[0]!;
    const was = numberAt(before, path);
    return after.some((moved) => {
      const now = numberAt(moved, path);
      return was !== undefined && now !== undefined && !withinReading(id, was, now);
    });
  });
}

const found = new WeakMap<House, Map<NumberName, readonly FigureId[]>>();

/**
 * The computed figures that hang on some of those that a house gives, each with those on which it hangs, in the order of
 * the line. Each is moved by itself, over what is usual in the trade or, where nothing says that, a tenth of it. A house
 * that does not run has none. What was found for a house is kept.
 */
export function hangsOn(
  house: House,
  figures: readonly NumberName[],
): ReadonlyMap<FigureId, readonly NumberName[]> {
  const before = line(house);
  const hanging = new Map<FigureId, readonly NumberName[]>();
  if (isRefusal(before)) return hanging;
  const kept = found.get(house) ?? found.set(house, new Map()).get(house)!;
  for (const figure of figures) {
    if (!kept.has(figure)) kept.set(figure, movedBy(house, before, figure));
    for (const id of kept.get(figure)!) hanging.set(id, [...(hanging.get(id) ?? []), figure]);
  }
  return hanging;
}
