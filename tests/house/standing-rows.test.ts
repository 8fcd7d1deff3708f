// What stands in a house, told on its sheet: what was given, usual values marked, and nothing where nothing was given.
import { expect, test } from 'vitest';
import { standingRows } from '../../src/house/standing-rows.ts';
import { builtInParts } from '../../src/house/parts/built-in.ts';

const spaced = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ');
const rows = (parts: Parameters<typeof standingRows>[0]) =>
  standingRows(parts).map(([what, says]) => [what, spaced(says)]);
const row = (parts: Parameters<typeof standingRows>[0], what: string) =>
  rows(parts).find(([name]) => name === what)?.[1];

test('a house that keeps nothing has no rows', () => {
  expect(standingRows({})).toEqual([]);
});

test('vessels are told as given, and a value that nobody gave is marked', () => {
  const plant = {
    washbacks: [{ number: 8, full: 38_000, working: 33_500, material: 'wood' }],
    shortFermentation: 60,
    weekendFermentation: 110,
    washStills: [{ number: 2, charge: 17_000, hours: 5.5, reflux: 0, condenser: 'shell-and-tube', heating: 'steam', usual: ['condenser'] }],
  }; // prettier-ignore
  expect(row({ plant }, 'Washbacks')).toBe('8 of 38,000 L, filled to 33,500 L, wood');
  expect(row({ plant }, 'Fermentation over a weekend')).toBe('110 h');
  expect(row({ plant }, 'Wash stills')).toContain('2 of 17,000 L');
  expect(row({ plant }, 'Wash stills')).toContain('shell and tube (usual), steam');
  expect(row({ plant }, 'Mash tuns')).toBeUndefined();
});

test('the year of opening, the register and what is laid elsewhere are told', () => {
  const parts = { stock: { opened: 1988, elsewhereShare: 70, groups: [] } };
  expect(rows(parts)).toEqual([
    ['Year of opening', '1988'],
    ['Laid elsewhere', '70 % of each year’s fillings'],
  ]);
});

test('the built-in house has its own full plant', () => {
  for (const what of ['Mash tuns', 'Washbacks', 'Wash stills', 'Spirit stills', 'Distilled'])
    expect(row(builtInParts, what), what).toBeDefined();
});
