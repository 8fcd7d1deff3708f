// The line, and the curve with two constants, that come nearest to a few readings.

export interface Reading {
  readonly x: number;
  readonly y: number;
  /** How much the reading counts beside the others; 1 when left out. */
  readonly weight?: number;
}
export interface Fit {
  /** The two constants. */
  readonly constants: readonly [number, number];
  /** Sum of the weighted squares of what is left. */
  readonly squares: number;
}
/** A curve of x with two constants, and its slopes along each. */
export type Curve = (
  x: number,
  constants: readonly [number, number],
) => { readonly value: number; readonly slopes: readonly [number, number] };

const STEPS = 60; // far more than a fit that settles needs

/** Solves the two normal equations of readings `y` against two columns of slopes, where they fix both constants. */
function solve(
  rows: readonly { slopes: readonly [number, number]; y: number; weight: number }[],
): readonly [number, number] | undefined {
  let [aa, ab, bb, ay, by] = [0, 0, 0, 0, 0];
  for (const { slopes, y, weight } of rows) {
    aa += weight * slopes[0] ** 2;
    ab += weight * slopes[0] * slopes[1];
    bb += weight * slopes[1] ** 2;
    ay += weight * slopes[0] * y;
    by += weight * slopes[1] * y;
  }
  const determinant = aa * bb - ab * ab;
  if (!(determinant > 1e-14 * aa * bb)) return undefined;
  return [(ay * bb - by * ab) / determinant, (by * aa - ay * ab) / determinant];
}

function squaresOf(curve: Curve, readings: readonly Reading[], constants: readonly [number, number]): number {
  return readings.reduce(
    (sum, { x, y, weight = 1 }) => sum + weight * (curve(x, constants).value - y) ** 2,
    0,
  );
}

/**
 * The straight line y = a + b·x; none when the readings do not fix it.
 * @example fitLine([{ x: 0, y: 1 }, { x: 1, y: 3 }, { x: 2, y: 5 }]) // { constants: [1, 2], squares: 0 } (the line 1 + 2x)
 */
export function fitLine(readings: readonly Reading[]): Fit | undefined {
  const line: Curve = (x, [a, b]) => ({ value: a + b * x, slopes: [1, x] });
  const constants = solve(readings.map(({ x, y, weight = 1 }) => ({ slopes: [1, x], y, weight })));
  return constants && { constants, squares: squaresOf(line, readings, constants) };
}

/**
 * The curve nearest to the readings, from constants that are near already: Gauss–Newton steps, halved until they help.
 * A curve that has no value somewhere counts as far off. Stays at the start where the readings do not fix both constants.
 * @example fitCurve((x, [a, b]) => ({ value: a + b * x, slopes: [1, x] }), [{ x: 0, y: 1 }, { x: 1, y: 3 }, { x: 2, y: 5 }], [0, 0]).constants // [1.0000, 2.0000] (the line 1 + 2x)
 */
export function fitCurve(curve: Curve, readings: readonly Reading[], start: readonly [number, number]): Fit {
  let fit: Fit = { constants: start, squares: squaresOf(curve, readings, start) };
  for (let step = 0; step < STEPS; step++) {
    const [a, b] = fit.constants;
    const rows = readings.map(({ x, y, weight = 1 }) => {
      const { value, slopes } = curve(x, [a, b]);
      return { slopes, y: y - value, weight };
    });
    const move = solve(rows);
    if (!move) return fit;
    const [da, db] = move;
    let better: Fit | undefined;
    for (let part = 1; part > 1e-6 && !better; part /= 2) {
      const constants = [a + part * da, b + part * db] as const;
      const squares = squaresOf(curve, readings, constants);
      if (squares <= fit.squares) better = { constants, squares };
    }
    if (!better) return fit;
    fit = better;
    if (Math.abs(da) <= 1e-13 * Math.abs(a) && Math.abs(db) <= 1e-13 * Math.abs(b)) return fit;
  }
  return fit;
}
