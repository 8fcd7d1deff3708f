// The parts of a house: carried by its text as they are, read strictly where they are used, and taken away when empty.
import { expect, test } from 'vitest';
import { decodeHouse, encodeHouse } from '../../src/house/codec.ts';
import { builtInHouse, builtInName } from '../../src/house/figures.ts';
import { linkOf, textOfShortLink } from '../../src/house/link.ts';
import { linkIfItFits } from '../../src/house/pack.ts';
import { builtInParts, partGiven } from '../../src/house/parts/built-in.ts';
import { houseParts, problemsOfParts } from '../../src/house/parts/index.ts';
import { partIds, readPart, withPart, type HousePart } from '../../src/house/parts/part.ts';
import { readShelf, withHouse } from '../../src/house/shelf.ts';
import { injections, nested, notFigures, prototypeKeys } from '../hostile-texts.ts';

const tuns: HousePart<readonly number[]> = {
  id: 'plant',
  title: 'Tuns',
  empty: [],
  read(data) {
    const rows: readonly unknown[] = Array.isArray(data) ? data : [data];
    const value = rows.filter((row): row is number => typeof row === 'number');
    return { value, problems: rows.filter((row) => !value.includes(row as never)).map((row) => `Tuns: ${typeof row} given.`) };
  },
}; // prettier-ignore

const sallowby = { name: 'Sallowby', house: builtInHouse };
const textWith = (parts: string) =>
  `{"format":"malt-spirit-handbook/house","version":2,"name":"Sallowby","figures":{},"parts":${parts}}`;

test('a house comes back with its parts from a text, from the shelf and from a link', async () => {
  const parts = { plant: [3, 4], facts: { 'year of the first cask': 1898 } };
  const text = encodeHouse({ ...sallowby, parts });
  expect(decodeHouse(text)).toEqual({ ...sallowby, parts, problems: [], isHouse: true, isNamed: true });
  expect(await textOfShortLink(linkIfItFits(text)!)).toBe(text);
  expect(readShelf(JSON.stringify(withHouse({}, 'Sallowby', text))).shelf['Sallowby']).toBe(text);
  expect(JSON.parse(encodeHouse(sallowby))).not.toHaveProperty('parts');
});

test('a house with more than a link can carry has none, and still comes back from its text', () => {
  // Digits of powers of seven: a link is packed, and these do not become shorter than their three bits and a bit.
  const parts = { stock: Array.from({ length: 300 }, (_, i) => ({ name: String(7n ** BigInt(1100 + i)) })) };
  const text = encodeHouse({ ...sallowby, parts });
  expect(linkOf(text).length).toBeGreaterThan(20_000);
  expect(linkIfItFits(text)).toBeUndefined();
  expect(decodeHouse(text)).toMatchObject({ parts, problems: [] });
});

test('a text of version 1 is read, and one that is longer than 400,000 characters is not', () => {
  const old = '{"format":"malt-spirit-handbook/house","version":1,"name":"Sallowby","figures":{"heartEnd":60}}';
  expect(decodeHouse(old)).toMatchObject({ name: 'Sallowby', house: { heartEnd: 60 }, problems: [], isHouse: true });
  expect(JSON.parse(encodeHouse(decodeHouse(old)))).toMatchObject({ version: 2 });
  expect(decodeHouse(textWith(`{"plant":"${'x'.repeat(400_000)}"}`)).problems.join()).toContain('a house has at most 400000');
}); // prettier-ignore

test('a part is read by its own reader, what it cannot use is told, and nothing given is the empty value', () => {
  const { parts } = decodeHouse(textWith('{"plant":[3,"four",5]}'));
  expect(readPart(tuns, parts.plant)).toEqual({ value: [3, 5], problems: ['Tuns: string given.'] });
  expect(readPart(tuns, parts.plant)).toBe(readPart(tuns, parts.plant));
  expect(readPart(tuns, parts.stock)).toEqual({ value: [], problems: [] });
  expect(readPart(tuns, decodeHouse(textWith('{"plant":null}')).parts.plant).problems).toHaveLength(1);
});

test('a part that is empty is not kept', () => {
  expect(withPart({ facts: 1 }, tuns, [7])).toEqual({ facts: 1, plant: [7] });
  expect(withPart({ facts: 1, plant: [7] }, tuns, [])).toEqual({ facts: 1 });
});

test('the built-in house’s parts stand under its name alone, until they are changed', () => {
  for (const id of partIds) {
    expect(partGiven(id, 'Sallowby', {})).toBeUndefined();
    expect(partGiven(id, builtInName, {})).toBe(builtInParts[id]);
    expect(partGiven(id, builtInName, { [id]: [7] })).toEqual([7]);
  }
});

test('every part in the list has an id and a title of its own, reads what it gives, and the built-in house’s without a problem', () => {
  expect(new Set(houseParts.map(({ id }) => id)).size).toBe(houseParts.length);
  expect(problemsOfParts(builtInParts)).toEqual([]);
  for (const part of houseParts) {
    expect(part.title).toMatch(/^[A-Z]/);
    for (const value of [part.empty, readPart(part, builtInParts[part.id]).value])
      expect(part.read(JSON.parse(JSON.stringify(value)))).toEqual({ value, problems: [] });
  }
});

test('no reader of a part throws, floods, or takes what it does not know', () => {
  const texts = [...notFigures, ...injections.map((text) => JSON.stringify(text)), ...prototypeKeys.map((key) => `{"${key}":{"x":1}}`), `[${'{},'.repeat(20_000)}{}]`, `{"x":"${'y'.repeat(100_000)}"}`]; // prettier-ignore
  for (const part of houseParts)
    for (const text of texts) {
      const { value, problems } = part.read(JSON.parse(text));
      expect(problems.length, `${part.id} ${text.slice(0, 60)}`).toBeLessThanOrEqual(61);
      for (const problem of problems) expect(problem.length).toBeLessThan(400);
      expect(part.read(JSON.parse(JSON.stringify(value))).problems).toEqual([]);
    }
  expect(Object.prototype).not.toHaveProperty('x');
});

test('parts that are nested too deep to be written again are told of, and so are those that are none', () => {
  const deep = decodeHouse(textWith(`{"plant":${nested(45_000)},"facts":{"a":1}}`));
  expect(deep.problems).toEqual(['“plant” is not a part of a house that this handbook can read.']);
  expect(deep.parts).toEqual({ facts: { a: 1 } });
  for (const key of prototypeKeys)
    expect(decodeHouse(textWith(`{"${key}":{"x":1}}`)).problems.join()).toContain(`“${key}” is not a part`);
  for (const none of ['null', '7', '[]', '"x"'])
    expect(decodeHouse(textWith(none)).problems.join()).toContain('is not a part of a house');
  expect(Object.prototype).not.toHaveProperty('x');
});
