// Lines and curves through readings.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { leastSquares } from '../../src/core/numerics/householder.ts';
import { levenbergMarquardt, type Curve } from '../../src/core/numerics/levenberg-marquardt.ts';
import { always, apart, between } from './draw.ts';

const straight: Curve = ([a, b], x) => ({ height: a! + b! * x, slopes: [1, x] });
const byHand = [[0, 1], [1, 2], [2, 4]] as const; // prettier-ignore

test('three readings by hand: 1, 2 and 4 at 0, 1 and 2 lie nearest to 5/6 + 3/2 x', () => {
  const { solution } = leastSquares(
    byHand.map(([x]) => [1, x]),
    byHand.map(([, y]) => y),
  );
  const { parameters, squares } = levenbergMarquardt(straight, byHand, [0, 0]);
  for (const [a, b] of [solution, parameters]) {
    expect(a).toBeCloseTo(5 / 6, 12);
    expect(b).toBeCloseTo(3 / 2, 12);
  }
  expect(squares).toBeCloseTo(1 / 6, 12);
});

test('a row of weight two, by its root, counts as two rows', () => {
  const [a, b, c] = [[1, 0, 1], [1, 1, 3], [1, 3, 4]] as const; // prettier-ignore
  const solved = (rows: readonly (readonly number[])[]) =>
    leastSquares(rows.map((row) => row.slice(0, 2)), rows.map((row) => row[2]!)).solution; // prettier-ignore
  const [once, twice] = [solved([a, b.map((n) => n * Math.SQRT2), c]), solved([a, b, b, c])];
  once.forEach((n, i) => expect(n).toBeCloseTo(twice[i]!, 12));
});

test('rows that say nothing of an unknown are refused', () => {
  expect(() => leastSquares([[0, 2], [0, 2]], [1, 3])).toThrow('The rows leave unknown 1 free.');
}); // prettier-ignore

const growth: Curve = ([a, b], x) => {
  const e = Math.exp(b! * x);
  return { height: a! * e, slopes: [e, a! * x * e] };
};
const times = [0, 0.7, 1.5, 2.2, 3];

test('a curve’s own points bring back its constants', () => {
  always(fc.tuple(between(0.5, 5), between(-1, 1)), ([a, b]) => {
    const points = times.map((x) => [x, a * Math.exp(b * x)] as const);
    const { parameters, settled } = levenbergMarquardt(growth, points, [1.3 * a, b + 0.2]);
    expect(settled).toBe(true);
    expect(apart(parameters[0]!, a)).toBeLessThan(1e-8);
    expect(Math.abs(parameters[1]! - b)).toBeLessThan(1e-8);
  });
});

test('no constants nearby do better than those found', () => {
  const drawn = fc.tuple(between(0.5, 5), between(-0.5, 0.5), fc.array(between(-0.1, 0.1), { minLength: 5, maxLength: 5 }));
  always(drawn, ([a, b, off]) => {
    const points = times.map((x, i) => [x, a * Math.exp(b * x) + off[i]!] as const);
    const { parameters, squares } = levenbergMarquardt(growth, points, [a, b]);
    const at = (da: number, db: number) => points.reduce((sum, [x, y]) => sum + (growth([parameters[0]! + da, parameters[1]! + db], x).height - y) ** 2, 0);
    expect(at(0, 0)).toBeCloseTo(squares, 12);
    for (const [da, db] of [[1e-3, 0], [-1e-3, 0], [0, 1e-3], [0, -1e-3]] as const) expect(at(da, db)).toBeGreaterThan(squares);
  });
}); // prettier-ignore

test('a parameter of which the points say nothing keeps its place', () => {
  const flat: Curve = ([a], _) => ({ height: a!, slopes: [1, 0] });
  const { parameters } = levenbergMarquardt(flat, byHand, [0, 7]);
  expect(parameters[0]).toBeCloseTo(7 / 3, 12);
  expect(parameters[1]).toBe(7);
});
