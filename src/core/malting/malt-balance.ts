// Barley and malt: the dry matter that goes in, what growing takes, what comes out.
import { kilograms, type Quantity } from '../quantity.ts';
import { VERY_MUCH, within } from '../range.ts';

export interface Malting {
  /** Water in the barley as stored, % of wet mass, 0–50. */
  readonly barleyMoisture: Quantity<'percent'>;
  /** Water in the finished malt, % of wet mass, 0–50. */
  readonly maltMoisture: Quantity<'percent'>;
  /** Dry matter lost to breathing, rootlets and steep water, % of the barley's dry matter, 0–50. */
  readonly dryLoss: Quantity<'percent'>;
}

/** Kilograms of malt from one kilogram of barley. */
function maltPerBarley({ barleyMoisture, maltMoisture, dryLoss }: Malting): number {
  within('The moisture of the barley, %,', barleyMoisture, 0, 50);
  within('The moisture of the malt, %,', maltMoisture, 0, 50);
  within('The loss of dry matter, %,', dryLoss, 0, 50);
  return ((1 - barleyMoisture / 100) * (1 - dryLoss / 100)) / (1 - maltMoisture / 100);
}

/**
 * Malt, kg, from a mass of barley, kg. Dry matter in, less the loss, is dry matter out.
 * @example maltFromBarley(kilograms(1000), { barleyMoisture: percent(12), maltMoisture: percent(5), dryLoss: percent(10.4) }) // 829.979 (by hand, 1000 × 0.88 × 0.896 ÷ 0.95)
 */
export function maltFromBarley(barley: Quantity<'mass'>, malting: Malting): Quantity<'mass'> {
  return kilograms(within('The barley, kg,', barley, 0, VERY_MUCH) * maltPerBarley(malting));
}

/**
 * Barley, kg, for a mass of malt, kg.
 * @example barleyForMalt(kilograms(829.979), { barleyMoisture: percent(12), maltMoisture: percent(5), dryLoss: percent(10.4) }) // 1000.00 (the same sum backwards)
 */
export function barleyForMalt(malt: Quantity<'mass'>, malting: Malting): Quantity<'mass'> {
  return kilograms(within('The malt, kg,', malt, 0, VERY_MUCH) / maltPerBarley(malting));
}
