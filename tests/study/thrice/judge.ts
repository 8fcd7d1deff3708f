// What the cross-check makes of talks about houses of three distillations, by another hand's physics (houses.py beside this file).
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Distilled } from '../../../src/core/cross-check/distilled.ts';
import type { Quoted, QuotableName } from '../../../src/core/cross-check/quoted.ts';
import { accusedFigures, reconcile } from '../../../src/core/cross-check/reconcile.ts';

export interface StudiedHouse {
  readonly scheme: 'thrice' | 'part-thrice';
  readonly strongFeintsEnd?: number;
  readonly runAgain?: number;
  readonly true: readonly number[];
  readonly said: readonly (readonly [name: QuotableName, as: 'about' | 'rounded' | 'exact', value: number])[];
  readonly moved: readonly [name: QuotableName, by5: number, by10: number, by20: number];
}
const { names, houses } = JSON.parse(readFileSync(join(import.meta.dirname, 'houses.json'), 'utf8')) as {
  readonly names: readonly QuotableName[];
  readonly houses: readonly StudiedHouse[];
};

/** The houses of a scheme: spreads were chosen by the first half, the second is for judging. */
export const housesOf = (scheme: StudiedHouse['scheme']) => {
  const all = houses.filter((house) => house.scheme === scheme);
  return { tuned: all.slice(0, all.length / 2), 'left out': all.slice(all.length / 2) } as const;
};

/** Every figure of a house as it truly is. */
export const truthOf = ({ true: values }: StudiedHouse) =>
  Object.fromEntries(names.map((name, i) => [name, values[i]!])) as Record<QuotableName, number>;

/** How a house distils, as its own plant would say. */
export const distilledAs = ({ scheme, strongFeintsEnd, runAgain }: StudiedHouse): Distilled =>
  scheme === 'thrice' ? { scheme, strongFeintsEnd: strongFeintsEnd! } : { scheme, runAgain: runAgain! };

/** What is said of a house, one figure moved by 5, 10 or 20 % for 1, 2 or 3. */
export const quotedIn = ({ said, moved }: StudiedHouse, move: 0 | 1 | 2 | 3): Quoted =>
  Object.fromEntries(
    said.map(([name, as, value]) => [
      name,
      { as, value: move > 0 && name === moved[0] ? (moved[move] as number) : value },
    ]),
  );

/** Counts of talks: those in which a true figure is called wrong, something is noticed, or the moved figure is named first. */
export function tally(some: readonly StudiedHouse[], move: 0 | 1 | 2 | 3, as = distilledAs) {
  const count = { talks: some.length, trueCalled: 0, noticed: 0, first: 0, unsettled: 0 };
  for (const house of some) {
    const found = reconcile(quotedIn(house, move), as(house));
    if ('refused' in found) throw new Error(found.refused);
    const called = found.figures.filter(({ finding }) => finding === 'disagrees' || finding === 'cannot be');
    if (called.some(({ figure }) => move === 0 || figure !== house.moved[0])) count.trueCalled++;
    if (found.figures.some(({ finding }) => finding !== 'agrees' && finding !== 'not checkable'))
      count.noticed++;
    if (move > 0 && accusedFigures(found)[0] === house.moved[0]) count.first++;
    if (!found.settled) count.unsettled++;
  }
  return count;
}
