// Figures drawn over whole ranges, for tests of relations.
import fc from 'fast-check';
import { celsius, litres20, share, strength, type Quantity, type Spirit } from '../../src/core/quantity.ts';
import type { StillSetting } from '../../src/core/distilling/still.ts';

const STEPS = 1_000_000;

/** Evenly over the range, in a million steps, both ends among them. */
export function between(low: number, high: number) {
  return fc
    .integer({ min: 0, max: STEPS })
    .map((i) => (i === STEPS ? high : low + ((high - low) * i) / STEPS));
}
export const strengths = (low = 0, high = 100) => between(low, high).map(strength);
export const temperatures = (low = -20, high = 40) => between(low, high).map(celsius);
export const spirits: fc.Arbitrary<Spirit> = fc.record({
  volume: between(0.1, 200_000).map(litres20),
  strength: strengths(),
});
export const settings: fc.Arbitrary<StillSetting> = fc.record({
  reflux: between(0, 1).map(share),
  pressure: between(60, 110).map((p) => p as Quantity<'pressure'>),
});

/** The two orders of a pair, smaller first, at least `gap` apart. */
export function ordered(low: number, high: number, gap: number) {
  return fc
    .tuple(between(low, high), between(low, high))
    .filter(([a, b]) => Math.abs(a - b) >= gap)
    .map(([a, b]) => [Math.min(a, b), Math.max(a, b)] as const);
}

/** Checks a relation over a hundred draws. */
export function always<T>(drawn: fc.Arbitrary<T>, holds: (value: T) => void): void {
  fc.assert(
    fc.property(drawn, (value) => {
      holds(value);
    }),
  );
}

/** Distance of two figures as a part of the larger one. */
export function apart(a: number, b: number): number {
  return a === b ? 0 : Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b));
}

/** The answer, when a result is one; fails with the reason when it is a refusal. */
export function answer<T extends object>(result: T): Exclude<T, { readonly refused: string }> {
  if ('refused' in result) throw new Error(`Refused: ${String(result.refused)}`);
  return result as Exclude<T, { readonly refused: string }>;
}
