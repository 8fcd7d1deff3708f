// Finds a calculator by its id; an unknown id stops the build.
import type { AnyCalculator } from '../calculators/define.ts';

export function pick(calculators: readonly AnyCalculator[], id: string): AnyCalculator {
  const found = calculators.find((calculator) => calculator.id === id);
  if (!found) throw new RangeError(`No calculator of this stage is called "${id}".`);
  return found;
}
