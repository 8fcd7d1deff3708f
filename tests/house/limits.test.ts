// Where what is read of a house ends: the last length of a link and of a text that is read, and the first that is not.
import { expect, test } from 'vitest';
import type { AnyCalculator, AnyGiven } from '../../src/calculators/define.ts';
import { calculators } from '../../src/calculators/index.ts';
import { readSumLink, SUM_MARK } from '../../src/calculators/link.ts';
import { decode, encode } from '../../src/house/codec.ts';
import { builtInHouse, builtInName } from '../../src/house/figures.ts';
import { linkOf, MARK, textOfLink, textOfShortLink } from '../../src/house/link.ts';

test('a link to a house has at most twenty thousand characters', async () => {
  // Four signs carry three letters: 14,994 letters take 19,992 signs, and with the seven of “#house=” 19,999; one letter more takes two signs.
  const text = 'm'.repeat(14_994);
  expect(MARK).toHaveLength(7);
  expect(linkOf(text)).toHaveLength(19_999);
  expect(textOfLink(linkOf(text))).toBe(text);
  expect(textOfLink(linkOf(`${text}m`))).toBe('');
  expect(textOfLink(`${MARK}${'bW1t'.repeat(4998)}`.padEnd(20_000, '='))).toBe(''); // as long as may be, and damaged
  expect(await textOfShortLink(`#house=1~${'A'.repeat(20_000)}`)).toBe('');
});

test('a saved house of four hundred thousand characters is read, and not of one more', () => {
  const text = encode({ name: builtInName, house: builtInHouse });
  expect(decode(text.padEnd(400_000))).toMatchObject({ isHouse: true, problems: [] });
  const { isHouse, problems } = decode(text.padEnd(400_001));
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
