// The curve that lies closest to points, by least squares, when it is not straight in its parameters.
import { descend } from './descent.ts';
import { leastSquares } from './householder.ts';

/** A curve: its height at `x`, and how the height changes with each parameter. */
export type Curve = (
  parameters: readonly number[],
  x: number,
) => { readonly height: number; readonly slopes: readonly number[] };

export interface CurveFit {
  readonly parameters: readonly number[];
  /** Sum of the squared distances of the points from the curve. */
  readonly squares: number;
  /** False when the search still moved at its last step: the points do not settle the parameters. */
  readonly settled: boolean;
}

const MOST_STEPS = 150; // far more than a curve that points do settle has needed
const STILL = 1e-12; // largest move, as a part of each parameter, that counts as none
const DAMPED = 1e-3; // at first, as Marquardt takes it
const SLIGHT = 1e-100; // a column of slopes so short has no square that a double holds: its parameter stays where it is
const NEVER_FREE = 1e-12; // damping that stays, so that a parameter of which the points say nothing keeps its place

/**
 * Moves the parameters from `start` to the nearest least sum of squares. A step is Newton’s where the sum is nearly
 * square, and short and downhill where it is not: each parameter is held by the length of its column of slopes.
 * A curve that has no height somewhere counts as far off.
 * @example levenbergMarquardt(([a], x) => ({ height: Math.exp(a * x), slopes: [x * Math.exp(a * x)] }), [[1, Math.E ** 2], [2, Math.E ** 4]], [1]).parameters // [2.00000] (both points lie on e to the 2x)
 */
export function levenbergMarquardt(
  curve: Curve,
  points: readonly (readonly [number, number])[],
  start: readonly number[],
): CurveFit {
  const squaresAt = (at: readonly number[]) =>
    points.reduce((sum, [x, y]) => sum + (y - curve(at, x).height) ** 2, 0);
  const step = (at: readonly number[], damping: number) => {
    const there = points.map(([x]) => curve(at, x));
    const rows = there.map(({ slopes }) => slopes);
    const holds = at.map((_, j) => {
      const length = Math.hypot(...rows.map((row) => row[j]!));
      const long = length > SLIGHT ? length : 1;
      return at.map((_, k) => (j === k ? Math.sqrt(Math.max(damping, NEVER_FREE)) * long : 0));
    });
    if (![...rows, ...holds].flat().every(Number.isFinite)) return { move: at.map(() => 0), left: Infinity }; // nowhere to go from
    const misses = there.map(({ height }, i) => points[i]![1] - height);
    const { solution: move } = leastSquares([...rows, ...holds], [...misses, ...at.map(() => 0)]);
    return { move, left: Math.max(...move.map((part, i) => Math.abs(part) / (1 + Math.abs(at[i]! + part)))) };
  };
  const { at, squares, left } = descend({ start, squaresAt, step, begins: DAMPED, least: DAMPED, mostSteps: MOST_STEPS, still: STILL, held: Infinity }); // prettier-ignore
  return { parameters: at, squares, settled: left < STILL };
}
