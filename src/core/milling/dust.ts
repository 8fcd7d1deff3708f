// Dust in the air of a room, and how fiercely a dust explodes.
import { kilograms, quantity, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';

/** The lowest explosive clouds quoted for barley and malt dust, g/m³, from the most to the least sensitive; from memory. */
export const LOWEST_CLOUDS = [50, 125] as const;

/**
 * Dust in the air, g/m³, when a mass of it, kg, hangs evenly in a space, m³.
 * @example dustCloud(kilograms(5), quantity('space', 100)) // 50 (5000 g over 100 m³)
 */
export function dustCloud(dust: Quantity<'mass'>, space: Quantity<'space'>): Quantity<'dustCloud'> {
  within('The dust, kg,', dust, 0, Infinity);
  within('The space, m³,', space, Number.MIN_VALUE, Infinity);
  return quantity('dustCloud', (1000 * dust) / space);
}

/**
 * Dust, kg, that makes a cloud, g/m³, in a space, m³; undoes `dustCloud`.
 * @example dustForCloud(quantity('dustCloud', 50), quantity('space', 100)) // 5 (50 × 100 g)
 */
export function dustForCloud(cloud: Quantity<'dustCloud'>, space: Quantity<'space'>): Quantity<'mass'> {
  within('The cloud, g/m³,', cloud, 0, Infinity);
  within('The space, m³,', space, 0, Infinity);
  return kilograms((cloud * space) / 1000);
}

/**
 * Kst, bar m/s: the fastest rise of pressure in a closed test vessel, bar/s, times the cube root of its volume, given in L.
 * Holds for vessels of 20 L and more. Source: the cube law of EN 14034-2, from memory.
 * @example dustViolence(quantity('pressureRise', 200), litres(1000)) // 200 (a cubic metre, whose root is one)
 */
export function dustViolence(
  rise: Quantity<'pressureRise'>,
  vessel: Quantity<'volume'>,
): Quantity<'dustViolence'> {
  within('The rise of pressure, bar/s,', rise, 0, Infinity);
  within('The test vessel, L,', vessel, 20, Infinity);
  return quantity('dustViolence', rise * Math.cbrt(vessel / 1000));
}

const CLASS_LIMITS = [0, 200, 300]; // highest Kst of the classes St 0, 1 and 2, bar m/s; VDI and EN 14034, from memory

/**
 * Class of a dust, 0 to 3, by its Kst, bar m/s. Class 0 has not exploded in the test at all.
 * @example dustClass(quantity('dustViolence', 250)) // 2 (between 200 and 300, EN 14034)
 */
export function dustClass(violence: Quantity<'dustViolence'>): 0 | 1 | 2 | 3 {
  within('Kst, bar m/s,', violence, 0, Infinity);
  return CLASS_LIMITS.filter((limit) => violence > limit).length as 0 | 1 | 2 | 3;
}
