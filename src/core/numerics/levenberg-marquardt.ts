// The curve that lies closest to points, by least squares, when it is not straight in its parameters.
import { solveLinear } from './linear-system.ts';

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
const MOST_DAMPING = 1e12; // so damped, a step no longer moves a double

/** The normal equations at some parameters: JᵀJ, Jᵀr and rᵀr. */
function normalEquations(
  curve: Curve,
  points: readonly (readonly [number, number])[],
  at: readonly number[],
) {
  const curvature = at.map(() => at.map(() => 0));
  const pull = at.map(() => 0);
  let squares = 0;
  for (const [x, y] of points) {
    const { height, slopes } = curve(at, x);
    const off = y - height;
    squares += off * off;
    slopes.forEach((slope, i) => {
      pull[i]! += slope * off;
      slopes.forEach((other, j) => (curvature[i]![j]! += slope * other));
    });
  }
  return { curvature, pull, squares };
}

/**
 * Moves the parameters from `start` to the nearest least sum of squares. A step is Newton’s where the sum is
 * nearly square, and short and downhill where it is not; a step that does not lower the sum is not taken.
 * Source: Marquardt, Journal of the Society for Industrial and Applied Mathematics 11, 431–441 (1963), from memory.
 * @example levenbergMarquardt(([a], x) => ({ height: Math.exp(a * x), slopes: [x * Math.exp(a * x)] }), [[1, Math.E ** 2], [2, Math.E ** 4]], [1]).parameters // [2.00000] (both points lie on e to the 2x)
 */
export function levenbergMarquardt(
  curve: Curve,
  points: readonly (readonly [number, number])[],
  start: readonly number[],
): CurveFit {
  let parameters = start;
  let here = normalEquations(curve, points, parameters);
  let damping = 1e-3;
  for (let step = 0; step < MOST_STEPS; step++) {
    const damped = here.curvature.map((row, i) =>
      row.map((entry, j) => (i === j ? entry * (1 + damping) + Number.MIN_VALUE : entry)),
    );
    const move = solveLinear(damped, here.pull);
    const next = parameters.map((parameter, i) => parameter + move[i]!);
    const there = normalEquations(curve, points, next);
    if (there.squares <= here.squares) {
      const moved = Math.max(...move.map((part, i) => Math.abs(part) / (1 + Math.abs(next[i]!))));
      [parameters, here] = [next, there];
      if (moved < STILL) return { parameters, squares: here.squares, settled: true };
      damping = Math.max(damping / 10, 1e-12);
    } else if (damping > MOST_DAMPING) {
      return { parameters, squares: here.squares, settled: true };
    } else damping *= 10;
  }
  return { parameters, squares: here.squares, settled: false };
}
