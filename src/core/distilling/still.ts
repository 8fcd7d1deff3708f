// A pot still as a curve: what comes over from each strength of liquid in the pot, and how the pot empties.
import { remember } from '../numerics/remember.ts';
import {
  chebyshevPoints,
  chebyshevSeries,
  integralOf,
  seriesAt,
  type ChebyshevSeries,
} from '../numerics/chebyshev.ts';
import { fromLogit, logit } from '../numerics/logit.ts';
import { bracketedRoot } from '../numerics/root.ts';
import { celsius, moleFraction, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import { massPercentFromMoleFraction, moleFractionFromMassPercent } from '../spirit/amounts.ts';
import { massPercentFromStrength, strengthFromMassPercent } from '../spirit/strength.ts';
import { vapourOver, type Boiling, type VapourModel } from '../vapour/equilibrium.ts';

/** How a still is run. `reflux` 0–1: the part of one further stage that head and neck give. `pressure` 20–150 kPa. */
export interface StillSetting {
  readonly reflux: Quantity<'share'>;
  readonly pressure: Quantity<'pressure'>;
  /** How vapour over liquid is reckoned; van Laar when left out. */
  readonly model?: VapourModel;
}

/** Mole fractions in the pot between which a still can be followed: 0.0033 to 92 % vol. */
export const POT_RANGE = { weakest: 1e-5, strongest: 0.75 } as const;

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
  /** Mole fraction in the pot when the distillate has this strength, or undefined when it never has. */
  potAt(strength: Quantity<'strength'>): number | undefined;
  /** Moles left in the pot at `to`, for one mole in it at `from`; both in `POT_RANGE`. */
  left(from: number, to: number): number;
}

const PANELS = 16; // of the pot's range, each followed by polynomials
const POINTS = 14; // at which each panel is looked at; that they are enough: tests/core/still.test.ts
const START = logit(POT_RANGE.weakest);
const END = logit(POT_RANGE.strongest);
const WIDTH = (END - START) / PANELS;
const HAIR = 1e-9; // of a panel, by which rounding may step over an end

/** Follows a function of logit(x) from panel to panel. */
function follow(panels: readonly ChebyshevSeries[]): (u: number) => number {
  return (u) => {
    const at = (within('The pot, as logit,', u, START - HAIR, END + HAIR) - START) / WIDTH;
    const panel = Math.min(PANELS - 1, Math.max(0, Math.floor(at)));
    return seriesAt(panels[panel]!, 2 * (at - panel) - 1);
  };
}

/** What each panel shows at one pressure, by one model: the pot, the vapour over it, the vapour over that vapour condensed; and the same followed. */
const looks = remember(
  ({ pressure, model }: Omit<StillSetting, 'reflux'>) =>
    Array.from({ length: PANELS }, (_, i) => {
      const x = chebyshevPoints(START + i * WIDTH, START + (i + 1) * WIDTH, POINTS).map(fromLogit);
      const boiling = x.map((each) => vapourOver(moleFraction(each), pressure, model));
      const first = boiling.map(({ vapour }) => vapour);
      const second = first.map((each) => vapourOver(each, pressure, model).vapour);
      const temperature = boiling.map((each) => each.temperature);
      const series = {
        first: chebyshevSeries(first),
        second: chebyshevSeries(second),
        temperature: chebyshevSeries(temperature),
      };
      return { x, first, second, series };
    }),
  4,
  ({ pressure, model }) => `${pressure}|${model?.name}`,
);

/** The curve of one still setting. Rayleigh's law: d ln(moles in the pot) = dx / (y − x). */
function drawCurve(setting: StillSetting): StillCurve {
  const reflux = within('The reflux', setting.reflux, 0, 1);
  const panels = looks(setting);
  const over = (first: number, second: number) => first + reflux * (second - first);
  const boilsAt = follow(panels.map(({ series }) => series.temperature));
  const vapourAt = follow(
    panels.map(({ series: { first, second } }) => first.map((weight, i) => over(weight, second[i]!))),
  );

  // d ln(moles) by d logit(x): smooth over the whole range, and steady as x nears nothing.
  let sum = 0;
  const moles = panels.map(({ x, first, second }) => {
    const slope = x.map((pot, k) => (pot * (1 - pot)) / (over(first[k]!, second[k]!) - pot));
    const [atLow, ...higher] = integralOf(chebyshevSeries(slope)).map((weight) => (WIDTH / 2) * weight);
    const series = [sum + atLow!, ...higher];
    sum = seriesAt(series, 1);
    return series;
  });
  const logMoles = follow(moles);

  const findPot = (strength: Quantity<'strength'>) => {
    const y = moleFractionFromMassPercent(massPercentFromStrength(strength));
    const miss = (u: number) => vapourAt(u) - y;
    return miss(START) > 0 || miss(END) < 0 ? undefined : fromLogit(bracketedRoot(miss, START, END));
  };

  return {
    strengthOver: (x) => strengthOfVapour(distillateOver(moleFraction(x), setting).vapour),
    over: (x) => {
      const u = logit(x);
      return { vapour: moleFraction(vapourAt(u)), temperature: celsius(boilsAt(u)) };
    },
    potAt: remember(findPot, 64),
    left: (from, to) => Math.exp(logMoles(logit(to)) - logMoles(logit(from))),
  };
}

/**
 * The curve of a still, drawn once for each setting and remembered: it does not depend on the charge.
 * @example stillCurve({ reflux: share(0), pressure: kilopascals(101.325) }).left(0.1, 0.1) // 1 (nothing has come over)
 */
export const stillCurve = remember(
  drawCurve,
  24,
  ({ reflux, pressure, model }) => `${reflux}|${pressure}|${model?.name}`,
);
