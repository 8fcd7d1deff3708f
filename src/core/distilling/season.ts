// A season of rounds that begins with an empty receiver, and what one missed recycle does to it.
import { STANDARD_ATMOSPHERE } from '../constants.ts';
import { kilopascals, share, type Portion, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import { isRefusal, refuse, type Refusal } from '../refusal.ts';
import { amountsOf, plus, portionOf, type Amounts } from '../spirit/amounts.ts';
import { cutAmounts } from './cuts.ts';
import { makeUp } from './make-up.ts';
import type { RoundPlan } from './round.ts';
import { runStill } from './run.ts';

/** One round of a season. `back` is its foreshots and feints together. */
export interface SeasonRound {
  readonly charge: Portion;
  /** Water put into the charge to bring its strength down, L at 20 °C. */
  readonly dilution: Quantity<'volume20'>;
  readonly heart: Portion;
  readonly back: Portion;
  readonly residue: Portion;
}

export interface Season {
  /** Low wines of each round. */
  readonly lowWines: Portion;
  readonly rounds: readonly SeasonRound[];
  /** Foreshots and feints kept out of the receiver; nothing when none were. */
  readonly keptOut: Portion;
  /** What stands in the receiver after the last round. */
  readonly left: Portion;
}

/**
 * Runs `count` rounds, 1–1000, one after the other; the first has no foreshots or feints to add.
 * Foreshots and feints of round `missed` are kept out of the receiver, 0 for none.
 * What comes in, low wines and water, is what goes out in hearts and lees, what is kept out, and what is left.
 * Refuses a plan whose cuts some round never reaches, and names that round.
 * @example runSeason({ wash: { volume: litres20(1000), strength: strength(8) }, washStill: { until: strength(1) }, spiritStill: { foreshots: { share: share(0) }, heart: strength(50), feints: strength(1) } }, 3).rounds.map(({ dilution }) => dilution) // [0, 0, 0] (a plan that dilutes nothing)
 */
export function runSeason(plan: RoundPlan, count: number, missed = 0): Season | Refusal {
  within('The number of rounds', count, 1, 1000);
  const pressure = plan.pressure ?? kilopascals(STANDARD_ATMOSPHERE);
  const washRun = runStill({ ...plan.washStill, charge: plan.wash, pressure });
  if (isRefusal(washRun)) return washRun;
  const lowWines = amountsOf(washRun.distillate);
  const setting = { reflux: plan.spiritStill.reflux ?? share(0), pressure };

  const nothing: Amounts = { ethanol: 0, water: 0 };
  let [receiver, keptOut] = [nothing, nothing];
  const rounds: SeasonRound[] = [];
  for (let round = 1; round <= count; round++) {
    const { charge, added } = makeUp(plus(lowWines, receiver), plan.diluteTo);
    const parts = cutAmounts(charge, setting, plan.spiritStill);
    if (isRefusal(parts)) return refuse(`In round ${round}: ${parts.refused}`);
    const back = plus(parts.foreshots, parts.feints);
    [receiver, keptOut] = round === missed ? [nothing, back] : [back, keptOut];
    rounds.push({
      charge: portionOf(charge),
      dilution: portionOf({ ethanol: 0, water: added }).volume,
      heart: portionOf(parts.heart),
      back: portionOf(back),
      residue: portionOf(parts.residue),
    });
  }
  return { lowWines: washRun.distillate, rounds, keptOut: portionOf(keptOut), left: portionOf(receiver) };
}

/**
 * The first round from which every heart up to the last has at least 1 − `near` and at most 1 + `near`
 * of the balanced heart's alcohol; undefined when the last one has not.
 * @example roundsToSettle([{ heart: { alcohol: 90 } }, { heart: { alcohol: 99.95 } }, { heart: { alcohol: 100 } }], 100) // 2 (the second is within a thousandth)
 */
export function roundsToSettle(
  rounds: readonly SeasonRound[],
  balanced: Quantity<'alcohol'>,
  near = 0.001,
): number | undefined {
  const off = (round: SeasonRound) => Math.abs(round.heart.alcohol / balanced - 1) > near;
  const last = rounds.findLastIndex(off);
  return last === rounds.length - 1 ? undefined : last + 2;
}
