// Where what is read of a house ends: the last length of a link and of a text that is read, and the first that is not.
import { expect, test } from 'vitest';
import type { AnyCalculator, AnyGiven } from '../../src/calculators/define.ts';
import { calculators } from '../../src/calculators/index.ts';
import { readSumLink, SUM_MARK } from '../../src/calculators/link.ts';
import { decodeHouse, encodeHouse } from '../../src/house/codec.ts';
import { builtInHouse, builtInName } from '../../src/house/figures.ts';
import { fewProblems } from '../../src/house/few-problems.ts';
import { linkOf, HOUSE_LINK_MARK, textOfLink, textOfShortLink } from '../../src/house/link.ts';
import { nameProblem, plainName } from '../../src/house/name.ts';
import { freeName, readShelf, withHouse, withoutHouse } from '../../src/house/shelf.ts';

test('a link to a house has at most twenty thousand characters', async () => {
  // Four signs carry three letters: 14,994 letters take 19,992 signs, and with the seven of “#house=” 19,999; one letter more takes two signs.
  const text = 'm'.repeat(14_994);
  expect(HOUSE_LINK_MARK).toHaveLength(7);
  expect(linkOf(text)).toHaveLength(19_999);
  expect(textOfLink(linkOf(text))).toBe(text);
  expect(textOfLink(linkOf(`${text}m`))).toBe('');
  expect(textOfLink(`${HOUSE_LINK_MARK}${'bW1t'.repeat(4998)}`.padEnd(20_000, '='))).toBe(''); // as long as may be, and damaged
  expect(await textOfShortLink(`#house=1~${'A'.repeat(20_000)}`)).toBe('');
});

test('a saved house of four hundred thousand characters is read, and not of one more', () => {
  const text = encodeHouse({ name: builtInName, house: builtInHouse });
  expect(decodeHouse(text.padEnd(400_000))).toMatchObject({ isHouse: true, problems: [] });
  const { isHouse, problems } = decodeHouse(text.padEnd(400_001));
  expect(isHouse).toBe(false);
  expect(problems).toEqual(['The text is 400001 characters long; a house has at most 400000.']);
});

test('a link with a sum’s own figures has at most two thousand characters', () => {
  const of = (calculators as readonly AnyCalculator[]).find(({ id }) => id === 'blend-two-spirits')!;
  const given = of.examples[0].given as AnyGiven;
  const link = (length: number) => `${SUM_MARK}x:`.padEnd(length, '1');
  expect(readSumLink(of, link(2000), given)!.problems[0]).toMatch(/nothing that this sum takes/);
  expect(readSumLink(of, link(2001), given)!.problems).toEqual(['The link is too long to be read.']);
});

test('a name has at most eighty letters, three marks on each, and something that can be seen', () => {
  expect([nameProblem('m'.repeat(80)), plainName('m'.repeat(81))]).toEqual([undefined, 'm'.repeat(80)]);
  for (const bad of ['m'.repeat(81), '', ' Ann', 'An\u200bn', 'a\u0301\u0301\u0301\u0301', 7, '\u0301']) expect(nameProblem(bad), String(bad)).toMatch(/^The name of the house: /);
  expect(nameProblem('')).toMatch(/: nothing was given;/);
  expect(plainName('a\u0301\u0301\u0301\u0301b')).toBe('a\u0301\u0301\u0301b');
  expect(plainName(`${' '.repeat(99_999)}m`)).toBe('m');
  expect(plainName(`${' '.repeat(100_000)}m`)).toBe('');
  expect(plainName(`${'m'.repeat(79)}😀`)).toBe('m'.repeat(79)); // no half of a sign
}); // prettier-ignore

test('sixty problems are told, and of more how many there are', () => {
  const told = (count: number) => fewProblems(Array.from({ length: count }, (_, i) => `${i}`));
  expect([told(60).length, told(60).at(-1)]).toEqual([60, '59']);
  expect([told(62).length, told(62).at(-1)]).toEqual([61, '2 further things in it cannot be used either.']);
});

test('a shelf: free names are numbered from two, and what is no text is left out', () => {
  const shelf = { Sallowby: 'a', 'Sallowby 2': 'b' };
  expect(['Thornwath', 'Sallowby', 'toString'].map((name) => freeName(name, shelf))).toEqual(['Thornwath', 'Sallowby 3', 'toString']);
  expect(readShelf('{"a":"x","b":7}')).toEqual({ shelf: { a: 'x' }, isWhole: false });
  for (const none of ['[]', 'null', '7', '{']) expect(readShelf(none)).toEqual({ shelf: {}, isWhole: false });
  expect([readShelf(null), readShelf('{"a":"x"}')]).toEqual([{ shelf: {}, isWhole: true }, { shelf: { a: 'x' }, isWhole: true }]);
  expect(withoutHouse(withHouse(shelf, 'Sallowby', 'c'), 'Sallowby 2')).toEqual({ Sallowby: 'c' });
}); // prettier-ignore
