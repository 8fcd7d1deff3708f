// A reader's shift: its seed, the still and house it is of, what each charge made, and the log of the one that runs.
import { nextCharge } from '../../core/shift/still/made.ts';
import type { Action } from '../../core/shift/still/act.ts';
import type { ShiftSetup } from '../../core/shift/still/rig.ts';
import { limitOfCharge, spiritCuts } from '../../core/distilling/plan.ts';
import type { Line } from '../../core/line/line.ts';
import { litres20, type Quantity, type Spirit } from '../../core/quantity.ts';
import type { Cuts } from '../../core/distilling/cuts.ts';
import { withNext, type KeptShift } from '../kept.ts';

/** The house of a shift: what stays from charge to charge. */
export interface ShiftHouse {
  readonly name: string;
  readonly reflux: Quantity<'share'>;
  readonly pressure: Quantity<'pressure'>;
  readonly cuts: Cuts;
  readonly hours: number;
  /** Low wines of one charge, what the still holds, L, and the strength above which a charge is let down. */
  readonly lowWines: Spirit;
  readonly holds: number;
  readonly limit?: Quantity<'strength'>;
  /** The heart of the balanced round, L of pure alcohol of one charge. */
  readonly settles: number;
}

/** What one charge made: litres at 20 °C, % vol, points. */
export interface ChargeDone {
  readonly charge: Spirit;
  readonly heart: Spirit;
  /** Foreshots and feints, which go into the next charge. */
  readonly back: Spirit;
  readonly score: number;
}

export interface StillShift extends KeptShift<ShiftHouse, ChargeDone, Action> {
  readonly charge: Spirit;
  /** What found no room in the still and waits in the receiver. */
  readonly waits: Spirit;
}

/** A still's charge and hours, where the house's plant tells of it. */
export interface OwnStill {
  readonly charge: number;
  readonly hours: number;
}
const USUAL_HOURS = 8; // h of a spirit still where no plant tells; common practice

/** The house of the page for a shift: one charge of its spirit still, with the low wines that belong to it. */
export function houseOfStill(name: string, { house, round }: Line, still: OwnStill | undefined): ShiftHouse {
  const holds = still?.charge ?? round.charge.volume;
  const part = Math.min(1, holds / round.charge.volume);
  const comes = round.between?.onward ?? round.lowWines;
  const { reflux, pressure } = round.spiritRun.setting;
  const limit = limitOfCharge(house);
  return {
    name,
    reflux,
    pressure,
    cuts: spiritCuts(house),
    hours: still?.hours ?? USUAL_HOURS,
    lowWines: { volume: litres20(part * comes.volume), strength: comes.strength },
    holds,
    ...(limit !== undefined && { limit }),
    settles: part * round.heart.alcohol,
  };
}

const empty = ({ strength }: Spirit): Spirit => ({ volume: litres20(0), strength });

/** A shift that begins with empty receivers: its first charge is low wines alone. */
export function firstStillShift(seed: number, house: ShiftHouse): StillShift {
  const { charge, waits } = nextCharge(house.lowWines, [], house.limit, house.holds);
  return { seed, house, charge, waits: waits.volume > 0 ? waits : empty(charge), done: [], log: [], step: 0 };
}

/** The next charge of a shift: what a charge sent back goes in with the next low wines. */
export function nextOfShift(shift: StillShift, made: ChargeDone): StillShift {
  const { lowWines, limit, holds } = shift.house;
  const { charge, waits } = nextCharge(lowWines, [made.back, shift.waits], limit, holds);
  return { ...withNext(shift, made), charge, waits };
}

/** What a rig is made from. */
export const setupOfStill = ({ house: { reflux, pressure, cuts, hours }, charge }: StillShift): ShiftSetup => ({ charge, reflux, pressure, cuts, hours }); // prettier-ignore
