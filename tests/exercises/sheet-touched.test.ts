// A sheet's link held against the house as it is: which figures it carries that are others now.
import { expect, test } from 'vitest';
import { sheetLink } from '../../src/exercises/sheet-link.ts';
import { sheetTouched } from '../../src/exercises/sheet-touched.ts';
import { sheetMark, type SheetHouse, type Worksheet } from '../../src/exercises/worksheet.ts';
import type { House } from '../../src/core/line/house.ts';
import { builtInHouse, builtInName } from '../../src/house/figures.ts';
import { nothingKnown } from '../../src/house/parts/known.ts';
import { injections } from '../hostile-texts.ts';

const figures = { ...builtInHouse, heartEnd: 60 } as House;
const linkFor = (house: SheetHouse) => {
  const sheet: Worksheet = { generator: 1, topics: ['malting'], forms: ['calculation'], levels: [1], count: 3, house, seed: 'a-sheet', versions: 1 }; // prettier-ignore
  return sheetLink(sheet);
};
const own = linkFor({ name: 'Sallowby', house: figures });

test('a sheet with the figures of the house as it is is not touched', () => {
  const { says, isTouched } = sheetTouched(own, 'Sallowby', figures);
  expect(isTouched).toBe(false);
  expect(says).toBe(`Sheet ${sheetMark(own)} has the figures of Sallowby as they are.`);
});

test('a sheet whose house has changed is touched: the figures are named, and the version that it was made of', () => {
  const now = { ...figures, heartEnd: 62, mashesPerWeek: 7 } as House;
  const spring = { day: '2026-05-14', name: 'Spring', figures, known: nothingKnown };
  const { says, isTouched } = sheetTouched(`https://example.org/sheet/${own}`, 'Sallowby', now, [spring]);
  expect(isTouched).toBe(true);
  expect(says).toContain('than Sallowby has: mashes in a week, heart ends at.');
  expect(says).toContain('It has the figures of “Spring”.');
});

test('a sheet of another house says whose it is; one that invents its houses is not touched', () => {
  expect(sheetTouched(own, 'Thornwath', builtInHouse).says).toContain('It was made for Sallowby.');
  expect(sheetTouched(linkFor('built-in'), builtInName, builtInHouse).isTouched).toBe(false);
  expect(sheetTouched(linkFor('built-in'), builtInName, figures).isTouched).toBe(true);
  expect(sheetTouched(linkFor('random'), 'Sallowby', figures)).toMatchObject({ says: expect.stringContaining('invents its houses'), isTouched: false }); // prettier-ignore
});

test('what is no link to a sheet is told', () => {
  for (const text of ['', 'https://example.org/', '#sheet=', '#sheet=1.2.3', `#sheet=${'9'.repeat(100_000)}`, ...injections]) {
    const { says, isTouched } = sheetTouched(text, 'Sallowby', figures);
    expect(isTouched).toBe(false);
    expect(says).toMatch(/no link to a sheet|damaged|has at most/);
  }
}); // prettier-ignore
