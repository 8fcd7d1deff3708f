// The line of a house, reckoned once for all that speak of it, and only when it is asked for: a page that only opens does not wait for it.
import type { House } from '../core/line/house.ts';
import { line, type Line } from '../core/line/line.ts';
import { isRefusal, type Refusal } from '../core/refusal.ts';
import { builtInHouse } from './figures.ts';
import type { HouseParts } from './parts/part.ts';

/** How a line is reckoned: from a house’s figures alone, as `line` does, or with what it keeps beside them. */
export type LineWay = (house: House) => Line | Refusal;

let way: LineWay = line;
let reckoned = new WeakMap<House, Line | Refusal>();

/** Says in which way lines are reckoned from now on. */
export function reckonBy(next: LineWay): void {
  way = next;
  reckoned = new WeakMap();
}

/** The line of a house with all that the house of the page keeps, or why there is none. The built-in house itself, as pages are built with it, has only its figures. */
export function lineIn(house: House): Line | Refusal {
  const result = reckoned.get(house) ?? (house === builtInHouse ? line : way)(house);
  reckoned.set(house, result);
  return result;
}

const ownWays = new WeakMap<House, LineWay>();

/** Says in which way a house is reckoned that is not the house of the page: one that a sheet is about, or practice. */
export function reckonHouseBy(house: House, own: LineWay): void {
  let found: Line | Refusal | undefined;
  ownWays.set(house, (its) => (found ??= own(its)));
}

/** The house of the page as one to draw from: its line is the one that the book tells. */
export function asInBook(house: House): House {
  const own = { ...house };
  reckonHouseBy(own, () => {
    const found = lineIn(house);
    return isRefusal(found) ? line(house) : found;
  });
  return own;
}

/** The line of any house by its figures alone, or in the way that was said of it; undefined when it does not run. */
export function lineIfAny(house: House): Line | undefined {
  const result = ownWays.get(house)?.(house) ?? (way === line ? lineIn(house) : line(house));
  return isRefusal(result) ? undefined : result;
}

/** Why a house cannot be by its figures alone; nothing where it can, or has named stills: what it distils is then judged by those. */
export function problemOfHouse(house: House, { plant }: HouseParts): string | undefined {
  const result = line(house);
  return isRefusal(result) && plant === undefined ? result.refused : undefined;
}

/** The line of a house that was let in: by its figures alone while its stills find no balance, or the built-in one’s where those make none either. */
export function lineOf(house: House): Line {
  const own = lineIn(house);
  return isRefusal(own) ? (lineIfAny(house) ?? builtInLine()) : own;
}

/** The line of the built-in house: what every page shows before a reader changes anything. */
export const builtInLine = (): Line => lineIfAny(builtInHouse)!;
