// The balanced round: foreshots and feints go back to the next charge until the round repeats itself.
import { STANDARD_ATMOSPHERE } from '../constants.ts';
import { formatNumber } from '../format.ts';
import { risingRoot } from '../numerics/root.ts';
import {
  kilopascals,
  litres20,
  quantity,
  share,
  strength,
  type Portion,
  type Quantity,
  type Spirit,
} from '../quantity.ts';
import { VERY_MUCH, within } from '../range.ts';
import { isRefusal, refuse, type Refusal } from '../refusal.ts';
import {
  amountsOf,
  minus,
  moleFractionFromMassPercent,
  plus,
  portionOf,
  type Amounts,
} from '../spirit/amounts.ts';
import { massPercentFromStrength } from '../spirit/strength.ts';
import type { VapourModel } from '../vapour/equilibrium.ts';
import { cutAmounts, partsBetween, portions, type Cuts, type ForeshotsEnd, type RunParts } from './cuts.ts';
import { potAfter, runAmounts, type Run } from './run.ts';
import { stillCurve, strengthOfVapour, type StillCurve, type StillSetting } from './still.ts';

export interface RoundPlan {
  readonly wash: Spirit;
  readonly washStill: { readonly reflux?: Quantity<'share'>; readonly until: Quantity<'strength'> };
  readonly spiritStill: Cuts & { readonly reflux?: Quantity<'share'> };
  readonly pressure?: Quantity<'pressure'>;
  /** How vapour over liquid is reckoned; van Laar when left out. */
  readonly model?: VapourModel | undefined;
  /** Strength, % vol, above which the spirit charge is diluted with water; left out, it is never diluted. */
  readonly diluteTo?: Quantity<'strength'>;
}

/** A round that repeats itself: low wines and water in, heart and spent lees out. */
export interface Round extends RunParts<Portion> {
  readonly washRun: Run;
  readonly lowWines: Portion;
  readonly potAle: Portion;
  readonly charge: Portion;
  /** Water put into the spirit charge to bring its strength down, L at 20 °C; 0 when none is needed. */
  readonly dilution: Quantity<'volume20'>;
  /** Strength at the safe of the first spirit, and where the heart begins, % vol. */
  readonly begins: { readonly run: Quantity<'strength'>; readonly heart: Quantity<'strength'> };
  readonly spiritRun: Run;
  /** Runs of a spirit still that it is, where foreshots are so many litres or minutes of each; else 1. */
  readonly runs: Quantity<'ratio'>;
  /** What stills between these two do, where there are some; `residue` is then the lees of both. */
  readonly between?: Between;
}

/** What the intermediate stills do with a mash: their charge, what goes on to the spirit stills, and their lees. */
export interface Between {
  readonly charge: Portion;
  readonly onward: Portion;
  readonly lees: Portion;
  /** Weak feints that come back to the next charge, of these stills and of the spirit stills; none where only a part is run again. */
  readonly weak: Portion;
  readonly fromSpirit: Portion;
  /** Feints of the spirit stills that come back to the spirit stills: the strong ones, or all. */
  readonly strong: Portion;
}

export const STRONGEST_CHARGE = 0.55; // mole fraction, about 80 % vol: a charge growing past this is not going to settle
// Times the low wines' volume. The heart is 45 to 60 % of a charge's alcohol (recalled), so a charge is about 1.7 to 2.2 times
// its low wines. Low wines are a third of the wash: beyond 3 times them, the spirit still would be larger than the wash still.
export const LARGEST_CHARGE = 3;
const HAIR = 1e-12; // by which a bracket is opened against rounding
const ROUNDING = 1e-9; // of the charge's water: less than this was not poured but rounded
const REMEDY =
  'The trade lets the charge down with water to 30 % vol or less, or begins the heart sooner, at a higher strength.';

/** @example neverSettles(70) // refuses: taken down to 70 % vol (the sentence names the cut) */
export const neverSettles = (heartEnd: number) =>
  refuse(
    `The round never settles: the heart, taken down to ${heartEnd} % vol, carries off less alcohol than the low wines bring, so each charge is stronger than the last. ${REMEDY}`,
  );

/** @example tooLarge(4, 20_000).slice(0, 61) // 'The spirit charge would be 20,000 L, 4.0 times the low wines.' (as given) */
export const tooLarge = (times: number, volume: number) =>
  `The spirit charge would be ${formatNumber(volume, 0)} L, ${formatNumber(times, 1)} times the low wines. About twice is usual, and beyond ${LARGEST_CHARGE} times the spirit still would be larger than the wash still. Too much goes back, or is water: let the heart begin sooner or end later, or change the strength to which the charge is let down.`;

/** What cannot be done with the cuts of a plan in a still, whatever the charge; or the pot's mole fractions at them. */
function cutPots(setting: StillSetting, { heart, feints }: Cuts): Pots | Refusal {
  const curve = stillCurve(setting);
  const pots = { heart: curve.potAt(heart), feints: curve.potAt(feints) };
  if (pots.heart === undefined) return refuse(`No charge gives spirit of ${heart} % vol in this still.`);
  if (pots.feints === undefined) return refuse(`The run cannot be followed down to ${feints} % vol.`);
  if (pots.feints >= pots.heart) {
    return refuse(`The feints must end below the heart: ${feints} % vol is not below ${heart} % vol.`);
  }
  const moles = curve.molesAt(pots.heart);
  return { heart: pots.heart, feints: pots.feints, moles, left: curve.molesAt(pots.feints) / moles };
}

/** Mole fractions in the pot where heart and feints end, moles there at the first, as the curve has them, and left of one of these at the other. */
type Pots = {
  readonly heart: number;
  readonly feints: number;
  readonly moles: number;
  readonly left: number;
};

/**
 * What leaves for good, in heart and lees, of one mole in the pot where the heart begins, at mole fraction `x`.
 * From there on the still only sends out heart and lees, and keeps feints back.
 */
function sentOut(x: number, { molesAt }: StillCurve, pots: Pots): Amounts {
  const atHeartEnd = pots.moles / molesAt(x);
  const feints = atHeartEnd * (1 - pots.left);
  const ethanol = x - atHeartEnd * (pots.heart - pots.left * pots.feints);
  return { ethanol, water: 1 - feints - ethanol };
}

/**
 * Mole fraction in the pot at which the heart of a balanced round begins, or undefined when there is none.
 * In balance heart and lees must hold ethanol and water as the low wines do, and that share depends on where the
 * heart begins alone: one unknown, whatever the foreshots.
 */
function balancedHeartStart(lowWines: Amounts, curve: StillCurve, pots: Pots): number | undefined {
  /** Ethanol that heart and lees carry off over what they may; negative when the next charge would be stronger. */
  const surplus = (x: number) => {
    const { ethanol, water } = sentOut(x, curve, pots);
    return ethanol * lowWines.water - water * lowWines.ethanol;
  };
  return risingRoot(surplus, pots.heart, STRONGEST_CHARGE);
}

/**
 * Mole fraction of the charge whose foreshots, cut as planned, end where the balanced heart begins; undefined when none does.
 * `moles` are in the pot where the heart begins.
 */
function chargeBefore(
  heartStart: number,
  moles: number,
  { molesAt, potAt }: StillCurve,
  end: ForeshotsEnd,
): number | undefined {
  if (typeof end === 'number' || 'strength' in end) {
    // Foreshots end at one place in the pot: a charge below it has none, one above it always ends there.
    const cut = potAt(typeof end === 'number' ? end : end.strength);
    return cut === undefined || cut >= heartStart ? heartStart : undefined;
  }
  if (('share' in end ? end.share : end.volume) === 0) return heartStart;
  const after = mixture(moles, heartStart);
  const atStart = molesAt(heartStart);
  /** What comes over of a charge at `x` before the heart, beyond the foreshots that were planned. */
  const surplus =
    'share' in end
      ? (x: number) => (1 - end.share) * x * (molesAt(x) / atStart) - heartStart
      : (x: number) =>
          portionOf(minus(mixture(moles * (molesAt(x) / atStart), x), after)).volume - end.volume;
  return risingRoot(surplus, heartStart, STRONGEST_CHARGE);
}

/** Moles of a charge of mole fraction `x` whose heart and lees hold the low wines' ethanol when foreshots are a volume; undefined when none do. */
function molesBeforeVolume(
  x: number,
  lowWines: Amounts,
  setting: StillSetting,
  pots: Pots,
  volume: Quantity<'volume20'>,
): number | undefined {
  const { left } = stillCurve(setting);
  const atHeartEnd = left(x, pots.heart);
  const feints = atHeartEnd * (pots.heart - pots.left * pots.feints);
  /** Ethanol that heart and lees hold over that of the low wines. */
  const surplus = (moles: number) => {
    const pot = potAfter(mixture(moles, x), setting, volume);
    const kept = pot === undefined ? 0 : moles * left(x, pot) * pot;
    return kept - moles * feints - lowWines.ethanol;
  };
  const most = amountsOf({ volume, strength: strength(100) }).ethanol; // foreshots hold no more than pure alcohol would
  const [least, enough] = [0, most].map((taken) => (lowWines.ethanol + taken) / (x - feints));
  if (!(enough! > least! * (1 + HAIR))) return least!;
  return risingRoot(surplus, least! * (1 - HAIR), enough!);
}

const mixture = (moles: number, x: number): Amounts => ({ ethanol: moles * x, water: moles * (1 - x) });

/** The spirit charge, in kilomoles, that comes back unchanged, and its parts; diluted to the plan's limit where it would be stronger. */
function settledCharge(
  lowWines: Amounts,
  setting: StillSetting,
  plan: RoundPlan,
): { readonly charge: Amounts; readonly parts: RunParts<Amounts> } | Refusal {
  const pots = cutPots(setting, plan.spiritStill);
  if (isRefusal(pots)) return pots;
  const { foreshots } = plan.spiritStill;
  const curve = stillCurve(setting);
  const heartStart = balancedHeartStart(lowWines, curve, pots);
  const atStart = heartStart && lowWines.ethanol / sentOut(heartStart, curve, pots).ethanol;
  const natural = heartStart && chargeBefore(heartStart, atStart!, curve, foreshots);
  const limit = plan.diluteTo === undefined ? Infinity : moleFractionOf(plan.diluteTo);
  if (natural === undefined && limit === Infinity) return neverSettles(plan.spiritStill.heart);

  const x = Math.min(natural ?? Infinity, limit);
  if (x === natural && heartStart! > pots.heart) {
    const begun = mixture(atStart!, heartStart!);
    const charge = x === heartStart ? begun : mixture(atStart! / curve.left(x, heartStart!), x);
    return { charge, parts: partsBetween(charge, begun, setting, pots.heart, pots.feints) };
  }
  if (typeof foreshots !== 'number' && 'volume' in foreshots && x > pots.heart) {
    const moles = molesBeforeVolume(x, lowWines, setting, pots, foreshots.volume);
    if (moles === undefined) return neverSettles(plan.spiritStill.heart);
    const charge = mixture(moles, x);
    const parts = cutAmounts(charge, setting, plan.spiritStill);
    return isRefusal(parts) ? parts : { charge, parts };
  }
  const parts = cutAmounts(mixture(1, x), setting, plan.spiritStill);
  if (isRefusal(parts)) return parts;
  const moles = lowWines.ethanol / (parts.heart.ethanol + parts.residue.ethanol);
  const scaled = ({ ethanol, water }: Amounts) => ({ ethanol: moles * ethanol, water: moles * water });
  return {
    charge: mixture(moles, x),
    parts: {
      foreshots: scaled(parts.foreshots),
      heart: scaled(parts.heart),
      feints: scaled(parts.feints),
      residue: scaled(parts.residue),
    },
  };
}

/** @example moleFractionOf(strength(97.2)) // 0.895 (the azeotrope, CRC Handbook, 0.8947) */
export function moleFractionOf(strength: Quantity<'strength'>): Quantity<'moleFraction'> {
  return moleFractionFromMassPercent(massPercentFromStrength(strength));
}

/**
 * The wash run and the spirit run in balance: all foreshots and feints of one round are in the next charge,
 * and every round is like the last. Solved for that state directly.
 * Refuses, with the reason, a plan whose round never settles or whose cuts are never reached.
 * @example settleRound({ wash: { volume: litres20(1000), strength: strength(0.0001) }, washStill: { until: strength(1) }, spiritStill: { foreshots: strength(74), heart: strength(62), feints: strength(1) } }) // refuses: no alcohol worth distilling (it is water)
 */
export function settleRound(plan: RoundPlan): Round | Refusal {
  const pressure = plan.pressure ?? kilopascals(STANDARD_ATMOSPHERE);
  const settingOf = (reflux = share(0)): StillSetting => ({
    reflux,
    pressure,
    ...(plan.model && { model: plan.model }),
  });
  within('The charge, L,', plan.wash.volume, 0, VERY_MUCH);
  const wash = runAmounts(
    plan.wash,
    amountsOf(plan.wash),
    settingOf(plan.washStill.reflux),
    plan.washStill.until,
  );
  if (isRefusal(wash)) return wash;
  const { run: washRun, distillate: lowWines } = wash;

  const setting = settingOf(plan.spiritStill.reflux);
  const settled = settledCharge(lowWines, setting, plan);
  if (isRefusal(settled)) return settled;
  const { charge, parts } = settled;
  const filled = portionOf(charge);
  const wanted = filled.volume / washRun.distillate.volume;
  if (wanted > LARGEST_CHARGE) return refuse(tooLarge(wanted, filled.volume));

  const spirit = runAmounts(filled, charge, setting, plan.spiritStill.feints);
  if (isRefusal(spirit)) return spirit;
  const recycled = plus(parts.foreshots, parts.feints);
  const water = minus(charge, plus(lowWines, recycled)).water;
  const { vapourOver } = stillCurve(setting);
  const strengthOver = ({ ethanol, water }: Amounts) =>
    strengthOfVapour(vapourOver(ethanol / (ethanol + water)));
  return {
    washRun,
    lowWines: washRun.distillate,
    potAle: washRun.residue,
    charge: filled,
    dilution: litres20(water > ROUNDING * charge.water ? portionOf({ ethanol: 0, water }).volume : 0),
    begins: { run: strengthOver(charge), heart: strengthOver(minus(charge, parts.foreshots)) },
    spiritRun: spirit.run,
    runs: quantity('ratio', 1),
    ...portions(parts),
  };
}
