// The charges of stills that are alike: how often they are charged, and with how much.
import { count, hours, litres20, quantity, type Quantity } from '../quantity.ts';
import type { Stills } from './plant.ts';
import { partsOfGroups } from './side-by-side.ts';

/** The charges of one group of stills that are alike. */
export interface GroupCharges {
  /** Stills in the group. */
  readonly number: number;
  /** Charges a week of all of them together: whole ones from each mash, or the fewest that take all there is. */
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

const HOURS_IN_WEEK = 168; // h; by definition
const HAIR = 1e-9; // of a charge, by which rounding may make one more
export const OWN_CHARGE = 0.5; // of a charge: a mash that fills more is run by itself, less is kept for the next; common practice

/**
 * Divides what a week brings among groups of stills by what they hold; `volume` L at 20 °C comes from a mash. Each mash is
 * run by itself, in whole charges that are alike, as far as the hours of a week go; where they do not, or a mash fills no
 * more than half a charge, they are the fewest of the week, some of them of more than one mash: wash goes through a charger,
 * and low wines and feints through a receiver.
 * @example chargesOfStills([{ number: 2, charge: 4000, hours: 8 }], 8000, 5) // [{ aWeek: 10, litres: 4000, aMash: 2, hoursAWeek: 80 }] (two charges to a mash, five mashes of 8 hours each)
 */
export function chargesOfStills(
  stills: readonly Stills[],
  volume: number,
  mashesPerWeek: number,
): readonly GroupCharges[] {
  const parts = partsOfGroups(stills);
  return stills.map((group, i) => {
    const ofMash = (volume * parts[i]!) / group.charge;
    const whole = Math.ceil(ofMash - HAIR) * mashesPerWeek;
    const isByMash = ofMash > OWN_CHARGE && (whole * group.hours) / group.number <= HOURS_IN_WEEK;
    const total = volume * mashesPerWeek * parts[i]!;
    const aWeek = isByMash ? whole : Math.ceil(total / group.charge - HAIR);
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
