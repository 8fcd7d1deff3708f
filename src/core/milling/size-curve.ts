// How fine a grist is: what passes each sieve, and the size that half of it passes.
import { percent, quantity, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import { refuse, type Refusal } from '../refusal.ts';

export interface Sieve {
  /** Opening of the mesh, mm. */
  readonly opening: Quantity<'opening'>;
  /** What stayed on it, g. */
  readonly mass: Quantity<'grams'>;
}
export interface SizePoint extends Sieve {
  /** Part of the grist that passed this sieve, %. */
  readonly passing: Quantity<'percent'>;
}
export interface SizeCurve {
  /** From the finest sieve to the widest. */
  readonly points: readonly SizePoint[];
  /** Size that half the mass passes, mm. */
  readonly median: Quantity<'opening'>;
  readonly total: Quantity<'grams'>;
}

/**
 * The curve of sizes from a stack of sieves in any order and the pan below them. Between two sieves the part
 * that passes is taken to grow evenly with the logarithm of the size, as is usual for ground stuff.
 * Openings above 0 mm, masses from 0 g. Refuses an empty stack, an opening given twice, and a median beyond the sieves.
 * @example sizeCurve([{ opening: 1, mass: 25 }, { opening: 2, mass: 25 }], 50).median // 1 (half is in the pan below it)
 */
export function sizeCurve(sieves: readonly Sieve[], pan: Quantity<'grams'>): SizeCurve | Refusal {
  within('The pan, g,', pan, 0, Infinity);
  const stack = [...sieves].sort((a, b) => a.opening - b.opening);
  for (const [i, { opening, mass }] of stack.entries()) {
    within('The opening, mm,', opening, Number.MIN_VALUE, Infinity);
    within('The mass on a sieve, g,', mass, 0, Infinity);
    if (opening === stack[i - 1]?.opening) {
      return refuse(`Two sieves of ${opening} mm were given; each opening can stand once.`);
    }
  }
  const total = stack.reduce<number>((sum, { mass }) => sum + mass, pan);
  if (total === 0) return refuse('Nothing lies on the sieves or in the pan, so there is no curve to draw.');

  let below: number = pan;
  const points = stack.map(({ opening, mass }) => {
    const passing = percent((100 * below) / total);
    below += mass;
    return { opening, mass, passing };
  });
  const median = medianOf(points);
  return typeof median === 'number' ? { points, median, total: quantity('grams', total) } : median;
}

function medianOf(points: readonly SizePoint[]): Quantity<'opening'> | Refusal {
  const at = points.findIndex(({ passing }) => passing >= 50);
  const upper = points[at];
  if (!upper) {
    return refuse(
      `More than half of the grist stays on the widest sieve, ${points.at(-1)?.opening} mm; its middle size needs a wider one.`,
    );
  }
  const lower = points[at - 1];
  if (upper.passing === 50) return upper.opening;
  if (!lower) {
    return refuse(
      `More than half of the grist passes the finest sieve, ${upper.opening} mm; its middle size needs a finer one.`,
    );
  }
  const part = (50 - lower.passing) / (upper.passing - lower.passing);
  return quantity('opening', lower.opening * (upper.opening / lower.opening) ** part);
}
