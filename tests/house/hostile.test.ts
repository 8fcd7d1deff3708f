// Hostile texts at the doors of a house: read or refused in sentences that are short, and never an exception.
import { describe, expect, test } from 'vitest';
import { line } from '../../src/core/line/line.ts';
import { quotedGiven } from '../../src/core/quoted-given.ts';
import { decodeHouse, encodeHouse } from '../../src/house/codec.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { linkOf, textOfLink } from '../../src/house/link.ts';
import { nameProblem, plainName } from '../../src/house/name.ts';
import { freeName, readShelf, withHouse, withoutHouse } from '../../src/house/shelf.ts';
import { brokenNames, houseText, injections, nested, notFigures, prototypeKeys } from '../hostile-texts.ts';

const UNSEEN = /[\p{Cc}\p{Cs}\u2028\u2029\u2800\p{DI}]/u;

/** Reads a text and holds it to what every reading keeps. */
function read(text: string) {
  const reading = decodeHouse(text);
  expect('refused' in line(reading.house)).toBe(false);
  expect(reading.problems.length).toBeLessThanOrEqual(61);
  for (const problem of reading.problems) {
    expect(problem.length).toBeLessThan(300);
    expect(problem).not.toMatch(UNSEEN);
  }
  return reading;
}

describe('a house', () => {
  test.each(notFigures)('%s is used if it is a figure, and else told of', (value) => {
    const { problems, house } = read(houseText(`{"heartEnd":${value},"finalGravity":0.999}`));
    expect(problems.join()).toMatch(/^Heart ends at: “.+” was given; it can be from 20 to 85 % vol\.$/);
    expect(house).toEqual({ ...builtInHouse, finalGravity: 0.999 });
  });

  test('a figure, a version and a choice that are nested deep are told of', () => {
    const deep = nested(45_000);
    expect(read(houseText(`{"heartEnd":${deep}}`)).problems.join()).toContain('Heart ends at: “[…]” was given');
    expect(read(houseText(`{"foreshotsBy":${deep}}`)).problems.join()).toContain('“[…]” is not one of');
    expect(read(houseText('{}').replace('"version":1', `"version":${deep}`)).problems.join()).toContain('version […]');
    expect(read(nested(250_000)).problems.join()).toContain('characters long');
  }); // prettier-ignore

  test('keys of the prototype are no figures, and change no object', () => {
    for (const key of prototypeKeys)
      expect(read(houseText(`{"${key}":{"heartEnd":60}}`)).problems.join()).toContain(
        `“${key}” is not a figure of this handbook.`,
      );
    expect(Object.prototype).not.toHaveProperty('heartEnd');
  });

  test('thousands of unknown figures make no thousands of sentences, and hide none of a known one', () => {
    const many = Array.from({ length: 5000 }, (_, i) => `"x${i}":1`).join();
    const { problems } = read(houseText(`{${many},"heartEnd":400}`));
    expect(problems[0]).toContain('“400” was given');
    expect(problems.at(-1)).toBe('4941 further things in it cannot be used either.');
  });
});

describe('a name', () => {
  test.each(Object.keys(brokenNames).filter((what) => what !== 'a megabyte'))('that is %s is told of, and made one that can be shown', (what) => {
    const { name, problems } = read(houseText('{}', brokenNames[what]));
    expect(problems.join()).toMatch(/^The name of the house: .* was given; it can have up to 80 characters/);
    expect(name).not.toMatch(UNSEEN);
    expect(name).not.toMatch(/\p{M}{4}/u);
    expect(name.length).toBeLessThanOrEqual(80);
    expect(nameProblem(name)).toBeUndefined();
  }); // prettier-ignore

  test.each([
    ...injections,
    ...prototypeKeys,
    'Ὀδυσσεύς',
    'e\u0301',
    'بيت',
    '😀',
    'می\u200cخواهم',
    'क्\u200dष',
  ])('“%s” is a name like another, on the shelf, in a file and in a link', (given) => {
    const text = encodeHouse({ name: given, house: builtInHouse });
    expect(read(text)).toMatchObject({ name: given, problems: [] });
    expect(textOfLink(linkOf(text))).toBe(text);
    const shelf = readShelf(JSON.stringify(withHouse(withHouse({}, 'Thornwath', 'a'), given, text))).shelf;
    expect(Object.keys(shelf).sort()).toEqual(['Thornwath', given].sort());
    expect(Object.entries(shelf)).toContainEqual([given, text]);
    expect(freeName(given, shelf)).toBe(`${given} 2`);
    expect(Object.keys(withoutHouse(shelf, given))).toEqual(['Thornwath']);
  });

  test('passes as no other’s: nothing that cannot be seen is left of it, and what is left says that it is not as it was', () => {
    for (const what of ['a soft hyphen in it', 'a joiner in it', 'a space of no width in it', 'a variation selector behind it', 'a tag behind it', 'a space behind it']) {
      const reading = read(houseText('{}', brokenNames[what]));
      expect(reading.name, what).toBe('Harrowmere');
      expect(reading.isNamed, what).toBe(false);
    }
    expect(read(houseText('{}', 'Harrowmere')).isNamed).toBe(true);
    for (const what of ['spaces of no width', 'a Hangul filler', 'an empty Braille cell', 'a mark on no letter'])
      expect(plainName(brokenNames[what]!), what).toBe('');
  }); // prettier-ignore

  test('as plain as it can be stays as it is', () => {
    for (const name of Object.values(brokenNames)) expect(plainName(plainName(name))).toBe(plainName(name));
    expect(plainName(`a${'\u0301\u200b'.repeat(20)}`)).toBe('a\u0301\u0301\u0301');
  });

  test('a link carries what has no encoding of its own', () => {
    for (const name of Object.values(brokenNames).filter((each) => each.length < 1000)) {
      const text = encodeHouse({ name, house: builtInHouse });
      expect(textOfLink(linkOf(text))).toBe(text);
    }
    expect(plainName('a'.repeat(5_000_000))).toHaveLength(80);
  });
});

test('a link of megabytes and one that is no base 64 are read as no house', () => {
  for (const hash of [`#house=${'A'.repeat(5_000_000)}`, '#house=%00', '#house=\ud800', '#house=' + btoa('\xff\xff')])
    expect(read(textOfLink(hash)!).isHouse).toBe(false);
}); // prettier-ignore

test.each(['[]', '"x"', 'null', '{', '{"Sallowby":1}', '{"Sallowby":"a","b":{}}', nested(100_000)])(
  'a shelf that is damaged is known not to be whole (%#)',
  (text) => expect(readShelf(text).isWhole).toBe(false),
);
test('a shelf of ten thousand houses is whole', () => {
  const shelf = Object.fromEntries(Array.from({ length: 10_000 }, (_, i) => [`House ${i}`, 'x']));
  expect(readShelf(JSON.stringify(shelf))).toEqual({ shelf, isWhole: true });
  expect(freeName('House 1', shelf)).toBe('House 1 2');
});

test('keys of the prototype are no option of a choice', () => {
  for (const key of prototypeKeys)
    expect(read(houseText(`{"foreshotsBy":"${key}","dilution":"${key}"}`)).problems).toEqual([
      `Foreshots end: “${key}” is not one of share, volume, minutes, strength.`,
      `A charge that is too strong: “${key}” is not one of when-needed, never.`,
    ]);
});

test('what was given is quoted short, and turns nothing round', () => {
  expect(quotedGiven(`\u202e${'a'.repeat(1e6)}`)).toBe(`\ufffd${'a'.repeat(39)}…`);
  expect([1e999, NaN, null, undefined, {}, [1], -0].map(quotedGiven)).toEqual(
    ['Infinity', 'NaN', 'null', 'nothing', '{…}', '[…]', '0'],
  );
}); // prettier-ignore
