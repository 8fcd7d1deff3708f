// How far a result may be off when its inputs are only so sure: each moved by its own ±, as in the GUM.
import { isRefusal } from '../core/refusal.ts';
import { isNumber, type AnyCalculator, type AnyGiven, type AnyResult } from './define.ts';

/** ± of each input that has one, as a standard uncertainty in the input's unit. */
export type PlusMinus = Readonly<Record<string, number>>;

/**
 * ± of every result: the root of the sum of squares of what each input's ± does to it. That is found by moving the input
 * by its whole ± down and up, and the larger change counts, so that a result with a kink, or flat on one side, does not
 * look sure. A bound of the range cuts a move short, and the change is scaled up. Inputs are taken as independent.
 * A result that is refused on both sides has no ±.
 * Source: JCGM 100:2008 (GUM), 5.1.2 and 5.1.3 note 2, there with the mean of the two sides.
 */
export function propagate(calculator: AnyCalculator, given: AnyGiven, plusMinus: PlusMinus): AnyResult {
  const outputs = Object.keys(calculator.outputs);
  const squares: Record<string, number> = Object.fromEntries(outputs.map((name) => [name, 0]));
  const here = answerAt(calculator, given);
  for (const [name, input] of Object.entries(calculator.inputs)) {
    const u = plusMinus[name] ?? 0;
    if (!isNumber(input) || !(u > 0)) continue;
    const value = given[name] as number;
    const ends = [Math.max(input.range[0], value - u), Math.min(input.range[1], value + u)];
    const moves = ends.flatMap((end) => {
      const moved = end === value ? undefined : answerAt(calculator, { ...given, [name]: end });
      return moved ? [{ moved, times: u / Math.abs(end - value) }] : [];
    });
    for (const output of outputs) {
      const changes = moves.map(({ moved, times }) => times * Math.abs(moved[output]! - here?.[output]!));
      squares[output] = squares[output]! + (changes.length > 0 ? Math.max(...changes) : NaN) ** 2;
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
