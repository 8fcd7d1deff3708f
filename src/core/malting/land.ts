// From malt back to the barley bought and the land that grew it.
import { alcoholPerTonne, kilograms, litresOfAlcohol, quantity, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import { barleyForMalt, maltFromBarley, type Malting } from './malt-balance.ts';

export interface Growing extends Malting {
  /** Part of the barley bought that is thrown out before the steep, %, 0–60. */
  readonly screenings: Quantity<'percent'>;
  /** Barley as bought from a hectare, t/ha, 0.1–30. */
  readonly harvest: Quantity<'harvest'>;
}
export interface Harvest {
  readonly malt: Quantity<'mass'>;
  readonly steeped: Quantity<'mass'>;
  readonly bought: Quantity<'mass'>;
  readonly land: Quantity<'land'>;
}

function kept({ screenings }: Growing): number {
  return 1 - within('The screenings, %,', screenings, 0, 60) / 100;
}
function kilogramsPerHectare({ harvest }: Growing): number {
  return 1000 * within('The harvest, t/ha,', harvest, 0.1, 30);
}

/**
 * Barley and land behind a mass of malt, kg.
 * @example harvestForMalt(kilograms(829.979), { barleyMoisture: percent(12), maltMoisture: percent(5), dryLoss: percent(10.4), screenings: percent(20), harvest: quantity('harvest', 5) }) // { steeped: 1000.00, bought: 1250.00, land: 0.2500 } (the balance of a tonne by hand, of which a fifth was thrown out before)
 */
export function harvestForMalt(malt: Quantity<'mass'>, growing: Growing): Harvest {
  const steeped = barleyForMalt(malt, growing);
  const bought = kilograms(steeped / kept(growing));
  return { malt, steeped, bought, land: quantity('land', bought / kilogramsPerHectare(growing)) };
}

/**
 * Malt and land of a mass of barley bought, kg.
 * @example harvestFromBarley(kilograms(1250), { barleyMoisture: percent(12), maltMoisture: percent(5), dryLoss: percent(10.4), screenings: percent(20), harvest: quantity('harvest', 5) }) // { steeped: 1000, malt: 829.979, land: 0.25 } (the same sum backwards)
 */
export function harvestFromBarley(bought: Quantity<'mass'>, growing: Growing): Harvest {
  const steeped = kilograms(bought * kept(growing));
  return {
    malt: maltFromBarley(steeped, growing),
    steeped,
    bought,
    land: quantity('land', bought / kilogramsPerHectare(growing)),
  };
}

/**
 * Barley and malt from an area, ha.
 * @example harvestFromLand(quantity('land', 0.25), { barleyMoisture: percent(12), maltMoisture: percent(5), dryLoss: percent(10.4), screenings: percent(20), harvest: quantity('harvest', 5) }) // { bought: 1250, malt: 829.979 } (a quarter of 5 t)
 */
export function harvestFromLand(land: Quantity<'land'>, growing: Growing): Harvest {
  return { ...harvestFromBarley(kilograms(land * kilogramsPerHectare(growing)), growing), land };
}

/**
 * Litres of pure alcohol from malt, kg, at a spirit yield, L/t, 0–700.
 * @example alcoholFromMalt(kilograms(2500), alcoholPerTonne(400)) // 1000 (2.5 × 400)
 */
export function alcoholFromMalt(malt: Quantity<'mass'>, spiritYield: Quantity<'yield'>): Quantity<'alcohol'> {
  const perTonne = alcoholPerTonne(within('The spirit yield, L/t,', spiritYield, 0, 700));
  return litresOfAlcohol((malt / 1000) * perTonne);
}
