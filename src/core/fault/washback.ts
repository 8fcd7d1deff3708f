// A washback with one thing wrong, seen at an hour at which the house's own has nearly finished.
import { attenuate } from '../wort/attenuation.ts';
import { gravityFromPlato, platoFromGravity } from '../wort/extract.ts';
import { gravity, plato } from '../quantity.ts';
import { houseAt, rigOfWashback, type Rig, type WashbackSetup } from '../shift/washback/rig.ts';
import { DEATH_RATE, DIES_ABOVE, FASTER_BY_TEN_DEGREES } from '../shift/washback/step.ts';
import { valueAtSize, type TruthOf } from './truth.ts';
import { isRefusal } from '../refusal.ts';

export type WashbackCause = 'little' | 'dead' | 'cold' | 'hot' | 'dextrin' | 'infected' | 'lifted' | 'water';
export type WashbackReading = 'alcohol' | 'glass' | 'original' | 'start' | 'warmest' | 'pitched' | 'stained' | 'acid' | 'rods' | 'degassed' | 'forced' | 'redip'; // prettier-ignore

/** What differs from washback to washback and does no harm: the room, °C, how long after the house's half of the fall it is looked at, and the part of the yeast that is dead. */
export interface WashbackDay {
  readonly air: number;
  readonly late: number;
  readonly stained: number;
  readonly acid: number;
}

// The least and the most of each that is drawn; no source, unless it says so.
const sizes = {
  little: [0.05, 0.15], // of the house's yeast
  dead: [0.85, 0.95], // of the yeast
  cold: [9, 12], // K under the house's setting
  hot: [14.5, 17], // K over it
  dextrin: [0.15, 0.25], // of the fall that the yeast cannot make
  infected: [0.12, 0.2], // of the fall that bacteria make into acid
  lifted: [0.006, 0.01], // by which gas lifts the glass
  water: [0.07, 0.12], // of the wort that is water from the cooler
} as const;
const PH_DROPS = 5; // of pH for each part of the fall that goes to acid; no source: a buffer so strong that a tenth takes half a unit
const RODS = 25; // rods in a field of the microscope where bacteria work; no source
const PACE = 0.25; // h of one step
const COOLS = 10; // marks of the coil, all open where it has one; as at the washback's desk

/** The fall and the warmest of a washback that starts at a temperature, with a share of the house's living yeast. */
function ferment(
  rig: Rig,
  { start, alive, air, until }: Record<'start' | 'alive' | 'air' | 'until', number>,
) {
  const { half, steepness } = rig.pace;
  let [odds, temperature, lives, part, warmest] = [-steepness * half + Math.log(alive), start, 1, 0, start];
  for (let hour = 0; hour < until; hour += PACE) {
    const quicker = FASTER_BY_TEN_DEGREES ** ((temperature - houseAt(rig, part)) / 10);
    lives *= Math.exp(-DEATH_RATE * Math.max(0, temperature - DIES_ABOVE) * PACE);
    odds += steepness * quicker * lives * PACE;
    const now = Math.max(part, 1 / (1 + Math.exp(-odds)));
    const cooled = rig.events.hasCoil && temperature > 32 ? COOLS * rig.coolingMark : 0;
    temperature +=
      (rig.heat * (now - part) - (rig.loss * (temperature - air) + cooled) * PACE) / rig.capacity;
    part = now;
    warmest = Math.max(warmest, temperature);
  }
  return { part, warmest };
}

/**
 * The readings of a washback. Refuses what the washback's own desk refuses.
 * @example washbackBench({ hours: 20 }, { air: 15 })({ cause: 'nothing', size: 0 }) // refuses: 24 to 150 h (twenty hours are too few)
 */
export const washbackBench = (setup: WashbackSetup, day: WashbackDay): TruthOf<WashbackCause, WashbackReading> => {
  const rig = rigOfWashback(setup, { air: day.air, hasCoil: false, lively: 0.5, jar: 0, charger: 0 });
  return ({ cause, size }) => {
    if (isRefusal(rig)) return rig;
    const of = (id: keyof typeof sizes) => (cause === id ? valueAtSize(sizes[id], size) : 0);
    const start = setup.set - of('cold') + of('hot');
    const pitched = of('little') || 1;
    const stained = of('dead') || day.stained;
    const { part, warmest } = ferment(rig, {
      start,
      alive: (pitched * (1 - stained)) / (1 - day.stained),
      air: day.air,
      until: rig.pace.half + day.late,
    });
    const [first, last] = [platoFromGravity(setup.wort.gravity), platoFromGravity(setup.final)];
    const thinned = 1 - of('water');
    const at = (done: number) => gravity(gravityFromPlato(plato((first + (last - first) * done) * thinned)));
    // Acid keeps nearly the weight of the sugar it came from, so what bacteria eat does not show as a fall.
    const can = 1 - of('dextrin') - of('infected');
    const [original, now] = [at(0), at(part * can)];
    const glass = now + of('lifted');
    return {
      alcohol: attenuate({ original, final: gravity(Math.min(original, glass)) }).strength,
      glass, original, start, warmest,
      pitched: 100 * pitched,
      stained: 100 * stained,
      acid: day.acid - PH_DROPS * of('infected'),
      rods: cause === 'infected' ? RODS : 0,
      degassed: now,
      forced: at(can),
      redip: setup.wort.volume / thinned,
    };
  };
}; // prettier-ignore
