// A sieve test: the parts of the grist, what is missing, and which rollers to move.
import { percent, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import { refuse, type Refusal } from '../refusal.ts';

/** Grams found as each part. */
export interface Sieved {
  readonly husk: Quantity<'grams'>;
  readonly grits: Quantity<'grams'>;
  readonly flour: Quantity<'grams'>;
}
export interface SieveTest {
  /** Parts of what was found, %. */
  readonly husk: Quantity<'percent'>;
  readonly grits: Quantity<'percent'>;
  readonly flour: Quantity<'percent'>;
  /** Part of the sample that was not found again, %; a little below nought when the scale errs. */
  readonly lost: Quantity<'percent'>;
}

const SCALE_ERROR = 1.01; // found over put on that a scale's error may still explain; common practice

/**
 * Parts of the grist as percentages of what was found on the sieves, and the part of the sample lost there.
 * Masses in g, none below 0. Refuses when nothing was found, or more than was put on.
 * @example sieveTest({ husk: 20, grits: 70, flour: 10 }, 100) // { husk: 20, grits: 70, flour: 10, lost: 0 } (all was found again)
 */
export function sieveTest(found: Sieved, putOn: Quantity<'grams'>): SieveTest | Refusal {
  for (const [name, mass] of Object.entries(found)) within(`The ${name}, g,`, mass, 0, Infinity);
  within('The sample, g,', putOn, Number.MIN_VALUE, Infinity);
  const total = found.husk + found.grits + found.flour;
  if (total === 0) return refuse('Nothing was found on the sieves, so the grist cannot be split into parts.');
  if (total > putOn * SCALE_ERROR) {
    return refuse(
      `${Number(total.toFixed(2))} g were found and only ${Number(putOn.toFixed(2))} g were put on; more cannot come off the sieves than went on.`,
    );
  }
  const part = (mass: number) => percent((100 * mass) / total);
  return {
    husk: part(found.husk),
    grits: part(found.grits),
    flour: part(found.flour),
    lost: percent(100 * (1 - total / putOn)),
  };
}

export type Move = 'wider' | 'narrower' | 'as it is';

/**
 * Which way to move the two pairs of rollers when husk or flour is off its target by more than a tolerance,
 * all in points of per cent. The first pair answers for the husk. The second moves only for flour that the
 * first pair's own move will not mend: a wider first gap tears less husk into flour, a narrower one makes more.
 * From common practice.
 * @example rollersToMove({ husk: 5, flour: 0 }, 2) // { first: 'narrower', second: 'as it is' } (too much husk, common practice)
 */
export function rollersToMove(
  off: { readonly husk: number; readonly flour: number },
  tolerance: number,
): { readonly first: Move; readonly second: Move } {
  const first = off.husk < -tolerance ? 'wider' : off.husk > tolerance ? 'narrower' : 'as it is';
  const wanted = off.flour > tolerance ? 'wider' : off.flour < -tolerance ? 'narrower' : 'as it is';
  return { first, second: wanted === first ? 'as it is' : wanted };
}
