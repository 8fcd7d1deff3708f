// How far a result may be off when its inputs are only so sure: first order, as in the GUM.
import { isRefusal } from '../core/refusal.ts';
import { isNumber, type AnyCalculator, type AnyGiven, type AnyResult } from './define.ts';

/** ± of each input that has one, as a standard uncertainty in the input's unit. */
export type PlusMinus = Readonly<Record<string, number>>;

const PART = 0.05; // of the ± by which an input is moved to find the slope there

/**
 * ± of every result: the root of the sum of (slope × ±)² over the inputs, slopes by central difference.
 * Inputs are taken as independent. A result whose slope cannot be found (a refusal close by) has no ±.
 * Source: JCGM 100:2008 (GUM), 5.1.2, law of propagation of uncertainty.
 */
export function propagate(calculator: AnyCalculator, given: AnyGiven, plusMinus: PlusMinus): AnyResult {
  const squares: Record<string, number> = Object.fromEntries(
    Object.keys(calculator.outputs).map((name) => [name, 0]),
  );
  for (const [name, input] of Object.entries(calculator.inputs)) {
    const u = plusMinus[name] ?? 0;
    if (!isNumber(input) || !(u > 0)) continue;
    const value = given[name] as number;
    const low = Math.max(input.range[0], value - PART * u);
    const high = Math.min(input.range[1], value + PART * u);
    const [below, above] = [low, high].map((moved) => answerAt(calculator, { ...given, [name]: moved }));
    for (const output of Object.keys(squares)) {
      const slope = below && above && high > low ? (above[output]! - below[output]!) / (high - low) : NaN;
      squares[output] = squares[output]! + (slope * u) ** 2;
    }
  }
  return Object.fromEntries(
    Object.entries(squares).flatMap(([name, square]) =>
      Number.isFinite(square) ? [[name, Math.sqrt(square)]] : [],
    ),
  );
}

function answerAt(calculator: AnyCalculator, given: AnyGiven): AnyResult | undefined {
  if (calculator.refuse?.(given) !== undefined) return undefined;
  const result = calculator.compute(given);
  return isRefusal(result) ? undefined : result;
}
