// The S along which the extract of a wash falls, hour by hour.
import { hours, plato, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';

/** When the fall is half done, and how steep its middle is. */
export interface Pace {
  readonly half: Quantity<'hours'>;
  readonly steepness: Quantity<'perHour'>;
}
/** A pace, and the apparent extract from which and to which the wash falls. */
export interface Fall extends Pace {
  readonly initial: Quantity<'plato'>;
  readonly final: Quantity<'plato'>;
}

/**
 * Part of the whole fall that is done at an hour, 0–1: 1 ÷ (1 + e^(−b (t − m))). Source: Reid et al. 2021.
 * @example partFallen({ half: hours(20), steepness: 0.2 }, 20) // 0.5 (by definition)
 */
export function partFallen({ half, steepness }: Pace, hour: number): number {
  within('The steepness, 1/h,', steepness, Number.MIN_VALUE, 1e6);
  return 1 / (1 + Math.exp(-steepness * (hour - half)));
}

/**
 * Apparent extract, °P, at an hour: the logistic of four parameters. Source: Reid et al. 2021.
 * @example extractAt({ initial: 14, final: 0, half: 20, steepness: 0.2 }, 20) // 7 (half way)
 */
export function extractAt(fall: Fall, hour: number): Quantity<'plato'> {
  return plato(fall.initial + (fall.final - fall.initial) * partFallen(fall, hour));
}

/**
 * The hour at which a part of the fall, above 0 and below 1, is done; undoes `partFallen`.
 * @example hourOfPartFallen({ half: hours(20), steepness: 0.2 }, 0.75) // 25.493 (by hand, 20 + ln 3 ÷ 0.2)
 */
export function hourOfPartFallen({ half, steepness }: Pace, part: number): Quantity<'hours'> {
  within('The part of the fall', part, Number.MIN_VALUE, 1 - Number.EPSILON / 2);
  within('The steepness, 1/h,', steepness, Number.MIN_VALUE, 1e6);
  return hours(half + Math.log(part / (1 - part)) / steepness);
}
