// A reader's shift at a washback: the house it is of, and what each round made.
import type { Action } from '../../core/shift/washback/act.ts';
import type { WashbackSetup } from '../../core/shift/washback/rig.ts';
import type { Line } from '../../core/line/line.ts';
import { celsius, gravity, hours, kilograms, litres20, type Spirit } from '../../core/quantity.ts';
import type { KeptShift } from '../kept.ts';

/** The figures of a house that a washback hangs on. */
export interface WashbackHouse {
  readonly name: string;
  readonly volume: number;
  readonly gravity: number;
  readonly final: number;
  readonly hours: number;
  readonly set: number;
  readonly yeast: number;
}
/** What one washback made: wash, its last gravity, the warmest and points. */
export interface WashbackDone {
  readonly wash: Spirit;
  readonly gravity: number;
  readonly warmest: number;
  readonly score: number;
}
export type WashbackShift = KeptShift<WashbackHouse, WashbackDone, Action>;

export const houseOfWashback = (name: string, { house }: Line): WashbackHouse => ({
  name,
  volume: house.wortVolume,
  gravity: house.originalGravity,
  final: house.finalGravity,
  hours: house.fermentationHours,
  set: house.setTemperature,
  yeast: house.yeast,
});

/** What a rig is made from. */
export const setupOfWashback = ({ house }: WashbackShift): WashbackSetup => ({
  wort: { volume: litres20(house.volume), gravity: gravity(house.gravity) },
  final: gravity(house.final),
  hours: hours(house.hours),
  set: celsius(house.set),
  yeast: kilograms(house.yeast),
});
