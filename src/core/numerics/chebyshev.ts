// A smooth function over one stretch, followed by a polynomial through Chebyshev’s points: asked a few times, it answers anywhere.

import { remember } from './remember.ts';

/** A polynomial as a sum of Chebyshev’s: the weight of each, the constant first. */
export type ChebyshevSeries = readonly number[];

/**
 * Where to look at a function between `low` and `high`: `count` points, from high to low, closer together towards both ends.
 * @example chebyshevPoints(-1, 1, 2) // [0.7071, -0.7071] (cosines of 45° and 135°)
 */
export function chebyshevPoints(low: number, high: number, count: number): readonly number[] {
  return Array.from(
    { length: count },
    (_, k) => (low + high) / 2 + ((high - low) / 2) * Math.cos((Math.PI * (k + 0.5)) / count),
  );
}

/** The cosines of a series through so many points, order by order. */
const cosines = remember(
  (count: number) =>
    Array.from({ length: count }, (_, order) =>
      Array.from({ length: count }, (_, k) => Math.cos((Math.PI * order * (k + 0.5)) / count)),
    ),
  4,
);

/**
 * The series through the values at Chebyshev’s points. Source: DLMF section 3.11(ii), from memory.
 * @example chebyshevSeries([3, 3]) // [3, 0] (a constant)
 */
export function chebyshevSeries(values: readonly number[]): ChebyshevSeries {
  const count = values.length;
  return cosines(count).map((row, order) => {
    let sum = 0;
    for (let k = 0; k < count; k++) sum += values[k]! * row[k]!;
    return ((order === 0 ? 1 : 2) / count) * sum;
  });
}

/**
 * The value of a series part of the way along its stretch: −1 at its low end, 1 at its high end. By Clenshaw’s recurrence. Source: the same.
 * @example seriesAt([1, 2, 3], 1) // 6 (each of Chebyshev’s polynomials is 1 there)
 */
export function seriesAt(series: ChebyshevSeries, along: number): number {
  let [newer, older] = [0, 0];
  for (let order = series.length - 1; order > 0; order--)
    [newer, older] = [2 * along * newer - older + series[order]!, newer];
  return along * newer - older + series[0]!;
}

/**
 * The integral of a series from −1, as a series: times half the length of the stretch, it is that of the function. Source: the same.
 * @example integralOf([1]) // [1, 1] (from −1 the integral of 1 is 1 + x)
 */
export function integralOf(series: ChebyshevSeries): ChebyshevSeries {
  const at = (order: number) => (order === 0 ? 2 * series[0]! : (series[order] ?? 0));
  const higher = series.map((_, i) => (at(i) - at(i + 2)) / (2 * (i + 1)));
  const atLow = higher.reduce((sum, weight, i) => sum + (i % 2 === 0 ? -weight : weight), 0);
  return [-atLow, ...higher];
}
