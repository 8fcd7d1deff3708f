// Water in grain, as a part of the whole or beside the dry matter.
import { percent, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';

/**
 * Water in a hundred of dry matter, %, from moisture, % of the whole, 0–99.
 * @example waterInDry(percent(20)) // 25 (20 beside 80)
 */
export function waterInDry(moisture: Quantity<'percent'>): Quantity<'percent'> {
  return percent((100 * within('The moisture, %,', moisture, 0, 99)) / (100 - moisture));
}

/**
 * Moisture, % of the whole, from water in a hundred of dry matter, %, from 0.
 * @example moistureOf(percent(25)) // 20 (25 of 125)
 */
export function moistureOf(water: Quantity<'percent'>): Quantity<'percent'> {
  return percent((100 * within('The water beside the dry matter, %,', water, 0, 1e9)) / (100 + water));
}
