// What one bottle took of spirit, water and energy, by a hand sum; and figures that are told roughly.
import { expect, test } from 'vitest';
import { forABottle } from '../../src/house/for-a-bottle.ts';
import { builtInLine } from '../../src/house/line-of.ts';
import { figureText } from '../../src/house/prose.ts';

test('a bottle takes more spirit off the still than is in it, and water and energy by that', () => {
  // 0.7 L at 46 % vol are 0.322 L; back through filters 0.5 %, 2.46 L left in 4.15 casks of 1,453 bottles, ten years at 2 % and the wood's 2 %:
  const drawn = (0.322 / 0.995 + 2.46 / 1453) / 0.98 ** 10 / 0.98;
  expect(forABottle['bottle.alcohol']!.of(builtInLine()) / drawn).toBeCloseTo(1, 2); // the loss of a year grows a hair as strength falls
  expect(figureText(builtInLine(), 'bottle.alcohol')).toMatch(/^0\.41\sL/);
  expect(figureText(builtInLine(), 'bottle.water')).toMatch(/^78\sL$/); // 0.408 × 190
  expect(figureText(builtInLine(), 'bottle.energy')).toBe('2.7'); // 0.408 × 6.66
});

test('the store and the bottles of a year are told to three figures', () => {
  expect(figureText(builtInLine(), 'casks.inStore')).toBe('11,400'); // 1,144.6 × 10
  expect(figureText(builtInLine(), 'bottling.bottlesPerYear', 'mash', -3)).toBe('401,000'); // 1,452.6 × 276
});
