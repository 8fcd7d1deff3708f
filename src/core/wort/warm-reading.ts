// A gravity read in wort that is not at 20 °C.
import { density, gravity, massPercent, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import { WATER_DENSITY, densityOfSpirit } from '../spirit/density.ts';
import { densityAtMark } from '../spirit/hydrometer.ts';

export const WARMEST_READING = 40; // °C, as far as the formula for water of OIML R 22 goes

/**
 * Gravity at 20 °C of wort in which a hydrometer for 20 °C shows `reading`, 0.98–1.12, at 0–40 °C. The wort is taken to
 * swell as water does; sugar makes it swell a little more. Source: OIML R 22 for water, Archimedes for the float.
 */
export function gravityAt20(
  reading: Quantity<'gravity'>,
  temperature: Quantity<'temperature'>,
): Quantity<'gravity'> {
  within('The gravity,', reading, 0.98, 1.12);
  within('The temperature, °C,', temperature, 0, WARMEST_READING);
  const there = densityAtMark(density(reading * WATER_DENSITY), temperature);
  return gravity(there / densityOfSpirit(massPercent(0), temperature));
}
