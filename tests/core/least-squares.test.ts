// Lines and curves through readings.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fitCurve, fitLine, type Curve } from '../../src/core/numerics/least-squares.ts';
import { always, apart, between } from './draw.ts';

test('three readings by hand: 1, 2 and 4 at 0, 1 and 2 lie nearest to 5/6 + 3/2 x', () => {
  const { constants, squares } = fitLine([{ x: 0, y: 1 }, { x: 1, y: 2 }, { x: 2, y: 4 }])!;
  expect(constants[0]).toBeCloseTo(5 / 6, 12);
  expect(constants[1]).toBeCloseTo(3 / 2, 12);
  expect(squares).toBeCloseTo(1 / 6, 12);
}); // prettier-ignore

test('a reading of weight two counts as two readings', () => {
  const [a, b, c] = [
    { x: 0, y: 1 },
    { x: 1, y: 3 },
    { x: 3, y: 4 },
  ] as const;
  expect(fitLine([a, { ...b, weight: 2 }, c])!.constants).toEqual(fitLine([a, b, b, c])!.constants);
});

test('readings at one place fix no line', () => {
  expect(fitLine([{ x: 2, y: 1 }, { x: 2, y: 3 }])).toBeUndefined();
}); // prettier-ignore

const growth: Curve = (x, [a, b]) => {
  const e = Math.exp(b * x);
  return { value: a * e, slopes: [e, a * x * e] };
};
const times = [0, 0.7, 1.5, 2.2, 3];

test('a curve’s own points bring back its constants', () => {
  always(fc.tuple(between(0.5, 5), between(-1, 1)), ([a, b]) => {
    const readings = times.map((x) => ({ x, y: a * Math.exp(b * x) }));
    const { constants } = fitCurve(growth, readings, [1.3 * a, b + 0.2]);
    expect(apart(constants[0], a)).toBeLessThan(1e-8);
    expect(Math.abs(constants[1] - b)).toBeLessThan(1e-8);
  });
});

test('no constants nearby do better than those found', () => {
  const drawn = fc.tuple(between(0.5, 5), between(-0.5, 0.5), fc.array(between(-0.1, 0.1), { minLength: 5, maxLength: 5 }));
  always(drawn, ([a, b, off]) => {
    const readings = times.map((x, i) => ({ x, y: a * Math.exp(b * x) + off[i]! }));
    const { constants, squares } = fitCurve(growth, readings, [a, b]);
    const at = (da: number, db: number) => readings.reduce((sum, { x, y }) => sum + (growth(x, [constants[0] + da, constants[1] + db]).value - y) ** 2, 0);
    expect(at(0, 0)).toBeCloseTo(squares, 12);
    for (const [da, db] of [[1e-3, 0], [-1e-3, 0], [0, 1e-3], [0, -1e-3]] as const) expect(at(da, db)).toBeGreaterThan(squares);
  });
}); // prettier-ignore
