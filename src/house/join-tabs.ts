// Two tabs that change the house at the same time: what was changed in one is not lost by a change in the other.
import type { WholeHouse } from './codec.ts';
import { figureNames } from './figures.ts';
import { problemOfHouse } from './line-of.ts';
import { isSamePart, partIds } from './parts/part.ts';

/** What one tab did: the house before and after, and a number that is greater than that of every change it knew of. */
export interface TabChange {
  readonly from: WholeHouse;
  readonly to: WholeHouse;
  readonly stamp: number;
}

/** The house as one tab has it: shown, told to the others, and the number of the last change of each thing that is joined, and of the name. */
export interface HeldHouse {
  readonly here: WholeHouse;
  readonly told: WholeHouse;
  readonly stamps: Readonly<Record<string, number>>;
}

/** How a tab stands once it has heard of a change; and the house that it had, when that had to give way. */
export interface HeardChange extends HeldHouse {
  readonly gaveWay?: WholeHouse;
}

const runs = ({ house, parts }: WholeHouse) => problemOfHouse(house, parts) === undefined;
/** The greatest number that a tab knows of. */
export const latestStamp = (stamps: HeldHouse['stamps']): number => Math.max(0, ...Object.values(stamps));
/** The number of the last change of all that has none of its own. */
export const ALL_FIGURES = 'all';
const stampOf = (stamps: HeldHouse['stamps'], key: string) => stamps[key] ?? stamps[ALL_FIGURES] ?? 0;

/** The parts that are joined whole; what is known goes figure by figure. */
const wholeParts = partIds.filter((id) => id !== 'known');
const lists = ['given', 'counted'] as const;
type Entries = Readonly<Record<string, unknown>>;
const recordIn = (data: unknown): Entries =>
  typeof data === 'object' && data !== null && !Array.isArray(data) ? (data as Entries) : {};
const keyed = (prefix: string, entries: Entries): Entries =>
  Object.fromEntries(Object.entries(entries).map(([name, value]) => [`${prefix}:${name}`, value]));

/** All that is joined, one by one: each figure, each part (`part:plant`), and of what is known each figure (`given:heartEnd`). */
const entriesOf = ({ house, parts }: WholeHouse): Entries => ({
  ...house,
  ...keyed('part', Object.fromEntries(wholeParts.flatMap((id) => (id in parts ? [[id, parts[id]]] : [])))),
  ...Object.assign({}, ...lists.map((list) => keyed(list, recordIn(recordIn(parts.known)[list])))),
});

function changedIn(from: WholeHouse, to: WholeHouse): readonly string[] {
  const [a, b] = [entriesOf(from), entriesOf(to)];
  return [...new Set([...Object.keys(a), ...Object.keys(b)])].filter((key) => !isSamePart(a[key], b[key]));
}

/** A house with some of its figures and parts as they are in another. */
function withThese(of: WholeHouse, keys: readonly string[], like: WholeHouse): WholeHouse {
  const [own, other] = [entriesOf(of), entriesOf(like)];
  const now: Entries = { ...own, ...Object.fromEntries(keys.map((key) => [key, other[key]])) };
  const under = (prefix: string) =>
    Object.fromEntries(
      Object.entries(now)
        .filter(([key, value]) => key.startsWith(`${prefix}:`) && value !== undefined)
        .map(([key, value]): [string, unknown] => [key.slice(prefix.length + 1), value])
        .sort(([a], [b]) => (a < b ? -1 : 1)),
    );
  const [given, counted] = lists.map(under) as [Entries, Entries];
  const hasTaken = keys.some((key) => lists.some((list) => key.startsWith(`${list}:`)));
  const isEmpty = Object.keys(given).length + Object.keys(counted).length === 0;
  const known = hasTaken ? (isEmpty ? undefined : { given, counted }) : of.parts.known;
  const house = Object.fromEntries(figureNames.map((figure) => [figure, now[figure]]));
  return {
    name: of.name,
    house: { ...of.house, ...house },
    parts: { ...(known === undefined ? {} : { known }), ...under('part') },
  };
}

/**
 * What this tab has to tell the others, and how it stands then. The number is the clock's, ms, or the next after the last
 * known; so none is far ahead of the clock. `chance`, below 1, keeps two tabs from the same number.
 */
export function announceChange(
  held: HeldHouse,
  chance: number,
  clock = 0,
): { readonly held: HeldHouse; readonly change: TabChange } {
  const { here, told, stamps } = held;
  const stamp = Math.max(Math.floor(latestStamp(stamps)) + 1, clock) + chance;
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
 * How this tab stands once it hears of a change in another. Of each figure and part, and of what is known of each figure, the latest change holds, and what was changed
 * here and not yet told is later still; so all tabs end alike. When the other tab opened or renamed a house, this one goes
 * with it; and of two houses that do not run when put together the later holds, and the earlier gives way.
 */
export function hearChange({ here, told, stamps }: HeldHouse, { from, to, stamp }: TabChange): HeardChange {
  const wholly = { here: to, told: to, stamps: { ...stamps, name: stamp } };
  if (from.name !== to.name || told.name !== from.name)
    return stamp > stampOf(stamps, 'name') ? wholly : { here, told, stamps };
  const taken = changedIn(from, to).filter((key) => stamp > stampOf(stamps, key));
  const next = withThese(told, taken, to);
  if (!runs(next)) return stamp > latestStamp(stamps) ? { ...wholly, gaveWay: here } : { here, told, stamps };
  const joined = withThese(next, changedIn(told, here), here);
  const isRunning = runs(joined);
  return {
    here: here.name !== told.name ? here : isRunning ? joined : next,
    told: next,
    ...(here.name === told.name && !isRunning ? { gaveWay: here } : {}),
    stamps: { ...stamps, ...Object.fromEntries(taken.map((key) => [key, stamp])) },
  };
}
