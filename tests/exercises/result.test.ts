// Result codes there and back, damaged codes, points, misses, and tables for spreadsheets.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { csvOf } from '../../src/exercises/csv.ts';
import { familyNames } from '../../src/exercises/families.ts';
import {
  answersCode,
  resultsOnce,
  missedIn,
  missesOf,
  NO_ANSWERS,
  readResult,
  resultCode,
  scoreOfMarks,
  type SheetResult,
} from '../../src/exercises/result.ts';
import { alikeNotes } from '../../src/exercises/results-alike.ts';

const anyMark: fc.Arbitrary<SheetResult['marks'][number]> = fc.oneof(
  fc
    .constantFrom('unanswered', 'right', 'rounded', 'unit', 'wrong', 'unreadable')
    .map((verdict) => ({ verdict })),
  fc.constantFrom(...familyNames).map((family) => ({ verdict: 'wrong' as const, family })),
);
const firstForm: fc.Arbitrary<SheetResult> = fc.record({
  sheet: fc.stringMatching(/^[0-9a-z]{7}$/),
  version: fc.integer({ min: 1, max: 60 }),
  name: fc
    .string({ unit: 'grapheme', maxLength: 20 })
    .map((name) => name.toWellFormed().replace(/\s+/g, ' ').trim().slice(0, 60).toWellFormed().trim())
    .filter((name) => !/[\p{Cc}\u2800\p{DI}]/u.test(name)), // what cannot be seen is left out of a code
  marks: fc.array(anyMark, { minLength: 1, maxLength: 40 }),
});
const anyDay = fc
  .integer({ min: Date.UTC(2020, 0, 1) / 86_400_000, max: Date.UTC(2140, 0, 1) / 86_400_000 })
  .map((days) => new Date(days * 86_400_000).toISOString().slice(0, 10));
const secondForm: fc.Arbitrary<SheetResult> = fc
  .tuple(firstForm, anyDay, fc.integer({ min: 1, max: 35 }), fc.array(fc.string(), { maxLength: 5 }))
  .map(([result, day, attempt, answers]) => ({ ...result, day, attempt, answers: answersCode(answers) }));
const anyResult = fc.oneof(firstForm, secondForm);

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

test('codes of the first form that were handed in are still read', () => {
  // Written by the edition that had the first form only; the signs are right, wrong by a percentage, not answered.
  expect(readResult('0abcdef-3-1a0-ex1-Una_Thornwath')).toEqual({
    sheet: '0abcdef',
    version: 3,
    name: 'Una Thornwath',
    marks: [{ verdict: 'right' }, { verdict: 'wrong', family: 'percent' }, { verdict: 'unanswered' }],
  });
});

test('a code of the second form carries day, attempt and which questions were missed', () => {
  const result: SheetResult = {
    sheet: '0abcdef',
    version: 3,
    name: 'Zoë Marsh',
    marks: [{ verdict: 'right' }, { verdict: 'unit' }, { verdict: 'right' }, { verdict: 'unanswered' }],
    day: '2026-05-14',
    attempt: 2,
    answers: answersCode(['12', '1.5']),
  };
  const code = resultCode(result);
  // By hand: 2020 to 2025 are 6 years with two leap days, 2,192 days; to 14 May 2026 133 more: 2,325 = 1 × 1296 + 28 × 36 + 21, in signs 1, s, l.
  expect(code).toMatch(/^r2-0abcdef-3-1310-1sl2-[0-9a-z]{4}-[0-9a-z]{3}-Zo%C3%AB_Marsh$/);
  expect(readResult(code)).toEqual(result);
  expect(missedIn(result)).toEqual([2, 4]);
});

test.each(['2019-12-31', '2026-02-30', '26-1-1', 'today', '', '9999-01-01'])(
  'a day that a code cannot carry, “%s”, gives a code of the first form',
  (day) => {
    const code = resultCode({
      sheet: '0abcdef',
      version: 1,
      name: 'Una',
      marks: [{ verdict: 'right' }],
      day,
    });
    expect(code).toMatch(/^0abcdef-1-1-/);
    expect(readResult(code)).not.toHaveProperty('day');
  },
);

test('a part of one form does not pass for the other', () => {
  const code = resultCode({ sheet: '0abcdef', version: 1, name: '', marks: [{ verdict: 'right' }], day: '2026-05-14' }); // prettier-ignore
  expect(typeof readResult(code.slice(3))).toBe('string');
  expect(typeof readResult(code.replace('-1sl1-', '-1sl0-'))).toBe('string');
});

describe('results that look alike', () => {
  const una: SheetResult = { sheet: 'abcdefg', version: 1, name: 'Una', marks: [{ verdict: 'wrong' }], day: '2026-05-14', attempt: 1, answers: answersCode(['12']) }; // prettier-ignore
  const ada: SheetResult = { ...una, name: 'Ada', version: 2, answers: answersCode(['13']) };
  test('are told: one version under two names', () => {
    expect(alikeNotes([una, ada])).toEqual([]);
    expect(alikeNotes([una, ada, { ...ada, name: 'Bo', answers: answersCode(['14']) }])).toEqual([
      'Ada and Bo handed in version 2 of sheet abcdefg, which is meant for one.',
    ]);
    expect(alikeNotes([una, { ...una, sheet: '1234567', name: 'Ada' }])).toEqual([]);
    expect(alikeNotes([una, { ...una, name: 'Ada', answers: NO_ANSWERS }])).toEqual([
      'All 2 results of sheet abcdefg are of version 1. If it has more versions, each should have had their own.',
    ]);
  });
  test('are told: the same answers, whatever their spaces and capitals, in whatever version', () => {
    const copied = { ...ada, answers: answersCode([' 1 2']) };
    expect(alikeNotes([una, copied])).toEqual([
      'Una and Ada handed in the same answers, sign for sign, to sheet abcdefg. 1 of them was not right: ask both how they came to them.',
    ]);
    const right = [una, copied].map((each) => ({ ...each, marks: [{ verdict: 'right' as const }] }));
    expect(alikeNotes(right)[0]).toContain('can come of itself');
    expect(alikeNotes([una, { ...una, attempt: 2 }])).toEqual([]); // one person, twice
    expect(
      alikeNotes([
        { ...una, answers: NO_ANSWERS },
        { ...ada, answers: NO_ANSWERS },
      ]),
    ).toEqual([]);
  });
  test('are told in bounds', () => {
    const many = Array.from({ length: 200 }, (_, i) => ({ ...una, name: `Una ${i}`, version: 1 + (i % 50), answers: answersCode([String(i % 50)]) })); // prettier-ignore
    const notes = alikeNotes(many);
    expect(notes).toHaveLength(22);
    expect(notes[10]).toBe('So it is with 40 more.');
  });
});

test('attempts of one person are each listed', () => {
  const una: SheetResult = { sheet: 'abcdefg', version: 1, name: 'Una', marks: [{ verdict: 'wrong' }], day: '2026-05-14', attempt: 1, answers: 'abcd' }; // prettier-ignore
  expect(resultsOnce([una, { ...una, attempt: 2 }, { ...una }]).results).toHaveLength(2);
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
  expect(scoreOfMarks({ marks })).toBe(1.5);
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
  const una: SheetResult = { sheet: 'abcdefg', version: 1, name: 'Una', marks: [{ verdict: 'right' }] };
  const better: SheetResult = { ...una, marks: [{ verdict: 'wrong' }] };
  const ada: SheetResult = { ...una, name: 'Ada', version: 2 };
  test('count once, and it is said', () => {
    expect(resultsOnce([una, ada, { ...una }, { ...una }, { ...ada }])).toEqual({
      results: [una, ada],
      notes: ['The result of Una was pasted 3 times and that of Ada 2 times; each is listed once.'],
    });
    expect(resultsOnce([una, ada])).toEqual({ results: [una, ada], notes: [] });
  });
  test('of one person, but not alike, are one row: the last counts, and it is said', () => {
    expect(resultsOnce([una, ada, better])).toEqual({
      results: [better, ada],
      notes: [
        'Una handed in version 1 of one sheet 2 times, with answers that differ; the one pasted last counts. If they are two people, have one write a fuller name.',
      ],
    });
    expect(resultsOnce([una, better, { ...una }]).results).toEqual([una]);
    expect(resultsOnce([una, { ...una, version: 2 }, { ...una, sheet: '1234567' }]).notes).toEqual([]);
    // One name, written in two ways of Unicode: The Unicode Standard, section 3.11.
    expect(
      resultsOnce([
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
    const { results, notes } = resultsOnce(twice.flat());
    expect(results).toHaveLength(20);
    expect(notes).toHaveLength(11);
    expect(notes.at(-1)).toBe('So did 10 more; of each the one pasted last counts.');
  });
  test('without a name may be of two people, so both are listed', () => {
    const nobody = { ...una, name: '' };
    expect(resultsOnce([nobody, { ...nobody }])).toEqual({
      results: [nobody, nobody],
      notes: ['2 results without a name are alike; all are listed, as they may be of different people.'],
    });
  });
});
