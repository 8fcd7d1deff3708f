// A shift as it stands at one step, and what may go wrong in it.
import type { Amounts } from '../../spirit/amounts.ts';
import type { Moment } from '../course.ts';
import { EMPTY_RECEIVER, type Rig } from './rig.ts';

/** What happens and wants to be told, in the order in which it may. */
export type Happening =
  | 'boils' | 'head-warm' | 'first-drops' | 'froth' | 'froth-down' | 'warm' | 'cool' | 'blocked' | 'cleared' | 'asks' | 'unturned' | 'weak' | 'cooling'; // prettier-ignore

/** What goes wrong: some are only points, some are danger. */
export type Wrong =
  | 'open-steam' | 'carried-over' | 'vapour' | 'left-warm' | 'relief' | 'manhole' | 'air-hot' | 'charging-hot' | 'vacuum' | 'bare' | 'hazy-heart'; // prettier-ignore

/** Where the spout was turned: strength at the safe, % vol, and litres come over by then. */
export interface Turn {
  readonly step: number;
  readonly to: Spout;
  readonly strength: number;
  readonly volume: number;
}
export type Spout = 'feints' | 'spirit';

export interface ShiftState extends Moment<Happening, Wrong> {
  readonly pot: Amounts;
  readonly foreshots: Amounts;
  readonly heart: Amounts;
  readonly feints: Amounts;
  readonly lees: Amounts;
  /** Gone as vapour or out of the relief valve. */
  readonly lost: Amounts;
  /** Temperatures of the charge and of the head, °C. */
  readonly temperature: number;
  readonly head: number;
  /** Height of the froth: 0 none, 1 over the neck. */
  readonly froth: number;
  /** Steps that it has boiled. */
  readonly boiled: number;
  readonly steam: number;
  readonly water: number;
  readonly spout: Spout;
  readonly isChargingOpen: boolean;
  readonly isAirOpen: boolean;
  readonly isManholeOpen: boolean;
  /** Vapour that goes over, kmol/s, and its mole fraction. */
  readonly flow: number;
  readonly vapour: number;
  /** Pressure over the air's, kPa. */
  readonly pressure: number;
  readonly safe: number;
  readonly leaves: number;
  /** How far the line to the safe is open, 0–1. */
  readonly line: number;
  readonly isAsked: boolean;
  /** Steps for which the steam has been off, and for which the safe has been warm. */
  readonly off: number;
  readonly warmFor: number;
  readonly turns: readonly Turn[];
}

/**
 * The charge is in; charging valve, air valve and manhole still stand open, steam and water are off, the spout is on the feints.
 * @example beginStill({ charge: { ethanol: 1, water: 9 }, filled: 25 }) // { step: 0, pot: { ethanol: 1, water: 9 }, temperature: 25 } (the charge is in)
 */
export function beginStill({ charge, filled }: Rig): ShiftState {
  return {
    step: 0,
    pot: charge,
    foreshots: EMPTY_RECEIVER,
    heart: EMPTY_RECEIVER,
    feints: EMPTY_RECEIVER,
    lees: EMPTY_RECEIVER,
    lost: EMPTY_RECEIVER,
    temperature: filled,
    head: filled,
    froth: 0,
    boiled: 0,
    steam: 0,
    water: 0,
    spout: 'feints',
    isChargingOpen: true,
    isAirOpen: true,
    isManholeOpen: true,
    isDone: false,
    flow: 0,
    vapour: 0,
    pressure: 0,
    safe: 10,
    leaves: 10,
    line: 1,
    isAsked: false,
    off: 0,
    warmFor: 0,
    happened: [],
    wrong: [],
    turns: [],
    readings: [],
  };
}
