// What a talk's quantities are taken for, what is asked, and what is told twice and not alike.
import { expect, test } from 'vitest';
import { lineOf } from '../../src/house/line-of.ts';
import { plain, quotableFigures, quotableNames } from '../../src/core/cross-check/quoted.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { quotedOf, readLines, takenIn, tellingsIn } from '../../src/islands/script-taken.ts';
import { toldTwice } from '../../src/islands/script-twice.ts';
import { ofHouse } from '../../src/talk/own-house.ts';
import { readScript, type ReadQuantity } from '../../src/talk/script.ts';
import { NOT_OURS } from '../../src/talk/settled.ts';

const read = (text: string, change: Partial<ReadQuantity> = {}) =>
  readScript(text).quantities.map((each) => ({ ...each, ...change }));
const takenFrom = (text: string) => takenIn(text, read(text), {}, false).taken;

test('every figure that can be held against others is read back from its name and number', () => {
  const house = lineOf(builtInHouse);
  const text = quotableNames
    .map((name) => `${quotableFigures[name].label}: ${plain(name, ofHouse(name, house)!)}`)
    .join('\n');
  const { taken, unsure } = takenIn(text, readLines(text, true).quantities, {}, true);
  expect(unsure).toEqual([]);
  const quoted = quotedOf(taken);
  for (const name of quotableNames) {
    const said = quoted[name]!;
    expect(said.as, name).toBe('rounded');
    const printed = plain(name, ofHouse(name, house)!).replaceAll(',', '');
    expect(said.as === 'range' ? NaN : said.value, name).toBe(parseFloat(printed));
  }
});

test('a proposal of less than four in five is asked and not used; what is put right is', () => {
  const text = 'The wash still takes 6,000 litres.';
  const low = read(text, {
    figure: 'washVolume',
    inFigure: [6000],
    confidence: 0.79,
    runnersUp: ['lowWinesVolume'],
  });
  const asked = takenIn(text, low, {}, false);
  expect(asked.taken).toEqual({});
  expect(asked.unsure).toEqual([{ start: 21, end: 33, choices: ['washVolume', 'lowWinesVolume'] }]);
  expect(takenIn(text, read(text, { ...low[0], confidence: 0.8 }), {}, false).unsure).toEqual([]);
  expect(takenIn(text, low, { 21: NOT_OURS }, false)).toEqual({ taken: {}, unsure: [] });
  const { taken, unsure } = takenIn(text, low, { 21: 'lowWinesVolume' }, false);
  expect(unsure).toEqual([]);
  expect(taken[21]).toMatchObject({ figure: 'lowWinesVolume', by: 'you', said: { value: 6000 } });
});

test('what is put right is turned into the unit of its figure', () => {
  const text = 'There are 4 tonnes of it, at 145 °F.';
  const [mass, warmth] = read(text, { figure: undefined, inFigure: undefined, confidence: 0 } as never);
  const { taken } = takenIn(
    text,
    [mass!, warmth!],
    { [mass!.start]: 'maltPerMash', [warmth!.start]: 'firstWaterTemperature' },
    false,
  );
  expect(taken[mass!.start]!.said).toMatchObject({ value: 4000 }); // 1 t is 1,000 kg: SI
  expect(taken[warmth!.start]!.said).toMatchObject({ as: 'rounded' });
  expect((taken[warmth!.start]!.said as { value: number }).value).toBeCloseTo(62.78, 2); // (145 − 32) / 1.8
});

test('a name before a number counts only where its unit can be that', () => {
  expect(Object.values(takenFrom('Bottle: 5 kg')).map(({ figure }) => figure)).not.toContain('bottleSize');
  expect(Object.values(takenFrom('Bottle: 75 cl'))).toMatchObject([{ figure: 'bottleSize', by: 'name' }]);
  expect(Object.values(takenFrom('Wash strength: exactly 9.0 %'))[0]!.said).toEqual({
    as: 'exact',
    value: 9,
  });
  expect(Object.values(takenFrom('Wash strength: 9.0 %'))[0]!.said).toEqual({ as: 'rounded', value: 9, step: 0.1 }); // prettier-ignore
});

test('the same figure told otherwise is told of; a rounder telling of it is not', () => {
  const twice = (text: string) => toldTwice(takenFrom(text)).map(({ figure, places }) => [figure, places.length]);
  expect(twice('Filling strength: 63.5 %\nFilling strength: 62.5 %')).toEqual([['fillingStrength', 2]]);
  expect(twice('Malt a week: 38.5 tonnes\nMalt a week: about 40 tonnes')).toEqual([]);
  expect(twice('Years in wood: 10 to 12 years\nYears in wood: 11 years')).toEqual([]);
  expect(twice('Bottle: 70 cl\nBottle: 0.7 litres')).toEqual([]);
  expect(twice('Mashes a week: 6\nMashes a week: 7\nMashes a week: 6')).toEqual([['mashesPerWeek', 2]]);
  expect(twice('Hours in the washback: a full week\nHours in the washback: 163 hours')).toEqual([['fermentationHours', 2]]);
}); // prettier-ignore

test('a telling that another has talked it out of is still shown beside it, and never used', () => {
  const text = 'The filling strength is 63.5 %. We fill our casks at 62.5 %.';
  const { quantities } = readScript(text);
  const { taken } = takenIn(text, quantities, {}, false);
  const also = tellingsIn(text, quantities, {}, taken);
  expect(toldTwice(taken, also)).toEqual([{ figure: 'fillingStrength', places: [text.indexOf('63.5'), text.indexOf('62.5')] }]); // prettier-ignore
  expect(Object.keys(taken).filter((place) => place in also)).toEqual([]);
  expect(
    tellingsIn(text, quantities, { [text.indexOf('63.5')]: NOT_OURS }, taken)[text.indexOf('63.5')],
  ).toBeUndefined();
});

test('a full week in the washback is held against 163 hours, in prose, and a week that is none of it is not', () => {
  const told = (text: string) => {
    const { quantities } = readScript(text);
    const { taken } = takenIn(text, quantities, {}, false);
    return toldTwice(taken, tellingsIn(text, quantities, {}, taken)).map(({ figure, places }) => [figure, places.map((place) => text.slice(place).split(/[ ,.]/).slice(0, 3).join(' '))]); // prettier-ignore
  };
  const house =
    'We mash nine tonnes of malt. The wash stays in the washbacks STAY. The gravity goes from 1.060 down to 0.998 and that takes 163 hours. Then it goes to the wash still.';
  expect(told(house.replace('STAY', 'a full week, longer than anybody'))).toEqual([['fermentationHours', ['a full week', '163 hours ']]]); // prettier-ignore
  expect(told(house.replace('STAY', 'while we shut for a full week'))).toEqual([]);
  const other = 'Hours in the washback: a full week\nThis one had 163 hours in the washback, and nobody minds.'; // prettier-ignore
  expect(told(other).map(([figure]) => figure)).toEqual(['fermentationHours']);
});
