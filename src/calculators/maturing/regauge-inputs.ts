// What both regauges ask: what was filled, how long ago, and what counts as a leak.
import { formatCount, formatNumber as n } from '../../core/format.ts';
import { compareRegauge, expectedNow, type Difference } from '../../core/maturing/regauge.ts';
import type { Portion, Quantity } from '../../core/quantity.ts';
import { indrinkInput, storeInputs, storeOf } from './store.ts';

export const filledInputs = {
  filled: { kind: 'volume20', label: 'Filled with', range: [10, 700], step: 1, value: 200 },
  filledAt: { kind: 'strength', label: 'Filled at', range: [1, 80], step: 0.1, from: 'filling.strength' },
  indrink: indrinkInput,
  years: { kind: 'years', label: 'Years since', range: [1, 60], step: 1, value: 10 },
  ...storeInputs,
  allowed: {
    kind: 'percent',
    label: 'Difference you accept',
    range: [0.1, 20],
    step: 0.1,
    value: 3,
  },
} as const;

interface Filled {
  readonly filled: Quantity<'volume20'>;
  readonly filledAt: Quantity<'strength'>;
  readonly indrink: Quantity<'percent'>;
  readonly years: Quantity<'years'>;
  readonly loss: Quantity<'percent'>;
  readonly humidity: Quantity<'percent'>;
  readonly steady: Quantity<'percent'>;
  readonly allowed: Quantity<'percent'>;
}

/** What the cask should hold, and how what was found differs. */
export function against(
  given: Filled,
  found: Quantity<'alcohol'>,
): { expected: Portion; difference: Difference } {
  const expected = expectedNow({
    filled: { volume: given.filled, strength: given.filledAt },
    indrink: given.indrink,
    store: storeOf(given),
    years: given.years,
  });
  return { expected, difference: compareRegauge(found, expected.alcohol, given.allowed) };
}

/** The expectation, as lines of the working. */
export const expectedSteps = (given: Filled, expected: number, missing: number): readonly string[] => [
  `Expected: ${n(given.filled, 1)} L less ${n(given.indrink, 1)} % for the wood, at ${n(given.filledAt, 1)} % vol, losing ${n(given.loss, 1)} % of its alcohol a year for ${formatCount(given.years, 'year')}, leaves ${n(expected, 2)} L of pure alcohol`,
  `Expected less found: ${n(expected, 2)} − ${n(expected - missing, 2)} = ${n(missing, 1)} L, ${n((100 * missing) / expected, 1)} % of what was expected`,
];

/** What the difference means, in words. */
export function meaning(given: Filled, missing: number, part: number): string {
  const size = `${n(Math.abs(missing), 1)} L of pure alcohol, ${n(Math.abs(part), 1)} %,`;
  if (part > given.allowed)
    return `More is gone than expected: ${size} above your ${n(given.allowed, 1)} %. Look for a leak, an unrecorded sample or a wrong reading, and compare with the casks beside it.`;
  if (part < -given.allowed)
    return `Less is gone than expected: ${size} beyond your ${n(given.allowed, 1)} %. Measure again; if it holds, the store takes less here than your figures say.`;
  return `Evaporation as expected: the difference is ${size} within your ${n(given.allowed, 1)} %.`;
}
