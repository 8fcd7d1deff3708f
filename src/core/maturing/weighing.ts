// Litres from weight: spirit on scales, with the air it pushes aside.
import { celsius, kilograms, litres, litres20, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import { densityFromStrength } from '../spirit/strength.ts';

const AIR = 1.2; // kg/m³, air in which weights are agreed; OIML D 28, from memory
const WEIGHTS = 8000; // kg/m³, density of agreed weights; the same

/**
 * Mass, kg, of a liquid of a given density (kg/m³ in vacuo) that scales in air show as `shown` kg.
 * Air carries a little of the liquid's weight, and less of the weights'.
 * @example massFromScales(kilograms(997.15), density(998.2)) // 998.2 (by hand, a cubic metre of water shows 997.15)
 */
export function massFromScales(shown: Quantity<'mass'>, density: Quantity<'density'>): Quantity<'mass'> {
  within('The weight, kg,', shown, 0, Infinity);
  within('The density, kg/m³,', density, 500, 2000);
  return kilograms((shown * (1 - AIR / WEIGHTS)) / (1 - AIR / density));
}

export interface Weighed {
  readonly mass: Quantity<'mass'>;
  /** Volume as the spirit lies, at its own temperature. */
  readonly volume: Quantity<'volume'>;
  readonly volume20: Quantity<'volume20'>;
}

/**
 * Mass and volume of a spirit of 0–100 % vol that scales in air show as `shown` kg, at −20…40 °C.
 * Source: OIML R 22 densities; air and weights of OIML D 28.
 * @example weighSpirit(kilograms(0), strength(60), celsius(20)) // { mass: 0, volume: 0, volume20: 0 } (nothing on the scales)
 */
export function weighSpirit(
  shown: Quantity<'mass'>,
  strength: Quantity<'strength'>,
  temperature: Quantity<'temperature'>,
): Weighed {
  const density = densityFromStrength(strength, temperature);
  const mass = massFromScales(shown, density);
  return {
    mass,
    volume: litres((1000 * mass) / density),
    volume20: litres20((1000 * mass) / densityFromStrength(strength, celsius(20))),
  };
}

/**
 * Litres at 20 °C of a spirit measured by volume at another temperature, −20…40 °C: its mass stays.
 * @example volumeAt20(litres(100), strength(60), celsius(20)) // 100 (measured at 20 °C)
 */
export function volumeAt20(
  volume: Quantity<'volume'>,
  strength: Quantity<'strength'>,
  temperature: Quantity<'temperature'>,
): Quantity<'volume20'> {
  within('The volume, L,', volume, 0, Infinity);
  const [there, here] = [temperature, celsius(20)].map((t) => densityFromStrength(strength, t));
  return litres20((volume * there!) / here!);
}
