// Dividing a spirit run into foreshots, heart and feints.
import { bracketedRoot } from '../numerics/root.ts';
import { type Portion, type Quantity } from '../quantity.ts';
import { isRefusal, refuse, type Refusal } from '../refusal.ts';
import { within } from '../range.ts';
import { amountsOf, minus, portionOf, type Amounts } from '../spirit/amounts.ts';
import { potAfter, potAmounts, refuseRun, type Run } from './run.ts';
import { POT_RANGE, stillCurve, type StillSetting } from './still.ts';

/** Foreshots end at a strength, % vol, after a share, 0–1, of the charge's alcohol, or after so many litres have come over. */
export type ForeshotsEnd =
  | Quantity<'strength'>
  | { readonly strength: Quantity<'strength'> }
  | { readonly share: Quantity<'share'> }
  | { readonly volume: Quantity<'volume20'> };

export interface Cuts {
  readonly foreshots: ForeshotsEnd;
  /** Strength at which the heart ends, % vol. */
  readonly heart: Quantity<'strength'>;
  /** Strength at which the feints end and the run stops, % vol. */
  readonly feints: Quantity<'strength'>;
}

/** The parts of a run in kilomoles; together they are the charge. */
export interface RunParts<T> {
  readonly foreshots: T;
  readonly heart: T;
  readonly feints: T;
  readonly residue: T;
}

/** Mole fraction of ethanol in an amount. */
const potFraction = ({ ethanol, water }: Amounts) => ethanol / (ethanol + water);

/** Mole fraction in the pot where the foreshots end: never above the charge's own; undefined when the whole run is foreshots. */
function potAfterForeshots(charge: Amounts, setting: StillSetting, end: ForeshotsEnd): number | undefined {
  const start = potFraction(charge);
  if (typeof end === 'number' || 'strength' in end) {
    const strength = within(
      'The end of the foreshots, % vol,',
      typeof end === 'number' ? end : end.strength,
      0,
      100,
    );
    const { potAt, strengthOver } = stillCurve(setting);
    if (strength >= strengthOver(start)) return start;
    return potAt(strength);
  }
  if ('volume' in end) return potAfter(charge, setting, end.volume);
  within('The share of the foreshots', end.share, 0, 1);
  const kept = charge.ethanol * (1 - end.share);
  const miss = (x: number) => potAmounts(charge, setting, x).ethanol - kept;
  if (miss(start) <= 0) return start; // nothing, or too little to tell
  // The pot loses water too, so its share of ethanol falls by less than the ethanol does.
  const least = Math.max(POT_RANGE.weakest, start * (1 - end.share));
  if (miss(least) > 0) return undefined;
  return bracketedRoot(miss, least, start);
}

/**
 * Cuts a charge in kilomoles. Refuses a heart that ends before it begins, and cuts out of order.
 * @example cutAmounts({ ethanol: 1, water: 9 }, { reflux: share(0), pressure: kilopascals(101.325) }, { foreshots: { share: share(0.02) }, heart: strength(55), feints: strength(1) }).foreshots.ethanol // 0.020000 (two hundredths of one kilomole)
 */
export function cutAmounts(charge: Amounts, setting: StillSetting, cuts: Cuts): RunParts<Amounts> | Refusal {
  const curve = stillCurve(setting);
  const heartEnd = curve.potAt(cuts.heart);
  const feintsEnd = curve.potAt(cuts.feints);
  const reason =
    refuseRun(charge, setting, cuts.heart, heartEnd) ?? refuseRun(charge, setting, cuts.feints, feintsEnd);
  if (reason !== undefined) return refuse(reason);
  const heartStart = potAfterForeshots(charge, setting, cuts.foreshots);
  if (heartStart === undefined || heartStart <= heartEnd!) {
    const at = heartStart === undefined ? 0 : curve.strengthOver(heartStart);
    return refuse(
      `The foreshots run until the spirit is down to ${at.toFixed(1)} % vol, so no heart is left above ${cuts.heart} % vol.`,
    );
  }
  if (feintsEnd! >= heartEnd!) {
    return refuse(
      `The feints must end below the heart: ${cuts.feints} % vol is not below ${cuts.heart} % vol.`,
    );
  }
  const begun = heartStart === potFraction(charge) ? charge : potAmounts(charge, setting, heartStart);
  return partsBetween(charge, begun, setting, heartEnd!, feintsEnd!);
}

/**
 * The parts of a charge that has `begun` left in the pot where the heart begins, and these mole fractions there where heart and feints end.
 * @example partsBetween({ ethanol: 1, water: 9 }, { ethanol: 1, water: 9 }, { reflux: share(0), pressure: kilopascals(101.325) }, 0.05, 0.01).foreshots // { ethanol: 0, water: 0 } (the heart begins at once)
 */
export function partsBetween(
  charge: Amounts,
  begun: Amounts,
  setting: StillSetting,
  heartEnd: number,
  feintsEnd: number,
): RunParts<Amounts> {
  const ended = potAmounts(charge, setting, heartEnd);
  const residue = potAmounts(charge, setting, feintsEnd);
  return {
    foreshots: minus(charge, begun),
    heart: minus(begun, ended),
    feints: minus(ended, residue),
    residue,
  };
}

/**
 * Cuts a run: foreshots, heart, feints and what stays in the pot, each as volume, strength and pure alcohol.
 * The four hold all the alcohol of the charge. Refuses cuts that the run never reaches or that are out of order.
 * @example cutRun(line.round.spiritRun, { foreshots: { volume: litres20(100) }, heart: strength(60), feints: strength(1) }).foreshots.volume // 100.000 (as many litres as were asked for)
 */
export function cutRun(run: Run, cuts: Cuts): RunParts<Portion> | Refusal {
  const parts = cutAmounts(amountsOf(run.charge), run.setting, cuts);
  return isRefusal(parts) ? parts : portions(parts);
}

/**
 * The parts in kilomoles, as volumes and strengths.
 * @example portions({ foreshots: { ethanol: 0, water: 0 }, heart: { ethanol: 0, water: 1 }, feints: { ethanol: 0, water: 0 }, residue: { ethanol: 0, water: 0 } }).heart.volume // 18.05 (18.015 kg of water at 0.9982 kg/L)
 */
export function portions(parts: RunParts<Amounts>): RunParts<Portion> {
  return {
    foreshots: portionOf(parts.foreshots),
    heart: portionOf(parts.heart),
    feints: portionOf(parts.feints),
    residue: portionOf(parts.residue),
  };
}
