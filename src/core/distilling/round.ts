// The balanced round: foreshots and feints go back to the next charge until the round repeats itself.
import { STANDARD_ATMOSPHERE } from '../constants.ts';
import { bracketedRoot } from '../numerics/root.ts';
import { kilopascals, litres20, share, type Portion, type Quantity, type Spirit } from '../quantity.ts';
import { refuse, type Refusal } from '../refusal.ts';
import {
  amountsOf,
  minus,
  moleFractionFromMassPercent,
  plus,
  portionOf,
  type Amounts,
} from '../spirit/amounts.ts';
import { massPercentFromStrength } from '../spirit/strength.ts';
import { cutAmounts, portions, type Cuts, type ForeshotsEnd, type Parts } from './cuts.ts';
import { runStill, type Run } from './run.ts';
import { stillCurve, type StillSetting } from './still.ts';

export interface RoundPlan {
  readonly wash: Spirit;
  readonly washStill: { readonly reflux?: Quantity<'share'>; readonly until: Quantity<'strength'> };
  readonly spiritStill: Cuts & { readonly reflux?: Quantity<'share'> };
  readonly pressure?: Quantity<'pressure'>;
  /** Strength, % vol, above which the spirit charge is diluted with water; left out, it is never diluted. */
  readonly diluteTo?: Quantity<'strength'>;
}

/** A round that repeats itself: low wines and water in, heart and spent lees out. */
export interface Round extends Parts<Portion> {
  readonly washRun: Run;
  readonly lowWines: Portion;
  readonly potAle: Portion;
  readonly charge: Portion;
  /** Water put into the spirit charge to bring its strength down, L at 20 °C; 0 when none is needed. */
  readonly dilution: Quantity<'volume20'>;
  readonly spiritRun: Run;
}

const STRONGEST_CHARGE = 0.55; // mole fraction, about 80 % vol: a charge growing past this is not going to settle
const ROUNDING = 1e-9; // of the charge's water: less than this was not poured but rounded
const REMEDY =
  'The trade lets the charge down with water to 30 % vol or less, or begins the heart sooner, at a higher strength.';

const neverSettles = (heartEnd: number) =>
  refuse(
    `The round never settles: the heart, taken down to ${heartEnd} % vol, carries off less alcohol than the low wines bring, so each charge is stronger than the last. ${REMEDY}`,
  );

/** What cannot be done with the cuts of a plan in a still, whatever the charge; or the pot's mole fractions at them. */
function cutPots(
  setting: StillSetting,
  { heart, feints }: Cuts,
): { heart: number; feints: number } | Refusal {
  const curve = stillCurve(setting);
  const pots = { heart: curve.potAt(heart), feints: curve.potAt(feints) };
  if (pots.heart === undefined) return refuse(`No charge gives spirit of ${heart} % vol in this still.`);
  if (pots.feints === undefined) return refuse(`The run cannot be followed down to ${feints} % vol.`);
  if (pots.feints >= pots.heart) {
    return refuse(`The feints must end below the heart: ${feints} % vol is not below ${heart} % vol.`);
  }
  return { heart: pots.heart, feints: pots.feints };
}

/**
 * Mole fraction in the pot at which the heart of a balanced round begins, or undefined when there is none.
 * From there on the still only sends out heart and lees, and keeps feints back. In balance heart and lees must hold
 * ethanol and water as the low wines do, and that share depends on where the heart begins alone: one unknown.
 */
function balancedHeartStart(
  lowWines: Amounts,
  setting: StillSetting,
  pots: { readonly heart: number; readonly feints: number },
): number | undefined {
  const { left } = stillCurve(setting);
  const heldBack = left(pots.heart, pots.feints);
  /** Ethanol that heart and lees carry off over what they may; negative when the next charge would be stronger. */
  const surplus = (x: number) => {
    const atHeartEnd = left(x, pots.heart);
    const feints = atHeartEnd * (1 - heldBack);
    const feintsEthanol = atHeartEnd * (pots.heart - heldBack * pots.feints);
    const ethanol = x - feintsEthanol;
    return ethanol * lowWines.water - (1 - feints - ethanol) * lowWines.ethanol;
  };
  if (surplus(STRONGEST_CHARGE) < 0 || surplus(pots.heart) > 0) return undefined;
  return bracketedRoot(surplus, pots.heart, STRONGEST_CHARGE);
}

/** Mole fraction of the charge whose foreshots, cut as planned, end where the balanced heart begins; undefined when none does. */
function chargeBefore(heartStart: number, setting: StillSetting, end: ForeshotsEnd): number | undefined {
  const { left, potAt } = stillCurve(setting);
  if (typeof end === 'number' || 'strength' in end) {
    // Foreshots end at one place in the pot: a charge below it has none, one above it always ends there.
    const cut = potAt(typeof end === 'number' ? end : end.strength);
    return cut === undefined || cut >= heartStart ? heartStart : undefined;
  }
  if (end.share === 0) return heartStart;
  const miss = (x: number) => left(x, heartStart) * heartStart - (1 - end.share) * x;
  return miss(STRONGEST_CHARGE) > 0 ? undefined : bracketedRoot(miss, heartStart, STRONGEST_CHARGE);
}

/** The spirit charge, in kilomoles, that comes back unchanged, and its parts; diluted to the plan's limit where it would be stronger. */
function settledCharge(
  lowWines: Amounts,
  setting: StillSetting,
  plan: RoundPlan,
): { readonly charge: Amounts; readonly parts: Parts<Amounts> } | Refusal {
  const pots = cutPots(setting, plan.spiritStill);
  if ('refused' in pots) return pots;
  const heartStart = balancedHeartStart(lowWines, setting, pots);
  const natural = heartStart && chargeBefore(heartStart, setting, plan.spiritStill.foreshots);
  const limit = plan.diluteTo === undefined ? Infinity : moleFractionOf(plan.diluteTo);
  if (natural === undefined && limit === Infinity) return neverSettles(plan.spiritStill.heart);

  const x = Math.min(natural ?? Infinity, limit);
  const parts = cutAmounts({ ethanol: x, water: 1 - x }, setting, plan.spiritStill);
  if ('refused' in parts) return parts;
  const moles = lowWines.ethanol / (parts.heart.ethanol + parts.residue.ethanol);
  const scaled = ({ ethanol, water }: Amounts) => ({ ethanol: moles * ethanol, water: moles * water });
  return {
    charge: scaled({ ethanol: x, water: 1 - x }),
    parts: {
      foreshots: scaled(parts.foreshots),
      heart: scaled(parts.heart),
      feints: scaled(parts.feints),
      residue: scaled(parts.residue),
    },
  };
}

function moleFractionOf(strength: Quantity<'strength'>): Quantity<'moleFraction'> {
  return moleFractionFromMassPercent(massPercentFromStrength(strength));
}

/**
 * The wash run and the spirit run in balance: all foreshots and feints of one round are in the next charge,
 * and every round is like the last. Solved for that state directly.
 * Refuses, with the reason, a plan whose round never settles or whose cuts are never reached.
 */
export function settleRound(plan: RoundPlan): Round | Refusal {
  const pressure = plan.pressure ?? kilopascals(STANDARD_ATMOSPHERE);
  const washRun = runStill({ ...plan.washStill, charge: plan.wash, pressure });
  if ('refused' in washRun) return washRun;

  const setting = { reflux: plan.spiritStill.reflux ?? share(0), pressure };
  const lowWines = amountsOf(washRun.distillate);
  const settled = settledCharge(lowWines, setting, plan);
  if ('refused' in settled) return settled;
  const { charge, parts } = settled;

  const spiritRun = runStill({ ...setting, charge: portionOf(charge), until: plan.spiritStill.feints });
  if ('refused' in spiritRun) return spiritRun;
  const recycled = plus(parts.foreshots, parts.feints);
  const water = minus(charge, plus(lowWines, recycled)).water;
  return {
    washRun,
    lowWines: washRun.distillate,
    potAle: washRun.residue,
    charge: portionOf(charge),
    dilution: litres20(water > ROUNDING * charge.water ? portionOf({ ethanol: 0, water }).volume : 0),
    spiritRun,
    ...portions(parts),
  };
}
