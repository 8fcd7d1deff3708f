// Guards the doors of the core: a number outside its range stops there, with a sentence.
import type { NonEmpty } from './refusal.ts';

/** The largest amount that a sum still takes: beyond any house, and far from where doubles overflow. */
export const VERY_MUCH = 1e12;

/**
 * Returns `value` when it is a finite number from `low` to `high`; otherwise throws a RangeError that names it.
 * @example within('The wort, L,', 5, 0, 10) // 5 (it lies inside)
 * @example within('The wort, L,', 11, 0, 10) // throws: The wort, L, is 11; it must be from 0 to 10. (it lies outside)
 */
export function within<N extends number, Name extends string>(
  name: NonEmpty<Name>,
  value: N,
  low: number,
  high: number,
): N {
  if (value >= low && value <= high) return value;
  throw new RangeError(`${name} is ${value}; it must be from ${low} to ${high}.`);
}
