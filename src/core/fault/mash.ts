// A mash with one thing wrong: run by the tun's own clock as the house runs it, and then looked at.
import { standsIn } from '../shift/gravity-jar.ts';
import { actAtTun, wortOf } from '../shift/tun/act.ts';
import { rigOfTun, TUN_STEP, USUAL_MARK, type Rig, type TunEvents, type TunSetup } from '../shift/tun/rig.ts';
import { beginTun, type TunState } from '../shift/tun/state.ts';
import { CLOUDY_ABOVE, drainable, stepTun } from '../shift/tun/step.ts';
import { strikeTemperature } from '../mashing/strike.ts';
import { celsius, gravity, percent } from '../quantity.ts';
import { valueAtSize, type TruthOf } from './truth.ts';
import { isRefusal } from '../refusal.ts';

export type MashCause = 'hard' | 'fine' | 'coarse' | 'hot' | 'cold' | 'thermometer' | 'warm-glass' | 'dip';
export type MashBenchReading = 'extract' | 'volume' | 'glass' | 'panel' | 'hand' | 'iodine' | 'runs' | 'mark' | 'flour' | 'jar' | 'cooled' | 'redip'; // prettier-ignore

/** What differs from mash to mash and does no harm. */
export interface MashDay extends Pick<TunEvents, 'grist' | 'converts' | 'jar'> {
  /** Flour of the grist, %, and by how much the malt has more extract than usual, %. */
  readonly flour: number;
  readonly malt: number;
}

// The least and the most of each that is drawn. How much of it a house meets has no source: it is an exercise.
const sizes = {
  hard: [7.4, 8.4], // mark of the run-off valve
  fine: [0.8, 0.9], // usual run-offs that the bed then stands
  coarse: [6, 11], // % of the extract that stays in the grits
  hot: [11, 13], // K over the house's mash
  cold: [9, 12], // K under it
  thermometer: [11, 13], // K by which the thermometer of the tun reads too low, so that the mash stands so much too hot
  'warm-glass': [34, 39], // °C of the sample read as if it were at 20
  dip: [6, 11], // % by which the depth was read short
} as const;
const FLOUR = { fine: [7, 11], coarse: [-7, -4.5] } as const; // % of the grist more than usual; no source
const STANDS = 1.3; // usual run-offs that a sound bed stands; no source
const REST = 60; // min that the house lets a mash stand; common practice
const GIVEN_UP = 420; // min after which the wort of a bed that is set is written down as it is; no source

/** Runs a mash as a house does that notices nothing: stand, return until clear, two waters to the washback. */
function mashed(rig: Rig, liquor: number, mark: number) {
  let state: TunState = actAtTun(rig, { ...beginTun(rig), liquor }, { do: 'mash-in' }).state;
  let [iodine, runs, from] = [0, 0, -1];
  const waters = 2;
  for (let minute = 0; minute < GIVEN_UP; minute += TUN_STEP) {
    state = stepTun(rig, state);
    if (state.comes > 0 || state.stood + 1e-9 < REST && state.converted < 1 && from < 0) continue;
    if (from < 0 && minute < REST) continue;
    if (from < 0) [iodine, from] = [state.converted < 1 ? 1 : 0, minute];
    state = { ...state, valve: mark, runsTo: state.cloud > CLOUDY_ABOVE ? 'back' : 'washback' };
    if (drainable(rig, state) > 0.01 * rig.waters[0]) continue;
    if (state.waters >= waters) { runs = minute - from; break; }
    state = actAtTun(rig, { ...state, liquor: rig.setup.second, valve: 0 }, { do: 'water' }).state;
  }
  return { ...wortOf(state.wort), iodine, runs: runs || GIVEN_UP - from };
} // prettier-ignore

/**
 * The readings of a mash. Refuses what the tun refuses.
 * @example mashBench({ bed: { malt: kilograms(1000), moisture: percent(4), extract: percent(76) }, ratio: litresPerKilogram(4), mash: celsius(20), weak: { water: 0, extract: 0 } }, { malt: 0, grist: 20 })({ cause: 'nothing', size: 0 }) // refuses: colder than 50 (a mash at 20 °C is none)
 */
export const mashBench = (setup: TunSetup, day: MashDay): TruthOf<MashCause, MashBenchReading> => ({ cause, size }) => {
  const of = (id: keyof typeof sizes) => (cause === id ? valueAtSize(sizes[id], size) : undefined);
  const bed = { ...setup.bed, extract: percent(setup.bed.extract * (1 + (day.malt - (of('coarse') ?? 0)) / 100)) };
  const stands = of('fine') ?? (cause === 'coarse' ? STANDS * 1.2 : STANDS);
  const rig = rigOfTun(setup, { ...day, stands });
  if (isRefusal(rig)) return rig;
  const off = of('hot') ?? of('thermometer') ?? -(of('cold') ?? 0);
  const mash = celsius(setup.mash + off);
  const mark = of('hard') ?? USUAL_MARK;
  const made = mashed({ ...rig, setup: { ...setup, bed }, extract: (bed.malt * bed.extract) / 100 }, strikeTemperature(mash, rig.mashIn), mark);
  const jar = of('warm-glass') ?? day.jar;
  // A house corrects a warm reading; the fault is that nobody did.
  const glass = cause === 'warm-glass' ? standsIn(gravity(made.gravity), celsius(jar)) : made.gravity;
  const volume = made.volume * (1 - (of('dip') ?? 0) / 100);
  const extract = (v: number, g: number) => v * (g - 1);
  return {
    extract: (100 * extract(volume, glass)) / extract(rig.goal.volume, rig.goal.gravity),
    volume, glass,
    panel: mash - (of('thermometer') ?? 0),
    hand: mash,
    iodine: made.iodine,
    runs: made.runs,
    mark,
    flour: day.flour + (cause === 'fine' || cause === 'coarse' ? valueAtSize(FLOUR[cause], cause === 'coarse' ? 1 - size : size) : 0),
    jar,
    cooled: made.gravity,
    redip: made.volume,
  };
}; // prettier-ignore
