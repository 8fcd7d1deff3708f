// Where traces come over in a spirit run: Rayleigh's law for something too dilute to change anything else.
import { gaussPanel } from '../numerics/gauss.ts';
import { fromLogit, logit } from '../numerics/logit.ts';
import { moleFraction, quantity, type Quantity, type Spirit } from '../quantity.ts';
import { isRefusal, type Refusal } from '../refusal.ts';
import { amountsOf, minus, portionOf, type Amounts } from '../spirit/amounts.ts';
import { vapourOver } from '../vapour/equilibrium.ts';
import { cutAmounts, type Cuts, type RunParts } from './cuts.ts';
import { potAmounts } from './run.ts';
import { strengthOfVapour, type StillSetting } from './still.ts';

/** How a trace boils out: mole share in the vapour over mole share in the liquid, in water; and volatility against ethanol, in ethanol. */
export interface Congener {
  readonly inWater: number;
  readonly inAlcohol: number;
}

// All low confidence; the review with measured figures was not seen.
export const congeners = {
  acetaldehyde: { inWater: 50, inAlcohol: 5 }, // computed, partly from memory, ignores hydration; memory, from its vapour pressure
  ethylAcetate: { inWater: 175, inAlcohol: 2.3 }, // memory, 150 to 200; memory
  methanol: { inWater: 8.7, inAlcohol: 1.75 }, // computed from published constants; memory, from its vapour pressure
  isoamylAlcohol: { inWater: 25, inAlcohol: 0.13 }, // memory, 20 to 30; memory, from its vapour pressure
} as const satisfies Record<string, Congener>;
export type CongenerName = keyof typeof congeners;

const DILUTE = moleFraction(1e-6); // mole fraction of ethanol that stands for none
/** Ethanol's own volatility in water at ordinary air pressure, about 12: that of which the table's are parts. */
export const ETHANOL_IN_WATER = vapourOver(DILUTE).vapour / DILUTE;

/** Volatility against ethanol's in a liquid with mole fraction `x` of it: even, on a logarithmic scale, from water to alcohol. */
function againstEthanol({ inWater, inAlcohol }: Congener, x: number): number {
  return (inWater / ETHANOL_IN_WATER) ** (1 - x) * inAlcohol ** x;
}

/**
 * Volatility of a trace over a liquid with mole fraction `x` of ethanol, above 0 and up to 1: its share in the
 * vapour over its share in the liquid. Ethanol's own, computed, times the relative one. `pressure` 20–150 kPa.
 * @example volatility(congeners.methanol, moleFraction(1e-6), kilopascals(101.325)) // 8.70 (the table’s own, in water)
 */
export function volatility(
  congener: Congener,
  x: Quantity<'moleFraction'>,
  pressure: Quantity<'pressure'>,
): number {
  return (vapourOver(x, pressure).vapour / x) * againstEthanol(congener, x);
}

/** Vapour of ethanol and volatility of a trace over the whole still: one stage, and `reflux` of the way to a second one. */
function overStill(congener: Congener, x: number, { reflux, pressure }: StillSetting) {
  const first = vapourOver(moleFraction(x), pressure).vapour;
  const once = (first / x) * againstEthanol(congener, x);
  if (reflux === 0) return { vapour: first, volatility: once };
  const second = vapourOver(first, pressure).vapour;
  const twice = once * (second / first) * againstEthanol(congener, first);
  return {
    vapour: moleFraction(first + reflux * (second - first)),
    volatility: once + reflux * (twice - once),
  };
}

/**
 * Volatility of a trace over the whole still: as `volatility`, lifted by head and neck as they lift ethanol. Above 0 and up to 1.
 * @example volatilityOverStill(congeners.methanol, 1e-6, { reflux: share(0), pressure: kilopascals(101.325) }) // 8.70 (a bare pot is one stage)
 */
export const volatilityOverStill = (
  congener: Congener,
  x: Quantity<'moleFraction'>,
  setting: StillSetting,
): number => overStill(congener, x, setting).volatility;

/** One moment of a run: what has come over, its strength at the safe, and how much of the trace is in it. */
export interface TracePoint {
  readonly volume: Quantity<'volume20'>;
  readonly strength: Quantity<'strength'>;
  /** Trace to a litre of pure alcohol; that of the charge is 1. */
  readonly concentration: Quantity<'ratio'>;
}
export interface Trace {
  /** Part of all of it, 0–1, in each part of the run. */
  readonly shares: RunParts<number>;
  readonly points: readonly TracePoint[];
}

const LONGEST_PANEL = 0.3; // as a step of ln(x / (1 − x)); a third of it moves no share by 1e-9, see tests/core/congeners.test.ts
const FEWEST_PANELS = 16; // in each part of the run, so that its curve is drawn smoothly
const fractionOf = ({ ethanol, water }: Amounts) => ethanol / (ethanol + water);

/**
 * Follows a trace through a run with its cuts: d ln(trace left) = volatility × d ln(moles in the pot).
 * Refuses cuts that the run never reaches or that are out of order.
 * Source: Rayleigh's law; the volatilities are of low confidence.
 * @example followCongener({ volume: litres20(1000), strength: strength(30) }, { reflux: share(0), pressure: kilopascals(101.325) }, { foreshots: { share: share(0) }, heart: strength(60), feints: strength(1) }, congeners.methanol).shares.foreshots // 0 (nothing came over in them)
 */
export function followCongener(
  spirit: Spirit,
  setting: StillSetting,
  cuts: Cuts,
  congener: Congener,
  longestPanel = LONGEST_PANEL,
): Trace | Refusal {
  const charge = amountsOf(spirit);
  const parts = cutAmounts(charge, setting, cuts);
  if (isRefusal(parts)) return parts;
  const begun = minus(charge, parts.foreshots);
  const ends = [charge, begun, minus(begun, parts.heart), parts.residue].map(fractionOf);

  const slope = (u: number) => {
    const x = fromLogit(u);
    const over = overStill(congener, x, setting);
    return (over.volatility * x * (1 - x)) / (over.vapour - x);
  };
  let logLeft = 0;
  const pointAt = (x: number): TracePoint => {
    const pot = potAmounts(charge, setting, x);
    const over = overStill(congener, x, setting);
    const toEthanol = (Math.exp(logLeft) * over.volatility * x * charge.ethanol) / over.vapour / pot.ethanol;
    return {
      volume: portionOf(minus(charge, pot)).volume,
      strength: strengthOfVapour(over.vapour),
      concentration: quantity('ratio', toEthanol),
    };
  };
  const points = [pointAt(ends[0]!)];
  const left = [1];
  for (let part = 1; part < ends.length; part++) {
    const [from, to] = [logit(ends[part - 1]!), logit(ends[part]!)];
    const panels = from > to ? Math.max(FEWEST_PANELS, Math.ceil((from - to) / longestPanel)) : 0;
    for (let i = 0; i < panels; i++) {
      const [a, b] = [i, i + 1].map((k) => from + ((to - from) * k) / panels);
      logLeft += gaussPanel(slope, a!, b!);
      points.push(pointAt(fromLogit(b!)));
    }
    left.push(Math.exp(logLeft));
  }
  const [begin, middle, end] = [left[1]!, left[2]!, left[3]!];
  return {
    shares: { foreshots: 1 - begin, heart: begin - middle, feints: middle - end, residue: end },
    points,
  };
}
