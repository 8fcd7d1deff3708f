// A pot still as a curve: what comes over from each strength of liquid in the pot, and how the pot empties.
import { remember } from '../numerics/remember.ts';
import { risingRoot } from '../numerics/root.ts';
import { celsius, moleFraction, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import { massPercentFromMoleFraction, moleFractionFromMassPercent } from '../spirit/amounts.ts';
import { massPercentFromStrength, strengthFromMassPercent } from '../spirit/strength.ts';
import { vapourOver, type Boiling, type VapourModel } from '../vapour/equilibrium.ts';
import { boilingPot } from './boiling-pot.ts';
import {
  followedAt,
  followedToWater,
  integralAt,
  integrate,
  neighbours,
  POTS,
  POT_RANGE,
} from './pot-panels.ts';

export { POT_RANGE };

/** How a still is run. `reflux` 0–1: the part of one further stage that head and neck give. `pressure` 20–150 kPa. */
export interface StillSetting {
  readonly reflux: Quantity<'share'>;
  readonly pressure: Quantity<'pressure'>;
  /** How vapour over liquid is reckoned; van Laar when left out. */
  readonly model?: VapourModel;
}

/**
 * The distillate over a pot whose liquid has mole fraction `x`, and the boiling point of that liquid.
 * One equilibrium stage, and `reflux` of the way from its vapour to the vapour of one more stage.
 * @example distillateOver(moleFraction(0.0966), { reflux: share(0), pressure: kilopascals(101.325) }).vapour // 0.44 (Carey and Lewis 1932, 0.4375)
 */
export function distillateOver(
  x: Quantity<'moleFraction'>,
  { reflux, pressure, model }: StillSetting,
): Boiling {
  const first = vapourOver(x, pressure, model);
  if (reflux === 0) return first;
  const second = vapourOver(first.vapour, pressure, model).vapour;
  return {
    vapour: moleFraction(first.vapour + reflux * (second - first.vapour)),
    temperature: first.temperature,
  };
}

/**
 * Strength, % vol, of the liquid into which a vapour condenses.
 * @example strengthOfVapour(moleFraction(0.8943)) // 97.2 (the azeotrope, Perry, 97.19)
 */
export function strengthOfVapour(vapour: Quantity<'moleFraction'>): Quantity<'strength'> {
  return strengthFromMassPercent(massPercentFromMoleFraction(vapour));
}

export interface StillCurve {
  /** Strength of the distillate, % vol, over a pot with mole fraction `x`. */
  strengthOver(x: number): Quantity<'strength'>;
  /** As `distillateOver`, followed by polynomials: `x` in `POT_RANGE`. */
  over(x: number): Boiling;
  /** The vapour of that alone. */
  vapourOver(x: number): Quantity<'moleFraction'>;
  /** Mole fraction in the pot when the distillate has this strength, or undefined when it never has. */
  potAt(strength: Quantity<'strength'>): number | undefined;
  /** Moles left in the pot at `x`, in `POT_RANGE`, for as many at the beginning as the curve chooses: what counts is how they fall. */
  molesAt(x: number): number;
  /** Moles left in the pot at `to`, for one mole in it at `from`; both in `POT_RANGE`. */
  left(from: number, to: number): number;
}

const CLOSE = 1e-14; // of a pot's mole fraction: to so little it is found, however weak it is

/** The curve of one still setting. Rayleigh's law: d ln(moles in the pot) = dx / (y − x). */
function drawCurve(setting: StillSetting): StillCurve {
  const reflux = within('The reflux', setting.reflux, 0, 1);
  const { first, second, temperature } = boilingPot(setting);
  // Filled in one loop: `map` takes longer.
  const vapours = new Array<number>(POTS.length); // at POTS
  const enrichment = new Array<number>(POTS.length); // followed
  const slopes = new Array<number>(POTS.length); // d ln(moles) by d logit(x): smooth, and steady as x nears nothing
  for (let i = 0; i < POTS.length; i++) {
    const x = POTS[i]!;
    const times = first.values[i]! + reflux * (second.values[i]! - first.values[i]!);
    vapours[i] = times * x;
    enrichment[i] = first.followed[i]! + reflux * (second.followed[i]! - first.followed[i]!);
    slopes[i] = (1 - x) / (times - 1);
  }
  const logMoles = integrate(slopes, 1 / (followedToWater(enrichment) - 1));
  const molesAt = (x: number) => Math.exp(integralAt(logMoles, x));
  const vapourOver = (x: number) => moleFraction(x * followedAt(enrichment, x));

  const findPot = (strength: Quantity<'strength'>) => {
    const y = moleFractionFromMassPercent(massPercentFromStrength(strength));
    const miss = (x: number) => vapourOver(x) - y;
    const [low, high] = neighbours(vapours, y);
    return risingRoot(miss, low, high, CLOSE * low);
  };

  return {
    strengthOver: (x) => strengthOfVapour(distillateOver(moleFraction(x), setting).vapour),
    vapourOver,
    over: (x) => ({ vapour: vapourOver(x), temperature: celsius(followedAt(temperature(), x)) }),
    potAt: remember(findPot, 8),
    molesAt,
    left: (from, to) => molesAt(to) / molesAt(from),
  };
}

/**
 * The curve of a still, drawn once for each setting and remembered: it does not depend on the charge.
 * @example stillCurve({ reflux: share(0), pressure: kilopascals(101.325) }).left(0.1, 0.1) // 1 (nothing has come over)
 */
export const stillCurve = remember(
  drawCurve,
  24,
  (a, b) => a.reflux === b.reflux && a.pressure === b.pressure && a.model === b.model,
);
