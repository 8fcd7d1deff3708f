// Exact limits of a count against tables, closed forms, whole-number sums and the promise they make.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { chanceOfAtLeast, exactLimits } from '../../src/core/numerics/binomial.ts';
import reference from '../../src/published/reference/malting.json' with { type: 'json' };
import { always, apart } from './draw.ts';

test.each(reference.exactLimits.rows)(
  '$grown of $counted: $low to $high',
  ({ grown, counted, low, high }) => {
    const limits = exactLimits(grown, counted);
    expect(Math.abs(limits[0] - low)).toBeLessThan(6e-5); // printed to four decimals
    expect(Math.abs(limits[1] - high)).toBeLessThan(6e-5);
  },
);

test('none of n and all of n have their closed forms', () => {
  always(fc.integer({ min: 1, max: 5000 }), (n) => {
    const root = 0.025 ** (1 / n);
    expect(exactLimits(0, n)[0]).toBe(0);
    expect(Math.abs(exactLimits(0, n)[1] - (1 - root))).toBeLessThan(1e-10);
    expect(Math.abs(exactLimits(n, n)[0] - root)).toBeLessThan(1e-10);
    expect(exactLimits(n, n)[1]).toBe(1);
  });
});

const counts = fc
  .integer({ min: 1, max: 2000 })
  .chain((n) => fc.tuple(fc.integer({ min: 0, max: n }), fc.constant(n)));

test('what grew and what did not have mirrored limits, which hold the share between them', () => {
  always(counts, ([k, n]) => {
    const [low, high] = exactLimits(k, n);
    const [other, mirrored] = exactLimits(n - k, n);
    expect(Math.abs(low - (1 - mirrored))).toBeLessThan(1e-9);
    expect(Math.abs(high - (1 - other))).toBeLessThan(1e-9);
    expect(low).toBeLessThanOrEqual(k / n);
    expect(high).toBeGreaterThanOrEqual(k / n);
  });
});

/** Chance of k or more in n, by whole numbers: p is `parts` in a thousand. */
function byWholeNumbers(k: number, n: number, parts: number): number {
  const [p, q] = [BigInt(parts), BigInt(1000 - parts)];
  let [ways, sum] = [1n, 0n];
  for (let j = 0; j <= n; j++) {
    if (j >= k) sum += ways * p ** BigInt(j) * q ** BigInt(n - j);
    ways = (ways * BigInt(n - j)) / BigInt(j + 1);
  }
  return Number((sum * 10n ** 18n) / 1000n ** BigInt(n)) / 1e18;
}

test('chances agree with sums of whole numbers', () => {
  const cases = fc
    .integer({ min: 1, max: 120 })
    .chain((n) => fc.tuple(fc.integer({ min: 0, max: n }), fc.constant(n), fc.integer({ min: 1, max: 999 })));
  always(cases, ([k, n, parts]) => {
    expect(Math.abs(chanceOfAtLeast(k, n, parts / 1000) - byWholeNumbers(k, n, parts))).toBeLessThan(1e-12);
  });
});

test('at each limit 2.5 % are left outside', () => {
  always(counts, ([k, n]) => {
    const [low, high] = exactLimits(k, n);
    if (k > 0) expect(apart(chanceOfAtLeast(k, n, low), 0.025)).toBeLessThan(1e-5);
    if (k < n) expect(apart(1 - chanceOfAtLeast(k + 1, n, high), 0.025)).toBeLessThan(1e-5);
  });
});

test('whatever the true share, the limits hold it in 95 of a hundred counts or more', () => {
  const n = 60;
  const limits = Array.from({ length: n + 1 }, (_, k) => exactLimits(k, n));
  always(fc.integer({ min: 1, max: 999 }), (parts) => {
    const p = parts / 1000;
    const held = limits.reduce((sum, [low, high], k) => {
      const exactly = byWholeNumbers(k, n, parts) - (k < n ? byWholeNumbers(k + 1, n, parts) : 0);
      return low <= p && p <= high ? sum + exactly : sum;
    }, 0);
    expect(held).toBeGreaterThanOrEqual(0.95);
  });
});

test('counts that are not whole, or more than all, are stopped', () => {
  for (const [k, n] of [[1.5, 10], [11, 10], [-1, 10], [1, 10.5], [0, 0], [NaN, 10]] as const) {
    expect(() => exactLimits(k, n)).toThrow(RangeError);
  }
  expect(() => chanceOfAtLeast(1, 10, 1.1)).toThrow(RangeError);
}); // prettier-ignore
