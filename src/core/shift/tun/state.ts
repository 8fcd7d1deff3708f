// A mash tun as it stands at one step, and what may happen and go wrong in it.
import type { Moment } from '../course.ts';
import type { Rig } from './rig.ts';

export type Happening =
  'mashed' | 'clear-run' | 'pulls' | 'set' | 'freed' | 'sunk' | 'water-in' | 'asks' | 'drained';
export type Wrong =
  'blue' | 'cloudy' | 'set-bed' | 'let-in' | 'wet-draff' | 'forced' | 'mixed' | 'not-rinsed';
/** Where the run-off goes: back over the bed, to the washback, or to the tank for weak wort. */
export type RunsTo = 'back' | 'washback' | 'weak';

/** Water and extract, kg. */
export interface Pool {
  readonly water: number;
  readonly extract: number;
}

export interface TunState extends Moment<Happening, Wrong> {
  /** Temperature to which the hot liquor is set, °C, and the mark of the run-off valve. */
  readonly liquor: number;
  readonly valve: number;
  readonly runsTo: RunsTo;
  /** Waters begun, what is left of the one that comes, kg, and the temperature of each. */
  readonly waters: number;
  readonly comes: number;
  readonly temperatures: readonly number[];
  readonly temperature: number;
  /** Minutes since mashing in was over, and the sum of their temperatures until all was converted. */
  readonly stood: number;
  readonly warmth: number;
  /** Part of the starch converted, and of alpha-amylase alive, 0–1. */
  readonly converted: number;
  readonly alive: number;
  /** What mixes and runs, and what the grains keep from mixing. */
  readonly mobile: Pool;
  readonly kept: Pool;
  readonly wort: Pool;
  readonly weak: Pool;
  /** Water put in beside the three, kg. */
  readonly extra: number;
  /** How far the bed has pulled together, 0–1; set at 1. Cloud of the run-off, 0–1. */
  readonly tight: number;
  readonly isSet: boolean;
  readonly cloud: number;
  /** Run off so far, wherever it went, kg; and a minute, now. */
  readonly ran: number;
  readonly flow: number;
  /** Whether the iodine stayed clear before anything went to the washback. */
  readonly isTested: boolean;
  readonly isAsked: boolean;
}

const EMPTY: Pool = { water: 0, extract: 0 };

/**
 * The tun is clean and empty, its plates covered with hot water that is not counted; the liquor stands at 60 °C.
 * @example beginTun({}) // { step: 0, liquor: 60, waters: 0 } (the tun is empty)
 */
export const beginTun = (_: Rig): TunState => ({
  step: 0,
  isDone: false,
  liquor: 60,
  valve: 0,
  runsTo: 'back',
  waters: 0,
  comes: 0,
  temperatures: [],
  temperature: 15,
  stood: 0,
  warmth: 0,
  converted: 0,
  alive: 1,
  mobile: EMPTY,
  kept: EMPTY,
  wort: EMPTY,
  weak: EMPTY,
  extra: 0,
  tight: 0,
  isSet: false,
  cloud: 1,
  ran: 0,
  flow: 0,
  isTested: false,
  isAsked: false,
  happened: [],
  wrong: [],
  readings: [],
});
