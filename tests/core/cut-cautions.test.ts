// Cuts that hang on a hair: who is warned, of which figure, and that what is advised helps.
import { expect, test } from 'vitest';
import { cautions } from '../../src/core/line/cautions.ts';
import type { House } from '../../src/core/line/house.ts';
import { line } from '../../src/core/line/line.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { answer } from './draw.ts';

const found = (change: object) => answer(line({ ...builtInHouse, ...change } as House));
const warned = (change: object) =>
  cautions(found(change)).filter(({ figure }) => figure !== undefined) as {
    figure: string;
    says: string;
  }[];
const byStrength = (foreshotsStrength: number, more: object = {}) => ({
  foreshotsBy: 'strength',
  foreshotsStrength,
  ...more,
});

test('the built-in house is warned of nothing, whichever way its foreshots end but by strength', () => {
  for (const foreshotsBy of ['share', 'volume', 'minutes']) expect(warned({ foreshotsBy })).toEqual([]);
});

test('the ways of the built-in house are one way: 3 % of the alcohol, 40 L and a quarter of an hour', () => {
  // By hand: 160 L in an hour are 40 L in 15 min; 3 % of some 950 L of alcohol, as spirit of 75 % vol, are 38 L.
  const volumes = ['share', 'volume', 'minutes'].map(
    (foreshotsBy) => found({ foreshotsBy }).foreshots.volume,
  );
  expect(volumes[1]).toBeCloseTo(40, 6);
  expect(volumes[2]).toBeCloseTo(40, 6);
  expect(Math.abs(volumes[0]! - 40)).toBeLessThan(3);
});

test.each([72, 73])('foreshots down to %s % vol, a guide’s own, are told to be far too many', (cut) => {
  const [first, ...more] = warned(byStrength(cut));
  expect(more).toEqual([]);
  expect(first).toMatchObject({ figure: 'foreshotsStrength' });
  expect(first!.says).toMatch(
    /hold (35|41) % of the charge’s alcohol.*share of the alcohol, litres or minutes/,
  );
  // The charge that it names, made: its foreshots are of about the usual size.
  const limit = Number(/suits a charge of about (\d+) % vol/.exec(first!.says)![1]);
  const { foreshots, charge } = found(byStrength(cut, { chargeLimit: limit }));
  expect(foreshots.alcohol / charge.alcohol).toBeGreaterThan(0.01);
  expect(foreshots.alcohol / charge.alcohol).toBeLessThan(0.08);
});

test('a cut within 1 % vol of the start is told of, and one above it, and one well below is not', () => {
  const at = (cut: number) => warned(byStrength(cut, { chargeLimit: 25 }));
  const start = found(byStrength(74, { chargeLimit: 25 })).foreshots.begins;
  expect(Math.abs(start - 74.6)).toBeLessThan(0.05);
  expect(at(74)).toMatchObject([
    { figure: 'foreshotsStrength', says: expect.stringMatching(/double or nothing/) },
  ]);
  expect(warned(byStrength(77))).toMatchObject([
    { figure: 'foreshotsStrength', says: expect.stringMatching(/so there are none/) },
  ]);
  expect(at(73.5).some(({ says }) => says.includes('double or nothing'))).toBe(false);
  expect(
    warned({ washReflux: 0, chargeLimit: 60, feintsEnd: 40, heartEnd: 84, foreshotsShare: 0.1 }),
  ).toMatchObject([{ figure: 'heartEnd' }]);
  expect(warned({ heartEnd: 66 })).toEqual([]);
});

test('too many litres, minutes or too great a share are told of in their own field', () => {
  expect(warned({ foreshotsBy: 'volume', foreshotsVolume: 200 })).toMatchObject([
    { figure: 'foreshotsVolume' },
  ]);
  expect(warned({ foreshotsBy: 'minutes', foreshotsMinutes: 75 })).toMatchObject([
    { figure: 'foreshotsMinutes' },
  ]);
  expect(warned({ foreshotsShare: 10.5 })).toMatchObject([{ figure: 'foreshotsShare' }]);
  expect(warned({ foreshotsShare: 9.5 })).toEqual([]);
});

test('the run begins, and the heart, where common practice has them: 75 to 80, and 72 to 75 % vol', () => {
  const { foreshots, heart, lowWines, potAle, wash } = found({});
  expect(foreshots.begins).toBeGreaterThan(75);
  expect(foreshots.begins).toBeLessThan(80);
  expect(Math.round(heart.begins)).toBeGreaterThanOrEqual(72);
  expect(Math.round(heart.begins)).toBeLessThanOrEqual(75);
  // Low wines of 20 to 25 % vol, and about two thirds of the wash left: common practice, rows dis-124 and dis-133.
  expect(lowWines.strength).toBeGreaterThan(20);
  expect(lowWines.strength).toBeLessThan(25);
  expect(Math.abs(potAle.volume / wash.volume - 2 / 3)).toBeLessThan(0.02);
});
