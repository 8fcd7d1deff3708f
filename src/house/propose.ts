// A house with one figure changed and what gives way to it, or why it cannot be.
import {
  changeExtract,
  changeHouse,
  type ChangedHouse,
  type Giving,
  type MashReading,
} from '../core/line/change.ts';
import type { House } from '../core/line/house.ts';
import { line, type Line } from '../core/line/line.ts';
import { isRefusal, type Refusal } from '../core/refusal.ts';
import { problemOf } from './problem-of.ts';
import type { FigureName } from './figures.ts';
import { lineIn, type LineWay } from './line-of.ts';

/** In which way a change of a house is judged: as its line is reckoned now. */
export const wayOf = (house: House): LineWay => (isRefusal(lineIn(house)) ? line : lineIn);

export type ProposedHouse = (ChangedHouse & { readonly line: Line }) | { readonly problem: string };

/**
 * The house with one figure changed and what gives way to it, when all that moves stays in range and the line still
 * runs, reckoned in a way; otherwise the sentence that says why not.
 */
export function proposeFigure(
  house: House,
  name: FigureName,
  value: unknown,
  gives?: Giving,
  way: LineWay = line,
): ProposedHouse {
  const problem = problemOf(name, value);
  if (problem !== undefined) return { problem };
  return judged(changeHouse(house, name, value as never, gives), way);
}

/** A reading of the mash taken as it is given, where nobody has given the malt's extract: that follows from it. */
export function proposeExtract(
  house: House,
  name: MashReading,
  value: unknown,
  way: LineWay = line,
): ProposedHouse {
  const problem = problemOf(name, value);
  return problem === undefined ? judged(changeExtract(house, name, value as never), way) : { problem };
}

/** A changed house when all that moved stays in range and the line still runs. */
function judged(changed: ChangedHouse | Refusal, way: LineWay): ProposedHouse {
  if (isRefusal(changed)) return { problem: changed.refused };
  const beyond = changed.gave.map(({ figure, to }) => problemOf(figure, to)).find(Boolean);
  if (beyond !== undefined) return { problem: beyond };
  const result = way(changed.house);
  return isRefusal(result) ? { problem: result.refused } : { ...changed, line: result };
}
