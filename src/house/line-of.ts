// The line of a house, reckoned once for all that speak of it, and only when it is asked for: a page that only opens does not wait for it.
import type { House } from '../core/line/house.ts';
import { line, type Line } from '../core/line/line.ts';
import { isRefusal, type Refusal } from '../core/refusal.ts';
import { builtInHouse, choiceFigures, figureNames, isChoiceName, numberFigures } from './figures.ts';
import type { Parts } from './parts/part.ts';

/** How a line is reckoned: from a house’s figures alone, as `line` does, or with what it keeps beside them. */
export type Way = (house: House) => Line | Refusal;

let wayNow: () => Way = () => line;
/** Says in which way the lines of the page are reckoned; it may be asked anew at any time. */
export const goBy = (way: () => Way): void => void (wayNow = way);

const reckoned = new WeakMap<Way, WeakMap<House, Line | Refusal>>();

function reckon(way: Way, house: House): Line | Refusal {
  const known = reckoned.get(way) ?? new WeakMap<House, Line | Refusal>();
  reckoned.set(way, known);
  const result = known.get(house) ?? way(house);
  known.set(house, result);
  return result;
}

/** The line of a house with all that the house of the page keeps, or why there is none. */
export const lineIn: Way = (house) => reckon(wayNow(), house);

/** The line of any house by its figures alone; undefined when it does not run. */
export function lineIfAny(house: House): Line | undefined {
  const result = reckon(line, house);
  return isRefusal(result) ? undefined : result;
}

/** A house with the built-in one’s distilling: all that can be judged where a house’s own stills tell of theirs. */
const withoutStills = (house: House): House => ({
  ...house,
  ...Object.fromEntries(
    figureNames
      .filter((name) => (isChoiceName(name) ? choiceFigures : numberFigures)[name as never]['stage'] === 'distilling')
      .map((name) => [name, builtInHouse[name]]),
  ),
}); // prettier-ignore

/** Why a house cannot be; nothing where it can. The distilling of one that has named its stills is judged by those. */
export function problemOfHouse(house: House, parts: Parts): string | undefined {
  const result = reckon(line, house);
  const isIn = !isRefusal(result) || (parts.plant !== undefined && lineIfAny(withoutStills(house)));
  return isIn ? undefined : (result as Refusal).refused;
}

/** The line of a house that was let in. Until its stills find a balance, it is that of two distillations; or of the built-in house’s, if that has none. */
export function lineOf(house: House): Line {
  const own = lineIn(house);
  const result = isRefusal(own) ? (lineIfAny(house) ?? lineIfAny(withoutStills(house))) : own;
  if (!result) throw new Error('A house that does not run was let in.');
  return result;
}

/** In which way a change of a house is judged: as its line is reckoned now. */
export const wayOf = (house: House): Way => (isRefusal(lineIn(house)) ? line : lineIn);

/** The line of the built-in house: what every page shows before a reader changes anything. */
export const builtInLine = (): Line => lineOf(builtInHouse);
