// The malts of a year as a part of the house: what is given comes back, and what cannot be is told by grist and field.
import { expect, test } from 'vitest';
import { yearOfMalts } from '../../src/core/malting/grist.ts';
import { isRefusal } from '../../src/core/refusal.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { builtInParts } from '../../src/house/parts/built-in.ts';
import { maltsPart } from '../../src/house/parts/malts.ts';
import { readPart } from '../../src/house/parts/part.ts';

const plain = { mass: 1500, moisture: 4.5, extract: 77, fermentability: 87, phenols: 1 };
const grist = { name: 'Plain', weeks: 40, malts: [plain] };
const read = (campaigns: readonly unknown[], basis: unknown = 'as-is') =>
  maltsPart.read({ basis, campaigns });

test('a year comes back as it was given', () => {
  const given = { basis: 'dry', campaigns: [grist, { ...grist, name: 'Peated', malts: [plain, plain] }] };
  expect(maltsPart.read(given)).toEqual({ value: given, problems: [] });
});

for (const [what, wrong, says] of [
  ['no name', { name: '' }, 'Grist 2: The name of a grist: nothing was given'],
  ['a name of two lines', { name: 'a\nb' }, 'The name of a grist'],
  ['too many weeks', { weeks: 54 }, 'Grist 2 (“Plain”): Weeks: “54” was given; they can be from 0 to 53.'],
  ['no malt', { malts: [] }, 'Grist 2 (“Plain”): it can have from 1 to 8 malts.'],
  ['nine malts', { malts: Array.from({ length: 9 }, () => plain) }, 'from 1 to 8 malts'],
  ['negative malt', { malts: [{ ...plain, mass: -5 }] }, 'Malt in a mash: “-5” was given'],
  ['wet malt', { malts: [plain, { ...plain, moisture: 60 }] }, 'Moisture: “60” was given'],
  ['a text', { malts: [{ ...plain, phenols: 'smoky' }] }, 'Phenols: “smoky” was given'],
] as const)
  test(`${what} is told, and the other grists are taken`, () => {
    const { value, problems } = read([grist, { ...grist, ...wrong }, grist]);
    expect(value.campaigns).toEqual([grist, grist]);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toContain(says);
  });

test('a basis that is none is told and taken as the malt as it is', () => {
  expect(read([grist], 'wet')).toMatchObject({ value: { basis: 'as-is' }, problems: [expect.stringContaining('“wet”')] }); // prettier-ignore
  expect(read(Array.from({ length: 9 }, () => grist)).problems.join()).toContain('the first 8 are kept');
});

test('the built-in house mashes the weeks of its year, and its malts together are its own malt to a tenth', () => {
  const { value, problems } = readPart(maltsPart, builtInParts.malts);
  expect(problems).toEqual([]);
  const year = yearOfMalts(value.campaigns, value.basis, builtInHouse.mashesPerWeek);
  if (isRefusal(year)) throw new Error(year.refused);
  expect(year.weeks).toBe(builtInHouse.weeksPerYear);
  expect(year.mean.mass / year.mashes).toBeCloseTo(builtInHouse.maltPerMash, 9);
  expect(Math.abs(year.mean.extract - builtInHouse.solubleExtract)).toBeLessThan(0.1);
  expect(Math.abs(year.mean.fermentability - builtInHouse.fermentability)).toBeLessThan(0.1);
});
