// Sheets: links there and back, bounds of their length, damaged links, no two questions alike, every trainee with other numbers.
import { GENERATOR } from '../../src/exercises/draw.ts';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { gravity } from '../../src/core/quantity.ts';
import { mark } from '../../src/exercises/mark.ts';
import { isNumberQuestion } from '../../src/exercises/question.ts';
import { questionKinds } from '../../src/exercises/kinds/index.ts';
import { cleanValues, randomHouse } from '../../src/exercises/random-house.ts';
import { linkProblem, LONGEST_SHEET_LINK, readSheetLink, sheetLink } from '../../src/exercises/sheet-link.ts';
import { line } from '../../src/core/line/line.ts';
import { isRefusal } from '../../src/core/refusal.ts';
import { forms, levels, topics } from '../../src/exercises/topics.ts';
import {
  fixedSheet,
  MOST_QUESTIONS,
  MOST_SHEET_VERSIONS,
  poolOf,
  questionsAlone,
  type Worksheet,
} from '../../src/exercises/worksheet.ts';
import { builtInHouse } from '../../src/house/figures.ts';

const everything: Worksheet = {
  generator: 2,
  topics,
  forms,
  levels,
  count: 20,
  house: 'built-in',
  seed: 'spring-7',
  versions: 12,
};
const some = <T>(list: readonly T[]) => fc.subarray([...list], { minLength: 1 });
const anySheet: fc.Arbitrary<Worksheet> = fc.record({
  generator: fc.constantFrom(1, 2),
  topics: some(topics),
  forms: some(forms),
  levels: some(levels),
  count: fc.integer({ min: 1, max: 40 }),
  house: fc.constantFrom('built-in' as const, 'random' as const, {
    name: 'Sallowby',
    house: { ...builtInHouse, originalGravity: gravity(1.06) },
  }),
  seed: fc.stringMatching(/^[a-z0-9-]{1,24}$/),
  versions: fc.integer({ min: 1, max: 60 }),
});

test('a link gives back the sheet it was made from', () => {
  fc.assert(
    fc.property(
      anySheet,
      fc.option(fc.integer({ min: 1, max: 60 }), { nil: undefined }),
      (settings, version) => {
        const sheet = fixedSheet(settings, questionKinds);
        const wanted = version !== undefined && version <= sheet.versions ? version : undefined;
        expect(readSheetLink(sheetLink(sheet, wanted))).toEqual(
          wanted === undefined ? { sheet } : { sheet, version: wanted },
        );
      },
    ),
    { numRuns: 12 },
  );
});

test('a fixed sheet asks what it was fixed with', () => {
  fc.assert(
    fc.property(anySheet, (settings) => {
      const sheet = { ...settings, versions: Math.min(settings.versions, 3) };
      for (let version = 1; version <= sheet.versions; version++)
        expect(questionsAlone(fixedSheet(sheet, questionKinds), version, questionKinds)).toEqual(
          questionsAlone(sheet, version, questionKinds),
        );
    }),
    { numRuns: 12 },
  );
});

test('links are short, and one that would be too long is not made', () => {
  const linkFor = (part: Partial<Worksheet>) =>
    sheetLink(fixedSheet({ ...everything, ...part }, questionKinds));
  expect(linkFor({ count: 10 }).length).toBeLessThan(1000);
  const largest = { count: MOST_QUESTIONS, versions: MOST_SHEET_VERSIONS };
  expect(linkFor(largest).length).toBeLessThan(20_000);
  for (const topic of ['distilling', 'line'] as const) {
    const link = linkFor({ ...largest, topics: [topic] });
    expect(linkProblem(link), topic).toBeUndefined();
    expect(readSheetLink(link), topic).toHaveProperty('sheet');
  }
  const tooLong = linkFor({ ...largest, forms: ['impossible'] });
  expect(tooLong.length).toBeGreaterThan(LONGEST_SHEET_LINK);
  expect(linkProblem(tooLong)).toMatch(/choose fewer versions/);
  expect(readSheetLink(tooLong)).toEqual({ problem: expect.stringContaining('at most 60000') as string });
});

test('no house by chance has more extract in its wort than its malt had', () => {
  for (let seed = 0; seed < 200; seed++) {
    const { maltPerMash, solubleExtract, wortVolume, originalGravity } = randomHouse(String(seed), GENERATOR);
    const litreDegrees = 386 * maltPerMash * (solubleExtract / 100); // a kilogram of sugar brings a litre to 1386 by the trade's rule; common practice
    expect((1000 * wortVolume * (originalGravity - 1)) / litreDegrees, String(seed)).toBeLessThan(1);
  }
});

test('every house by chance has a line, to the ends of its figures', () => {
  const names = Object.keys(cleanValues) as (keyof typeof cleanValues)[];
  for (let corner = 0; corner < 2 ** names.length; corner++) {
    const ends = names.map((name, i) => [name, cleanValues[name]!.at((corner >> i) % 2 === 0 ? 0 : -1)!]);
    const house = { ...builtInHouse, ...(Object.fromEntries(ends) as object) };
    expect(isRefusal(line(house)), JSON.stringify(ends)).toBe(false);
  }
  expect(randomHouse('a', GENERATOR)).not.toEqual(randomHouse('b', GENERATOR));
});

test.each([
  '#sheet=', '#sheet=1.0.0.0.0.x.1.built-in', '#sheet=1.0.0.0.5.x.99.built-in', '#sheet=1.zz.0.0.5.x.1.built-in', '#sheet=1.00.0.0.5.x.1.built-in',
  '#sheet=1.0.0.0.5.<script>.1.built-in', '#sheet=1.0.0.0.5.x.1.house=AAAA', '#sheet=1.0.0.0.5.x.1.__proto__', '#sheet=1.0.0.0.5.x.1.built-in&version=0',
  '#sheet=1.0.0.0.5.x.1.built-in&version=2', '#sheet=1.0.0.0.1e1.x.1.built-in', `#sheet=${'1.'.repeat(20_000)}`, `#sheet=${'1'.repeat(100_000)}`,
  '#sheet=1.0.0.0.5.x.1.built-in.00', '#sheet=2.0.0.0.5.x.1.built-in', '#sheet=2.0.0.0.1.x.2.built-in.0', '#sheet=2.0.0.0.1.x.1.built-in.0/0', '#sheet=2.0.0.0.1.x.1.built-in.00',
  '#sheet=2.0.0.0.1.x.1.built-in.1', '#sheet=2.0.0.0.1.x.1.built-in.<b>', '#sheet=2.0.0.0.1.x.1.built-in.F', '#sheet=2.0.0.0.1.x.1.built-in.m0', '#sheet=2.0.0.0.1.x.1.built-in.0.0',
])('refuses the link %s', (hash) => {
  expect(readSheetLink(hash)).toEqual({ problem: expect.stringMatching(/\.$/) as string });
}); // prettier-ignore

test('a link from a newer generator says so', () => {
  expect(readSheetLink(`#sheet=${GENERATOR + 1}.0.0.0.5.x.1.built-in.`)).toEqual({
    problem: expect.stringContaining('newer handbook') as string,
  });
  expect(readSheetLink('#house=abc')).toBeUndefined();
});

test('twelve trainees get the same kinds with numbers of their own, and no two questions alike', () => {
  const versions = Array.from({ length: 12 }, (_, i) => questionsAlone(everything, i + 1, questionKinds));
  for (const questions of versions) {
    expect(questions).toHaveLength(20);
    expect(new Set(questions.map(({ prompt }) => prompt)).size).toBe(20);
    expect(questions.map(({ kind }) => kind)).toEqual(versions[0]!.map(({ kind }) => kind));
  }
  const numbers = versions.map((questions) => questions.filter(isNumberQuestion).map(({ prompt }) => prompt));
  for (const [i, prompt] of numbers[0]!.entries()) {
    expect(new Set(numbers.map((each) => each[i])).size, prompt).toBeGreaterThan(6);
  }
});

test('from generator 3 on no two of twelve versions have a number question in common', () => {
  for (const seed of ['v0', 'v1']) {
    const sheet = fixedSheet({ ...everything, generator: 3, count: 12, seed }, questionKinds);
    const prompts = Array.from({ length: 12 }, (_, i) => questionsAlone(sheet, i + 1, questionKinds))
      .flat()
      .filter(isNumberQuestion)
      .map(({ prompt }) => prompt);
    expect(new Set(prompts).size).toBe(prompts.length);
    expect(questionsAlone(sheet, 5, questionKinds)).toEqual(questionsAlone({ ...everything, generator: 3, count: 12, seed }, 5, questionKinds)); // prettier-ignore
  }
});

test('a sheet takes from every topic chosen, and asks nothing that was not chosen', () => {
  fc.assert(
    fc.property(anySheet, (sheet) => {
      const pool = poolOf(sheet, questionKinds);
      const questions = questionsAlone(sheet, 1, questionKinds);
      expect(questions.length).toBeLessThanOrEqual(sheet.count);
      for (const { topic, form, level } of questions)
        expect([
          sheet.topics.includes(topic),
          sheet.forms.includes(form),
          sheet.levels.includes(level),
        ]).toEqual([true, true, true]);
      const held = new Set(pool.map(({ topic }) => topic));
      if (questions.length === sheet.count && sheet.count >= 2 * held.size)
        expect(new Set(questions.map(({ topic }) => topic)).size).toBe(held.size);
    }),
    { numRuns: 40 },
  );
});

test('the same link gives the same questions, each marked right by its own answer', () => {
  const reading = readSheetLink(sheetLink(fixedSheet({ ...everything, house: 'random' }, questionKinds), 5));
  if (!reading || 'problem' in reading) throw new Error('unread');
  const questions = questionsAlone(reading.sheet, 5, questionKinds);
  expect(questions).toEqual(questionsAlone({ ...everything, house: 'random' }, 5, questionKinds));
  for (const question of questions.filter(isNumberQuestion))
    expect(mark(question, String(question.answer)).verdict).toBe('right');
});
