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
import { cutAmounts, portions, type Cuts, type Parts } from './cuts.ts';
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
const REMEDY =
  'The trade lets the charge down with water to 30 % vol or less, or begins the heart sooner, at a higher strength.';

/** The unit charge of a mole fraction: one kilomole in all. */
const unitCharge = (x: number): Amounts => ({ ethanol: x, water: 1 - x });

/**
 * The spirit charge, in kilomoles, that comes back unchanged: heart and spent lees together then
 * hold exactly what the low wines (and any dilution water) bring.
 *
 * A run scales with its charge, so the state is one unknown, the strength of the charge. Without dilution
 * it is where heart plus lees have the low wines' own ratio of ethanol to water; with it, the chosen strength.
 */
function settledCharge(lowWines: Amounts, setting: StillSetting, plan: RoundPlan): Amounts | Refusal {
  const leaving = (x: number) => {
    const parts = cutAmounts(unitCharge(x), setting, plan.spiritStill);
    return 'refused' in parts ? parts : plus(parts.heart, parts.residue);
  };
  /** Alcohol that a charge of this strength keeps back, over what it may: negative when the charge would grow stronger. */
  const surplus = (x: number) => {
    const out = leaving(x);
    return 'refused' in out ? -1 : out.ethanol * lowWines.water - out.water * lowWines.ethanol;
  };
  const scaled = (x: number): Amounts | Refusal => {
    const out = leaving(x);
    if ('refused' in out) return out;
    const moles = lowWines.ethanol / out.ethanol;
    return { ethanol: moles * x, water: moles * (1 - x) };
  };

  const limit = plan.diluteTo === undefined ? undefined : moleFractionOf(plan.diluteTo);
  const ceiling = limit ?? STRONGEST_CHARGE;
  if (surplus(ceiling) < 0) {
    const atCeiling = leaving(ceiling);
    if ('refused' in atCeiling) return atCeiling;
    if (limit !== undefined) return scaled(limit);
    return refuse(
      `The round never settles: the heart, taken down to ${plan.spiritStill.heart} % vol, carries off less alcohol than the low wines bring, so each charge is stronger than the last. ${REMEDY}`,
    );
  }
  const floor = stillCurve(setting).potAt(plan.spiritStill.heart);
  if (floor === undefined)
    return refuse(`No charge gives spirit of ${plan.spiritStill.heart} % vol in this still.`);
  return scaled(bracketedRoot(surplus, floor, ceiling));
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
  const charge = settledCharge(lowWines, setting, plan);
  if ('refused' in charge) return charge;
  const parts = cutAmounts(charge, setting, plan.spiritStill);
  if ('refused' in parts) return parts;

  const spiritRun = runStill({ ...setting, charge: portionOf(charge), until: plan.spiritStill.feints });
  if ('refused' in spiritRun) return spiritRun;
  const recycled = plus(parts.foreshots, parts.feints);
  const water = minus(charge, plus(lowWines, recycled)).water;
  return {
    washRun,
    lowWines: washRun.distillate,
    potAle: washRun.residue,
    charge: portionOf(charge),
    dilution: litres20(plan.diluteTo === undefined ? 0 : portionOf({ ethanol: 0, water }).volume),
    spiritRun,
    ...portions(parts),
  };
}
