// How a computed figure lies to a counted one, in words: each case worked by hand.
import { expect, test } from 'vitest';
import { computedBeside } from '../../src/core/line/counted-beside.ts';

test.each([
  ['casksInStore', 55_000, 173_000, '3.1 times as many'], // 173 / 55 = 3.145
  ['casksInStore', 55_000, 40_000, '27 % fewer'], // 1 − 40 / 55 = 0.273
  ['casksInStore', 55_000, 56_650, '3.0 % more'], // 1.03
  ['casksInStore', 55_000, 55_200, 'as counted'], // 0.36 %, within half a per cent
  ['draff', 1000, 2000, '2.0 times as much'],
  ['draff', 1000, 950, '5.0 % less'],
  ['lowWinesStrength', 22.1, 23.5, '1.4 % vol higher'],
  ['lowWinesStrength', 22.1, 22.15, 'as counted'], // within a tenth
  ['firstWaterTemperature', 70, 68.4, '1.6 °C lower'],
  ['casksInStore', 100, 2500, '25 times as many'],
] as const)('%s counted %d, computed %d: %s', (id, counted, computed, says) => {
  expect(computedBeside(id, counted, computed).replace(/[\u00a0\u202f]/g, ' ')).toBe(says);
});
