// A smooth function over one stretch, followed by a polynomial through Chebyshev’s points: asked a few times, it answers anywhere.

/** A polynomial as a sum of Chebyshev’s: the weight of each, the constant first. */
export type ChebyshevSeries = number[];

/**
 * Where to look at a function between `low` and `high`: `count` points, from high to low, closer together towards both ends.
 * @example chebyshevPoints(-1, 1, 2) // [0.7071, -0.7071] (cosines of 45° and 135°)
 */
export function chebyshevPoints(low: number, high: number, count: number): number[] {
  return Array.from(
    { length: count },
    (_, k) => (low + high) / 2 + ((high - low) / 2) * Math.cos((Math.PI * (k + 0.5)) / count),
  );
}

const tables: number[][] = []; // one for each count of points, made when first asked for

/** What the points of the upper half weigh in each order of a series through so many points, order by order. */
function weightsOf(count: number): number[] {
  const half = count / 2;
  return (tables[count] ??= Array.from({ length: count * half }, (_, i) => {
    const [order, k] = [Math.floor(i / half), i % half];
    return ((order === 0 ? 1 : 2) / count) * Math.cos((Math.PI * order * (k + 0.5)) / count);
  }));
}

/**
 * The series through the values at Chebyshev’s points, an even `count` of them; of many stretches at once, one behind the other.
 * Source: DLMF section 3.11(ii), from memory.
 * @example chebyshevSeries([3, 3]) // [3, 0] (a constant)
 */
export function chebyshevSeries(values: readonly number[], count = values.length): ChebyshevSeries {
  const series = new Array<number>(values.length);
  const half = count / 2;
  const weights = weightsOf(count);
  for (let from = 0; from < values.length; from += count) {
    for (let order = 0; order < count; order += 2) {
      // A cosine weighs the lower half of the points as the upper one, in odd orders with the other sign: two orders are summed in one go.
      const row = order * half;
      let even = 0;
      let odd = 0;
      for (let k = 0; k < half; k++) {
        const upper = values[from + k]!;
        const lower = values[from + count - 1 - k]!;
        even += (upper + lower) * weights[row + k]!;
        odd += (upper - lower) * weights[row + half + k]!;
      }
      series[from + order] = even;
      series[from + order + 1] = odd;
    }
  }
  return series;
}

/**
 * The value of a series part of the way along its stretch: −1 at its low end, 1 at its high end. Of many series one behind
 * the other, that of the `count` weights after `from`. By Clenshaw’s recurrence. Source: the same.
 * @example seriesAt([1, 2, 3], 1) // 6 (each of Chebyshev’s polynomials is 1 there)
 */
export function seriesAt(series: ChebyshevSeries, along: number, from = 0, count = series.length): number {
  const twice = 2 * along;
  let newer = 0;
  let older = 0;
  for (let i = from + count - 1; i > from; i--) {
    const next = twice * newer + (series[i]! - older);
    older = newer;
    newer = next;
  }
  return along * newer - older + series[from]!;
}

/**
 * The integral of a series from −1, as a series with one order more; of many series of `count` weights at once.
 * Times half the length of a stretch, it is that of the function. Source: the same.
 * @example integralOf([1]) // [1, 1] (from −1 the integral of 1 is 1 + x)
 */
export function integralOf(series: ChebyshevSeries, count = series.length): ChebyshevSeries {
  const integrals = new Array<number>((series.length / count) * (count + 1));
  for (let from = 0, to = 0; from < series.length; from += count, to += count + 1) {
    let atLow = 0;
    for (let order = 1; order <= count; order++) {
      const below = (order === 1 ? 2 : 1) * series[from + order - 1]!;
      const above = order + 1 < count ? series[from + order + 1]! : 0;
      const weight = (below - above) / (2 * order);
      integrals[to + order] = weight;
      atLow += order % 2 === 0 ? weight : -weight;
    }
    integrals[to] = -atLow;
  }
  return integrals;
}
