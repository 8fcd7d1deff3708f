// Malt in its bin: the space that it fills, and the mashes that a bin holds.
import { count, kilograms, quantity, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';

/**
 * Space, m³, that a mass of malt fills, kg, at its bulk density, kg/m³.
 * @example spaceFor(kilograms(5500), quantity('bulkDensity', 550)) // 10 (5500 ÷ 550)
 */
export function spaceFor(malt: Quantity<'mass'>, bulk: Quantity<'bulkDensity'>): Quantity<'space'> {
  within('The bulk density, kg/m³,', bulk, 1, 2000);
  return quantity('space', malt / bulk);
}

/**
 * Malt, kg, in a full bin of so much space, m³.
 * @example maltInBin(quantity('space', 10), quantity('bulkDensity', 550)) // 5500 (10 × 550)
 */
export function maltInBin(bin: Quantity<'space'>, bulk: Quantity<'bulkDensity'>): Quantity<'mass'> {
  within('The bulk density, kg/m³,', bulk, 1, 2000);
  within('The bin, m³,', bin, 0, Infinity);
  return kilograms(bin * bulk);
}

/**
 * Mashes that a full bin feeds, with the part of a last one.
 * @example mashesInBin(kilograms(5000), kilograms(2000)) // 2.5 (5000 ÷ 2000)
 */
export function mashesInBin(held: Quantity<'mass'>, malt: Quantity<'mass'>): Quantity<'count'> {
  within('The malt in a mash, kg,', malt, Number.MIN_VALUE, Infinity);
  return count(held / malt);
}
