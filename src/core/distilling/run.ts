// One batch run of a pot still: the charge comes over until the distillate is weak enough.
import { STANDARD_ATMOSPHERE } from '../constants.ts';
import { risingRoot } from '../numerics/root.ts';
import { kilopascals, moleFraction, share, type Portion, type Quantity, type Spirit } from '../quantity.ts';
import { isRefusal, refuse, type Refusal } from '../refusal.ts';
import { VERY_MUCH, within } from '../range.ts';
import { amountsOf, minus, portionOf, type Amounts } from '../spirit/amounts.ts';
import type { VapourModel } from '../vapour/equilibrium.ts';
import { POT_RANGE, stillCurve, strengthOfVapour, type StillSetting } from './still.ts';

export interface RunPlan {
  readonly charge: Spirit;
  /** Part of one further stage given by head and neck, 0–1. */
  readonly reflux?: Quantity<'share'>;
  readonly pressure?: Quantity<'pressure'>;
  readonly model?: VapourModel | undefined;
  /** Strength of the distillate at which the run ends, % vol. */
  readonly until: Quantity<'strength'>;
}

/** One moment of a run. Volume and alcohol are what has come over so far. */
export interface RunPoint {
  readonly strength: Quantity<'strength'>;
  readonly temperature: Quantity<'temperature'>;
  readonly volume: Quantity<'volume20'>;
  readonly alcohol: Quantity<'alcohol'>;
  /** Mole fraction of ethanol left in the pot. */
  readonly pot: Quantity<'moleFraction'>;
}

export interface Run {
  readonly setting: StillSetting;
  readonly charge: Spirit;
  readonly curve: readonly RunPoint[];
  readonly distillate: Portion;
  readonly residue: Portion;
}

/**
 * A run whose curve is drawn when first looked at: most callers want only the sums.
 * @example new SummedRun(line.round.washRun, () => []).curve // [] (as it was drawn)
 */
export class SummedRun implements Run {
  readonly setting: StillSetting;
  readonly charge: Spirit;
  readonly distillate: Portion;
  readonly residue: Portion;
  readonly #draw: () => readonly RunPoint[];
  #curve: readonly RunPoint[] | undefined;

  constructor(sums: Omit<Run, 'curve'>, draw: () => readonly RunPoint[]) {
    this.setting = sums.setting;
    this.charge = sums.charge;
    this.distillate = sums.distillate;
    this.residue = sums.residue;
    this.#draw = draw;
  }

  get curve() {
    return (this.#curve ??= this.#draw());
  }
}

/**
 * Moles in the pot once its liquid has come down to mole fraction `x`.
 * @example potAmounts({ ethanol: 1, water: 9 }, { reflux: share(0), pressure: kilopascals(101.325) }, 0.1) // { ethanol: 1, water: 9 } (nothing has come over)
 */
export function potAmounts(charge: Amounts, setting: StillSetting, x: number): Amounts {
  const total = charge.ethanol + charge.water;
  const start = charge.ethanol / total;
  if (x === start) return charge; // exactly, so that nothing has come over
  const moles = total * stillCurve(setting).left(start, x);
  return { ethanol: moles * x, water: moles * (1 - x) };
}

/**
 * Mole fraction in the pot once `volume` litres at 20 °C have come over, caught in one vessel; undefined when the still
 * cannot be followed so far.
 * @example potAfter({ ethanol: 1, water: 9 }, { reflux: share(0), pressure: kilopascals(101.325) }, litres20(0)) // 0.1 (nothing has come over)
 */
export function potAfter(
  charge: Amounts,
  setting: StillSetting,
  volume: Quantity<'volume20'>,
): number | undefined {
  within('The volume come over, L,', volume, 0, VERY_MUCH);
  const start = charge.ethanol / (charge.ethanol + charge.water);
  if (volume === 0) return start;
  const stillToCome = (x: number) => volume - portionOf(minus(charge, potAmounts(charge, setting, x))).volume;
  return risingRoot(stillToCome, POT_RANGE.weakest, start);
}

/**
 * What is wrong with a charge or an end for this still, or nothing.
 * @example refuseRun({ ethanol: 0, water: 1 }, { reflux: share(0), pressure: kilopascals(101.325) }, 1) // 'The charge holds no alcohol worth distilling.' (it is water)
 */
export function refuseRun(
  charge: Amounts,
  setting: StillSetting,
  until: number,
  end?: number,
): string | undefined {
  const x = charge.ethanol / (charge.ethanol + charge.water);
  if (!(x >= POT_RANGE.weakest)) return 'The charge holds no alcohol worth distilling.';
  if (x > POT_RANGE.strongest)
    return 'The charge is stronger than 92 % vol; a pot still gains nothing more from it.';
  if (end === undefined || end >= x) {
    const first = stillCurve(setting).strengthOver(x);
    return `This charge starts to come over at ${first.toFixed(1)} % vol, so a cut at ${until} % vol is never reached.`;
  }
  return undefined;
}

const POINTS = 96; // points of a drawn curve

/** The curve of a run from the charge's mole fraction down to `end`, closer together where little is left to come over. */
function drawRun(charge: Amounts, setting: StillSetting, end: number): readonly RunPoint[] {
  const start = charge.ethanol / (charge.ethanol + charge.water);
  const { over } = stillCurve(setting);
  return Array.from({ length: POINTS + 1 }, (_, i) => {
    const x = end + (start - end) * (1 - i / POINTS) ** 2;
    const pot = i === 0 ? charge : potAmounts(charge, setting, x);
    const { volume, alcohol } = portionOf(minus(charge, pot));
    const { vapour, temperature } = over(x);
    return { strength: strengthOfVapour(vapour), temperature, volume, alcohol, pot: moleFraction(x) };
  });
}

/**
 * As `runStill`, of a charge whose kilomoles are known too; with its distillate in kilomoles.
 * @example runAmounts({ volume: litres20(1000), strength: strength(0) }, { ethanol: 0, water: 55 }, { reflux: share(0), pressure: kilopascals(101.325) }, strength(1)) // refuses: no alcohol worth distilling (it is water)
 */
export function runAmounts(
  charge: Spirit,
  before: Amounts,
  setting: StillSetting,
  until: Quantity<'strength'>,
): { readonly run: Run; readonly distillate: Amounts } | Refusal {
  const end = stillCurve(setting).potAt(until);
  const reason = refuseRun(before, setting, until, end);
  if (reason !== undefined || end === undefined) return refuse(reason!);

  const residue = potAmounts(before, setting, end);
  const distillate = minus(before, residue);
  const sums = { setting, charge, distillate: portionOf(distillate), residue: portionOf(residue) };
  return { run: new SummedRun(sums, () => drawRun(before, setting, end)), distillate };
}

/**
 * Runs a charge down to the strength `until`: the curve along the way, the whole distillate and what stays in the pot.
 * Mass and mole balance along Rayleigh's law; no heat loss, no hold-up. Charge up to 92 % vol.
 * Refuses a charge whose distillate is already weaker than `until`.
 * @example runStill({ charge: { volume: litres20(1000), strength: strength(0.0001) }, until: strength(1) }) // refuses: no alcohol worth distilling (it is water)
 */
export function runStill(plan: RunPlan): Run | Refusal {
  const { charge, until } = plan;
  within('The charge, L,', charge.volume, 0, VERY_MUCH);
  const setting = {
    reflux: plan.reflux ?? share(0),
    pressure: plan.pressure ?? kilopascals(STANDARD_ATMOSPHERE),
    ...(plan.model && { model: plan.model }),
  };
  const done = runAmounts(charge, amountsOf(charge), setting, until);
  return isRefusal(done) ? done : done.run;
}
