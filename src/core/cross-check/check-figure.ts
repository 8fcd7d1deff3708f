// One quoted figure against what the others say of it: the measurement test, and whether there is one at all.
import type { QuotedFit } from './fit-quoted.ts';
import {
  canLieBetween,
  NINETY_FIVE,
  quotableFigures,
  vagueOwn,
  type Measured,
  type QuotableName,
} from './quoted.ts';

/** A figure with its standard uncertainty and the range that holds it 95 times in a hundred. */
export interface Estimate {
  readonly value: number;
  readonly standard: number;
  readonly low: number;
  readonly high: number;
}

const LEAST_FREE = 1e-9; // of a row: below this rounding drowns it
const VAGUE = 0.25; // a prediction wider than this part of the figure checks nothing
const NOTHING_NEW = 0.9; // of what is known with nothing quoted: a prediction no better is no check
const FARTHEST = 20; // of a logarithm: as far as a straight line is followed to what others say of a figure

const partly = (figure: QuotableName) => quotableFigures[figure].spread.as === 'part';

/** Ends of a figure that is positive and has a spread in parts are in proportion; of others, as far either way. */
function estimateOf(figure: QuotableName, value: number, standard: number): Estimate {
  if (!partly(figure)) return { value, standard, low: value - NINETY_FIVE * standard, high: value + NINETY_FIVE * standard };
  const times = Math.exp((NINETY_FIVE * standard) / value);
  return { value, standard, low: value / times, high: value * times };
} // prettier-ignore

/** @example estimateIn({ values: { heartStrength: 70 }, sure: { heartStrength: { own: 1 } } }, 'heartStrength') // { value: 70, low: 68.04, high: 71.96 } (70 ± 1.96) */
export const estimateIn = ({ values, sure }: QuotedFit, figure: QuotableName): Estimate =>
  estimateOf(figure, values[figure], sure[figure].own);

/**
 * The spread of a quoted figure, as a part of it or in its own unit.
 * @example spreadUnit({ figure: 'heartStrength', value: 70, spread: 0.5 }) // 0.5 (a strength is sure to so much of its own unit)
 */
export const spreadUnit = ({ figure, value, spread }: Measured) => (partly(figure) ? spread / value : spread);
/**
 * A standard uncertainty in a figure's own unit, as `spreadUnit` has it.
 * @example spreadInUnit('heartStrength', 0.5, { values: {} }) // 0.5 (a strength is sure to so much of its own unit)
 */
export const spreadInUnit = (figure: QuotableName, own: number, { values }: QuotedFit) =>
  partly(figure) ? own / values[figure] : own;

/**
 * Standard uncertainty, as `spreadUnit`, of what the others say of a figure, when all together know it to `sure`; nothing
 * when they say too little, or no more than `bare`, what is known of any house.
 * @example saidByOthers({ figure: 'heartStrength', value: 70, spread: 0.5 }, 0.5, 9) // undefined (all together know no more than it says itself)
 */
export function saidByOthers(measured: Measured, sure: number, bare: number): number | undefined {
  const unit = spreadUnit(measured);
  const free = 1 - (sure / unit) ** 2;
  if (!(free > LEAST_FREE)) return undefined;
  const standard = unit * Math.sqrt(1 / free - 1);
  return standard < NOTHING_NEW * bare ? standard : undefined;
}

/**
 * True of an uncertainty, in a figure's own unit, that checks nothing.
 * @example isTooVague('heartStrength', 70, 100) // true (it may be anything)
 */
export const isTooVague = (figure: QuotableName, value: number, standard: number) =>
  standard > (vagueOwn[figure] ?? VAGUE * Math.abs(value));

export interface Checked {
  readonly measured: Measured;
  readonly test: number;
  readonly fits: Estimate;
  /** False when no value that the figure can have would mend the rest. */
  readonly mendable: boolean;
}

/**
 * The measurement test of one figure, and what the others say it is; nothing when they say too little.
 * @example checkFigure({ figure: 'heartStrength', value: 70, spread: 0.5 }, { values: { heartStrength: 70 }, sure: { heartStrength: { own: 0.5 } } }, [], { heartStrength: { own: 9 } }) // undefined (nothing else bears on it)
 */
export function checkFigure(
  measured: Measured,
  fit: QuotedFit,
  current: readonly Measured[],
  bare: QuotedFit['sure'],
): Checked | undefined {
  const { figure, value } = measured;
  const [sure, known] = [fit.sure[figure].own, bare[figure].own].map((own) => spreadInUnit(figure, own, fit));
  const standard = saidByOthers(measured, sure!, known!);
  if (standard === undefined) return undefined;
  const unit = spreadUnit(measured);
  const free = 1 - (sure! / unit) ** 2;
  const off = partly(figure) ? Math.log(fit.values[figure] / value) : fit.values[figure] - value;
  const middle = partly(figure) ? value * Math.exp(Math.max(-FARTHEST, Math.min(FARTHEST, off / free))) : value + off / free;
  const fits = estimateOf(figure, middle, partly(figure) ? middle * standard : standard);
  if (isTooVague(figure, fits.value, fits.standard)) return undefined;
  return { measured, test: off / unit / Math.sqrt(free), fits, mendable: canLieBetween(figure, [fits.low, fits.high], current) };
} // prettier-ignore
