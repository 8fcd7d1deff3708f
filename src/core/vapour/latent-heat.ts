// Heat to warm and to boil off mixtures of ethanol and water, by mass.
import { ETHANOL_MOLAR_MASS, WATER_MOLAR_MASS } from '../constants.ts';
import { quantity, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import type { Amounts } from '../spirit/amounts.ts';

export const LATENT_HEAT = { ethanol: 0.855, water: 2.26 } as const; // MJ/kg at each one's own boiling point; Perry, table 3-178
export const HEAT_CAPACITY = { ethanol: 2.845, water: 4.184 } as const; // kJ/(kg K); Perry, table 3-183

/**
 * The ethanol and the water in a mixture, kg each.
 * @example massesOf({ ethanol: 1, water: 1 }) // { ethanol: 46.07, water: 18.015 } (molar masses)
 */
export function massesOf({ ethanol, water }: Amounts): { ethanol: number; water: number } {
  return { ethanol: ethanol * ETHANOL_MOLAR_MASS, water: water * WATER_MOLAR_MASS };
}

/**
 * Heat that turns a mixture to vapour, MJ: each part's mass times its own latent heat at its own boiling point.
 * Without heat of mixing, which is about 1 % of it at most (from memory).
 * Source: latent heats of Perry.
 * @example heatToBoilOff({ ethanol: 0, water: 1 }) // 40.71 (18.015 kg × 2.26 MJ)
 */
export function heatToBoilOff(mixture: Amounts): Quantity<'energy'> {
  const { ethanol, water } = massesOf(mixture);
  return quantity('energy', ethanol * LATENT_HEAT.ethanol + water * LATENT_HEAT.water);
}

/**
 * Heat that warms a mixture from one temperature, °C, to another, MJ; −20…130 °C, negative when it cools.
 * Heat capacities add by mass; a weak mixture truly takes up to about 10 % more than that (from memory).
 * Source: heat capacities of Perry.
 * @example heatToWarm({ ethanol: 0, water: 1 }, celsius(20), celsius(100)) // 6.03 (18.015 × 4.184 × 80 ÷ 1000)
 */
export function heatToWarm(
  mixture: Amounts,
  from: Quantity<'temperature'>,
  to: Quantity<'temperature'>,
): Quantity<'energy'> {
  const { ethanol, water } = massesOf(mixture);
  const rise = within('The temperature, °C,', to, -20, 130) - within('The temperature, °C,', from, -20, 130);
  return quantity('energy', ((ethanol * HEAT_CAPACITY.ethanol + water * HEAT_CAPACITY.water) * rise) / 1000);
}
