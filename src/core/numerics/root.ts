// Where a continuous function crosses zero, found inside a bracket.

const STEPS = 200; // more than any bracket of doubles needs

/**
 * The root of `f` between `low` and `high`, by Chandrupatla's method: inverse quadratic steps where they are safe, halving elsewhere.
 * Its first step is where a straight line would cross. Stops when the bracket is `tolerance` wide. Refuses (throws) when `f` has one sign at both ends: it never guesses outside.
 * Source: Chandrupatla, Advances in Engineering Software 28, 145–149 (1997), from memory.
 * @example bracketedRoot((x) => x ** 2 - 2, 0, 2) // 1.414213562 (the root of two)
 * @example bracketedRoot((x) => x ** 2 + 1, 0, 2) // throws: No change of sign (it has no root)
 */
export function bracketedRoot(
  f: (x: number) => number,
  low: number,
  high: number,
  tolerance = 1e-14,
  atLow = f(low),
  atHigh = f(high),
): number {
  // a is the newest point, b the other end of the bracket, c the point before.
  let a = high;
  let b = low;
  let fa = atHigh;
  let fb = atLow;
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (fa > 0 === fb > 0 || Number.isNaN(fa + fb)) {
    throw new RangeError(`No change of sign between ${low} and ${high}.`);
  }
  let part = fa / (fa - fb) || 0.5;
  for (let step = 0; step < STEPS; step++) {
    const x = a + part * (b - a);
    const fx = f(x);
    let c = a;
    let fc = fa;
    if (fx > 0 !== fa > 0) {
      c = b;
      fc = fb;
      b = a;
      fb = fa;
    }
    a = x;
    fa = fx;

    const best = Math.abs(fa) < Math.abs(fb) ? a : b;
    const least = (2 * Number.EPSILON * Math.abs(best) + tolerance) / Math.abs(b - a);
    if (fa === 0 || least > 0.5) return best;

    const xi = (a - b) / (c - b);
    const phi = (fa - fb) / (fc - fb);
    const safe = phi * phi < xi && (1 - phi) ** 2 < 1 - xi;
    part = safe
      ? (fa / (fb - fa)) * (fc / (fb - fc)) + (((c - a) / (b - a)) * fa * fb) / ((fc - fa) * (fc - fb))
      : 0.5;
    part = Math.min(1 - least, Math.max(least, part));
  }
  return a;
}

/**
 * As `bracketedRoot`, where `f` comes up through zero between `low` and `high`; undefined where it stays below or begins above.
 * @example [risingRoot((x) => x ** 2 - 4, 0, 3), risingRoot((x) => x + 1, 0, 3)] // [2, undefined] (the root of four; all above zero)
 */
export function risingRoot(
  f: (x: number) => number,
  low: number,
  high: number,
  tolerance?: number,
): number | undefined {
  const [atLow, atHigh] = [f(low), f(high)];
  return atLow > 0 || atHigh < 0 ? undefined : bracketedRoot(f, low, high, tolerance, atLow, atHigh);
}
