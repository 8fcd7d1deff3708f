// The numerical tools: root, panel, polynomial, memory.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { chebyshevPoints, chebyshevSeries, integralOf, seriesAt } from '../../src/core/numerics/chebyshev.ts';
import { gaussPanel } from '../../src/core/numerics/gauss.ts';
import { remember } from '../../src/core/numerics/remember.ts';
import { bracketedRoot } from '../../src/core/numerics/root.ts';
import { always, between, ordered } from './draw.ts';

test('the root of a rising cubic is found wherever it lies', () => {
  always(between(-50, 50), (root) => {
    const f = (x: number) => (x - root) ** 3 + (x - root);
    expect(Math.abs(bracketedRoot(f, -50, 50) - root)).toBeLessThan(1e-12);
  });
});

test('a step, a kink and a root at either end are found', () => {
  always(between(-1, 1), (at) => {
    expect(Math.abs(bracketedRoot((x) => (x < at ? -1 : 1), -2, 2) - at)).toBeLessThan(1e-12);
    expect(Math.abs(bracketedRoot((x) => (x < at ? 1e-6 : 1e6) * (x - at), -2, 2) - at)).toBeLessThan(1e-12);
    expect(bracketedRoot((x) => x - at, at, 2)).toBe(at);
    expect(bracketedRoot((x) => x - at, -2, at)).toBe(at);
  });
});

test('a bracket without a change of sign is refused', () => {
  expect(() => bracketedRoot((x) => x * x + 1, -1, 1)).toThrow(RangeError);
  expect(() => bracketedRoot(() => NaN, -1, 1)).toThrow(RangeError);
});

test('a panel is exact for polynomials to the ninth power, and not for the tenth', () => {
  always(fc.tuple(ordered(-2, 2, 0.01), fc.integer({ min: 0, max: 9 })), ([[a, b], power]) => {
    const exact = (b ** (power + 1) - a ** (power + 1)) / (power + 1);
    expect(Math.abs(gaussPanel((x) => x ** power, a, b) - exact)).toBeLessThan(1e-11);
  });
  expect(Math.abs(gaussPanel((x) => x ** 10, -1, 1) - 2 / 11)).toBeGreaterThan(1e-4);
});

/** A function of a stretch followed by a polynomial through so many points, and its integral from the low end. */
function followed(f: (x: number) => number, low: number, high: number, count: number) {
  const series = chebyshevSeries(chebyshevPoints(low, high, count).map(f));
  const along = (x: number) => (2 * (x - low)) / (high - low) - 1;
  return {
    value: (x: number) => seriesAt(series, along(x)),
    integral: (x: number) => ((high - low) / 2) * seriesAt(integralOf(series), along(x)),
  };
}

test('a polynomial through so many points is exact to one power less, and its integral is too', () => {
  const tried = fc.tuple(ordered(-2, 2, 0.01), between(0, 1), fc.integer({ min: 0, max: 7 }));
  always(tried, ([[a, b], part, power]) => {
    const x = a + part * (b - a);
    const { value, integral } = followed((t) => t ** power, a, b, 8);
    expect(Math.abs(value(x) - x ** power)).toBeLessThan(1e-11);
    expect(Math.abs(integral(x) - (x ** (power + 1) - a ** (power + 1)) / (power + 1))).toBeLessThan(1e-11);
  });
  expect(Math.abs(followed((t) => t ** 8, -1, 1, 8).value(1) - 1)).toBeGreaterThan(1e-4);
});

test('a smooth function is followed to its last figures, and so is its integral', () => {
  always(between(0, 1), (x) => {
    const { value, integral } = followed(Math.exp, 0, 1, 14);
    expect(Math.abs(value(x) - Math.exp(x))).toBeLessThan(1e-13);
    expect(Math.abs(integral(x) - Math.expm1(x))).toBeLessThan(1e-13);
  });
});

test('a remembered function is asked once, and forgets what was longest not asked for', () => {
  const asked: number[] = [];
  const square = remember((n: number) => (asked.push(n), n * n), 2);
  expect([3, 3, 4, 3, 5, 4, 3].map(square)).toEqual([9, 9, 16, 9, 25, 16, 9]);
  expect(asked).toEqual([3, 4, 5, 4, 3]);
});
