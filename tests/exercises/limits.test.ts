// Where what is read ends: at each limit of practice, codes and links the last that is read and the first that is not.
import { expect, test } from 'vitest';
import { amissInNames, handedOut } from '../../src/exercises/handed-out.ts';
import { decodeProgress, newsIn, practised, type Progress } from '../../src/exercises/progress.ts';
import { MOST_ATTEMPTS, readResult, resultCode } from '../../src/exercises/result.ts';
import {
  handInInside,
  handInText,
  readHandIn,
  readHandInText,
  type HandIn,
} from '../../src/exercises/sealed/hand-in.ts';
import { standingAfter, nextKind } from '../../src/exercises/spacing.ts';
import { readSheetLink, linkProblem } from '../../src/exercises/sheet-link.ts';

const practice = (over: object) =>
  JSON.stringify({ format: 'malt-spirit-handbook/practice', version: 1, standing: {}, log: [], ...over });
const log = (length: number) => Array.from({ length }, (_, i) => ({ kind: `k${i}`, day: '2026-05-14', verdict: 'right' as const })); // prettier-ignore

test('the log keeps the last two thousand answers, and the count goes on', () => {
  const full: Progress = { standing: {}, log: log(2000), answers: 2000 };
  const next = practised(full, 'new', 'right', '2026-05-15');
  expect(next.log).toHaveLength(2000);
  expect([next.log[0]!.kind, next.log.at(-1)!.kind, next.answers]).toEqual(['k1', 'new', 2001]);
  const read = decodeProgress(practice({ log: log(2001) }));
  expect([read.progress.log.length, read.progress.log[0]!.kind, read.problems.length]).toEqual([
    2000,
    'k1',
    0,
  ]);
});

test('practice of a million characters is read, and not of one more', () => {
  const padded = (length: number) => practice({}).padEnd(length);
  expect(decodeProgress(padded(1_000_000)).problems).toEqual([]);
  expect(decodeProgress(padded(1_000_001)).problems[0]).toMatch(/1000001 characters long/);
});

test('news of another tab: a thousand characters are read, and no part more or less than an answer has', () => {
  const news = '{"answer":["kiln","right","2026-05-14"]}';
  expect(newsIn(news.padEnd(1000))).toEqual({ answer: ['kiln', 'right', '2026-05-14'] });
  for (const bad of [news.padEnd(1001), news.replace(',"right"', ''), news.replace(']}', ',1]}'), news.replace('right', 'unanswered'), '{"file":1}', '{"answer":{"length":3}}', '7', 'null'])
    expect(newsIn(bad), bad.slice(0, 60)).toBeUndefined();
  expect(newsIn('{"file":true}')).toEqual({ file: true });
}); // prettier-ignore

test('how a kind stands: compartments 1 to 5, due from 1970 to the millionth day', () => {
  const standing = (box: unknown, due: unknown) => decodeProgress(practice({ standing: { kiln: { box, due } } }));
  for (const [box, due] of [[1, 0], [5, 1e6]]) expect(standing(box, due).problems).toEqual([]);
  for (const [box, due] of [[0, 5], [6, 5], [1.5, 5], ['1', 5], [1, -1], [1, 1_000_001], [1, 0.5]])
    expect(standing(box, due).problems, `${box}, ${due}`).toEqual(['1 entry of the saved practice could not be read.']);
}); // prettier-ignore

test('a kind’s name has one to sixty signs, and a day is a day of the calendar before the year 4705', () => {
  const entry = (kind: string, day: string) => decodeProgress(practice({ log: [{ kind, day, verdict: 'right' }] })).problems.length;
  expect([entry('a', '2026-05-14'), entry('a'.repeat(60), '1970-01-01')]).toEqual([0, 0]);
  // 999,000 days are 2735 years of 365.2425 days and 62 days more: in March 4705.
  expect([entry('a', '4705-01-01'), entry('a', '4705-12-31')]).toEqual([0, 1]);
  for (const [kind, day] of [['', '2026-05-14'], ['a'.repeat(61), '2026-05-14'], ['A', '2026-05-14'], ['a', '1969-12-31'], ['a', '2026-5-14'], ['a', '2026-13-01'], ['a', 'x2026-05-14'], ['a', '2026-05-144']] as const)
    expect(entry(kind, day), `${kind} ${day}`).toBe(1);
}); // prettier-ignore

test('answers: no fewer than the log has, and at most a milliard', () => {
  const answers = (given: number) =>
    decodeProgress(practice({ log: log(3), answers: given })).progress.answers;
  expect([2, 3, 1e9, 1e9 + 1, 3.5].map(answers)).toEqual([3, 3, 1e9, 3, 3]);
});

const result = { sheet: 'abcdefg', version: 1, name: 'Ann', marks: [{ verdict: 'right' as const }] };
test('a code of a result: days from 2020 to September 2147, attempts from 1 to 35, names of sixty letters', () => {
  const read = (over: object) => readResult(resultCode({ ...result, ...over }));
  // Three signs of 36 are 46,656 days. From 2020 to 2147 are 127 years with 31 leap days, 46,386 days; day 269 after New Year 2147 is 27 September.
  for (const day of ['2020-01-01', '2147-09-27']) expect(read({ day })).toMatchObject({ day });
  for (const day of ['2019-12-31', '2147-09-28', '2026-02-30', '2026-05-14x'])
    expect(read({ day }), day).not.toHaveProperty('day');
  const attempt = (attempt: number) => (read({ day: '2026-05-14', attempt }) as { attempt: number }).attempt;
  expect(MOST_ATTEMPTS).toBe(35);
  expect([0, 1, 2, 35, 36].map(attempt)).toEqual([1, 1, 2, 35, 35]);
  expect(read({ name: 'n'.repeat(61) })).toMatchObject({ name: 'n'.repeat(60) });
});

test('a code of a thousand characters is read, and not of one more', () => {
  const code = resultCode(result);
  expect(readResult(code.padEnd(1000))).toMatchObject({ name: 'Ann' });
  expect(readResult(code.padEnd(1001))).toMatch(/not a whole result code/);
});

test('a link to a sheet has at most sixty thousand characters', () => {
  const link = '#sheet='.padEnd(60_000, 'x');
  expect(linkProblem(link)).toBeUndefined();
  expect(linkProblem(`${link}x`)).toMatch(/60001 characters/);
  expect(readSheetLink(link)).toEqual({ problem: expect.stringMatching(/damaged/) as string });
  expect(readSheetLink(`${link}x`)).toEqual({
    problem: expect.stringMatching(/has 60001 characters/) as string,
  });
});

test('versions go to as many names as there are, cut after sixty letters; the rest and doubles are told', () => {
  const handed = handedOut(`Ann\n\n Bob \n${'c'.repeat(61)}\nAnn`, 3);
  expect(handed).toEqual([
    { name: 'Ann', version: 1 },
    { name: 'Bob', version: 2 },
    { name: 'c'.repeat(60), version: 3 },
    { name: 'Ann', version: undefined },
  ]);
  expect(amissInNames(handed)).toBe(
    'Twice in the list: Ann. No version is left for Ann: make the sheet with 4 versions.',
  );
  expect(amissInNames(handedOut('Ann\nBob', 2))).toBe('');
});

test('a sealed hand-in: each of its parts at its limits and beyond them', () => {
  const sound: HandIn = { sheet: 'abc', version: 99, name: 'n'.repeat(60), answers: Array.from({ length: 60 }, () => 'a'.repeat(200)), begun: 0, handedIn: 8.64e15, day: '2026-05-14', attempt: 35, seen: 'abcdefghij-_4567' };
  const read = (over: object) => readHandIn(handInInside({ ...sound, ...over }), 'abc');
  expect(read({})).toEqual(sound);
  expect(read({ version: 1, attempt: 1, answers: [''], name: '' })).toMatchObject({ version: 1, attempt: 1, answers: [''], name: '' });
  for (const over of [
    { version: 0 }, { version: 100 }, { version: 1.5 }, { name: 'n'.repeat(61) }, { name: 'An\u200bn' }, { name: 7 },
    { answers: [] }, { answers: Array.from({ length: 61 }, () => '') }, { answers: ['a'.repeat(201)] }, { answers: 'a' }, { answers: [7] },
    { begun: -1 }, { begun: '0' }, { handedIn: 8.64e15 + 2 }, { day: '2026-13-01' }, { day: '2026-5-14' }, { day: ' 2026-05-14' }, { day: '2026-05-14 ' },
    { attempt: 0 }, { attempt: 36 }, { attempt: 1.5 }, { seen: 'abcdefghijklmno' }, { seen: 'abcdefghijklmnopq' }, { seen: 'abcdefghijklmno.' },
  ]) expect(read(over), JSON.stringify(over).slice(0, 60)).toBe('A hand-in opened, but what is in it cannot be read.');
  expect(read({ sheet: 'abd' })).toMatch(/outside that it is of one sheet and inside of another/);
  expect(readHandIn(JSON.stringify({ version: 2, handIn: sound }), 'abc')).toMatch(/cannot be read/);
}); // prettier-ignore

test('the text of a sealed hand-in: twelve signs of its sheet, a hundred to sixty thousand of its seal', () => {
  const text = (sheet: number, seal: number) => readHandInText(handInText('a'.repeat(sheet), 'b'.repeat(seal)));
  for (const seal of [100, 60_000]) expect(text(12, seal)).toEqual({ sheet: 'a'.repeat(12), seal: 'b'.repeat(seal) });
  for (const [sheet, seal] of [[11, 100], [13, 100], [12, 99], [12, 60_001]] as const) expect(text(sheet, seal)).toMatch(/not a whole sealed hand-in/);
  expect(readHandInText(`x${handInText('a'.repeat(12), 'b'.repeat(100))}`)).toMatch(/not a whole/);
}); // prettier-ignore

test('a kind waits for eight others and is asked twice in a sitting; when none may come, those asked longest ago do', () => {
  const pool = 'abcdefghij'.split('');
  const due = Object.fromEntries(pool.map((id) => [id, { box: 1, due: id === 'a' ? 1 : 5 }]));
  expect(nextKind(pool, due, 9, [...'abcdefgh'])).toBe('i'); // seven others since a
  expect(nextKind(pool, due, 9, [...'abcdefghi'])).toBe('a'); // eight
  expect(nextKind(['a', 'b'], due, 9, [...'aab'])).toBe('a'); // both rest: a was asked longer ago
  // A kind that was asked twice rests, though it waited for eight others.
  expect(nextKind(pool, due, 9, ['a', 'a', ...'bcdefghi'])).toBe('j');
  expect(standingAfter({ box: 1, due: 3 }, 'nearly', 10)).toEqual({ box: 1, due: 11 });
  expect(standingAfter(undefined, 'nearly', 10)).toEqual({ box: 1, due: 11 });
});
