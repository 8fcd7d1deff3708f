// The little geometry that drawings share: scales, ticks, paths.

export type Scale = (value: number) => number;

/** A straight scale that takes the least and greatest of `values` to two places on the page. */
export function span(values: readonly number[], from: number, to: number): Scale {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const slope = high === low ? 0 : (to - from) / (high - low);
  return (value) => from + slope * (value - low);
}

/** Round numbers between the least and greatest of `values`, about `count` of them. */
export function axisTicks(values: readonly number[], count: number): readonly number[] {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  if (!(high > low)) return [low];
  const rough = (high - low) / count;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((n) => n * power).find((n) => n >= rough * 0.999)!;
  const first = Math.ceil(low / step - 1e-9);
  return Array.from({ length: Math.floor(high / step + 1e-9) - first + 1 }, (_, i) => (first + i) * step);
}

/** An SVG path through points given as two columns. */
export function linePath(xs: readonly number[], ys: readonly number[], x: Scale, y: Scale): string {
  return xs
    .map((value, i) => `${i === 0 ? 'M' : 'L'}${x(value).toFixed(1)} ${y(ys[i]!).toFixed(1)}`)
    .join('');
}
