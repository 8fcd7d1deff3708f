// Other units: known equivalences, and there and back again.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { KindName } from '../../src/core/kinds.ts';
import { unitsOf } from '../../src/core/units.ts';

const unit = (kind: KindName, name: string) => unitsOf(kind).find((candidate) => candidate.unit === name)!;

test.each([
  ['volume20', 'UK gal', 4.54609, 1, 1e-9, 'Weights and Measures Act 1985'],
  ['volume20', 'US gal', 3.785411784, 1, 1e-9, '231 cubic inches'],
  ['volume20', 'hL', 250, 2.5, 1e-9, 'by definition'],
  ['temperature', '°F', 20, 68, 1e-9, 'by definition'],
  ['temperature', '°F', -40, -40, 1e-9, 'by definition'],
  ['mass', 'lb', 0.45359237, 1, 1e-9, 'agreement of 1959'],
  ['energy', 'kWh', 3.6, 1, 1e-9, 'by definition'],
  [
    'strength',
    '° former UK proof',
    57.15,
    100,
    0.02,
    'secondary pages quote 57.15 % vol at 20 °C for proof spirit',
  ],
  ['strength', '% mass', 40, 33.3, 0.01, 'strength and mass of the R 22 table, from memory'],
  [
    'alcohol',
    'US proof gal',
    1.9018,
    1,
    1e-4,
    '27 CFR 19.1 with ethanol brought from 60 °F to 20 °C, computed',
  ],
  ['gravity', '°P', 1.03998, 10, 0.002, 'National Bureau of Standards sugar table, from memory'],
] as const)('%s in %s: %d is %d', (kind, name, core, shown, within, _source) => {
  expect(Math.abs(unit(kind, name).fromCore(core) - shown)).toBeLessThanOrEqual(within);
});

describe.each(
  (
    [
      ['volume20', 0.1, 1e6],
      ['alcohol', 0.1, 1e6],
      ['strength', 0.01, 99.99],
      ['massPercent', 0.01, 99.99],
      ['gravity', 0.985, 1.14],
      ['temperature', -20, 110],
      ['mass', 0.1, 1e6],
      ['energy', 0.1, 1e6],
    ] as const
  ).flatMap(([kind, min, max]) => unitsOf(kind).map(({ unit }) => [kind, unit, min, max] as const)),
)('%s in "%s"', (kind, name, min, max) => {
  test('comes back', () => {
    const { fromCore, toCore } = unit(kind, name);
    fc.assert(
      fc.property(fc.double({ min, max, noNaN: true }), (value) => {
        expect(Math.abs(toCore(fromCore(value)) - value)).toBeLessThanOrEqual(
          1e-9 * Math.max(1, Math.abs(value)),
        );
      }),
      { numRuns: 100 },
    );
  });
});
