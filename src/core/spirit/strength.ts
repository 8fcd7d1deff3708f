// Strength by volume, share by mass and density: each from the other.
import { bracketedRoot } from '../numerics/root.ts';
import { celsius, massPercent, strength, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import { densityOfSpirit, ETHANOL_DENSITY, WATER_DENSITY } from './density.ts';

const TWENTY = celsius(20);
const HAIR = 1e-12; // by which a bracket is opened against rounding

/**
 * Strength, % vol at 20 °C, of a mixture with a given mass share of ethanol, 0–100 % mass.
 * Definition: volume of pure alcohol at 20 °C over total volume at 20 °C; Directive 76/766/EEC, Annex.
 * @example strengthFromMassPercent(massPercent(33.361)) // 40.069 (80° US proof, OIML R 22 evaluated elsewhere)
 */
export function strengthFromMassPercent(mass: Quantity<'massPercent'>): Quantity<'strength'> {
  return strength((mass * densityOfSpirit(mass, TWENTY)) / ETHANOL_DENSITY);
}

/**
 * Mass share of ethanol, % mass, of a mixture of 0–100 % vol at 20 °C; undoes `strengthFromMassPercent` to 1e-9.
 * @example massPercentFromStrength(strength(40.069)) // 33.361 (the same row)
 */
export function massPercentFromStrength(vol: Quantity<'strength'>): Quantity<'massPercent'> {
  within('The strength, % vol,', vol, 0, 100);
  if (vol === 0 || vol === 100) return massPercent(vol);
  // No mixture is heavier than water, or lighter than ethanol.
  const least = (vol * ETHANOL_DENSITY * (1 - HAIR)) / WATER_DENSITY;
  const most = Math.min(100, vol * (1 + HAIR));
  return massPercent(bracketedRoot((mass) => strengthFromMassPercent(massPercent(mass)) - vol, least, most));
}

/**
 * Density, kg/m³ in vacuo, of spirit of 0–100 % vol at a temperature of −20…40 °C.
 * @example densityFromStrength(strength(40), celsius(20)) // 948.05 (OIML R 22, table for 20 °C)
 */
export function densityFromStrength(vol: Quantity<'strength'>, temperature: Quantity<'temperature'>) {
  return densityOfSpirit(massPercentFromStrength(vol), temperature);
}

/**
 * Strength, % vol at 20 °C, from a density in vacuo measured at a temperature of −20…40 °C.
 * Refuses (throws) a density that no mixture has at that temperature.
 * Source: OIML R 22, the general formula solved for the mass share.
 * @example strengthFromDensity(density(948.05), celsius(20)) // 40.0 (OIML R 22, table for 20 °C)
 */
export function strengthFromDensity(
  density: Quantity<'density'>,
  temperature: Quantity<'temperature'>,
): Quantity<'strength'> {
  const [heaviest, lightest] = [0, 100].map((mass) => densityOfSpirit(massPercent(mass), temperature));
  within(`The density at ${temperature} °C, kg/m³,`, density, lightest!, heaviest!);
  const mass = bracketedRoot((m) => densityOfSpirit(massPercent(m), temperature) - density, 0, 100);
  return strengthFromMassPercent(massPercent(mass));
}
