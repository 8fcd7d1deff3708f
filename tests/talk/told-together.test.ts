// Which figures are told one after another: counted from labels in order, and kept as a text.
import { expect, test } from 'vitest';
import type { Label } from '../../src/talk/candidates.ts';
import { countBoth, gainOf, STEP, togetherAsText, togetherOf } from '../../src/talk/told-together.ts';

const pair: readonly Label[] = ['lowWinesVolume', 'lowWinesStrength'];
const talks = Array.from({ length: 30 }, () => [...pair, '-law', 'heartBegins', 'heartEnds', '-history', ...pair] as const); // prettier-ignore

test('what stands behind a figure more often than by chance gains, what never does loses', () => {
  const { all, figures } = countBoth(talks);
  expect(gainOf(all, 'lowWinesVolume', 'lowWinesStrength')).toBeGreaterThan(0.5);
  expect(gainOf(all, 'lowWinesStrength', 'lowWinesVolume')).toBeLessThan(-0.5);
  expect(gainOf(all, 'lowWinesStrength', 'heartBegins')).toBeLessThan(-0.5); // a law stands between
  expect(gainOf(figures, 'lowWinesStrength', 'heartBegins')).toBeGreaterThan(0.5);
  expect(gainOf(all, 'peat', 'draff')).toBe(0); // in no talk
  expect(gainOf(all, 'heartEnds', '-law')).toBe(gainOf(all, 'heartEnds', '-history')); // none is one, whatever the reason
});

// By hand: 30 talks of two labels each are 30 pairs. Behind peat stands draff 30 times; by chance, of L labels,
// (30 + 0.5) / (30 + 0.5 L). Smoothed by six: (30 + 6 c) / 36, and the logarithm of that over c, to the step.
test('a gain is the logarithm of how much more often', () => {
  const { all } = countBoth(Array.from({ length: 30 }, () => ['peat', 'draff'] as const));
  const labels = togetherLabels();
  const chance = 30.5 / (30 + 0.5 * labels);
  expect(gainOf(all, 'peat', 'draff')).toBeCloseTo(STEP * Math.round(Math.log((30 + 6 * chance) / 36 / chance) / STEP), 9); // prettier-ignore
});

/** How many labels there are, by the size of what is kept: a square. */
const togetherLabels = () => Math.sqrt(countBoth([]).all.length);

test('it comes back from its text', () => {
  const counted = countBoth(talks);
  expect(togetherOf(togetherAsText(counted))).toEqual(counted);
});
