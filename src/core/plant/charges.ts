// How often each group of stills is charged, and with how much.
import type { House } from '../line/house.ts';
import { isRefusal, type Refusal } from '../refusal.ts';
import type { Line } from '../line/line.ts';
import { lineWithPlant } from './line.ts';
import { chargesOfStills, type GroupCharges } from './group-charges.ts';
import type { Plant, Stills } from './plant.ts';

export interface PlantCharges {
  readonly wash: readonly GroupCharges[];
  readonly intermediate: readonly GroupCharges[];
  readonly spirit: readonly GroupCharges[];
}

/**
 * The charges of a line that has been reckoned with its plant.
 * @example chargesOfLine({ house: { mashesPerWeek: 5 }, wash: { volume: 8000 }, charge: { volume: 6000 }, round: {} }, { washStills: [{ number: 1, charge: 8000, hours: 8 }], spiritStills: [{ number: 1, charge: 6000, hours: 8 }] }) // { wash: [{ aWeek: 5, litres: 8000 }], intermediate: [], spirit: [{ aWeek: 5, litres: 6000 }] } (a charge to a mash)
 */
export function chargesOfLine({ house, wash, charge, round }: Line, plant: Plant): PlantCharges {
  const of = (stills: readonly Stills[], volume: number) =>
    chargesOfStills(stills, volume, house.mashesPerWeek);
  return {
    wash: of(plant.washStills, wash.volume),
    intermediate: round.between ? of(plant.intermediateStills, round.between.charge.volume) : [],
    spirit: of(plant.spiritStills, charge.volume),
  };
}

/**
 * For each group of stills, in the plant’s order: charges a week, litres a charge and hours. Refuses what `lineWithPlant` refuses.
 * @example chargesOf(house, { scheme: 'twice', washStills: [], spiritStills: [] }) // refuses: No wash still is named (so nothing is charged)
 */
export function chargesOf(house: House, plant: Plant): PlantCharges | Refusal {
  const line = lineWithPlant(house, plant);
  return isRefusal(line) ? line : chargesOfLine(line, plant);
}
