// The figures of a talk given to a house: only what is sure, single and not known; what is known stays; all is put back.
import { beforeEach, expect, test } from 'vitest';
import { builtInHouse, builtInName, type NumberName } from '../../src/house/figures.ts';
import { knownOf } from '../../src/house/parts/known.ts';
import { liveName, liveShelf, takeHouse, wholeHouseNow } from '../../src/browser/house-store.ts';
import { giveToHouse } from '../../src/islands/script-given.ts';
import { figuresToGive, type FigureToGive } from '../../src/islands/script-to-give.ts';
import type { SaidValue } from '../../src/core/cross-check/quoted.ts';
import type { TalkFigureId } from '../../src/talk/figures.ts';

const told = (...figures: readonly (readonly [TalkFigureId, number | SaidValue])[]) =>
  Object.fromEntries(
    figures.map(([figure, said], place) => [
      place,
      {
        figure,
        said: typeof said === 'number' ? { as: 'rounded' as const, value: said } : said,
        by: 'you' as const,
      },
    ]),
  );
const toGive = (taken: ReturnType<typeof told>) =>
  figuresToGive({ taken }, wholeHouseNow().house, knownOf(wholeHouseNow()));
const give = (
  ...figures: readonly (readonly [NumberName & TalkFigureId, number])[]
): readonly FigureToGive[] => figures.map(([figure, value]) => ({ figure, name: figure, value }));
const given = () => knownOf(wholeHouseNow()).given;

beforeEach(() =>
  takeHouse({
    name: 'Thornwath',
    house: builtInHouse,
    parts: { known: { given: { bottlingStrength: 'set', maltPerMash: 'measured' }, counted: {} } },
  }),
);

test('what is known, computed, none of the table’s or told again is not given; a range and what is told twice are left by name', () => {
  const { give, left } = toGive(
    told(
      ['bottlingStrength', 43], // known
      ['heartVolume', 900], // computed
      ['peat', 35], // none of the table's
      ['fermentationHours', 56],
      ['fermentationHours', 56],
      ['secondWaterTemperature', 80], // the house names it otherwise
      ['mashTemperature', { as: 'range', low: 63, high: 64 }],
      ['fillingStrength', 63.5],
      ['fillingStrength', 62.5],
      ['foreshotsMinutes', 20], // the built-in house ends them otherwise
    ),
  );
  expect(builtInHouse.foreshotsBy).not.toBe('minutes');
  expect(give).toEqual([
    { figure: 'fermentationHours', name: 'fermentationHours', value: 56 },
    { figure: 'secondWaterTemperature', name: 'secondWater', value: 80 },
  ]);
  expect(left).toEqual([
    { figure: 'mashTemperature', why: 'told as a range' },
    { figure: 'fillingStrength', why: 'told twice, and not alike' },
    { figure: 'foreshotsMinutes', why: 'not how this house ends its foreshots' },
  ]);
});

test('what is given is the reader’s own, what was known stays as it is, and all is put back by one call', () => {
  const before = wholeHouseNow();
  const done = giveToHouse(give(['fermentationHours', 56], ['originalGravity', 1.06], ['wortVolume', 7400]));
  expect(done.refused).toEqual([]);
  const { house } = wholeHouseNow();
  expect([house.fermentationHours, house.originalGravity, house.wortVolume]).toEqual([56, 1.06, 7400]);
  expect([house.maltPerMash, house.bottlingStrength]).toEqual([before.house.maltPerMash, before.house.bottlingStrength]);
  expect(Object.keys(given()).toSorted()).toEqual(
    ['bottlingStrength', 'fermentationHours', 'maltPerMash', 'originalGravity', 'wortVolume'],
  );
  expect(done.set[0]).toEqual({ label: 'Hours in the washback', now: '56 h', before: `${before.house.fermentationHours} h, ${builtInName}’s` });
  expect(done.stands()).toBe(true);
  done.putBack();
  expect(wholeHouseNow().house).toEqual(before.house);
  expect(given()).toEqual(knownOf(before).given);
  expect(done.stands()).toBe(false);
}); // prettier-ignore

test('a figure that is the built-in house’s too becomes known as it stands', () => {
  const { set } = giveToHouse(give(['fermentationHours', builtInHouse.fermentationHours]));
  expect(set).toHaveLength(1);
  expect(given()).toHaveProperty('fermentationHours');
});

test('what the house does not run with is left with its reason, and the rest is set', () => {
  const done = giveToHouse(give(['finalGravity', 1.14], ['yearsInWood', 8]));
  expect(done.set.map(({ now }) => now)).toEqual(['8 years']);
  expect(done.refused.map(({ name }) => name)).toEqual(['finalGravity']);
  expect(done.refused[0]!.problem).toMatch(/\.$/);
  expect(given()).not.toHaveProperty('finalGravity');
  const none = giveToHouse(give(['finalGravity', 1.14]));
  expect([none.set, none.refused.length]).toEqual([[], 1]);
});

test('what runs only beside another figure of the talk is set, whatever the order', () => {
  const hogsheads: FigureToGive = { figure: 'hogsheadsShare', name: 'hogsheads', value: 60 };
  const barrels: FigureToGive = { figure: 'barrelsShare', name: 'barrels', value: 30 };
  expect(builtInHouse.barrels + hogsheads.value).toBeGreaterThan(100); // of a hundred casks
  expect(giveToHouse([hogsheads]).refused).toHaveLength(1);
  expect(giveToHouse([hogsheads, barrels]).refused).toEqual([]);
  expect([wholeHouseNow().house.hogsheads, wholeHouseNow().house.barrels]).toEqual([60, 30]);
});

test('the built-in house is nobody’s: a house of the reader’s own is begun, and is gone again when all is put back', () => {
  const before = { name: builtInName, house: builtInHouse, parts: {} };
  takeHouse(before);
  const done = giveToHouse(give(['maltPerMash', 2000], ['wortVolume', 9800], ['originalGravity', 1.058]));
  expect([done.house, liveName()]).toEqual(['My house', 'My house']);
  const { house } = wholeHouseNow();
  expect([house.maltPerMash, house.wortVolume, house.originalGravity]).toEqual([2000, 9800, 1.058]);
  expect(Object.keys(given()).toSorted()).toEqual(['maltPerMash', 'originalGravity', 'wortVolume']);
  done.putBack();
  expect(wholeHouseNow()).toEqual(before);
  expect(Object.keys(liveShelf())).not.toContain('My house');
});
