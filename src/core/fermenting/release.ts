// What fermenting gives off, gas or heat, as the extract falls.
import { quantity, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import { partFallen, type Pace } from './fall.ts';

/**
 * Part of all the gas or heat that has been given off at an hour, from 0 when the yeast goes in towards 1. It
 * follows the fall of the extract; what the S has below hour 0 is left out. Hour and half 0 or more.
 * @example partReleased({ half: hours(20), steepness: 0.2 }, 0) // 0 (the yeast goes in)
 */
export function partReleased(pace: Pace, hour: number): number {
  within('The hour', hour, 0, Number.MAX_VALUE);
  within('The hour of half the fall', pace.half, 0, Number.MAX_VALUE);
  const before = partFallen(pace, 0);
  return (partFallen(pace, hour) - before) / (1 - before);
}

/**
 * Part of the whole that is given off in an hour, at some hour: the slope of `partReleased`. Greatest at half the fall.
 * @example releaseRate({ half: hours(1000), steepness: 0.2 }, 1000) // 0.05 (a quarter of the steepness, where nothing had fallen at hour 0)
 */
export function releaseRate(pace: Pace, hour: number): Quantity<'perHour'> {
  within('The hour', hour, 0, Number.MAX_VALUE);
  within('The hour of half the fall', pace.half, 0, Number.MAX_VALUE);
  const part = partFallen(pace, hour);
  return quantity('perHour', (pace.steepness * part * (1 - part)) / (1 - partFallen(pace, 0)));
}
