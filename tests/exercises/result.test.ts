// Result codes there and back, damaged codes, points, misses, and tables for spreadsheets.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { csvOf } from '../../src/exercises/csv.ts';
import { familyNames } from '../../src/exercises/families.ts';
import {
  eachOnce,
  missesOf,
  readResult,
  resultCode,
  scoreOf,
  type Result,
} from '../../src/exercises/result.ts';

const anyMark: fc.Arbitrary<Result['marks'][number]> = fc.oneof(
  fc
    .constantFrom('unanswered', 'right', 'rounded', 'unit', 'wrong', 'unreadable')
    .map((verdict) => ({ verdict })),
  fc.constantFrom(...familyNames).map((family) => ({ verdict: 'wrong' as const, family })),
);
const anyResult: fc.Arbitrary<Result> = fc.record({
  sheet: fc.stringMatching(/^[0-9a-z]{7}$/),
  version: fc.integer({ min: 1, max: 60 }),
  name: fc
    .string({ unit: 'grapheme', maxLength: 20 })
    .map((name) => name.toWellFormed().replace(/\s+/g, ' ').trim().slice(0, 60).toWellFormed().trim())
    .filter((name) => !/[\p{Cc}\u2800\p{DI}]/u.test(name)), // what cannot be seen is left out of a code
  marks: fc.array(anyMark, { minLength: 1, maxLength: 40 }),
});

test('a code gives back the result it was made from', () => {
  fc.assert(
    fc.property(anyResult, (result) => {
      expect(readResult(resultCode(result))).toEqual(result);
    }),
    { numRuns: 500 },
  );
});

test('a code with one sign changed is refused', () => {
  fc.assert(
    fc.property(anyResult, fc.nat(), fc.constantFrom(...'0123456789abcxyz-'), (result, at, sign) => {
      const code = resultCode(result);
      const body = code.slice(
        0,
        code.lastIndexOf('-', code.length - encodeURIComponent(result.name).length - 1) + 1,
      );
      const place = at % Math.max(1, body.length - 1);
      if (code[place] === sign) return;
      const damaged = readResult(code.slice(0, place) + sign + code.slice(place + 1));
      // A check of three signs lets one change in 46,656 through; it must then differ in what was changed.
      if (typeof damaged !== 'string') expect(damaged).not.toEqual(result);
    }),
    { numRuns: 500 },
  );
});

test.each(['', 'hello', 'abcdefg-1-1-zzz-Ada', 'abcdefg-0-1-000-', '<script>', 'x'.repeat(5000)])(
  'refuses “%s” with a sentence',
  (code) => {
    expect(readResult(code)).toMatch(/^“.*” is not a whole result code; ask for it once more\.$/);
  },
);

test('a code is short: twenty questions take under fifty signs and the name', () => {
  const code = resultCode({
    sheet: '0abcdef',
    version: 12,
    name: 'Una Thornwath',
    marks: Array.from({ length: 20 }, () => ({ verdict: 'right' as const })),
  });
  expect(code.length).toBeLessThan(50 + 'Una Thornwath'.length);
  expect(code).toContain('Una_Thornwath');
});

test('points and misses are counted', () => {
  const marks = [
    { verdict: 'right' },
    { verdict: 'unit' },
    { verdict: 'wrong', family: 'percent' },
    { verdict: 'wrong', family: 'sign' },
    { verdict: 'wrong', family: 'percent' },
    { verdict: 'unanswered' },
  ] as const;
  expect(scoreOf({ marks })).toBe(1.5);
  expect(missesOf(marks)).toEqual([
    ['percent', 2],
    ['sign', 1],
  ]);
});

test('tables are quoted as RFC 4180 asks, and no cell is a formula', () => {
  expect(
    csvOf([
      ['name', 'score'],
      ['Marsh, Ada', 3.5],
      ['say "ah"', 0],
      ['=1+1', -1],
    ]),
  ).toBe('\ufeffname,score\r\n"Marsh, Ada",3.5\r\n"say ""ah""",0\r\n\'=1+1,-1\r\n');
});

describe('results pasted more than once', () => {
  const una: Result = { sheet: 'abcdefg', version: 1, name: 'Una', marks: [{ verdict: 'right' }] };
  const better: Result = { ...una, marks: [{ verdict: 'wrong' }] };
  const ada: Result = { ...una, name: 'Ada', version: 2 };
  test('count once, and it is said', () => {
    expect(eachOnce([una, ada, { ...una }, { ...una }, { ...ada }])).toEqual({
      results: [una, ada],
      notes: ['The result of Una was pasted 3 times and that of Ada 2 times; each is listed once.'],
    });
    expect(eachOnce([una, ada])).toEqual({ results: [una, ada], notes: [] });
  });
  test('of one person, but not alike, are one row: the last counts, and it is said', () => {
    expect(eachOnce([una, ada, better])).toEqual({
      results: [better, ada],
      notes: [
        'Una handed in version 1 of one sheet 2 times, with answers that differ; the one pasted last counts. If they are two people, have one write a fuller name.',
      ],
    });
    expect(eachOnce([una, better, { ...una }]).results).toEqual([una]);
    expect(eachOnce([una, { ...una, version: 2 }, { ...una, sheet: '1234567' }]).notes).toEqual([]);
    // One name, written in two ways of Unicode: The Unicode Standard, section 3.11.
    expect(
      eachOnce([
        { ...una, name: 'Zo\u00eb' },
        { ...una, name: 'Zoe\u0308' },
      ]).results,
    ).toHaveLength(1);
  });
  test('of twenty people twice are told in bounds', () => {
    const twice = Array.from({ length: 20 }, (_, i) => [
      { ...una, name: `Una ${i}` },
      { ...better, name: `Una ${i}` },
    ]);
    const { results, notes } = eachOnce(twice.flat());
    expect(results).toHaveLength(20);
    expect(notes).toHaveLength(11);
    expect(notes.at(-1)).toBe('So did 10 more; of each the one pasted last counts.');
  });
  test('without a name may be of two people, so both are listed', () => {
    const nobody = { ...una, name: '' };
    expect(eachOnce([nobody, { ...nobody }])).toEqual({
      results: [nobody, nobody],
      notes: ['2 results without a name are alike; all are listed, as they may be of different people.'],
    });
  });
});
