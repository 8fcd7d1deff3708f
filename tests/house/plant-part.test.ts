// The part “plant”: what can be read of a house's vessels, and the sentence for each that cannot be.
import { expect, test } from 'vitest';
import { chargesOf } from '../../src/core/plant/charges.ts';
import { plantFits } from '../../src/core/plant/fits.ts';
import { lineWithPlant } from '../../src/core/plant/line.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { builtInParts } from '../../src/house/parts/built-in.ts';
import { usualSentence } from '../../src/core/plant/usual.ts';
import { emptyPlant, plantPart } from '../../src/house/parts/plant.ts';
import { answer } from '../core/draw.ts';
import { plainPlant, stills } from '../core/plants.ts';
import { injections, nested, notFigures, prototypeKeys } from '../hostile-texts.ts';

const read = (over: object) => plantPart.read({ ...plainPlant, ...over });

test('a plant comes back as it was given', () => {
  expect(plantPart.read(JSON.parse(JSON.stringify(plainPlant)))).toEqual({ value: plainPlant, problems: [] });
  expect(plantPart.read({})).toEqual({ value: emptyPlant, problems: [] });
});

test('a vessel that cannot be is named, with what it can be, and the others are taken', () => {
  const good = stills(1, 8000, 0.1);
  const { value, problems } = read({ washStills: [good, { ...good, charge: 90_000 }] });
  expect(problems).toEqual(['Wash still 2: a charge of 90,000 L: a still takes 100 to 60,000 L.']);
  expect(value.washStills).toEqual([good]);
  const told = (over: object) => read(over).problems;
  expect(told({ spiritStills: [{ ...good, number: 1.5 }] })).toEqual(['Spirit still 1: a number of 1.5: there can be 1 to 20.']);
  expect(told({ spiritStills: [{ ...good, reflux: -0.1 }] })).toEqual(['Spirit still 1: a reflux of −0.10: a still has 0 to 1.']);
  expect(told({ spiritStills: [{ ...good, hours: undefined }] })).toEqual(['Spirit still 1: a time is missing: a charge takes 1 to 48 h.']);
  expect(told({ spiritStills: [{ ...good, heating: 'peat' }] })).toEqual(['Spirit still 1: “peat” is none of steam, flame.']);
  expect(told({ washbacks: [{ number: 2, full: 8000, working: 9000, material: 'wood' }] })).toEqual(['Washback 1: filled to 9,000 L, and it holds 8,000 L to the brim.']);
  expect(told({ washCharger: { holds: -1 } })).toEqual(['Wash charger: a volume of −1 L: it can hold 0 to 500,000 L.']);
  expect(told({ scheme: 'four times' })).toEqual(['How it is distilled: “four times” is none of twice, thrice, part-thrice.']);
  expect(told({ shortFermentation: 5 })).toEqual(['Fermentation without a weekend: a time of 5 h: it takes 24 to 240 h.']);
  expect(told({ cellar: 1 })).toEqual(['Stills and vessels: “cellar” is no vessel of a plant.']);
  expect(told({ washStills: Array.from({ length: 9 }, () => good) })).toEqual(['Wash stills: 9 groups are given, and 6 are read; the rest is left out.']);
}); // prettier-ignore

test('what means harm is told of, and never taken', () => {
  const bad: unknown[] = [...injections, ...notFigures.map((text) => JSON.parse(text) as unknown), null, [], 7, JSON.parse(nested(10))];
  for (const data of bad) {
    if (JSON.stringify(data) !== '{}' && JSON.stringify(data) !== '{"__proto__":62}')
      expect(plantPart.read(data).value).toEqual(emptyPlant);
    for (const key of Object.keys(emptyPlant)) {
      const { value } = plantPart.read({ [key]: data });
      expect(plantPart.read(JSON.parse(JSON.stringify(value)))).toEqual({ value, problems: [] });
    }
  }
  for (const key of prototypeKeys) {
    const { value, problems } = plantPart.read(JSON.parse(`{"${key}":{"holds":1},"scheme":"${key}"}`));
    expect(value).toEqual(emptyPlant);
    expect(problems).toHaveLength(2);
  }
}); // prettier-ignore

test('the built-in house’s vessels run its week: a charge of each still to a mash, and nothing too small', () => {
  const { value: plant, problems } = plantPart.read(builtInParts.plant);
  expect(problems).toEqual([]);
  const line = answer(lineWithPlant(builtInHouse, plant));
  const charges = answer(chargesOf(builtInHouse, plant));
  expect(charges.wash.map(({ aMash }) => aMash)).toEqual([1]);
  expect(charges.spirit.map(({ aMash }) => aMash)).toEqual([1]);
  expect(plantFits(line, plant, charges).flatMap(({ says }) => says ?? [])).toEqual([]);
});

test('usual values stay marked until they are given, and what an older text gave is not marked', () => {
  const backs = { number: 4, full: 10_000, working: 8000, material: 'wood' };
  const marked = plantPart.read({
    washbacks: [{ ...backs, usual: ['number', 'full', 'working', 'material'] }],
  });
  expect(marked.problems).toEqual([]);
  expect(plantPart.read(marked.value)).toEqual(marked);
  expect(usualSentence(marked.value)).toBe(
    'This rests on usual values that are not yours yet: washbacks (number, filled to); fermentation without a weekend; fermentation over a weekend.',
  );
  const older = plantPart.read({ washbacks: [backs], shortFermentation: 60, weekendFermentation: 100 });
  expect(usualSentence(older.value)).toBeUndefined();
  expect(older.value).not.toHaveProperty('usual');
  for (const usual of ['number', ['age'], [4], { number: true }])
    expect(plantPart.read({ washbacks: [{ ...backs, usual }] }).problems.join()).toContain('usual values');
});
