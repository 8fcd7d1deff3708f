// A reader's shift at a mash tun: the house it is of, what each mash made, and the weak wort that goes on to the next.
import type { Action } from '../../core/shift/tun/act.ts';
import { NO_LIQUID, type TunSetup } from '../../core/shift/tun/rig.ts';
import type { Line } from '../../core/line/line.ts';
import type { Runoff } from '../../core/mashing/waters.ts';
import { celsius, kilograms, litres20, litresPerKilogram, percent, share } from '../../core/quantity.ts';
import type { KeptShift } from '../kept.ts';

const WASHING = 0.85; // part of what the grains keep that a later water reaches; as in the calculator of several waters, an assumption

/** The figures of a house that its mash hangs on. */
export interface TunHouse {
  readonly name: string;
  readonly malt: number;
  readonly moisture: number;
  readonly extract: number;
  readonly ratio: number;
  readonly mash: number;
  readonly second: number;
  readonly last: number;
  readonly collects: number;
  /** kg of water that a kg of grist keeps, drained: by the moisture of the house's draff. */
  readonly kept: number;
}
/** What one mash made: wort, L and gravity; weak wort, kg of water and extract; points. */
export interface TunDone {
  readonly volume: number;
  readonly gravity: number;
  readonly water: number;
  readonly extract: number;
  readonly score: number;
}
export type TunShift = KeptShift<TunHouse, TunDone, Action>;

export const houseOfTun = (name: string, { house, mash }: Line): TunHouse => ({
  name,
  malt: house.maltPerMash,
  moisture: house.maltMoisture,
  extract: house.solubleExtract,
  ratio: house.liquorRatio,
  mash: house.mashTemperature,
  second: house.secondWater,
  last: house.lastWater,
  collects: house.wortVolume,
  kept: mash.kept,
});

/** The weak wort that the next mash takes in its first water. */
export function weakOf({ done }: Pick<TunShift, 'done'>): Runoff {
  const last = done.at(-1);
  return last ? { water: kilograms(last.water), extract: kilograms(last.extract) } : NO_LIQUID;
}

/** What a rig is made from. */
export const setupOfTun = ({ house, done }: Pick<TunShift, 'house' | 'done'>): TunSetup => ({
  bed: {
    malt: kilograms(house.malt),
    moisture: percent(house.moisture),
    extract: percent(house.extract),
    held: litresPerKilogram(house.kept),
    washing: share(WASHING),
  },
  ratio: litresPerKilogram(house.ratio),
  mash: celsius(house.mash),
  second: celsius(house.second),
  last: celsius(house.last),
  collects: litres20(house.collects),
  weak: weakOf({ done }),
});
