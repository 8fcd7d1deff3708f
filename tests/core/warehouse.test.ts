// The stock of a store against the geometric series and its own balance.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { buildStock, type Warehouse } from '../../src/core/maturing/warehouse.ts';
import { count, litresOfAlcohol, percent, years } from '../../src/core/quantity.ts';
import { always, apart, between } from './draw.ts';

const houses: fc.Arbitrary<Warehouse> = fc.record({
  filled: between(1, 5000).map(count),
  alcohol: between(10, 400).map(litresOfAlcohol),
  years: fc.integer({ min: 1, max: 60 }).map(years),
  loss: between(0.05, 15).map(percent),
});

test('each year’s stock is a geometric series, and stands still once the oldest casks leave', () => {
  always(houses, (house) => {
    const [f, first] = [house.loss / 100, house.filled * house.alcohol];
    for (const { year, casks, alcohol, lost } of buildStock(house, house.years + 4)) {
      const whole = Math.min(year, house.years);
      expect(apart(alcohol, (first * (1 - (1 - f) ** whole)) / f)).toBeLessThan(1e-9);
      expect(apart(casks, house.filled * whole)).toBeLessThan(1e-12);
      expect(apart(lost, f * alcohol)).toBeLessThan(1e-12);
    }
  });
});

test('in the full store what is emptied and what is lost make what is filled', () => {
  always(houses, (house) => {
    const full = buildStock(house, house.years + 1).at(-1)!;
    expect(apart(full.emptied + full.lost, house.filled * house.alcohol)).toBeLessThan(1e-9);
  });
});

test('three years by hand: 100 L a year, a tenth lost, kept two years', () => {
  const record = buildStock({ filled: count(1), alcohol: litresOfAlcohol(100), years: years(2), loss: percent(10) }, 3);
  expect(record.map(({ alcohol }) => Number(alcohol.toFixed(9)))).toEqual([100, 190, 190]); // 190 × 0.9 − 81 + 100
  expect(record.map(({ emptied }) => Number(emptied.toFixed(9)))).toEqual([0, 0, 81]);
}); // prettier-ignore

test('without loss the store holds its years whole', () => {
  const record = buildStock(
    { filled: count(10), alcohol: litresOfAlcohol(127), years: years(5), loss: percent(0) },
    8,
  );
  expect(record.at(-1)).toMatchObject({ casks: 50, alcohol: 6350, lost: 0, emptied: 1270 });
});
