// A shift in an address: #shift= and its number, so that a trainer sets the same for all; and the line to hand in.
import { quotedGiven } from '../core/quoted-given.ts';
import { isSeed, SEEDS } from './seed.ts';

const MARK = '#shift=';

export const linkOfShift = (seed: number): string => `${MARK}${seed}`;

/** The number in an address; undefined where there is none, a sentence where it cannot be. */
export function seedOfLink(hash: string): number | { readonly problem: string } | undefined {
  if (!hash.startsWith(MARK)) return undefined;
  const given = hash.slice(MARK.length);
  const seed = /^[1-9]\d{0,5}$/.test(given) ? Number(given) : undefined;
  if (isSeed(seed)) return seed;
  return { problem: `The link says shift “${quotedGiven(given)}”; a shift is a whole number from ${SEEDS[0]} to ${SEEDS[1]}.` }; // prettier-ignore
}

/** A code of the figures that a shift hangs on, so that two can see that theirs are alike: FNV-1a, 32 bits, from memory. */
export function codeOfHouse<H extends { readonly name: string; readonly settles?: number }>({ name: _, settles: __, ...figures }: H): string {
  let code = 0x811c9dc5;
  for (const sign of JSON.stringify(figures)) code = Math.imul(code ^ sign.codePointAt(0)!, 0x01000193);
  return (code >>> 0).toString(36).toUpperCase().padStart(7, '0');
} // prettier-ignore

/** The line of a result for a record: which shift, of which plant, which round, points, day. `at` and `round` are the kind's words, as “still” and “charge”. */
export const resultLine = (
  { seed, house, done }: { readonly seed: number; readonly house: { readonly name: string }; readonly done: readonly unknown[] },
  { at, round }: { readonly at: string; readonly round: string },
  score: number,
  day: string,
): string => `Shift ${seed}, ${at} ${codeOfHouse(house)}, ${round} ${done.length + 1}: ${score} of 100, ${day}`; // prettier-ignore
