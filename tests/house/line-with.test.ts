// The line of a house with its stills, malts and bottles: the year and the bottles against sums by hand.
import { expect, test } from 'vitest';
import { ledger } from '../../src/core/line/ledger.ts';
import type { House } from '../../src/core/line/house.ts';
import { line } from '../../src/core/line/line.ts';
import { yearOfMalts, type Malt } from '../../src/core/malting/grist.ts';
import { lineWithPlant } from '../../src/core/plant/line.ts';
import { count } from '../../src/core/quantity.ts';
import { cardFigures, saidOnCard } from '../../src/house/card-figures.ts';
import { conditions } from '../../src/house/conditions.ts';
import { decodeHouse, encodeHouse } from '../../src/house/codec.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { reckonBy, lineIn, lineOf, problemOfHouse } from '../../src/house/line-of.ts';
import { wayWith } from '../../src/house/line-with.ts';
import { bottlesPart } from '../../src/house/parts/bottles.ts';
import { builtInParts } from '../../src/house/parts/built-in.ts';
import { figureText } from '../../src/house/prose.ts';
import { proposeFigure, wayOf } from '../../src/house/propose.ts';
import { answer, apart } from '../core/draw.ts';
import { plainPlant, stills } from '../core/plants.ts';

const malt = (mass: number, extract: number, phenols = 0) =>
  ({ mass, moisture: 4.5, extract, fermentability: 87, phenols }) as unknown as Malt;
const campaign = (name: string, weeks: number, ...malts: readonly Malt[]) => ({ name, weeks, malts });
const maltsOf = (...campaigns: readonly object[]) => ({ malts: { basis: 'as-is', campaigns } });

test('the built-in house with its own parts is told as by its figures alone', () => {
  const own = answer(wayWith(builtInParts)(builtInHouse));
  const plain = answer(line(builtInHouse));
  for (const path of ['malt.mass', 'barley.mass', 'heart.alcohol', 'bottling.bottles'] as const)
    expect(figureText(own, path, 'year')).toBe(figureText(plain, path, 'year'));
  expect(own.bottling.bottlesPerYear).toBeCloseTo(plain.bottling.bottlesPerYear, 6);
});

test('a year of plain and peated weeks is the sum over them, and the other weeks have the house’s own malt', () => {
  const peated = campaign('Peated', 10, malt(1500, 72, 40));
  const plain = campaign('Plain', 20, malt(1200, 78));
  const found = answer(wayWith(maltsOf(peated, plain))(builtInHouse));
  const { mashesPerWeek, weeksPerYear, maltPerMash, solubleExtract } = builtInHouse;
  const rest = campaign('rest', weeksPerYear - 30, malt(maltPerMash, solubleExtract));
  // By hand, in kg: mashes by malt.
  const mass = mashesPerWeek * (10 * 1500 + 20 * 1200 + (weeksPerYear - 30) * maltPerMash);
  expect(apart(found.pace.maltPerYear, mass)).toBeLessThan(1e-12);
  // Dry matter of barley less a tenth lost in malting is that of the malt: 95.5 % of it against 88 % × 0.9.
  expect(apart(found.barley.perYear, (mass * 0.955) / (0.88 * 0.9))).toBeLessThan(1e-12);
  // What the malt could give is that of the year’s malts as one, by Bringhurst’s relation.
  const year = answer(yearOfMalts([peated, plain, rest], 'as-is', count(mashesPerWeek)));
  expect(apart(ledger(found, 'year').malt, year.alcohol)).toBeLessThan(1e-9);
  // The same part of the malt’s extract comes over and is fermented, so new spirit goes as the promise, within the model of the wash.
  const [own, all] = [answer(line(builtInHouse)), found].map((each) => ledger(each, 'year'));
  expect(apart(all!.heart / all!.malt, own!.heart / own!.malt)).toBeLessThan(0.01); // first look: 0.4 %
  expect(found.malt.mass).toBe(maltPerMash); // of a mash the house’s own is told
});

test('more weeks than a house works are shares of those; a grist of no week counts for nothing', () => {
  const { mashesPerWeek, weeksPerYear } = builtInHouse;
  const found = answer(wayWith(maltsOf(campaign('a', 50, malt(1500, 77.5)), campaign('b', 50, malt(1000, 77.5))))(builtInHouse));
  expect(apart(found.pace.mashesPerYear, mashesPerWeek * weeksPerYear)).toBeLessThan(1e-12);
  expect(apart(found.pace.maltPerYear, mashesPerWeek * weeksPerYear * 1250)).toBeLessThan(1e-12);
  expect(wayWith(maltsOf(campaign('a', 0, malt(1500, 60))))).toBe(line);
}); // prettier-ignore

test('a grist may have a final gravity of its own; one that cannot be is named', () => {
  const other = (finalGravity: number, house: House = builtInHouse) => wayWith(maltsOf({ ...campaign('Slow', 46, malt(1500, 77.5)), finalGravity }))(house);
  const found = answer(other(1.006));
  const alone = answer(line({ ...builtInHouse, finalGravity: 1.006 } as House));
  expect(apart(ledger(found, 'year').wash, ledger(alone, 'year').wash)).toBeLessThan(1e-12);
  expect(other(1.02, { ...builtInHouse, originalGravity: 1.018 } as House)).toMatchObject({ refused: expect.stringContaining('“Slow”: The final gravity') });
}); // prettier-ignore

test('bottles of several sizes and strengths are filled by their shares', () => {
  const bottles = [{ size: 20, strength: 55, share: 25 }, { size: 100, strength: 40, share: 50 }];
  const found = answer(wayWith({ bottles })(builtInHouse));
  const { matured, bottling, casks } = found;
  const { bottleSize, bottlingStrength, filterLoss } = builtInHouse;
  // By hand, by pure alcohol alone: it is not changed by water, and filters take the same part of all.
  const filled = matured.alcohol * (1 - filterLoss / 100);
  const number = (share: number, size: number, strength: number) => (filled * share) / ((size / 100) * (strength / 100));
  const all = number(0.25, 20, 55) + number(0.5, 100, 40) + number(0.25, bottleSize, bottlingStrength);
  expect(apart(bottling.bottles, all)).toBeLessThan(1e-9);
  expect(apart(bottling.alcohol, filled)).toBeLessThan(1e-12);
  expect(apart(bottling.bottlesPerCask, all / casks.perMash)).toBeLessThan(1e-9);
  expect(apart(bottling.bottlesPerYear, all * 6 * 46)).toBeLessThan(1e-9);
  expect(bottling.isMixed).toBe(true);
  const one = answer(wayWith({ bottles: [{ size: 20, strength: 55, share: 100 }] })(builtInHouse)).bottling;
  expect(apart(one.bottles, number(1, 20, 55))).toBeLessThan(1e-9);
  expect(one.isMixed).toBe(false);
}); // prettier-ignore

test('bottles that cannot be are told of, and the others stand', () => {
  const { value, problems } = bottlesPart.read([{ size: 70, strength: 46, share: 70 }, { size: 70, strength: 30, share: 10 }, { size: 70, strength: 46, share: 40 }]);
  expect(value).toEqual([{ size: 70, strength: 46, share: 70 }]);
  expect(problems).toEqual([
    'Bottle 2: Strength: “30” was given; it can be from 35 to 75 % vol.',
    'Bottle 3: all shares together would be more than 100 %.',
  ]);
}); // prettier-ignore

test('a house with three distillations goes by them in every figure, and its figures are judged by them', () => {
  const plant = { ...plainPlant, scheme: 'thrice' };
  const way = wayWith({ plant });
  const high = { ...builtInHouse, heartEnd: 78 } as House;
  try {
    reckonBy(way);
    expect(lineOf({ ...builtInHouse }).heart).toEqual(answer(lineWithPlant(builtInHouse, { ...plainPlant, scheme: 'thrice' })).heart);
    expect(lineIn(high)).not.toHaveProperty('refused');
    expect(lineOf(builtInHouse).heart).toEqual(answer(line(builtInHouse)).heart); // as the page was built
    // A heart that ends at 78 % vol cannot be had from two distillations of such stills, and can from three.
    expect(line(high)).toHaveProperty('refused');
    expect(proposeFigure(builtInHouse, 'heartEnd', 78)).toHaveProperty('problem');
    expect(proposeFigure({ ...builtInHouse }, 'heartEnd', 78, undefined, wayOf({ ...builtInHouse }))).not.toHaveProperty('problem');
    expect(proposeFigure({ ...builtInHouse }, 'heartEnd', 86, undefined, wayOf({ ...builtInHouse }))).toHaveProperty('problem');
  } finally {
    reckonBy(line);
  }
  expect(problemOfHouse(high, {})).toContain('78');
  const read = decodeHouse(encodeHouse({ name: 'Three', house: high, parts: { plant } }));
  expect(read.problems).toEqual([]);
  expect(read.house.heartEnd).toBe(78);
  expect(decodeHouse(encodeHouse({ name: 'Two', house: high })).problems).toHaveLength(1);
  expect(lineOf(high).house).toBe(builtInHouse); // until its stills are fetched, there is a line to show
}); // prettier-ignore

test('stills that find no balance leave the line of two', () => {
  const way = wayWith({ plant: { ...plainPlant, scheme: 'thrice', intermediateStills: [] } });
  try {
    reckonBy(way);
    const house = { ...builtInHouse };
    expect(lineIn(house)).toHaveProperty('refused');
    expect(lineOf(house)).toEqual(answer(line(house)));
    expect(proposeFigure(house, 'heartEnd', 63, undefined, wayOf(house))).not.toHaveProperty('problem');
  } finally {
    reckonBy(line);
  }
  const alike = answer(
    wayWith({ plant: { ...plainPlant, washStills: [stills(3, 2000, 0.3)] } })(builtInHouse),
  );
  expect(alike.heart).toEqual(answer(line(builtInHouse)).heart);
});

test('hours over a weekend are told behind the others, where the house has given them and they differ', () => {
  const said = (plant: object) => {
    const found = answer(wayWith({ plant })(builtInHouse));
    return saidOnCard(
      cardFigures.find(({ id }) => id === 'fermentationHours')!,
      found,
    );
  };
  expect(said(plainPlant)).toBe('72 hours, or 110\u00a0h over a weekend');
  expect(said({ ...plainPlant, weekendFermentation: 72 })).toBe('72 hours');
  expect(said({ ...plainPlant, usual: ['weekendFermentation'] })).toBe('72 hours');
});

test('what the store does to the strength is told only of a store that is known', () => {
  const found = answer(line(builtInHouse));
  expect(conditions['strength-falls'](found, [])).toBe(true);
  expect(conditions['store-not-known'](found, [])).toBe(false);
  for (const each of ['strength-falls', 'strength-rises', 'strength-steady'] as const)
    expect(conditions[each](found, ['storeHumidity'])).toBe(false);
  expect(conditions['store-not-known'](found, ['storeHumidity'])).toBe(true);
});

test('of the casks filled, those alone are in store that are not laid elsewhere', () => {
  const inStore = (stock: object) => answer(wayWith({ stock })(builtInHouse)).casks.inStore;
  const all = answer(line(builtInHouse)).casks.inStore;
  expect(inStore({ elsewhereShare: 70, groups: [] })).toBeCloseTo(all * 0.3, 6); // three in ten stay
  expect(inStore({ elsewhereShare: 100, groups: [] })).toBe(0);
  for (const strange of ['70', -1, 101, null]) expect(inStore({ elsewhereShare: strange })).toBe(all);
});
