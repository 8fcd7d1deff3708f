// Where a talk does a sum aloud: a number that two before it make, multiplied, divided, added or taken away.
import type { SpokenQuantity } from './quantities.ts';

export const manners = ['times', 'over', 'plus', 'less'] as const;
type Manner = (typeof manners)[number];

/** How surely a quantity is what a sum comes to, and how surely it goes into one, in each manner. */
export interface SumAloud {
  readonly result: Partial<Record<Manner, number>>;
  readonly part: Partial<Record<Manner, number>>;
}

const BEFORE = 5; // quantities that may go into a sum
const REACH = 260; // letters
const EXACT = 0.002; // part of a result within which the sum holds
const SMALL = 12; // a number that so many sums come to that none is told by it
const scales = [1, 100, 1000, 0.01, 0.001]; // per cent and thousands of a unit

const digitsOf = (value: number): number =>
  String(value)
    .replace(/[.-]/g, '')
    .replace(/^0+|0+$/g, '').length;

/** What each quantity of a talk is to the sums that are done aloud, in order. */
export function sumsAloudIn(quantities: readonly SpokenQuantity[]): SumAloud[] {
  const found = quantities.map((): { result: Partial<Record<Manner, number>>; part: Partial<Record<Manner, number>> } => ({ result: {}, part: {} }));
  const raise = (of: Partial<Record<Manner, number>>, manner: Manner, sure: number) => {
    of[manner] = Math.max(of[manner] ?? 0, sure);
  };
  for (let i = 2; i < quantities.length; i++) {
    const { value, start, dimension } = quantities[i]!;
    if (value === undefined || Math.abs(value) <= SMALL && digitsOf(value) < 2 || dimension === 'date' || dimension === 'clock') continue;
    const sure = digitsOf(value) >= 3 ? 1 : 0.4;
    const isSum = (made: number) => Math.abs(made / value - 1) <= EXACT;
    for (let j = Math.max(0, i - BEFORE); j < i - 1; j++) {
      const a = quantities[j]!.value;
      if (a === undefined || a === 1 || a === 0 || start - quantities[j]!.end > REACH) continue;
      for (let k = j + 1; k < i; k++) {
        const b = quantities[k]!.value;
        if (b === undefined || b === 1 || b === 0) continue;
        const manner = scales.some((scale) => isSum(a * b * scale)) ? 'times'
          : scales.some((scale) => isSum((a / b) * scale) || isSum((b / a) * scale)) ? 'over'
          : isSum(a + b) ? 'plus'
          : isSum(Math.abs(a - b)) ? 'less'
          : undefined;
        if (!manner) continue;
        raise(found[i]!.result, manner, sure);
        raise(found[j]!.part, manner, sure);
        raise(found[k]!.part, manner, sure);
      }
    }
  }
  return found;
} // prettier-ignore
