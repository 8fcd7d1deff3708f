// What every bench of the fault desk has: one thing wrong, of a size, and what each reading then truly is.
import type { Refusal } from '../refusal.ts';

/** A cause and how much of it, from 0, the least that is drawn, to 1, the most. */
export interface WhatIsWrong<Cause extends string> {
  readonly cause: Cause | 'nothing';
  readonly size: number;
}
/** What each reading truly is, by its name; a sign that is there or not is 1 or 0. */
export type Truth<Reading extends string = string> = Readonly<Record<Reading, number>>;

/** The truth of a bench, or why the house has none. */
export type TruthOf<Cause extends string, Reading extends string> = (
  wrong: WhatIsWrong<Cause>,
) => Truth<Reading> | Refusal;

/**
 * The value at a size between the least and the most that is drawn.
 * @example valueAtSize([10, 20], 0.5) // 15 (half way)
 */
export const valueAtSize = ([least, most]: readonly [number, number], size: number): number =>
  least + (most - least) * size;
