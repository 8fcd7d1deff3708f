// A case in an address: #fault= and its number, so that a trainer sets the same for all; and the line to hand in.
import { quotedGiven } from '../core/quoted-given.ts';
import { isSeed, SEEDS } from '../shift/seed.ts';

const MARK = '#fault=';
export const LONGEST_NAME_ON_RESULT = 60; // characters, as in the class book

export const linkOfFault = (seed: number): string => `${MARK}${seed}`;

/** The number in an address; undefined where there is none, a sentence where it cannot be. */
export function faultOfLink(hash: string): number | { readonly problem: string } | undefined {
  if (!hash.startsWith(MARK)) return undefined;
  const given = hash.slice(MARK.length);
  const seed = /^[1-9]\d{0,5}$/.test(given) ? Number(given) : undefined;
  if (isSeed(seed)) return seed;
  return { problem: `The link says case “${quotedGiven(given)}”; a case is a whole number from ${SEEDS[0]} to ${SEEDS[1]}.` }; // prettier-ignore
}

export interface HandedCase {
  readonly total: number;
  readonly spent: number;
  readonly least: number;
  /** The cause that was named, as the desk lists it, and whether it is the right one. */
  readonly named: string;
  readonly isCause: boolean;
  /** What a dangerous act first does; undefined where what came first was none. */
  readonly harm: string | undefined;
  /** True where the answer had been shown before. */
  readonly isAgain: boolean;
}
/** The line of a result for a record, as the class book takes it: whose it is where a name is given, which case, of which house, points; then minutes, the cause named, a dangerous act, whether the answer had been shown before, and the day. */
export const faultLine = (name: string, seed: number, house: string, { total, spent, least, named, isCause, harm, isAgain }: HandedCase, day: string): string =>
  `${ofName(name)}Case ${seed}, house ${house}: ${total} of 100. ${spent} min asked for, ${least} needed; named “${named}” (${isCause ? 'right' : 'wrong'})${harm ? '; a dangerous act first' : ''}${isAgain ? '; second go or later' : ''}, ${day}`; // prettier-ignore

/** A name on one line and without a colon, which ends it. */
function ofName(name: string): string {
  const kept = name.replace(/[:\s]+/g, ' ').trim().slice(0, LONGEST_NAME_ON_RESULT).trim();
  return kept === '' ? '' : `${kept}: `;
} // prettier-ignore
