// What the book says of methanol: its figures as printed elsewhere, and the sums made of them redone here.
import { expect, test } from 'vitest';
import { sources } from '../../src/core/sources.ts';
import rows from '../../src/published/reference/methanol.json' with { type: 'json' };
import { namedIn } from '../../src/build/chapter-text.ts';
import { chapters, glossary, plainText } from './read.ts';

const { pages } = chapters.find(({ id }) => id === 'distilling')!;
const check = pages.find(({ part }) => part === 'check')!.body;
const passage = check.slice(check.indexOf('## The first part'), check.indexOf('## Check yourself'));
const printed = (name: string) => rows.rows.find((row) => row.name === name)!;
const cell = (start: string) =>
  passage
    .split('\n')
    .find((line) => line.startsWith(`| ${start}`))!
    .replace(/<[^>]+>/g, '')
    .split('|')[2]!
    .trim();

test('the table of limits stands as printed', () => {
  expect(cell('Neutral alcohol')).toBe(`${printed('neutral alcohol, at most').high}`);
  expect(cell('Wine spirit')).toBe(`${printed('wine spirit, at most').high}`);
  expect(cell('General European limit')).toBe((100 * printed('general limit').high).toLocaleString('en-GB')); // a hectolitre is 100 L
  expect(cell('Adulterated')).toBe(
    `up to ${printed('adulterated spirit of 2012').high.toLocaleString('en-GB')}`,
  );
});

test('the malts’ parts in a million come to the grams in a hectolitre that the table gives', () => {
  const { low, high } = printed('single malts, 99.7 % of 54');
  expect(passage).toContain(`${low} to ${high} parts in a million`);
  // mg in a litre of whisky at 40 % vol, to g in a hectolitre of pure alcohol. By weight, with 0.948 kg to the litre
  // (OIML R 22, 40 % vol), it is 5 % less, and rounds to 3 and 10.
  const grams = (ppm: number) => ((ppm / 1000) * 100) / 0.4;
  expect(cell('54 single malts')).toBe(`about ${Math.round(grams(low!))}–${Math.round(grams(high))}`);
  expect(passage).toContain(`hold ${((high / 1000) * 0.7).toFixed(2)} g`);
  const dose = printed('daily dose');
  expect(passage).toContain(`${dose.low} g a day has been judged tolerable and ${dose.high} g toxic`);
});

test('a visitor who asks is answered in one breath, and the term is explained', () => {
  const say = /### Is the first part poisonous\?\s+\*\*To say\.\*\* ([^\n]+)/.exec(check)![1]!;
  expect(plainText(say).split(/\s+/).length).toBeLessThanOrEqual(30);
  expect(say).toMatch(/methanol/);
  expect(glossary['methanol']!.says).toMatch(/whole run/);
});

test('it gives no leave to distil at home, and says what the danger was and what to do', () => {
  for (const said of [/unlawful/, /vapour burns/, /mixed into spirit/, /medical help at once/, /<Caution of="licence" brief \/>/])
    expect(passage).toMatch(said); // prettier-ignore
  for (const id of namedIn(passage, 'Source')) expect(Object.keys(sources)).toContain(id);
});
