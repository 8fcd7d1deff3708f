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

/** Barley and land behind a mass of malt, kg. */
export function harvestForMalt(malt: Quantity<'mass'>, growing: Growing): Harvest {
  const steeped = barleyForMalt(malt, growing);
  const bought = kilograms(steeped / kept(growing));
  return { malt, steeped, bought, land: quantity('land', bought / kilogramsPerHectare(growing)) };
}

/** Malt and land of a mass of barley bought, kg. */
export function harvestFromBarley(bought: Quantity<'mass'>, growing: Growing): Harvest {
  const steeped = kilograms(bought * kept(growing));
  return {
    malt: maltFromBarley(steeped, growing),
    steeped,
    bought,
    land: quantity('land', bought / kilogramsPerHectare(growing)),
  };
}

/** Barley and malt from an area, ha. */
export function harvestFromLand(land: Quantity<'land'>, growing: Growing): Harvest {
  return { ...harvestFromBarley(kilograms(land * kilogramsPerHectare(growing)), growing), land };
}

/** Litres of pure alcohol from malt, kg, at a spirit yield, L/t, 0–700. */
export function alcoholFromMalt(malt: Quantity<'mass'>, spiritYield: Quantity<'yield'>): Quantity<'alcohol'> {
  const perTonne = alcoholPerTonne(within('The spirit yield, L/t,', spiritYield, 0, 700));
  return litresOfAlcohol((malt / 1000) * perTonne);
}
