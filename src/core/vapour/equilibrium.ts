// Vapour over boiling ethanol–water: van Laar activities, Antoine vapour pressures; or another model, to judge them by.
import { STANDARD_ATMOSPHERE } from '../constants.ts';
import { celsius, kilopascals, moleFraction, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';

const MMHG = 101.325 / 760; // kPa in a millimetre of mercury
const A12 = 0.7292 * Math.LN10; // van Laar, ethanol in water; de Nevers, p. 186, printed for log10
const A21 = 0.4104 * Math.LN10; // van Laar, water in ethanol; the same
const ETHANOL = { a: 8.04494, b: 1554.3, c: 222.65 }; // Antoine, log10 mmHg and °C; de Nevers, Table A.2, p. 418
const WATER = { a: 7.96681, b: 1668.21, c: 228.0 }; // Antoine, log10 mmHg and °C; the same

/** Vapour pressure of a pure liquid, kPa. */
function antoine({ a, b, c }: typeof ETHANOL, temperature: number): number {
  return MMHG * Math.exp(Math.LN10 * (a - b * (1 / (c + temperature))));
}

/** By what part of itself that pressure rises with each K. */
function steepness({ b, c }: typeof ETHANOL, temperature: number): number {
  const nearness = 1 / (c + temperature);
  return Math.LN10 * b * nearness * nearness;
}

/**
 * Vapour pressure of pure ethanol, kPa, at −20…130 °C. Source: Antoine, de Nevers.
 * @example ethanolPressure(celsius(78.3)) // 101 (where it boils in the open)
 */
export function ethanolPressure(temperature: Quantity<'temperature'>): Quantity<'pressure'> {
  return kilopascals(antoine(ETHANOL, within('The temperature, °C,', temperature, -20, 130)));
}

/**
 * Vapour pressure of pure water, kPa, at −20…130 °C. Source: Antoine, de Nevers.
 * @example waterPressure(celsius(100)) // 101.3 (where it boils in the open)
 */
export function waterPressure(temperature: Quantity<'temperature'>): Quantity<'pressure'> {
  return kilopascals(antoine(WATER, within('The temperature, °C,', temperature, -20, 130)));
}

/**
 * Activities of ethanol and water, 0–1, in a liquid with mole fraction `x` of ethanol. Source: van Laar, de Nevers.
 * @example activities(moleFraction(1)) // { ethanol: 1, water: 0 } (the pure liquid)
 */
export function activities(x: Quantity<'moleFraction'>): { ethanol: number; water: number } {
  const water = 1 - within('The mole fraction', x, 0, 1);
  const total = A12 * x + A21 * water;
  return {
    ethanol: x * Math.exp(A12 * ((A21 * water) / total) ** 2),
    water: water * Math.exp(A21 * ((A12 * x) / total) ** 2),
  };
}

export interface Boiling {
  readonly vapour: Quantity<'moleFraction'>;
  readonly temperature: Quantity<'temperature'>;
}

/** A model of vapour over liquid: activities at a temperature, °C, and the vapour pressures that belong to them. */
export interface VapourModel {
  readonly name: string;
  readonly activities: (
    x: Quantity<'moleFraction'>,
    temperature: number,
  ) => { ethanol: number; water: number };
  /** True where the activities hang on the temperature. */
  readonly followsHeat: boolean;
  readonly ethanolLaw: typeof ETHANOL;
  readonly waterLaw: typeof WATER;
}
/** The model that the book reckons with. */
export const vanLaar: VapourModel = { name: 'van Laar', activities, followsHeat: false, ethanolLaw: ETHANOL, waterLaw: WATER }; // prettier-ignore

/** What boils at `pressure`, by Newton’s method from a guess `t` of the boiling point, °C. */
function boil(x: Quantity<'moleFraction'>, pressure: number, model: VapourModel, t: number): Boiling {
  const { ethanolLaw, waterLaw } = model;
  // The step taken at such a miss leaves a thousandth of its square; where the activities follow the heat, a twentieth of it.
  const near = model.followsHeat ? 1e-11 : 1e-6;
  let { ethanol, water } = model.activities(x, t);
  for (let step = 0; step < 12; step++) {
    const pe = ethanol * antoine(ethanolLaw, t);
    const pw = water * antoine(waterLaw, t);
    const slope = (pe * steepness(ethanolLaw, t) + pw * steepness(waterLaw, t)) / (pe + pw);
    const miss = Math.log((pe + pw) / pressure);
    // In u = 1/(t + 225) the logarithm of the pressure is almost straight, so a step taken there lands close.
    const u = 1 / (t + 225);
    t = 1 / (u + (miss * u * u) / slope) - 225;
    if (model.followsHeat) ({ ethanol, water } = model.activities(x, t));
    if (Math.abs(miss) < near) break;
  }
  return {
    vapour: moleFraction(Math.min(1, (ethanol * antoine(ethanolLaw, t)) / pressure)),
    temperature: celsius(t),
  };
}

/**
 * The vapour over a boiling liquid with mole fraction `x` of ethanol (0–1), and its boiling point.
 * `pressure` 20–150 kPa. Vapour is taken as an ideal gas.
 * Source: modified Raoult's law, van Laar and Antoine constants of de Nevers; for the other model see wilson.ts.
 * @example vapourOver(moleFraction(0.0966)).vapour // 0.44 (Carey and Lewis 1932, 0.4375)
 */
export function vapourOver(
  x: Quantity<'moleFraction'>,
  pressure = kilopascals(STANDARD_ATMOSPHERE),
  model: VapourModel = vanLaar,
): Boiling {
  within('The pressure, kPa,', pressure, 20, 150);
  return boil(x, pressure, model, 78.3 + 21.7 * (1 - x) ** 8);
}

/**
 * As `vapourOver`, of many liquids, each near the one before: the search for each begins at that one’s boiling point.
 * @example vapoursOver([0.0966, 0]).vapour // [0.44, 0] (Carey and Lewis 1932, 0.4375; none over water)
 */
export function vapoursOver(
  liquids: readonly number[],
  pressure = kilopascals(STANDARD_ATMOSPHERE),
  model: VapourModel = vanLaar,
): { readonly vapour: number[]; readonly temperature: number[] } {
  const vapour = new Array<number>(liquids.length);
  const temperature = new Array<number>(liquids.length);
  let { temperature: near } = vapourOver(moleFraction(liquids[0]!), pressure, model);
  for (let i = 0; i < liquids.length; i++) {
    const boiling = boil(moleFraction(liquids[i]!), pressure, model, near);
    vapour[i] = boiling.vapour;
    temperature[i] = near = boiling.temperature;
  }
  return { vapour, temperature };
}
