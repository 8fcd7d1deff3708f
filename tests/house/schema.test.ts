// The schema of a house's file, and the codec: what one takes the other takes, by an independent validator of JSON Schema 2020-12.
import { Ajv2020 } from 'ajv/dist/2020.js';
import { expect, test } from 'vitest';
import { countedIds } from '../../src/core/figures/standing.ts';
import { figureTable } from '../../src/core/figures/index.ts';
import { decodeHouse, encodeHouse } from '../../src/house/codec.ts';
import {
  builtInHouse,
  builtInName,
  choiceFigures,
  numberFigures,
  type NumberName,
} from '../../src/house/figures.ts';
import { builtInParts } from '../../src/house/parts/built-in.ts';
import { problemsOfParts } from '../../src/house/parts/index.ts';
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
  const { problems } = decodeHouse(JSON.stringify(text));
  const all = [...problems, ...(known === undefined ? [] : knownPart.read(known).problems)];
  expect(isValid(text), JSON.stringify(text).slice(0, 120)).toBe(taken);
  expect(all.length === 0, all.join()).toBe(taken);
}

test('the built-in house, and one of an older version, are valid', () => {
  expect(isValid(JSON.parse(encodeHouse({ name: builtInName, house: builtInHouse })))).toBe(true);
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

/** Every value of some data that holds no other, with the data as it is when another stands in its place. */
function* withLeaf(data: unknown, leaf: unknown): Generator<unknown> {
  if (typeof data !== 'object' || data === null) return void (yield leaf);
  for (const [key, value] of Object.entries(data))
    for (const changed of withLeaf(value, leaf))
      yield Array.isArray(data)
        ? data.map((each: unknown, i) => (String(i) === key ? changed : each))
        : { ...data, [key]: changed };
}

test('every part of the built-in house is valid, and with any value that cannot be neither takes it', () => {
  const given = house({}, builtInParts);
  expect(isValid(given), JSON.stringify(isValid.errors)).toBe(true);
  for (const [id, part] of Object.entries(builtInParts) as [string, object][]) {
    let tried = 0;
    for (const wrong of [-1e12, 1e12, {}, [], '', 'x'.repeat(500), true])
      for (const changed of withLeaf(part, wrong)) {
        const parts = { [id]: changed };
        const text = JSON.stringify(changed).slice(0, 200);
        expect(isValid(house({}, parts)), `${id}: ${text}`).toBe(false);
        expect(problemsOfParts(parts).length, `${id}: ${text}`).toBeGreaterThan(0);
        tried++;
      }
    expect(tried, id).toBeGreaterThan(20);
    expect(isValid(house({}, { [id]: Array.isArray(part) ? {} : [] })), id).toBe(false);
    if (!Array.isArray(part)) expect(isValid(house({}, { [id]: { ...part, ghosts: 1 } })), id).toBe(false);
  }
});
