// The ± of a result against sums done by hand.
import { expect, test } from 'vitest';
import { calculators } from '../../src/calculators/index.ts';
import { propagate } from '../../src/calculators/uncertainty.ts';

const named = (id: string) => calculators.find((calculator) => calculator.id === id)!;

test('a product has the relative ± of its factors, added in squares', () => {
  // 6.06 × extract × fermentability ÷ 100: (0.5/77.5)² + (0.3/87)² in parts, by the rule for products in GUM 5.1.6.
  const yieldOf = named('predicted-spirit-yield');
  const spread = propagate(
    yieldOf,
    { extract: 77.5, fermentability: 87, malt: 1000 },
    { extract: 0.5, fermentability: 0.3 },
  );
  expect(spread['yield']! / 408.5955).toBeCloseTo(Math.hypot(0.5 / 77.5, 0.3 / 87), 8);
});

test('no ± given, no ± told', () => {
  const given = { extract: 77.5, fermentability: 87, malt: 1000 };
  expect(propagate(named('predicted-spirit-yield'), given, {})).toEqual({
    fermentable: 0,
    yield: 0,
    alcohol: 0,
  });
});

test('a ± on a bound of the range still finds a slope', () => {
  const spread = propagate(
    named('predicted-spirit-yield'),
    { extract: 90, fermentability: 100, malt: 1000 },
    { extract: 1 },
  );
  expect(spread['fermentable']).toBeCloseTo(1, 8);
});

const washback = {
  volume: 1000, original: 1.05914, final: 1.01129, start: 19, hours: 200, perKilogram: 586,
  half: 16, steepness: 0.4, air: 15, loss: 0, power: 1000, from: 32,
}; // prettier-ignore

test('the peak of a washback has a ± where cooling cuts it off', () => {
  // By hand: with no loss the wash would rise by 15.137 K, and ample cooling holds it: peak = min(start + 15.137, from).
  const peakOf = (start: number, from: number) =>
    propagate(named('washback-heat'), { ...washback, start, from }, { start: 1 })['peak']!;
  expect(peakOf(19, 40)).toBeCloseTo(1, 2); // never cooled: the peak moves with the start
  expect(peakOf(19, 34.137)).toBeCloseTo(1, 2); // just at the corner: a cooler start peaks lower by 1 K
  expect(peakOf(19.4, 34.137)).toBeCloseTo(0.6, 2); // held: only a start more than 0.4 K cooler peaks lower
  expect(peakOf(25, 32)).toBe(0); // held by far
});

test('cooling that comes on late by a kelvin lets the held peak rise by one', () => {
  const spread = propagate(named('washback-heat'), washback, { from: 1, start: 1 });
  // The uncooled peak is 34.137 °C, so the held one goes from 31 to 33 °C with its own ±; a start of 18 still reaches 32.
  expect(spread['peak']).toBeCloseTo(1, 2);
});
