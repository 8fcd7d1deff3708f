// A gravity read in wort that is not at 20 °C.
import { quantity, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import { densityAtMark } from '../spirit/hydrometer.ts';
import { densityFromStrength } from '../spirit/strength.ts';

export const WARMEST_READING = 40; // °C, as far as the formula for water of OIML R 22 goes

/**
 * Density of water, kg/m³, at 0–40 °C. Source: OIML R 22.
 * @example waterAt(celsius(4)) // 999.97 (IAPWS-95, 999.975)
 */
export const waterAt = (temperature: Quantity<'temperature'>) =>
  densityFromStrength(quantity('strength', 0), temperature);

/**
 * Gravity at 20 °C of wort in which a hydrometer for 20 °C shows `reading`, 0.98–1.12, at 0–40 °C. The wort is taken to
 * swell as water does; sugar makes it swell a little more. Source: OIML R 22 for water, Archimedes for the float.
 * @example gravityAt20(gravity(1.05), celsius(20)) // 1.0500 (read at its own temperature)
 */
export function gravityAt20(
  reading: Quantity<'gravity'>,
  temperature: Quantity<'temperature'>,
): Quantity<'gravity'> {
  within('The gravity,', reading, 0.98, 1.12);
  within('The temperature, °C,', temperature, 0, WARMEST_READING);
  const there = densityAtMark(
    quantity('density', reading * waterAt(quantity('temperature', 20))),
    temperature,
  );
  return quantity('gravity', there / waterAt(temperature));
}
