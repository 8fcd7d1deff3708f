// A spirit run with one thing wrong: one charge of the house's still, cut as the house cuts, and what came of it.
import { cutAmounts } from '../distilling/cuts.ts';
import { bracketedRoot } from '../numerics/root.ts';
import { celsius, share, strength, type Quantity } from '../quantity.ts';
import { minus, plus, portionOf, type Amounts } from '../spirit/amounts.ts';
import { condense, waterComes } from '../shift/still/condenser.ts';
import { rigOfStill, USUAL_RATE, type ShiftSetup } from '../shift/still/rig.ts';
import { correctedTo20, standsAt } from '../shift/still/samples.ts';
import { valueAtSize, type TruthOf } from './truth.ts';
import { isRefusal } from '../refusal.ts';

export type StillCause = 'scale' | 'thirsty' | 'joint' | 'feints' | 'thermometer' | 'foreshots' | 'dip';
export type StillReading = 'heart' | 'safe' | 'leaves' | 'meter' | 'vent' | 'charge' | 'pumped' | 'foreshots' | 'bench' | 'second' | 'rounds' | 'balance'; // prettier-ignore

/** What differs from run to run and does no harm: the cooling water, K warmer, how exact the cut was, % vol, and the charge, % less. */
export interface StillDay {
  readonly rise: number;
  readonly cut: number;
  readonly less: number;
}

// The least and the most of each that is drawn; no source.
const sizes = {
  scale: [0.36, 0.45], // of the condenser's surface that does no more work
  thirsty: [0.46, 0.53], // of the cooling water that is missing
  joint: [0.04, 0.08], // of the vapour that leaves by a joint
  feints: [12, 22], // % vol at which the feints of the last rounds ended, more than the house's
  thermometer: [7, 10], // K by which the thermometer at the safe reads too high
  foreshots: [3, 4.5], // times the house's foreshots
  dip: [0.06, 0.12], // of the charge that was not there
} as const;
const METER = 600; // % of the lower limit at the joint when all the vapour left there; no source
const VENT = 150; // the same at the vent of the safe; no source
const ROUNDS = 4; // rounds back that the receiver's log is looked at

/** Strength at which a heart ends in truth, % vol, when the thermometer reads `high` K too much: the reading is brought down too far. */
function endsAt(told: Quantity<'strength'>, high: number): Quantity<'strength'> {
  const at = celsius(20);
  const miss = (truly: number) => correctedTo20(standsAt(strength(truly), at), celsius(20 + high)) - told;
  return strength(bracketedRoot(miss, told, Math.min(97, told + 15)));
}

/**
 * The readings of a run. Refuses what the still's own desk refuses, and cuts that this charge never reaches.
 * @example stillBench({ charge: { volume: litres20(0), strength: strength(0) }, reflux: share(0), pressure: kilopascals(101.325), cuts: { foreshots: { share: share(0.02) }, heart: strength(60), feints: strength(1) }, hours: 8 }, { rise: 0, cut: 0, less: 0 })({ cause: 'nothing', size: 0 }).refused.length > 0 // true (an empty still is refused)
 */
export const stillBench = (setup: ShiftSetup, day: StillDay): TruthOf<StillCause, StillReading> => {
  const rig = rigOfStill(setup, { lively: { stands: 1, minutes: 0 }, jar: 0, clears: 1, hazesBelow: 1 });
  return ({ cause, size }) => {
    if (isRefusal(rig)) return rig;
    const of = (id: keyof typeof sizes) => (cause === id ? valueAtSize(sizes[id], size) : 0);
    const { cuts } = setup;
    const times = ({ ethanol, water }: Amounts, by: number): Amounts => ({ ethanol: ethanol * by, water: water * by });

    // The charge: what came fresh, and what the round before sent back.
    const usual = cutAmounts(rig.charge, setup, cuts);
    if (isRefusal(usual)) return usual;
    const back = plus(usual.foreshots, usual.feints);
    const fresh = minus(rig.charge, back);
    let [charge, came] = [rig.charge, back];
    for (let round = 0; of('feints') && round < ROUNDS; round++) {
      const parts = cutAmounts(charge, setup, { ...cuts, feints: strength(cuts.feints + of('feints')) });
      if (isRefusal(parts)) return parts;
      came = plus(parts.foreshots, parts.feints);
      charge = plus(fresh, came);
    }
    charge = times(charge, (1 - of('dip')) * (1 - day.less / 100));

    const house = usual.foreshots.ethanol / rig.charge.ethanol;
    const early = Math.min(0.6, house * (of('foreshots') || 1));
    const ends = strength((of('thermometer') ? endsAt(cuts.heart, of('thermometer')) : cuts.heart) + day.cut);
    const parts = cutAmounts(charge, setup, { foreshots: { share: share(early) }, heart: ends, feints: cuts.feints });
    if (isRefusal(parts)) return parts;

    // The condenser at the vapour of the heart's middle.
    const { over } = rig.curve;
    const x = charge.ethanol / (charge.ethanol + charge.water);
    const { vapour, temperature } = over(x);
    const condenser = { ...rig.condenser, passes: rig.condenser.passes * (1 - of('scale')) };
    const cooled = condense(condenser, rig.usualVapour, vapour, temperature, waterComes(day.rise), USUAL_RATE * (1 - of('thirsty')));
    const joint = of('joint');
    const kept = (1 - cooled.goesBy) * (1 - joint);
    const [foreshots, heart, feints] = [parts.foreshots, parts.heart, parts.feints].map((each) => portionOf(times(each, kept)));
    const inCharge = portionOf(charge);
    return {
      heart: heart!.alcohol,
      safe: cooled.safe,
      leaves: cooled.leaves,
      meter: METER * joint,
      vent: VENT * cooled.goesBy,
      charge: inCharge.strength,
      pumped: inCharge.volume,
      foreshots: foreshots!.alcohol,
      bench: ends,
      second: of('thermometer'),
      rounds: 100 * (came.ethanol / back.ethanol - 1),
      // Alcohol of the charge as logged that is in none of the receivers, nor in the lees.
      balance: 100 * (1 - (foreshots!.alcohol + heart!.alcohol + feints!.alcohol + portionOf(parts.residue).alcohol) / (inCharge.alcohol / (1 - of('dip')))),
    };
  };
}; // prettier-ignore
