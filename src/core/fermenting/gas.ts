// Carbon dioxide as gas: its volume, and its level in a room whose air is mixed.
import { STANDARD_ATMOSPHERE } from '../constants.ts';
import { quantity, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';

const CARBON_DIOXIDE_MOLAR_MASS = 44.01; // kg/kmol; IUPAC standard atomic weights
const GAS_CONSTANT = 8.314463; // kPa m³/(kmol K); CODATA 2018
const ZERO_CELSIUS = 273.15; // K; by definition
export const FRESH_AIR = 420; // ppm carbon dioxide in the air outside; from memory

/**
 * Volume, m³, of a mass of carbon dioxide, kg, at a temperature of −50…100 °C and one atmosphere. Source: the gas law.
 * @example gasVolume(44.01, celsius(0)) // 22.41 (a kilomole of gas at 0 °C and one atmosphere)
 */
export function gasVolume(mass: number, temperature: Quantity<'temperature'>): Quantity<'space'> {
  within('The mass of gas, kg,', mass, 0, Number.MAX_VALUE);
  within('The temperature, °C,', temperature, -50, 100);
  const kilomoles = mass / CARBON_DIOXIDE_MOLAR_MASS;
  return quantity('space', (kilomoles * GAS_CONSTANT * (ZERO_CELSIUS + temperature)) / STANDARD_ATMOSPHERE);
}

/** A room of mixed air, the gas that runs into it and the fresh air that is blown in; as much leaves as comes. */
export interface GasRoom {
  readonly volume: Quantity<'space'>;
  readonly gas: Quantity<'flow'>;
  readonly freshAir: Quantity<'flow'>;
}

/**
 * The level, ppm, at which the room would settle: what flows in, mixed. Gas above 0 m³/h.
 * @example steadyLevel({ gas: 1, freshAir: 999 }) // 1420 (by hand, (1,000,000 + 420 × 999) ÷ 1000 is 1419.6)
 */
export function steadyLevel({ gas, freshAir }: GasRoom): Quantity<'ppm'> {
  within('The gas, m³/h,', gas, Number.MIN_VALUE, Number.MAX_VALUE);
  within('The fresh air, m³/h,', freshAir, 0, Number.MAX_VALUE);
  return quantity('ppm', (1e6 * gas + FRESH_AIR * freshAir) / (gas + freshAir));
}

/** Changes of the room's air in an hour. */
function changes({ volume, gas, freshAir }: GasRoom): number {
  within('The volume of the room, m³,', volume, Number.MIN_VALUE, Number.MAX_VALUE);
  return (gas + freshAir) / volume;
}

/**
 * The level, ppm, after some hours of steady release into air that was fresh: V dc/dt = q + f·c₀ − (q + f)·c.
 * Real gas does not mix: it lies low, and is far above this level where it lies.
 * @example levelAfter({ volume: 100, gas: 1, freshAir: 99 }, 0) // 420 (fresh air)
 */
export function levelAfter(room: GasRoom, hour: number): Quantity<'ppm'> {
  const steady = steadyLevel(room);
  const risen = -Math.expm1(-changes(room) * within('The hour', hour, 0, Number.MAX_VALUE));
  return quantity('ppm', FRESH_AIR + (steady - FRESH_AIR) * risen);
}

/**
 * Hours before the level of `levelAfter` passes a limit, ppm, or all the hours watched where it does not in them.
 * @example hoursBefore(quantity('ppm', 5000), { volume: 100, gas: 1, freshAir: 9999 }, hours(8)) // 8 (it settles at 520)
 */
export function hoursBefore(limit: Quantity<'ppm'>, room: GasRoom, watched: Quantity<'hours'>): number {
  within('The limit, ppm,', limit, FRESH_AIR, 1e6);
  const steady = steadyLevel(room);
  if (steady <= limit) return watched;
  return Math.min(watched, -Math.log1p(-(limit - FRESH_AIR) / (steady - FRESH_AIR)) / changes(room));
}
