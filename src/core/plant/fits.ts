// What each vessel of a plant has to take, what it can take, and which are too small or too few.
import { formatNumber } from '../format.ts';
import { washbacksNeeded } from '../fermenting/washbacks.ts';
import { hours } from '../quantity.ts';
import type { PlantCharges } from './charges.ts';
import type { GroupCharges } from './group-charges.ts';
import type { Line } from '../line/line.ts';
import { stillNames, type Plant, type StillKind } from './plant.ts';

/** One demand on one vessel, or on all that are alike. */
export interface VesselFit {
  readonly vessel: string;
  readonly unit: 'L' | 'h' | 'washbacks';
  readonly takes: number;
  readonly holds: number;
  /** What is too little, in a sentence; nothing when it fits. */
  readonly says?: string;
}

const HOURS_IN_WEEK = 168; // h; by definition
const HAIR = 1e-6; // L or h, for rounding
const LEAST_SAID = 1; // L or h: a smaller lack is told as this

const amount = (value: number, unit: string) => `${formatNumber(value, 0)} ${unit}`;

/** A demand and what there is for it; `why` says both in a clause that ends before the colon. */
function fit(
  vessel: string,
  unit: VesselFit['unit'],
  takes: number,
  holds: number,
  why: (takes: string, holds: string) => string,
): VesselFit {
  if (takes <= holds + HAIR) return { vessel, unit, takes, holds };
  const number = Math.max(LEAST_SAID, Math.round(takes - holds));
  const lack = unit === 'washbacks' ? `${number} too few` : `${amount(number, unit)} too little`;
  const says = `${why(amount(takes, unit), amount(holds, unit))}: ${lack}.`;
  return { vessel, unit, takes, holds, says };
}

const largest = (charges: readonly GroupCharges[]) => Math.max(0, ...charges.map(({ litres }) => litres));

/** Hours in a week that stills of one kind are asked to run, group by group, against those there are. */
function hoursOfStills(kind: StillKind, groups: readonly GroupCharges[]): readonly VesselFit[] {
  return groups.map(({ hoursAWeek, number, aWeek }, i) => {
    const vessel = stillNames[kind] + (groups.length > 1 ? ` ${i + 1}` : '');
    return fit(vessel, 'h', hoursAWeek, number * HOURS_IN_WEEK, (takes, holds) => `${vessel}: ${aWeek} charges a week ask for ${takes}, and a week has ${holds} for ${number === 1 ? 'one still' : `${number} stills`}`);
  }); // prettier-ignore
}

/**
 * Every demand of a line on its plant, in the order of the line: mash tuns and stills by the hours of a week, washbacks by number
 * and by litres, chargers and receivers by the largest charge. Mashing is taken to go on evenly through all seven days, and a mash
 * fills one washback: a timetable may ask for more, never for less. Vessels that are not named are left out.
 * @example plantFits({ ...line, house: { mashesPerWeek: 10, wortVolume: 8000 } }, { scheme: 'twice', mashTuns: [{ number: 1, hours: 8 }], washbacks: [], shortFermentation: 60, washCharger: { holds: 0 }, lowWinesReceiver: { holds: 0 }, spiritReceiver: { holds: 0 } }, { wash: [], intermediate: [], spirit: [] }) // [{ vessel: 'Mash tuns', takes: 80, holds: 168 }] (ten mashes of eight hours in a week)
 */
export function plantFits(line: Line, plant: Plant, charges: PlantCharges): readonly VesselFit[] {
  const { house, round } = line;
  const { mashesPerWeek, wortVolume } = house;
  const tuns = plant.mashTuns.reduce((sum, { number, hours }) => sum + number / hours, 0); // mashes an hour
  const backs = plant.washbacks.reduce((sum, { number }) => sum + number, 0);
  const needed = washbacksNeeded({ mashes: mashesPerWeek, pattern: 'seven' }, hours(plant.shortFermentation));
  const mashes = `${formatNumber(mashesPerWeek, mashesPerWeek % 1 === 0 ? 0 : 1)} mashes a week`;
  const fermented = formatNumber(plant.shortFermentation, 0);
  const spirit = largest(charges.spirit);
  const collected =
    plant.scheme === 'thrice'
      ? largest(charges.intermediate)
      : spirit * (1 - round.dilution / line.charge.volume);
  const all = [
    fit('Mash tuns', 'h', mashesPerWeek / (tuns || 1), tuns && HOURS_IN_WEEK, (takes, holds) => `Mash tuns: ${mashes} ask for ${takes}, and a week has ${holds}`),
    fit('Washbacks', 'washbacks', needed.needed, backs, (takes, holds) => `Washbacks: ${mashes} of ${fermented} h each need ${takes}, and there are ${holds}`),
    ...plant.washbacks.map(({ working }, i) => {
      const vessel = plant.washbacks.length > 1 ? `Washback ${i + 1}` : 'Washback';
      return fit(vessel, 'L', wortVolume, working, (takes, holds) => `${vessel}: a mash is ${takes}, and it is filled to ${holds}`);
    }),
    fit('Wash charger', 'L', largest(charges.wash), plant.washCharger.holds, (takes, holds) => `Wash charger: the largest wash charge is ${takes}, and it holds ${holds}`),
    ...hoursOfStills('wash', charges.wash),
    fit('Low wines receiver', 'L', collected, plant.lowWinesReceiver.holds, (takes, holds) => `Low wines receiver: ${takes} of low wines and feints are gathered for a charge, and it holds ${holds}`),
    ...hoursOfStills('intermediate', charges.intermediate),
    ...hoursOfStills('spirit', charges.spirit),
    fit('Spirit receiver', 'L', (line.heart.volume / line.charge.volume) * spirit, plant.spiritReceiver.holds, (takes, holds) => `Spirit receiver: the heart of the largest charge is ${takes}, and it holds ${holds}`),
  ]; // prettier-ignore
  return all.filter(({ holds }) => holds > 0);
}
