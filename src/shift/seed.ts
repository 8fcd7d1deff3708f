// The number that a shift is drawn from, and how many rounds follow one another.
import { uniformRandom } from '../core/numerics/random.ts';

export const SEEDS = [1, 999_999] as const; // whole numbers that a shift may be drawn from
export const ROUNDS_OF_SHIFT = 12; // rounds, one after the other

/** True for a number that a shift can be drawn from. */
export const isSeed = (n: unknown): n is number => Number.isInteger(n) && (n as number) >= SEEDS[0] && (n as number) <= SEEDS[1]; // prettier-ignore

/** A value to so many decimals. */
export const roundedTo = (value: number, digits: number): number => Number(value.toFixed(digits));

/** Chance for a round of a shift: the same number and round draw the same everywhere. */
export function seededDrawing(seed: number, of: number) {
  const random = uniformRandom(seed * 64 + of);
  return {
    random,
    between: (low: number, high: number) => low + (high - low) * random(),
  };
}
