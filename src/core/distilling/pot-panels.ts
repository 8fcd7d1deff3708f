// The range of a pot cut into panels along logit(x), on each of which what hangs on the pot is followed by a polynomial.
import { chebyshevPoints, chebyshevSeries, integralOf, seriesAt } from '../numerics/chebyshev.ts';
import { fromLogit, logit } from '../numerics/logit.ts';
import { within } from '../range.ts';

/** Mole fractions in the pot between which a still can be followed: 0.0033 to 92 % vol. */
export const POT_RANGE = { weakest: 1e-5, strongest: 0.75 } as const;

const PANELS = 6; // of the pot's range
const POINTS = 22; // at which each panel is looked at; that they are enough: tests/core/still.test.ts
const WEAKEST = logit(POT_RANGE.weakest);
const STRONGEST = logit(POT_RANGE.strongest);
const WIDTH = (STRONGEST - WEAKEST) / PANELS;
const HAIR = 1e-9; // of a panel, by which rounding may step over an end

/** Logits of all points, from the strongest pot to the weakest, as a run goes. */
const LOGITS = Float64Array.from(
  Array.from({ length: PANELS }, (_, i) => [
    ...chebyshevPoints(STRONGEST - (i + 1) * WIDTH, STRONGEST - i * WIDTH, POINTS),
  ]).flat(),
);
/** Mole fractions of the same points. */
export const POTS: Float64Array = LOGITS.map(fromLogit);

/** Something followed all over the pot's range: the weights of each panel's polynomial, panel after panel. */
export type Followed = Float64Array;

/**
 * Follows what has these values at `POTS`; into an array to be used again, where there is one.
 * @example follow(POTS.map(() => 2))[0] // 2 (a constant is its own first weight)
 */
export const follow = (values: Float64Array, into?: Followed): Followed =>
  chebyshevSeries(values, POINTS, into);

/**
 * What is followed, at a pot with logit `u`. `weights` of a panel: one more for an integral.
 * @example followedAt(follow(POTS.map(() => 2)), 0) // 2 (a constant)
 */
export function followedAt(followed: Followed, u: number, weights = POINTS): number {
  const at = (STRONGEST - within('The pot, as logit,', u, WEAKEST - HAIR, STRONGEST + HAIR)) / WIDTH;
  const panel = Math.min(PANELS - 1, Math.max(0, Math.floor(at)));
  return seriesAt(followed, 1 - 2 * (at - panel), panel * weights, weights);
}

/** Length of an integral. */
export const INTEGRAL = PANELS * (POINTS + 1);

/**
 * The integral along logit(x) of what is followed, from the weakest pot on; followed in its turn.
 * @example integrate(follow(POTS.map(() => 0))).every((weight) => weight === 0) // true (of nothing)
 */
export function integrate(followed: Followed, integral: Followed = new Float64Array(INTEGRAL)): Followed {
  integralOf(followed, POINTS, integral);
  let sum = 0;
  for (let from = (PANELS - 1) * (POINTS + 1); from >= 0; from -= POINTS + 1) {
    for (let i = from; i <= from + POINTS; i++) integral[i]! *= WIDTH / 2;
    integral[from]! += sum;
    sum = seriesAt(integral, 1, from, POINTS + 1);
  }
  return integral;
}

/**
 * An integral, at a pot with logit `u`.
 * @example integralAt(integrate(follow(POTS.map(() => 2))), 1) - integralAt(integrate(follow(POTS.map(() => 2))), 0) // 2 (of a constant, along one)
 */
export const integralAt = (integral: Followed, u: number): number => followedAt(integral, u, POINTS + 1);

/**
 * Logits of the two neighbours, of all points and the ends of the range, between which values that fall with the pot come down to `value`.
 * @example neighbours(POTS, 0.5).map((u) => u > 0) // [false, true] (the logit of a half is 0)
 */
export function neighbours(values: Float64Array, value: number): readonly [low: number, high: number] {
  let [above, below] = [-1, values.length];
  while (below - above > 1) {
    const middle = (above + below) >> 1;
    if (values[middle]! > value) above = middle;
    else below = middle;
  }
  return [LOGITS[below] ?? WEAKEST, LOGITS[above] ?? STRONGEST];
}
