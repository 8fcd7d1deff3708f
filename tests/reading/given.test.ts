// Readers of what came from a link, a file or storage: each refusal names the field, what was given and what it can be.
import { expect, test } from 'vitest';
import { jsonIn, ownValue } from '../../src/core/reading/data.ts';
import { also, entriesIn, recordByKind, list, number, oneOf, quietly, record, text, whole, written, type Reader } from '../../src/core/reading/given.ts'; // prettier-ignore

/** What a reader makes of it, and what it tells. */
function read<T>(reader: Reader<T>, given: unknown) {
  const told: string[] = [];
  return [reader(given, 'Size', (problem) => told.push(problem)), ...told];
}

test.each([
  [number(1, 5), 6, 'Size: “6” was given; it can be from 1 to 5.'],
  [number(1, 5), '3', 'Size: “3” was given; it can be from 1 to 5.'],
  [number(1, 5), NaN, 'Size: “NaN” was given; it can be from 1 to 5.'],
  [whole(1, 5), 2.5, 'Size: “2.5” was given; it can be a whole number from 1 to 5.'],
  [text(3), 'four', 'Size: “four” was given; it can have up to 3 characters.'],
  [oneOf(['up', 'down']), '__proto__', 'Size: “__proto__” was given; it can be up, down.'],
  [list(whole(1, 5), 2), [1, 9], 'Size 2: “9” was given; it can be from 1 to 5.'],
  [list(whole(1, 5), 2), [1, 1, 1], 'Size: “[…]” was given; it can be a list of 0 to 2.'],
  [record({ a: whole(0, 1) }), {}, 'Size, a: “nothing” was given; it can be from 0 to 1.'],
  [record({ a: whole(0, 1) }), [], 'Size: “[…]” was given; it can be a record.'],
  [recordByKind('is', { a: record({}) }), { is: 'toString' }, 'Size: “toString” was given; it can be a.'],
  [also(number(0, 9), (n) => n % 2 === 0, 'it can be even.'), 3, 'Size: “3” was given; it can be even.'],
] as const)('what cannot be used is undefined, and told of (%#)', (reader, given, says) => {
  expect(read(reader as Reader<unknown>, given)).toEqual([undefined, says]);
});

test('a record has its own fields and no others, and what it may have besides where that is there', () => {
  const reader = record({ a: number(-1, 1) }, { b: oneOf([true, false]) });
  expect(read(reader, { a: -0, c: 1 })).toEqual([{ a: 0 }]);
  expect(read(reader, { b: false, a: 1 })).toEqual([{ a: 1, b: false }]);
  expect(quietly(reader, { a: 1, b: 2 })).toBeUndefined();
  expect(quietly(reader, Object.create({ a: 1 }))).toBeUndefined();
});

test('a kind is read by its own reader, and keeps its name first', () => {
  const reader = recordByKind('is', { bread: record({ of: text(9) }), beer: record({ at: number(0, 9) }) });
  expect(JSON.stringify(quietly(reader, { at: 4, of: 'rye', is: 'bread' }))).toBe(
    '{"is":"bread","of":"rye"}',
  );
  expect(quietly(reader, { is: 'beer', of: 'rye' })).toBeUndefined();
});

test('entries are read one by one, and those that cannot be are counted', () => {
  const { sound, lost } = entriesIn({ a: 'x1', 'B!': 'x2', c: 5 }, /^[a-z]$/, written(/^x\d$/));
  expect([sound, lost]).toEqual([[['a', 'x1']], 2]);
  expect(entriesIn('no record', /^/, text(9))).toEqual({ sound: [], lost: 0 });
});

test('a text that is too long or no JSON says nothing, and a prototype has nothing of its own', () => {
  expect([jsonIn('{'), jsonIn('[1]', 2), jsonIn('[1]', 3)]).toEqual([undefined, undefined, [1]]);
  expect([ownValue({}, 'toString'), ownValue({ a: -0 }, 'a')]).toEqual([undefined, 0]);
});
