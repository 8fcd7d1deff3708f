// Two tabs that change the house at the same time: what was changed in one is not lost by a change in the other.
import type { WholeHouse } from './codec.ts';
import { figureNames } from './figures.ts';
import { problemOfHouse } from './line-of.ts';
import { isSamePart, partIds } from './parts/part.ts';

/** What one tab did: the house before and after, and a number that is greater than that of every change it knew of. */
export interface Change {
  readonly from: WholeHouse;
  readonly to: WholeHouse;
  readonly stamp: number;
}

/** The house as one tab has it: shown, told to the others, and the number of the last change of each figure, of each part (`part:plant`) and of the name. */
export interface Held {
  readonly here: WholeHouse;
  readonly told: WholeHouse;
  readonly stamps: Readonly<Record<string, number>>;
}

/** How a tab stands once it has heard of a change; and the house that it had, when that had to give way. */
export interface Heard extends Held {
  readonly gaveWay?: WholeHouse;
}

const runs = ({ house, parts }: WholeHouse) => problemOfHouse(house, parts) === undefined;
/** The greatest number that a tab knows of. */
export const latest = (stamps: Held['stamps']): number => Math.max(0, ...Object.values(stamps));
const keyOfPart = (id: string) => `part:${id}`;
/** All that is joined one by one: the figures, and the parts, each whole. */
export const joinedKeys: readonly string[] = [...figureNames, ...partIds.map(keyOfPart)];

const changedIn = (from: WholeHouse, to: WholeHouse): readonly string[] => [
  ...figureNames.filter((figure) => from.house[figure] !== to.house[figure]),
  ...partIds.filter((id) => !isSamePart(from.parts[id], to.parts[id])).map(keyOfPart),
];
/** A house with some of its figures and parts as they are in another. */
function withThese(of: WholeHouse, keys: readonly string[], like: WholeHouse): WholeHouse {
  const isThis = ([id]: readonly [string, unknown]) => keys.includes(keyOfPart(id));
  return {
    name: of.name,
    house: {
      ...of.house,
      ...Object.fromEntries(Object.entries(like.house).filter(([figure]) => keys.includes(figure))),
    },
    parts: {
      ...Object.fromEntries(Object.entries(of.parts).filter((part) => !isThis(part))),
      ...Object.fromEntries(Object.entries(like.parts).filter(isThis)),
    },
  };
}

/**
 * What this tab has to tell the others, and how it stands then. The number is the clock's, ms, or the next after the last
 * known; so none is far ahead of the clock. `chance`, below 1, keeps two tabs from the same number.
 */
export function announce(
  held: Held,
  chance: number,
  clock = 0,
): { readonly held: Held; readonly change: Change } {
  const { here, told, stamps } = held;
  const stamp = Math.max(Math.floor(latest(stamps)) + 1, clock) + chance;
  const changed = [...changedIn(told, here), ...(here.name === told.name ? [] : ['name'])];
  return {
    held: {
      here,
      told: here,
      stamps: { ...stamps, ...Object.fromEntries(changed.map((each) => [each, stamp])) },
    },
    change: { from: told, to: here, stamp },
  };
}

/**
 * How this tab stands once it hears of a change in another. Of each figure and part the latest change holds, and what was changed
 * here and not yet told is later still; so all tabs end alike. When the other tab opened or renamed a house, this one goes
 * with it; and of two houses that do not run when put together the later holds, and the earlier gives way.
 */
export function hear({ here, told, stamps }: Held, { from, to, stamp }: Change): Heard {
  const wholly = { here: to, told: to, stamps: { ...stamps, name: stamp } };
  if (from.name !== to.name || told.name !== from.name)
    return stamp > (stamps['name'] ?? 0) ? wholly : { here, told, stamps };
  const taken = changedIn(from, to).filter((key) => stamp > (stamps[key] ?? 0));
  const next = withThese(told, taken, to);
  if (!runs(next)) return stamp > latest(stamps) ? { ...wholly, gaveWay: here } : { here, told, stamps };
  const joined = withThese(next, changedIn(told, here), here);
  const isRunning = runs(joined);
  return {
    here: here.name !== told.name ? here : isRunning ? joined : next,
    told: next,
    ...(here.name === told.name && !isRunning ? { gaveWay: here } : {}),
    stamps: { ...stamps, ...Object.fromEntries(taken.map((key) => [key, stamp])) },
  };
}
