// Bottles and casks in sentences are whole things: no bottle that is not full, no cask forgotten.
import { expect, test } from 'vitest';
import { line } from '../../src/core/line/line.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { filledFrom } from '../../src/house/open-figures.ts';
import { figureText } from '../../src/house/prose.ts';
import { answer } from '../core/draw.ts';

const built = answer(line(builtInHouse));
const counting = (bottles: number, perMash: number) => ({
  ...built,
  bottling: { ...built.bottling, bottles },
  casks: { ...built.casks, perMash, perYear: perMash * built.pace.mashesPerYear },
});
const told = (found: object, path: string, per: 'mash' | 'year' = 'mash') =>
  figureText(found as typeof built, path, per);

test.each([
  [1449.9, '1,449'], // the last is not full
  [1449.9999999999, '1,450'], // a rounding of the machine is no bottle lost
  [1450, '1,450'],
])('%d bottles are told as %s', (bottles, text) => {
  expect(told(counting(bottles, 4.2), 'bottling.bottles')).toBe(text);
});

test('a mean of casks a mash keeps its decimals, and the casks of a year are enough for all of it', () => {
  // By hand: 276 mashes of 4.2 casks are 1,159.2 casks, so 1,160 are wanted.
  const found = counting(1450, 4.2);
  expect(told(found, 'casks.perMash')).toBe('4.2');
  expect(told(found, 'casks.perYear')).toBe('1,160');
  expect(told(found, 'casks.perMash', 'year')).toBe('1,160');
});

test('digits below nothing are the figures that count, in a year and in what is read aloud', () => {
  // By hand: 276 mashes of 595.95 L are 164,482.2 L, to four figures 164,500.
  const found = { ...built, heart: { ...built.heart, alcohol: 595.95 } } as typeof built;
  expect(figureText(found, 'heart.alcohol', 'year', -4)).toMatch(/^164,500\D/);
  expect(filledFrom(found, '{heart.alcohol;year;-4;}')).toMatch(/^164,500\D/);
  expect(figureText(found, 'heart.alcohol', 'mash', -2)).toMatch(/^600\D/);
});
