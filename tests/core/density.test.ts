// Density of spirit: where it must rise and fall.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { celsius, massPercent } from '../../src/core/quantity.ts';
import { densityOfSpirit, ETHANOL_DENSITY, WATER_DENSITY } from '../../src/core/spirit/density.ts';
import { always, between, ordered, temperatures } from './draw.ts';

test('more ethanol is always lighter, from 0 to 40 °C', () => {
  always(fc.tuple(ordered(0, 100, 1e-3), temperatures(0)), ([[less, more], t]) => {
    expect(densityOfSpirit(massPercent(more), t)).toBeLessThan(densityOfSpirit(massPercent(less), t));
  });
});

test('warmer is lighter above 25 % mass, and for water above 4 °C', () => {
  always(fc.tuple(between(25, 100).map(massPercent), ordered(-20, 40, 0.01)), ([mass, [cold, warm]]) => {
    expect(densityOfSpirit(mass, celsius(warm))).toBeLessThan(densityOfSpirit(mass, celsius(cold)));
  });
  always(ordered(4.1, 40, 0.01), ([cold, warm]) => {
    expect(densityOfSpirit(massPercent(0), celsius(warm))).toBeLessThan(
      densityOfSpirit(massPercent(0), celsius(cold)),
    );
  });
});

test('water is heaviest within a tenth of a degree of 4 °C', () => {
  const water = (t: number) => densityOfSpirit(massPercent(0), celsius(t));
  expect(water(3.98)).toBeGreaterThan(water(3.88));
  expect(water(3.98)).toBeGreaterThan(water(4.08));
});

test('a mixture is heavier than its unmixed parts would be', () => {
  always(fc.tuple(between(1, 99).map(massPercent), temperatures(0)), ([mass, t]) => {
    const [water, ethanol] = [0, 100].map((end) => densityOfSpirit(massPercent(end), t));
    const unmixed = 100 / (mass / ethanol! + (100 - mass) / water!);
    expect(densityOfSpirit(mass, t)).toBeGreaterThan(unmixed);
  });
});

test('20 °C joins the terms in temperature without a step', () => {
  always(between(0, 100).map(massPercent), (mass) => {
    const at = densityOfSpirit(mass, celsius(20));
    expect(Math.abs(densityOfSpirit(mass, celsius(20 + 1e-7)) - at)).toBeLessThan(1e-6);
  });
  expect(densityOfSpirit(massPercent(0), celsius(20))).toBe(WATER_DENSITY);
  expect(densityOfSpirit(massPercent(100), celsius(20))).toBe(ETHANOL_DENSITY);
});
