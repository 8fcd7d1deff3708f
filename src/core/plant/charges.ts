// How often each group of stills is charged, and with how much.
import type { House } from '../line/house.ts';
import { count, hours, litres20, quantity, type Quantity } from '../quantity.ts';
import type { Refusal } from '../refusal.ts';
import type { Line } from '../line/line.ts';
import { lineWithPlant } from './line.ts';
import type { Plant, Stills } from './plant.ts';
import { partsOfGroups } from './side-by-side.ts';

/** The charges of one group of stills that are alike. */
export interface GroupCharges {
  /** Stills in the group. */
  readonly number: number;
  /** Charges a week of all of them together: the fewest whole ones that take all there is. */
  readonly aWeek: Quantity<'count'>;
  /** What each charge is, L at 20 °C: all alike, none above what a still takes. */
  readonly litres: Quantity<'volume20'>;
  /** Charges to a mash, of all of them together; and mashes to a charge. */
  readonly aMash: Quantity<'count'>;
  readonly mashes: Quantity<'count'>;
  /** From charging one to ready for the next charge, h; and of all charges of a week together. */
  readonly hours: Quantity<'hours'>;
  readonly hoursAWeek: Quantity<'hours'>;
  /** Part of the week for which each still runs, 0 upwards: above 1 there are too few. */
  readonly taken: Quantity<'ratio'>;
}

export interface PlantCharges {
  readonly wash: readonly GroupCharges[];
  readonly intermediate: readonly GroupCharges[];
  readonly spirit: readonly GroupCharges[];
}

const HOURS_IN_WEEK = 168; // h; by definition
const HAIR = 1e-9; // of a charge, by which rounding may make one more

/** Divides what a week brings among groups of stills by what they hold. `volume` L at 20 °C comes from a mash. */
export function chargesOfStills(
  stills: readonly Stills[],
  volume: number,
  mashesPerWeek: number,
): readonly GroupCharges[] {
  const parts = partsOfGroups(stills);
  return stills.map((group, i) => {
    const total = volume * mashesPerWeek * parts[i]!;
    const aWeek = Math.ceil(total / group.charge - HAIR);
    return {
      number: group.number,
      aWeek: count(aWeek),
      litres: litres20(aWeek === 0 ? 0 : total / aWeek),
      aMash: count(aWeek / mashesPerWeek),
      mashes: count(aWeek === 0 ? 0 : mashesPerWeek / aWeek),
      hours: hours(group.hours),
      hoursAWeek: hours(aWeek * group.hours),
      taken: quantity('ratio', (aWeek * group.hours) / group.number / HOURS_IN_WEEK),
    };
  });
}

/** The charges of a line that has been reckoned with its plant. */
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
 * For each group of stills, in the plant’s order: charges a week, litres a charge and hours. Wash goes through a charger, and
 * low wines and feints through a receiver, so a charge need not be of one mash. Refuses what `lineWithPlant` refuses.
 */
export function chargesOf(house: House, plant: Plant): PlantCharges | Refusal {
  const line = lineWithPlant(house, plant);
  return 'refused' in line ? line : chargesOfLine(line, plant);
}
