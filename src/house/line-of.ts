// The line of a house, reckoned once for all that speak of it, and only when it is asked for: a page that only opens does not wait for it.
import type { House } from '../core/line/house.ts';
import { line, type Line } from '../core/line/line.ts';
import { isRefusal, type Refusal } from '../core/refusal.ts';
import { builtInHouse } from './figures.ts';

const reckoned = new WeakMap<House, Line | Refusal>();

/** Keeps a line that was reckoned elsewhere. */
export function keepLine(house: House, line: Line): void {
  reckoned.set(house, line);
}

/** The line of any house; undefined when it does not run. */
export function lineIfAny(house: House): Line | undefined {
  const result = reckoned.get(house) ?? line(house);
  reckoned.set(house, result);
  return isRefusal(result) ? undefined : result;
}

/** The line of a house that is known to run. */
export function lineOf(house: House): Line {
  const result = lineIfAny(house);
  if (!result) throw new Error('A house that does not run was let in.');
  return result;
}

/** The line of the built-in house: what every page shows before a reader changes anything. */
export const builtInLine = (): Line => lineOf(builtInHouse);
