// A washback as it stands at one step, and what may happen and go wrong in it.
import { FRESH_AIR } from '../../fermenting/gas.ts';
import type { Moment } from '../course.ts';
import { DOSE_MARK, type Rig } from './rig.ts';

export type Happening = 'third' | 'full' | 'froth' | 'froth-down' | 'trips' | 'alarm' | 'fan-mended' | 'asks' | 'hot' | 'charger' | 'day'; // prettier-ignore
export type Wrong = 'dry-pitch' | 'hot-pitch' | 'unpitched' | 'frothed-over' | 'too-much' | 'unmeasured' | 'went-in' | 'climbed' | 'too-hot' | 'early'; // prettier-ignore

export interface WashbackState extends Moment<Happening, Wrong> {
  /** What the wort cooler is set to, °C, and the marks of yeast and of cooling. */
  readonly set: number;
  readonly dose: number;
  readonly cooling: number;
  readonly isSwitching: boolean;
  /** Wort that has run in, kg. */
  readonly filled: number;
  readonly temperature: number;
  /** Hour at which the yeast went in, its share of the house's dose, and the wort's temperature then; −1 before. */
  readonly pitched: number;
  readonly pitchedWith: number;
  readonly pitchedAt: number;
  /** Logarithm of fallen over not yet fallen, and what it was at pitching. */
  readonly odds: number;
  readonly oddsThen: number;
  /** Yeast that heat has left alive, 0–1. */
  readonly alive: number;
  /** Part of the fall that is done, 0–1. */
  readonly part: number;
  /** Part of the wort that has not gone over the rim, 0–1. */
  readonly kept: number;
  /** kg so far: gas, yeast grown, wash frothed over. */
  readonly gas: number;
  readonly grown: number;
  readonly over: number;
  /** MJ so far: heat of the fall, lost to the room, taken by cooling. */
  readonly released: number;
  readonly lost: number;
  readonly cooled: number;
  /** Height of the froth, 1 the rim; antifoam that still works, 0–1, and doses given. */
  readonly froth: number;
  readonly antifoam: number;
  readonly doses: number;
  /** ppm in the room; what the meter showed last, and at which step; −1 when it must be read before somebody goes in. */
  readonly ppm: number;
  readonly metered: number;
  readonly meteredAt: number;
  readonly isFanOff: boolean;
  readonly reportedAt: number;
  readonly isAsked: boolean;
  /** The warmest so far, °C. */
  readonly warmest: number;
  /** What went to the charger, when the shift is done. */
  readonly handedAt: number;
}

/**
 * The washback is clean and empty, the cooler is set to the house's temperature; nothing has run in.
 * @example beginWashback({ setup: { set: 19.2 } }) // { step: 0, set: 19, temperature: 19.2, filled: 0 } (to the half degree)
 */
export function beginWashback({ setup }: Rig): WashbackState {
  return {
    step: 0,
    isDone: false,
    set: Math.round(setup.set * 2) / 2,
    dose: DOSE_MARK,
    cooling: 0,
    isSwitching: false,
    filled: 0,
    temperature: setup.set,
    pitched: -1,
    pitchedWith: 0,
    pitchedAt: 0,
    odds: 0,
    oddsThen: 0,
    alive: 1,
    part: 0,
    kept: 1,
    gas: 0,
    grown: 0,
    over: 0,
    released: 0,
    lost: 0,
    cooled: 0,
    froth: 0,
    antifoam: 0,
    doses: 0,
    ppm: FRESH_AIR,
    metered: 0,
    meteredAt: -1,
    isFanOff: false,
    reportedAt: -1,
    isAsked: false,
    warmest: 0,
    handedAt: -1,
    happened: [],
    wrong: [],
    readings: [],
  };
}
