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
