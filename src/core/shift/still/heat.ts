// Heat of a kilomole of vapour, and of an amount warmed: in kJ, as a still's clock takes it.
import type { Amounts } from '../../spirit/amounts.ts';
import { HEAT_CAPACITY, heatToBoilOff, massesOf } from '../../vapour/latent-heat.ts';

/**
 * Heat that turns a kilomole of vapour with mole fraction `y`, 0–1, back to liquid, kJ.
 * @example latentHeat(0) // 40714.6 (18.0153 kg × 2260 kJ)
 */
export const latentHeat = (y: number): number => 1000 * heatToBoilOff({ ethanol: y, water: 1 - y });

/**
 * Heat that warms an amount in kilomoles by 1 K, kJ.
 * @example warmth({ ethanol: 0, water: 1 }) // 75.38 (18.0153 × 4.184)
 */
export function warmth(amounts: Amounts): number {
  const { ethanol, water } = massesOf(amounts);
  return ethanol * HEAT_CAPACITY.ethanol + water * HEAT_CAPACITY.water;
}
