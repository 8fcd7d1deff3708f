// A washback made ready for a shift: its wort, its room, its cooling, and what the house would make of it.
import type { Pace } from '../../fermenting/fall.ts';
import { FRESH_AIR, gasVolume } from '../../fermenting/gas.ts';
import { heatOf, warmest, warmWashback, WASH_HEAT_CAPACITY } from '../../fermenting/heat.ts';
import { partReleased, releaseRate } from '../../fermenting/release.ts';
import { fermentWort, type Fermentation } from '../../fermenting/wash.ts';
import { wortExtract, wortMass, type Wort } from '../../mashing/wort.ts';
import { celsius, hours, kilograms, quantity, type Quantity } from '../../quantity.ts';
import { refuse, type Refusal } from '../../refusal.ts';

export const WASHBACK_STEP = 1 / 12; // h of the run in one step: five minutes
export const FILLING_HOURS = 3; // h in which the wort runs in; common practice, no source
export const DOSE_MARK = 5; // of ten, at which the yeast is the house's own dose
export const GAS_LIMIT = 5000; // ppm carbon dioxide at the door above which nobody goes in; EH40/2005, the limit over eight hours
const HALF = 16; // h to half the fall; the calculator's own, after the shape of Reid et al. 2021
const SHAPE = 3.2; // steepness times the hours to half; the same: 0.2 an hour and 16 h
const HEAT_OF_EXTRACT = 586; // kJ/kg of extract used; memory
const [USUAL_WORT, LOSS, POWER] = [7500, 60, 10] as const; // L, W/K and kW: what a washback of that size loses and its coil takes; memory
const COOLS_FROM = 32; // °C at which the house lets its cooling on; common practice, no source
const USUAL_AIR = 15; // °C around the washback; memory
const ROOM = 80; // m³ of the room to a m³ of wort; no source
const AT_PEAK = 3000; // ppm to which the fans hold the room when most gas comes; no source
const STILL_AIR = 0.03; // of the fans' air that comes in without them; no source

/** What a shift is about: the house's wort and how it ferments it. */
export interface WashbackSetup {
  readonly wort: Wort;
  readonly final: Quantity<'gravity'>;
  readonly hours: Quantity<'hours'>;
  readonly set: Quantity<'temperature'>;
  /** Pressed yeast of one washback, kg. */
  readonly yeast: Quantity<'mass'>;
}

/** What a number draws. Hours are from the first wort. */
export interface WashbackEvents {
  /** Temperature of the room, °C. */
  readonly air: number;
  readonly hasCoil: boolean;
  /** How high the froth would stand at the most gas, 1 the rim. */
  readonly lively: number;
  /** The switcher stops by itself. */
  readonly trips?: { readonly at: number };
  /** The fan of the room stops, and runs again so long after it is reported. */
  readonly fan?: { readonly at: number; readonly mended: number };
  /** Somebody asks to be let into the washback. */
  readonly asks?: { readonly at: number };
  /** By how much the jar's sample has cooled or warmed, K. */
  readonly jar: number;
  /** The hour from which the wash charger has room, counted from the house's own end. */
  readonly charger: number;
}

export interface Rig {
  readonly setup: WashbackSetup;
  readonly events: WashbackEvents;
  readonly pace: Pace;
  readonly mass: number;
  readonly extract: number;
  /** All that the house's own fermentation gives. */
  readonly goal: Fermentation;
  readonly peak: Quantity<'temperature'>;
  /** All the heat of the fall, MJ; heat that warms the wort by a degree, MJ/K; loss to the room, MJ/(h K). */
  readonly heat: number;
  readonly capacity: number;
  readonly loss: number;
  /** Heat that one mark of cooling takes, MJ/h. */
  readonly coolingMark: number;
  /** The house's own washback: temperature by the part of the fall that is done. */
  readonly path: readonly (readonly [part: number, temperature: number])[];
  /** The most gas of the house's own washback, part of all an hour. */
  readonly peakRate: number;
  readonly room: { readonly volume: number; readonly fresh: number; readonly still: number };
  readonly perMark: number;
}

/**
 * Makes a washback ready. Refuses a fermentation of fewer than 24 or more than 150 hours, and wort that does not fall.
 * @example rigOfWashback({ hours: 20 }, {}) // refuses: 24 to 150 h (twenty hours are too few)
 */
export function rigOfWashback(setup: WashbackSetup, events: WashbackEvents): Rig | Refusal {
  if (!(setup.hours >= 24 && setup.hours <= 150))
    return refuse(`A washback of ${setup.hours} h is none that a shift can be run with: 24 to 150 h are.`);
  if (!(setup.final < setup.wort.gravity)) return refuse('Wort that ferments grows lighter; here the final gravity is not below the first.'); // prettier-ignore
  if (!(setup.yeast > 0)) return refuse('The house gives no yeast.');
  const { wort } = setup;
  const goal = fermentWort(wort, setup.final);
  const half = Math.min(HALF, setup.hours / 3);
  const pace: Pace = { half: hours(half), steepness: quantity('perHour', SHAPE / half) };
  const mass = wortMass(wort);
  const extract = wortExtract(wort);
  const used = kilograms((extract * goal.attenuation.extractUsed) / 100);
  const heat = heatOf(used, quantity('heatOfExtract', HEAT_OF_EXTRACT));
  const size = wort.volume / USUAL_WORT;
  const loss = LOSS * size ** (2 / 3);
  const states = warmWashback({
    mass,
    heat,
    pace,
    start: setup.set,
    hours: setup.hours,
    air: celsius(USUAL_AIR),
    loss: quantity('heatLoss', loss),
    cooling: {
      power: quantity('power', events.hasCoil ? POWER * size : 0),
      from: celsius(COOLS_FROM),
    },
  });
  const peakRate = releaseRate(pace, pace.half);
  const gas = gasVolume(goal.carbonDioxide * peakRate, celsius(25));
  const fresh = (gas * (1e6 - AT_PEAK)) / (AT_PEAK - FRESH_AIR);
  return {
    setup,
    events,
    pace,
    mass,
    extract,
    goal,
    peak: warmest(states).temperature,
    heat,
    capacity: (mass * WASH_HEAT_CAPACITY) / 1000,
    loss: loss * 0.0036, // MJ/h from W; by definition
    coolingMark: (POWER * size * 3.6) / DOSE_MARK, // MJ/h from kW; by definition
    path: states.map(({ hour, temperature }) => [partReleased(pace, hour), temperature]),
    peakRate,
    room: { volume: (ROOM * wort.volume) / 1000, fresh, still: STILL_AIR * fresh },
    perMark: setup.yeast / DOSE_MARK,
  };
}

/**
 * Temperature of the house's own washback when so much of the fall is done.
 * @example houseAt({ path: [[0, 20], [1, 32]] }, 0.5) // 26 (half way)
 */
export function houseAt({ path }: Rig, part: number): number {
  let [low, high] = [0, path.length - 1];
  if (part >= path[high]![0]) return path[high]![1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (path[middle]![0] <= part) low = middle;
    else high = middle;
  }
  const [[p0, t0], [p1, t1]] = [path[low]!, path[high]!];
  return t0 + ((part - p0) / (p1 - p0)) * (t1 - t0);
}

/**
 * The hour, from the first wort, at which the house hands the wash over, and the first at which the charger takes it.
 * @example houseEnds({ setup: { hours: 60 } }) // 60 (as the house has it)
 */
export const houseEnds = ({ setup }: Rig): number => setup.hours;
/** @example chargerFree({ setup: { hours: 60 }, events: { charger: 2 } }) // 62 (two hours later) */
export const chargerFree = ({ setup, events }: Rig): number => setup.hours + events.charger;
