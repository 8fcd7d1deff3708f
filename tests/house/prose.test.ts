// Figures in sentences, by hand: a mash, a week, a tonne, a year; whole things; and what may not be told a year.
import { expect, test } from 'vitest';
import { mashesIn } from '../../src/core/line/ledger.ts';
import { builtInLine } from '../../src/house/line-of.ts';
import { countsWhole, figureText, wholeCountOf } from '../../src/house/prose.ts';
import { withoutUnit } from '../../src/house/without-unit.ts';

const built = builtInLine();
const plain = (text: string) => text.replace(/\s/g, ' ');

test('1,500 kg of malt a mash, six mashes a week, 46 weeks a year', () => {
  const malt = (['mash', 'week', 'tonne', 'year'] as const).map((per) => figureText(built, 'malt.mass', per));
  expect(malt.map(plain)).toEqual(['1,500 kg', '9,000 kg', '1,000 kg', '414,000 kg']);
  expect((['mash', 'week', 'tonne', 'year'] as const).map((pace) => mashesIn(pace, built))).toEqual([1, 6, 1 / 1.5, 276]);
  expect(plain(figureText(built, 'malt.mass'))).toBe('1,500 kg'); // a mash where nothing is said
}); // prettier-ignore

test('what is no amount has no figure a year, and what is nobody’s has no figure', () => {
  expect(() => figureText(built, 'wash.strength', 'year')).toThrow(/not an amount/);
  expect(() => figureText(built, 'house.heartEnd', 'tonne')).toThrow(/not an amount/);
  for (const none of ['heart.colour', 'heart', 'nobody.volume']) expect(() => figureText(built, none)).toThrow(/No figure is called/);
}); // prettier-ignore

test('decimals: as few as a given figure needs, three for a gravity, as many as are asked', () => {
  const said = (path: string, digits?: number) => plain(figureText(built, path, 'mash', digits));
  expect(said('house.heartEnd')).toBe('62 % vol');
  expect(said('house.originalGravity')).toBe('1.058');
  expect([said('malt.mass', 1), said('malt.mass', -1)]).toEqual(['1,500.0 kg', '2,000 kg']);
});

test('things are counted whole from ten on: casks to fill up, bottles filled down', () => {
  expect(['casks.perMash', 'bottling.bottles', 'malt.mass'].map(countsWhole)).toEqual(['up', 'down', undefined]);
  const casks = (mean: number) => wholeCountOf('casks.perMash', mean);
  expect([9.9, 10, 10.2, 10 + 1e-9, 4.15].map(casks)).toEqual([9.9, 10, 11, 10, 4.15]);
  const bottles = (mean: number) => wholeCountOf('bottling.bottles', mean);
  expect([9.9, 10.9, 11 - 1e-9, 1452.6].map(bottles)).toEqual([9.9, 10, 11, 1452]);
  expect(wholeCountOf('malt.mass', 1452.6)).toBe(1452.6);
}); // prettier-ignore

test('a column whose head names the unit has the number alone', () => {
  for (const text of ['591.3 L pure alcohol', '591.3\u00a0L', '591.3\u202fL', '591.3']) expect(withoutUnit(text)).toBe('591.3');
}); // prettier-ignore
