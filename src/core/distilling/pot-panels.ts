// The range of a pot cut into panels, on each of which what hangs on the pot is followed by a polynomial.
import { chebyshevPoints, chebyshevSeries, integralOf, seriesAt } from '../numerics/chebyshev.ts';
import { logit } from '../numerics/logit.ts';
import { within } from '../range.ts';

/** Mole fractions in the pot between which a still can be followed: 0.0033 to 92 % vol. */
export const POT_RANGE = { weakest: 1e-5, strongest: 0.75 } as const;

// What is followed is smooth from a little below water to the azeotrope: both are put far off, and the panels are of one width between.
const BELOW = 0.002; // mole fraction below water; chosen with the next three by trial; that they are enough: tests/core/still.test.ts
const BEYOND = 0.87; // mole fraction, among the azeotropes: from 0.84 to 0.94 by the two models at 20–150 kPa
const PANELS = 3;
const POINTS = 20; // at which each panel is looked at
const HAIR = 1e-9; // by which rounding may step over an end of the range
const [LEAST, MOST] = [POT_RANGE.weakest * (1 - HAIR), POT_RANGE.strongest * (1 + HAIR)];

/** How far along the panels a pot lies. */
const along = (x: number) => Math.log((x + BELOW) / (BEYOND - x));
const potAlong = (v: number) => BEYOND - (BEYOND + BELOW) / (1 + Math.exp(v));
const WATER = along(0);
const STRONGEST = along(POT_RANGE.strongest);
const WIDTH = (STRONGEST - WATER) / PANELS;

/** Mole fractions of all points, from the strongest pot to the weakest, as a run goes. */
export const POTS: readonly number[] = Array.from({ length: PANELS }, (_, i) =>
  chebyshevPoints(STRONGEST - (i + 1) * WIDTH, STRONGEST - i * WIDTH, POINTS),
)
  .flat()
  .map(potAlong);
/** At the same points, how fast logit(x) rises along the panels. */
const RISES = POTS.map((x) => ((x + BELOW) * (BEYOND - x)) / ((BEYOND + BELOW) * x * (1 - x)));

/** Something followed all over the pot's range: the weights of each panel's polynomial, panel after panel. */
export type Followed = number[];

/**
 * Follows what has these values at `POTS`.
 * @example follow(POTS.map(() => 2))[0] // 2 (a constant is its own first weight)
 */
export const follow = (values: readonly number[]): Followed => chebyshevSeries(values, POINTS);

/**
 * What is followed, over a pot with mole fraction `x`. `weights` of a panel: one more for an integral.
 * @example followedAt(follow(POTS.map(() => 2)), 0.1) // 2 (a constant)
 */
export function followedAt(followed: Followed, x: number, weights = POINTS): number {
  const at = (STRONGEST - along(within('The pot, as mole fraction,', x, LEAST, MOST))) / WIDTH;
  const panel = Math.min(PANELS - 1, Math.max(0, Math.floor(at)));
  return seriesAt(followed, 1 - 2 * (at - panel), panel * weights, weights);
}

/**
 * What is followed, as the pot comes down to water.
 * @example followedToWater(follow(POTS)) // 0.00000 (as the pots themselves do)
 */
export const followedToWater = (followed: Followed): number =>
  seriesAt(followed, -1, (PANELS - 1) * POINTS, POINTS);

/** An integral along logit(x): so much with each unit of the logit, as in water, and followed what is beyond that. */
export interface Integral {
  readonly inWater: number;
  readonly beyond: Followed;
}

/**
 * The integral along logit(x) of what has these values at `POTS`, and `inWater` as the pot comes down to water.
 * @example integralAt(integrate(POTS.map(() => 2), 2), 0.5) // 0 (2 × the logit of a half)
 */
export function integrate(values: readonly number[], inWater: number): Integral {
  const slopes = new Array<number>(POTS.length);
  for (let i = 0; i < slopes.length; i++) slopes[i] = (values[i]! - inWater) * RISES[i]!;
  const beyond = integralOf(follow(slopes), POINTS);
  let sum = 0;
  for (let from = (PANELS - 1) * (POINTS + 1); from >= 0; from -= POINTS + 1) {
    for (let i = from; i <= from + POINTS; i++) beyond[i]! *= WIDTH / 2;
    beyond[from]! += sum;
    sum = seriesAt(beyond, 1, from, POINTS + 1);
  }
  return { inWater, beyond };
}

/**
 * An integral, at a pot with mole fraction `x`; two of them differ by what lies between.
 * @example integralAt(integrate(POTS.map(() => 2), 2), 0.6) - integralAt(integrate(POTS.map(() => 2), 2), 0.5) // 0.810930 (2 × the logit of 0.6)
 */
export const integralAt = ({ inWater, beyond }: Integral, x: number): number =>
  inWater * logit(x) + followedAt(beyond, x, POINTS + 1);

/**
 * The two neighbours, of all points and the ends of the range, between which values that fall with the pot come down to `value`.
 * @example neighbours(POTS, 0.5).map((x) => x > 0.5) // [false, true] (it lies between)
 */
export function neighbours(values: readonly number[], value: number): readonly [low: number, high: number] {
  let [above, below] = [-1, values.length];
  while (below - above > 1) {
    const middle = (above + below) >> 1;
    if (values[middle]! > value) above = middle;
    else below = middle;
  }
  const { weakest, strongest } = POT_RANGE;
  return [Math.max(weakest, POTS[below] ?? weakest), Math.max(weakest, POTS[above] ?? strongest)];
}
