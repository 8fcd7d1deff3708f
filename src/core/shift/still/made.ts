// What a shift has made, and what goes into the next charge.
import { amountsOf, plus, portionOf, type Amounts } from '../../spirit/amounts.ts';
import { litres20, type Portion, type Quantity, type Spirit } from '../../quantity.ts';
import { VERY_MUCH, within } from '../../range.ts';
import { makeUp } from '../../distilling/make-up.ts';
import { atSafe } from './rig.ts';
import type { ShiftState } from './state.ts';

export interface Made {
  readonly foreshots: Portion;
  readonly heart: Portion;
  readonly feints: Portion;
  readonly lost: Portion;
  /** What is in the still, or was run off from it. */
  readonly residue: Portion;
  /** Strength at the safe where the heart first began and last ended, and at the end of the run, % vol; 0 where it did not. */
  readonly began: number;
  readonly ended: number;
  readonly stopped: number;
  readonly minutes: number;
}

/**
 * What has been made so far.
 * @example madeOf({ foreshots: { ethanol: 0, water: 0 }, heart: { ethanol: 0, water: 0 }, feints: { ethanol: 0, water: 0 }, lost: { ethanol: 0, water: 0 }, pot: { ethanol: 0, water: 0 }, lees: { ethanol: 0, water: 0 }, turns: [], step: 120, boiled: 0 }, 10) // { began: 0, ended: 0, minutes: 20 } (120 steps of ten seconds)
 */
export function madeOf(state: ShiftState, step: number): Made {
  const { foreshots, heart, feints, lost, pot, lees, turns } = state;
  const began = turns.find(({ to }) => to === 'spirit')?.strength ?? 0;
  const last = turns.findLast(({ to }) => to === 'feints');
  return {
    foreshots: portionOf(foreshots),
    heart: portionOf(heart),
    feints: portionOf(feints),
    lost: portionOf(lost),
    residue: portionOf(plus(pot, lees)),
    began,
    ended: began > 0 && last ? last.strength : 0,
    stopped: state.boiled > 0 ? atSafe(state.vapour) : 0,
    minutes: (state.step * step) / 60,
  };
}

/**
 * Foreshots and feints together: what goes into the next charge.
 * @example backOf({ foreshots: { ethanol: 0, water: 1 }, feints: { ethanol: 0, water: 1 } }).volume // 36.1 (twice 18.015 kg of water)
 */
export const backOf = ({ foreshots, feints }: ShiftState): Portion => portionOf(plus(foreshots, feints));

export interface NextCharge {
  readonly charge: Spirit;
  /** Water put to it, L, and what found no room in the still and waits in the receiver. */
  readonly dilution: number;
  readonly waits: Spirit;
}

/**
 * The next charge: the low wines of one charge, and what came back, let down with water where it is stronger than the house allows.
 * What is more than the still holds, L, waits in the receiver.
 * @example nextCharge({ volume: litres20(1000), strength: strength(25) }, [], undefined, 800) // { charge: { volume: 800.0, strength: 25.00 }, dilution: 0, waits: { volume: 200.0 } } (what finds no room waits)
 */
export function nextCharge(
  lowWines: Spirit,
  back: readonly Spirit[],
  limit: Quantity<'strength'> | undefined,
  holds: number,
): NextCharge {
  within('What the still holds, L,', holds, Number.MIN_VALUE, VERY_MUCH);
  const all = [lowWines, ...back].map(amountsOf).reduce(plus);
  const { charge, added } = makeUp(all, limit);
  const whole = portionOf(charge);
  const part = Math.min(1, holds / whole.volume);
  const times = ({ ethanol, water }: Amounts, by: number) => ({ ethanol: ethanol * by, water: water * by });
  const spirit = (amounts: Amounts): Spirit => {
    const { volume, strength } = portionOf(amounts);
    return { volume, strength };
  };
  return {
    charge: spirit(times(charge, part)),
    dilution: portionOf({ ethanol: 0, water: added }).volume,
    waits: part < 1 ? spirit(times(charge, 1 - part)) : { volume: litres20(0), strength: whole.strength },
  };
}
