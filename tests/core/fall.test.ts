// The S of a fermentation, and its fit to readings.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { extractAt, hourOfPartFallen, partFallen, type Fall } from '../../src/core/fermenting/fall.ts';
import { fitFall, type GravityReading } from '../../src/core/fermenting/fit-fall.ts';
import { levenbergMarquardt, type Curve } from '../../src/core/numerics/levenberg-marquardt.ts';
import { gravity, hours, plato, quantity } from '../../src/core/quantity.ts';
import { gravityFromPlato, platoFromGravity } from '../../src/core/wort/extract.ts';
import fits from '../../src/published/reference/nonlinear-fits.json' with { type: 'json' };
import { always, answer, apart, between } from './draw.ts';

const fall = (initial: number, final: number, half: number, steepness: number): Fall => ({
  initial: plato(initial),
  final: plato(final),
  half: hours(half),
  steepness: quantity('perHour', steepness),
});
const falls = fc
  .tuple(between(10, 25), between(-2.5, 3), between(8, 36), between(0.1, 0.5))
  .map(([initial, final, half, steepness]) => fall(initial, final, half, steepness));
const read = (one: Fall, at: readonly number[], off: readonly number[] = []): GravityReading[] =>
  at.map((hour, i) => ({
    hour: hours(hour),
    gravity: gravityFromPlato(plato(extractAt(one, hour) + (off[i] ?? 0))),
  }));
const reading = (hour: number, sg: number): GravityReading => ({ hour: hours(hour), gravity: gravity(sg) });
/** Hours spread from before the fall to after it. */
const spread = ({ half, steepness }: Fall, count: number) =>
  Array.from({ length: count }, (_, i) => half + (8 * i) / (count - 1) / steepness - 4 / steepness);
const four = (one: Fall) => [one.initial, one.final, one.half, one.steepness];

test('with b = ln 3 in 4 h, from 20 °P to nothing, half at 16 h: 18, 15, 10, 5, 2 °P four hours apart', () => {
  const one = fall(20, 0, 16, Math.log(3) / 4);
  [18, 15, 10, 5, 2].forEach((extract, i) => expect(extractAt(one, 8 + 4 * i)).toBeCloseTo(extract, 12));
});

test('what is done so long before half is left as long after it, and the hour of a part has that part done', () => {
  always(fc.tuple(falls, between(0, 30), between(0.001, 0.999)), ([one, away, part]) => {
    expect(partFallen(one, one.half + away) + partFallen(one, one.half - away)).toBeCloseTo(1, 12);
    expect(partFallen(one, hourOfPartFallen(one, part))).toBeCloseTo(part, 10);
  });
});

test('the extract only falls, and stays between its ends', () => {
  always(fc.tuple(falls, between(0, 100), between(0.01, 20)), ([one, hour, later]) => {
    const [before, after] = [extractAt(one, hour), extractAt(one, hour + later)];
    expect(after).toBeLessThanOrEqual(before + 1e-12);
    expect(before).toBeLessThanOrEqual(one.initial + 1e-12);
    expect(after).toBeGreaterThanOrEqual(one.final - 1e-12);
  });
});

test('readings without error give back the fall they were taken from, in any order', () => {
  always(fc.tuple(falls, fc.integer({ min: 5, max: 12 })), ([one, many]) => {
    const found = answer(fitFall(read(one, spread(one, many)).reverse()));
    four(found).forEach((value, i) => expect(Math.abs(value - four(one)[i]!)).toBeLessThan(1e-7));
    expect(found.scatter).toBeLessThan(1e-8);
  });
});

test('a reading taken twice is taken, and counts twice', () => {
  const one = fall(14, -0.5, 16, 0.2);
  const twice = [...read(one, [0, 8, 14, 20, 30, 48]), ...read(one, [48])];
  four(answer(fitFall(twice))).forEach((value, i) => expect(value).toBeCloseTo(four(one)[i]!, 7));
});

/** Numbers that look random with mean 0 and spread 1: sums of twelve even draws, less 6. */
function noise(): () => number {
  let state = 12345;
  const even = () => (state = (state * 48271) % 2147483647) / 2147483647; // Park and Miller’s generator
  return () => Array.from({ length: 12 }, even).reduce((sum, draw) => sum + draw, -6);
}

test('errors of 0.1 °P leave every figure right on average, over four hundred washbacks', () => {
  const one = fall(14.3, -0.5, 16, 0.22);
  const at = [0, 6, 10, 13, 16, 19, 22, 26, 34, 44, 56];
  const draw = noise();
  const found = Array.from({ length: 400 }, () =>
    answer(
      fitFall(
        read(
          one,
          at,
          at.map(() => 0.1 * draw()),
        ),
      ),
    ),
  );
  four(one).forEach((truth, i) => {
    const values = found.map((each) => four(each)[i]!);
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
    const spreadOf = Math.sqrt(
      values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1),
    );
    expect(Math.abs(mean - truth)).toBeLessThan((4 * spreadOf) / Math.sqrt(values.length));
  });
  // With 11 readings and 4 unknowns the mean square left over is 7/11 of the error’s.
  const left = found.reduce((sum, { scatter }) => sum + scatter ** 2, 0) / found.length;
  expect(apart(left, (0.01 * 7) / 11)).toBeLessThan(0.1);
});

test('no curve beside the one found lies closer to rough readings', () => {
  const roughly = fc.array(between(-0.15, 0.15), { minLength: 9, maxLength: 9 });
  always(
    fc.tuple(falls, roughly, fc.array(between(-0.05, 0.05), { minLength: 4, maxLength: 4 })),
    ([one, off, aside]) => {
      const readings = read(one, spread(one, 9), off);
      const found = fitFall(readings);
      if ('refused' in found) return void expect(found.refused).toMatch(/rises/);
      const squares = (by: Fall) =>
        readings.reduce(
          (sum, { hour, gravity: sg }) => sum + (platoFromGravity(sg) - extractAt(by, hour)) ** 2,
          0,
        );
      const [a, b, c, d] = four(found).map((value, i) => value + aside[i]! * (i === 3 ? value : 1)) as [
        number,
        number,
        number,
        number,
      ];
      expect(squares(found)).toBeLessThanOrEqual(squares(fall(a, b, c, d)) + 1e-12);
      expect(apart(squares(found), 9 * found.scatter ** 2)).toBeLessThan(1e-6);
    },
  );
});

test('a slip in one reading is pointed out', () => {
  const one = fall(14, -0.5, 16, 0.2);
  const at = [0, 4, 8, 12, 16, 20, 24, 32, 48];
  const found = answer(
    fitFall(
      read(
        one,
        at,
        at.map((hour) => (hour === 12 ? -0.8 : 0)),
      ),
    ),
  );
  expect(found.furthest.hour).toBe(12);
});

describe('readings that no fermentation gives, or that tell too little', () => {
  const refusals: readonly (readonly [string, readonly GravityReading[], RegExp])[] = [
    [
      'three different hours',
      [reading(0, 1.058), reading(12, 1.04), reading(12, 1.041), reading(48, 0.998)],
      /3 different hours.*four or more/,
    ],
    ['one hour', [1.058, 1.04, 1.02, 0.998].map((sg) => reading(5, sg)), /1 different hour;/],
    [
      'a gravity that rises',
      [reading(0, 1.058), reading(12, 1.04), reading(20, 1.05), reading(48, 0.998)],
      /rises from 1\.0400 at 12\.0 h to 1\.0500 at 20\.0 h/,
    ],
    ['no fall', [0, 10, 20, 30].map((hour) => reading(hour, 1.058)), /falls by 0\.0000/],
    [
      'nothing read in the fall',
      [reading(0, 1.058), reading(5, 1.058), reading(40, 0.998), reading(50, 0.998)],
      /at no hour/,
    ],
    [
      'one reading in the fall',
      [reading(0, 1.058), reading(5, 1.058), reading(16, 1.03), reading(50, 0.998)],
      /only one hour/,
    ],
    [
      'readings that stop before half',
      [0, 4, 8, 12, 14, 16].map((hour) => read(fall(14, 0, 20, 0.3), [hour])[0]!),
      /do not show both ends/,
    ],
    [
      'readings that begin after half',
      [22, 24, 27, 30, 36].map((hour) => read(fall(14, 0, 14, 0.2), [hour])[0]!),
      /do not show both ends/,
    ],
  ];
  test.each(refusals)('%s', (_, readings, says) => {
    const found = fitFall(readings);
    expect('refused' in found && found.refused).toMatch(says);
    expect('refused' in found && found.refused).toMatch(/^[A-Z].*[.]$/);
  });
});

test('the hour of nothing or of all of the fall, and a fall without steepness, are refused', () => {
  const one = fall(14, 0, 16, 0.2);
  for (const part of [0, 1, -0.1, 1.1, NaN]) expect(() => hourOfPartFallen(one, part)).toThrow(RangeError);
  for (const steepness of [0, -0.2, NaN])
    expect(() => partFallen(fall(14, 0, 16, steepness), 3)).toThrow(RangeError);
});

const rat: Curve = ([b1, b2, b3] = [], x) => {
  const e = Math.exp(b2! - b3! * x);
  const height = b1! / (1 + e);
  return { height, slopes: [1 / (1 + e), (-height * e) / (1 + e), (height * x * e) / (1 + e)] };
};
const misra: Curve = ([b1, b2] = [], x) => {
  const e = Math.exp(-b2! * x);
  return { height: b1! * (1 - e), slopes: [1 - e, b1! * x * e] };
};

test.each([
  ['Rat42', rat, fits.Rat42],
  ['Misra1a', misra, fits.Misra1a],
] as const)('the certified fit of %s, to nine figures', (_, curve, { x, y, start, certified, squares }) => {
  const fit = levenbergMarquardt(
    curve,
    x.map((each, i) => [each, y[i]!] as const),
    start,
  );
  expect(fit.settled).toBe(true);
  certified.forEach((value, i) => expect(apart(fit.parameters[i]!, value)).toBeLessThan(1e-9));
  expect(apart(fit.squares, squares)).toBeLessThan(1e-9);
});

test('readings within a moment, as nobody takes them, are refused and stop nothing', () => {
  const atOnce = [
    [9.6e-150, 1.0013],
    [3e-262, 1.1018],
    [2.6e-40, 0.985],
    [1e-72, 0.9915],
    [2.7e-59, 0.985],
  ] as const;
  const given = atOnce.map(([at, of]) => ({ hour: hours(at), gravity: gravity(of) }));
  expect(fitFall(given)).toHaveProperty('refused');
});

test('points that do not settle a curve are said not to', () => {
  // Points on a straight line: the exponential can only come closer and closer to it, and never arrives.
  const line = [1, 2, 3, 4, 5].map((x) => [x, x] as const);
  const { settled, parameters } = levenbergMarquardt(misra, line, [10, 0.1]);
  expect(settled && parameters[0]! < 1e5).toBe(false);
});
