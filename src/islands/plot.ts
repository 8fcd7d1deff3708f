// The little geometry that drawings share: scales, ticks, paths.

export type Scale = (value: number) => number;

/** A straight scale that takes the least and greatest of `values` to two places on the page. */
export function scaleOver(values: readonly number[], from: number, to: number): Scale {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const slope = high === low ? 0 : (to - from) / (high - low);
  return (value) => from + slope * (value - low);
}

const [ROUND, TINY] = [[1, 2, 5, 10], 1e-9];

/** The round distance that cuts a length into about `count` parts. */
function roundStep(length: number, count: number): number {
  const rough = length / count;
  const power = 10 ** Math.floor(Math.log10(rough));
  return ROUND.map((n) => n * power).find((n) => n >= rough * 0.999)!;
}

/** The next end of an axis that falls on one of about `count` marks over a length, by itself that from nothing. */
export function roundUp(end: number, count: number, length = end): number {
  const step = roundStep(length, count);
  return step * Math.ceil(end / step - TINY);
}

/** The end before, likewise. */
export const roundDown = (end: number, length: number, count: number): number =>
  -roundUp(-end, count, length);

/** Round numbers between the least and greatest of `values`, about `count` of them and no closer than `least`. */
export function axisTicks(values: readonly number[], count: number, least = 0): readonly number[] {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  if (!(high > low)) return [low];
  const step = Math.max(least, roundStep(high - low, count));
  const first = Math.ceil(low / step - TINY);
  return Array.from({ length: Math.floor(high / step + TINY) - first + 1 }, (_, i) => (first + i) * step);
}

/** The points of an SVG line given as two columns. Browsers take them faster than a path, which they hold for a style. */
export function linePoints(xs: readonly number[], ys: readonly number[], x: Scale, y: Scale): string {
  return xs.map((value, i) => `${x(value).toFixed(1)},${y(ys[i]!).toFixed(1)}`).join(' ');
}
