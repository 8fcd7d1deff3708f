// The schema of a house's file, and the codec: what one takes the other takes, by an independent validator of JSON Schema 2020-12.
import { Ajv2020 } from 'ajv/dist/2020.js';
import { expect, test } from 'vitest';
import { countedIds } from '../../src/core/figures/standing.ts';
import { figureTable } from '../../src/core/figures/index.ts';
import { decode, encode } from '../../src/house/codec.ts';
import {
  builtInHouse,
  builtInName,
  choiceFigures,
  numberFigures,
  type NumberName,
} from '../../src/house/figures.ts';
import { knownPart } from '../../src/house/parts/known.ts';
import { houseSchema } from '../../src/house/schema.ts';

const isValid = new Ajv2020({ strict: true, strictTypes: false }).compile(houseSchema);
const house = (change: object, parts?: object) => ({
  format: 'malt-spirit-handbook/house',
  version: 2,
  name: 'Sallowby',
  figures: change,
  ...(parts && { parts }),
});
/** Held against both doors. */
function bothTake(text: object, taken: boolean) {
  const known = (text as { parts?: { known?: unknown } }).parts?.known;
  const { problems } = decode(JSON.stringify(text));
  const all = [...problems, ...(known === undefined ? [] : knownPart.read(known).problems)];
  expect(isValid(text), JSON.stringify(text).slice(0, 120)).toBe(taken);
  expect(all.length === 0, all.join()).toBe(taken);
}

test('the built-in house, and one of an older version, are valid', () => {
  expect(isValid(JSON.parse(encode({ name: builtInName, house: builtInHouse })))).toBe(true);
  bothTake({ ...house({ heartEnd: 60 }), version: 1 }, true);
  bothTake({ ...house({}), version: 3 }, false);
  bothTake({ ...house({}), format: 'another' }, false);
});

test('a figure has the same limits in both', () => {
  for (const name of Object.keys(numberFigures) as NumberName[]) {
    const [low, high] = numberFigures[name].range;
    for (const [value, taken] of [
      [builtInHouse[name], true],
      [low - 1, false],
      [high + 1, false],
      ['62', false],
      [null, false],
    ] as const)
      // prettier-ignore
      bothTake(house({ [name]: value }), taken);
    for (const end of [low, high]) expect(isValid(house({ [name]: end }))).toBe(true);
  }
  for (const [name, { options }] of Object.entries(choiceFigures)) {
    for (const option of Object.keys(options)) bothTake(house({ [name]: option }), true);
    bothTake(house({ [name]: 'smell' }), false);
  }
  bothTake(house({ portions: 3 }), false);
});

test('what is known has the same words and limits in both', () => {
  bothTake(house({}, { known: { given: { heartEnd: 'set', wortVolume: 'measured' }, counted: {} } }), true);
  bothTake(house({}, { known: { given: { heartEnd: 'measured' } } }), false);
  bothTake(house({}, { known: { given: { portions: 'set' } } }), false);
  bothTake(house({}, { known: { guesses: {} } }), false);
  bothTake(house({}, { portions: {} }), false);
  for (const id of countedIds) {
    const [low, high] = figureTable[id].limits;
    for (const [value, taken] of [
      [low, true],
      [high, true],
      [low - 1, false],
      [high + 1, false],
      ['9', false],
    ] as const)
      // prettier-ignore
      bothTake(house({}, { known: { given: {}, counted: { [id]: value } } }), taken);
  }
});
