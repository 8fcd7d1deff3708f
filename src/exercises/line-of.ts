// The line of a house, reckoned once for all the questions that speak of it.
import type { House } from '../core/line/house.ts';
import { line, type Line } from '../core/line/line.ts';
import { isRefusal } from '../core/refusal.ts';

const reckoned = new WeakMap<House, Line | undefined>();

/** The line of a house; undefined when it does not run. */
export function lineOf(house: House): Line | undefined {
  if (!reckoned.has(house)) {
    const result = line(house);
    reckoned.set(house, isRefusal(result) ? undefined : result);
  }
  return reckoned.get(house);
}
