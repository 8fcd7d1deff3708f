// A pot still as a curve: what comes over from each strength of liquid in the pot, and how the pot empties.
import { remember } from '../numerics/remember.ts';
import { gaussPanel, panelPoints } from '../numerics/gauss.ts';
import { bracketedRoot } from '../numerics/root.ts';
import { moleFraction, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import { massPercentFromMoleFraction, moleFractionFromMassPercent } from '../spirit/amounts.ts';
import { massPercentFromStrength, strengthFromMassPercent } from '../spirit/strength.ts';
import { vapourOver, type Boiling } from '../vapour/equilibrium.ts';

/** How a still is run. `reflux` 0–1: the part of one further stage that head and neck give. `pressure` 20–150 kPa. */
export interface StillSetting {
  readonly reflux: Quantity<'share'>;
  readonly pressure: Quantity<'pressure'>;
}

/** Mole fractions in the pot between which a still can be followed: 0.0033 to 92 % vol. */
export const POT_RANGE = { weakest: 1e-5, strongest: 0.75 } as const;

/**
 * The distillate over a pot whose liquid has mole fraction `x`, and the boiling point of that liquid.
 * One equilibrium stage, and `reflux` of the way from its vapour to the vapour of one more stage.
 */
export function distillateOver(x: Quantity<'moleFraction'>, { reflux, pressure }: StillSetting): Boiling {
  const first = vapourOver(x, pressure);
  if (reflux === 0) return first;
  const second = vapourOver(first.vapour, pressure).vapour;
  return {
    vapour: moleFraction(first.vapour + reflux * (second - first.vapour)),
    temperature: first.temperature,
  };
}

/** Strength, % vol, of the liquid into which a vapour condenses. */
export function strengthOfVapour(vapour: Quantity<'moleFraction'>): Quantity<'strength'> {
  return strengthFromMassPercent(massPercentFromMoleFraction(vapour));
}

export interface StillCurve {
  /** Strength of the distillate, % vol, over a pot with mole fraction `x`. */
  strengthOver(x: number): Quantity<'strength'>;
  /** Mole fraction in the pot when the distillate has this strength, or undefined when it never has. */
  potAt(strength: Quantity<'strength'>): number | undefined;
  /** Moles left in the pot at `to`, for one mole in it at `from`. */
  left(from: number, to: number): number;
}

const logit = (x: number) => Math.log(x / (1 - x));
const fromLogit = (u: number) => 1 / (1 + Math.exp(-u));
const PANELS = 56; // panels of the pot's range; halving them moves no strength by 1e-9, see tests/core/still.test.ts
const START = logit(POT_RANGE.weakest);
const WIDTH = (logit(POT_RANGE.strongest) - START) / PANELS;

/** Where the panels look, for one pressure: the pot, the vapour over it, and the vapour over that vapour condensed. */
const looks = remember((pressure: Quantity<'pressure'>) => {
  const panel = (i: number) =>
    panelPoints(START + i * WIDTH, START + (i + 1) * WIDTH).map(({ at, weight }) => {
      const x = fromLogit(at);
      const first = vapourOver(moleFraction(x), pressure).vapour;
      return { x, first, second: vapourOver(first, pressure).vapour, weight: weight * x * (1 - x) };
    });
  return Array.from({ length: PANELS }, (_, i) => panel(i));
}, 4);

/** The curve of one still setting. Rayleigh's law: d ln(moles in the pot) = dx / (y − x). */
function drawCurve(setting: StillSetting): StillCurve {
  const reflux = within('The reflux', setting.reflux, 0, 1);

  /** d ln(moles) by d logit(x): smooth over the whole range, and steady as x nears nothing. */
  const slope = (u: number) => {
    const x = fromLogit(u);
    const { vapour } = distillateOver(moleFraction(x), setting);
    return (x * (1 - x)) / (vapour - x);
  };
  const sums = [0];
  for (const panel of looks(setting.pressure)) {
    const whole = panel.reduce(
      (sum, { x, first, second, weight }) => sum + weight / (first + reflux * (second - first) - x),
      0,
    );
    sums.push(sums.at(-1)! + whole);
  }
  const fromStart = remember((x: number) => {
    const u = logit(x);
    const panel = Math.min(PANELS - 1, Math.max(0, Math.floor((u - START) / WIDTH)));
    return sums[panel]! + gaussPanel(slope, START + panel * WIDTH, u);
  }, 16);
  const findPot = (strength: Quantity<'strength'>) => {
    const y = moleFractionFromMassPercent(massPercentFromStrength(strength));
    const miss = (u: number) => distillateOver(moleFraction(fromLogit(u)), setting).vapour - y;
    const end = START + PANELS * WIDTH;
    return miss(START) > 0 || miss(end) < 0 ? undefined : fromLogit(bracketedRoot(miss, START, end));
  };
  const potAt = remember(findPot, 64);

  return {
    strengthOver: (x) => strengthOfVapour(distillateOver(moleFraction(x), setting).vapour),
    potAt,
    left: (from, to) => Math.exp(fromStart(to) - fromStart(from)),
  };
}

/** The curve of a still, drawn once for each setting and remembered: it does not depend on the charge. */
export const stillCurve = remember(drawCurve, 8, ({ reflux, pressure }) => `${reflux}|${pressure}`);
