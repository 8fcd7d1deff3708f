// Numbers drawn about the reader's house: expected values written down by hand, and how many kinds speak of another house.
import { expect, test } from 'vitest';
import type { House } from '../../src/core/line/house.ts';
import { aboutHouse, gridOf } from '../../src/exercises/about-house.ts';
import { drawQuestion } from '../../src/exercises/draw.ts';
import { questionKinds } from '../../src/exercises/kinds/index.ts';
import { builtInHouse } from '../../src/house/figures.ts';

test('the step of clean numbers is the coarsest that they share', () => {
  expect(gridOf([1000, 1500, 4500])).toBe(500);
  expect(gridOf([62.5, 63.5, 65])).toBe(0.5);
  expect(gridOf([1.052, 1.055])).toBeCloseTo(0.001, 12);
});

test('an amount grows with the house, anything else lies as much higher or lower, and both stay clean', () => {
  expect(aboutHouse([1000, 1500, 2000], 'mass', [1500, 6000])).toEqual([4000, 6000, 8000]);
  expect(aboutHouse([1000, 1500, 2000], 'mass', [1500, 300])).toEqual([200, 300, 400]);
  expect(aboutHouse([60, 61, 62], 'strength', [62, 60])).toEqual([58, 59, 60]);
  expect(aboutHouse([4, 6, 10], 'count', [6, 9])).toEqual([6, 9, 15]);
  expect(aboutHouse([60, 61, 62], 'strength', [62, 62])).toEqual([60, 61, 62]);
});

test('what would leave its range is left out, and where most would, nothing is moved', () => {
  expect(aboutHouse([60, 61, 62], 'strength', [62, 64], [50, 63.5])).toEqual([62, 63]);
  expect(aboutHouse([60, 61, 62], 'strength', [62, 70], [50, 63.5])).toEqual([60, 61, 62]);
});

test('more than half of the kinds of number speak of a house four times as large that cuts and mashes otherwise', () => {
  const other = { ...builtInHouse, maltPerMash: 6500, wortVolume: 33_500, originalGravity: 1.056, finalGravity: 0.999, fillingStrength: 62, weeksPerYear: 44, storeHumidity: 75, gristTemperature: 14, maltMoisture: 5, flour: 11, mashesPerWeek: 18, heartEnd: 60, mashTemperature: 63.5, liquorRatio: 4.1, yearsInWood: 12, bottlingStrength: 46, alcoholLoss: 1.8, barleyMoisture: 13, husk: 21 } as House; // prettier-ignore
  let [numbers, moved] = [0, 0];
  for (const kind of questionKinds) {
    const draws = Array.from({ length: 6 }, (_, i) => [builtInHouse, other].map((house) => drawQuestion(kind, `own-${i}`, house))); // prettier-ignore
    expect(draws.every(([, own]) => own !== undefined), kind.id).toBe(draws.every(([built]) => built !== undefined)); // prettier-ignore
    if (!draws.some(([built]) => built && 'tolerance' in built)) continue;
    numbers++;
    if (draws.some(([built, own]) => built && own && built.prompt !== own.prompt)) moved++;
  }
  console.log(`${moved} of ${numbers} kinds of number move with the house.`);
  expect(moved / numbers).toBeGreaterThan(0.5);
});
