// A second model of ethanol–water, by which the first can be judged: Wilson activities, with the vapour pressures that belong to them.
import type { Quantity } from '../quantity.ts';
import type { VapourModel } from './equilibrium.ts';

const R = 1.98721; // cal/(mol K), gas constant in the unit of the constants below
const ICE_POINT = 273.15; // K at 0 °C
const ETHANOL_TO_WATER = 382.3; // cal/mol, λ12 − λ11, ethanol first; DECHEMA collection, by a public listing of its constants
const WATER_TO_ETHANOL = 955.45; // cal/mol, λ21 − λ22; the same
const ETHANOL_VOLUME = 58.68; // cm³/mol, molar volume of liquid ethanol that belongs to them; the same
const WATER_VOLUME = 18.07; // cm³/mol, of water; the same

const WILSON_ETHANOL = { a: 8.1122, b: 1592.864, c: 226.184 }; // Antoine, log10 mmHg and °C; Gmehling and Onken, by a reference page
const WILSON_WATER = { a: 8.07131, b: 1730.63, c: 233.426 }; // Antoine, log10 mmHg and °C; the same

/**
 * Activities of ethanol and water, 0–1, in a liquid with mole fraction `x` of ethanol at a temperature, °C.
 * Source: Wilson’s equation, constants of the DECHEMA collection.
 * @example wilsonActivities(moleFraction(1), 78) // { ethanol: 1, water: 0 } (the pure liquid)
 */
export function wilsonActivities(
  x: Quantity<'moleFraction'>,
  temperature: number,
): { ethanol: number; water: number } {
  const water = 1 - x;
  const thermal = R * (ICE_POINT + temperature);
  const a = (WATER_VOLUME / ETHANOL_VOLUME) * Math.exp(-ETHANOL_TO_WATER / thermal);
  const b = (ETHANOL_VOLUME / WATER_VOLUME) * Math.exp(-WATER_TO_ETHANOL / thermal);
  const [round, about] = [x + a * water, water + b * x];
  const bend = a / round - b / about;
  return { ethanol: (x / round) * Math.exp(water * bend), water: (water / about) * Math.exp(-x * bend) };
}

/** The second model; as near to Carey and Lewis as the first, see tests/core/equilibrium.test.ts. */
export const wilson: VapourModel = { name: 'Wilson', activities: wilsonActivities, followsHeat: true, ethanolLaw: WILSON_ETHANOL, waterLaw: WILSON_WATER }; // prettier-ignore
