// A calculator's results, for a question whose prompt quotes some of them.
import type {
  Declared,
  GivenInputs,
  Inputs,
  Outputs,
  CalculatorResults,
} from '../../../calculators/define.ts';
import { isRefusal } from '../../../core/refusal.ts';

/** The results for what is given; only for a prompt or a slip, which are made after the sum was found to have an answer. */
export function resultOf<I extends Inputs, O extends Outputs>(
  calculator: Declared<I, O>,
  given: GivenInputs<I>,
): CalculatorResults<O> {
  const result = calculator.compute(given as Parameters<typeof calculator.compute>[0]);
  if (isRefusal(result)) throw new RangeError(result.refused);
  return result as unknown as CalculatorResults<O>;
}
