// Names of a class, observed tasks, lines of the fault desk, and one person's record: nothing is lost, and nothing put in twice.
import { describe, expect, test } from 'vitest';
import { allOf, freshBook, idOf, joined, peopleOf, withoutThing, withThings, worksOf, type ClassBook } from '../../src/exercises/class/book.ts'; // prettier-ignore
import { confusions, sixOn } from '../../src/exercises/class/confuses.ts';
import { alikePeople, followed, freeId, isAlike, joinedPeople, keptApart, renamed } from '../../src/exercises/class/names.ts'; // prettier-ignore
import { ofOne } from '../../src/exercises/class/of-one.ts';
import { nameOn, readAnyRecord, seenOf, withSeen } from '../../src/exercises/class/seen.ts';
import { withPasted } from '../../src/exercises/class/taken.ts';
import { bookText, readBook } from '../../src/exercises/class/text.ts';
import { freshRecord, recordText, type ObservedRecord } from '../../src/exercises/observed/record.ts';
import { answersCode, resultCode, type Result } from '../../src/exercises/result.ts';
import { faultLine } from '../../src/fault/link.ts';
import { codeOfHouse, resultLine } from '../../src/shift/link.ts';
import { injections, nested, prototypeKeys } from '../hostile-texts.ts';

const TODAY = '2026-05-20';
const empty = freshBook('abcdef012345');
const paste = (book: ClassBook, text: string) => withPasted(book, text, TODAY, () => undefined);
const code = (name: string, more: Partial<Result> = {}) =>
  resultCode({
    sheet: '0abcdef',
    version: 1,
    name,
    marks: [{ verdict: 'right' }, { verdict: 'wrong', family: 'percent' }, { verdict: 'unanswered' }],
    day: '2026-05-14',
    attempt: 1,
    answers: answersCode(['1', '2', '']),
    ...more,
  });
const idNamed = (book: ClassBook, name: string) => peopleOf(book).find((each) => each.name === name)!.id;

describe('lines of the fault desk and of shifts', () => {
  const line = faultLine('', 26, codeOfHouse({ name: 'Harrowmere', wash: 1 }), { total: 86, spent: 20, least: 15 }, '2026-05-15'); // prettier-ignore
  test('as their desks write them are results of their case or shift', () => {
    const shift = resultLine({ seed: 12, house: { name: 'Harrowmere' }, done: [] }, { at: 'washback', round: 'round' }, 72, '2026-05-16'); // prettier-ignore
    const { book, notes } = paste(empty, `Åsa: ${line}\nBjörn: ${line.replace(': 86', ': 31')}\r\nÅsa: ${shift}`); // prettier-ignore
    expect(notes).toEqual(['3 results are in the class book now.', 'New in the class: Åsa, Björn.']);
    expect(worksOf(book).map(({ title, address }) => [title.replace(/\w{7}$/, ''), address])).toEqual([
      ['Case 26, house ', 'faults/#fault=26'],
      ['Shift 12, washback ', 'shift/'],
    ]);
    const got = allOf(book, 'result').map(({ got, of, signs, note }) => [got, of, signs, note]);
    expect(got).toContainEqual([86, 100, '', '20 min asked for, 15 needed, as the trainee’s own machine says']); // prettier-ignore
    expect(got).toContainEqual([72, 100, '', 'as the trainee’s own machine says']);
    expect(readBook(bookText(book))).toEqual({ book, problems: [] });
    expect(paste(book, `Åsa: ${line}`).notes).toEqual(['Nothing new: this result was in it already.']);
  });
  test.each([
    [
      'damaged',
      'Åsa: Case 26, house 0G4RJ8T: 86 of 100, 20 min asked for',
      /no whole line of a shift or a case/,
    ],
    ['of more than all points', `Åsa: ${line.replace(': 86', ': 186')}`, /no whole line/],
    ['of no day', `Åsa: ${line.replace('05-15', '15-45')}`, /no whole line/],
    ['of nobody', line, /does not say whose it is/],
    ['of words', 'these are some words that were pasted', /not a whole result code/],
  ])('one that is %s gives one sentence', (_, text, says) => {
    const { book, notes } = paste(empty, text);
    expect(book).toEqual(empty);
    expect(notes).toHaveLength(1);
    expect(notes[0]).toMatch(says);
  });
  test('words beside a code are told, and the code is taken', () => {
    const { book, notes } = paste(empty, `Una ${code('Una Marsh')}`);
    expect(peopleOf(book).map(({ name }) => name)).toEqual(['Una Marsh']);
    expect(notes.at(-1)).toMatch(/“Una” stands beside a code/);
  });
});

describe('names', () => {
  test.each([
    ['Chloe', 'Chloë', true],
    ['bjorn', 'Björn', true],
    ['Søren', 'soren', true],
    ['Una Marsh', 'UnaMarsh', true],
    ['Björn', 'Bjön', true],
    ['Björn', 'Bjorns', true],
    ['Anna', 'Anne', true],
    ['Björn', 'Bjarke', false],
    ['Ada', 'Una', false],
    ['Dai', 'Dan', false],
    ['Trainee 1', 'Trainee 2', false],
    ['Trainee 1', 'Trainee 12', false],
    ['…', '–', false],
  ])('%s and %s: %s', (one, other, is) => {
    expect(isAlike(one, other)).toBe(is);
    expect(isAlike(other, one)).toBe(is);
  });
  const { book } = paste(empty, `${code('Chloë')}`);
  const both = paste(book, [code('Chloe'), code('Chloe', { attempt: 2, day: '2026-05-15' })].join('\n')).book;
  test('that are almost alike are asked about once, the later first', () => {
    expect(alikePeople(both).map((pair) => pair.map(({ name }) => name))).toEqual([['Chloe', 'Chloë']]);
    const [later, earlier] = alikePeople(both)[0]!;
    const apart = keptApart(both, later, earlier);
    expect(alikePeople(apart)).toEqual([]);
    expect(peopleOf(apart)).toHaveLength(2);
    expect(readBook(bookText(apart))).toEqual({ book: apart, problems: [] });
  });
  test('joined are one person: what both had stands once, the rest is theirs, and later codes come to them', () => {
    const one = joinedPeople(both, idNamed(both, 'Chloe'), idNamed(both, 'Chloë'));
    expect(peopleOf(one).map(({ name }) => name)).toEqual(['Chloë']);
    expect(allOf(one, 'result').map(({ person, attempt }) => [person, attempt]).sort()).toEqual([[idNamed(both, 'Chloë'), 1], [idNamed(both, 'Chloë'), 2]]); // prettier-ignore
    expect(alikePeople(one)).toEqual([]);
    const again = paste(one, [code('Chloe', { attempt: 2, day: '2026-05-15' }), code('Chloe', { attempt: 3 })].join('\n')); // prettier-ignore
    expect(again.notes).toEqual(['1 result is in the class book now; 1 stood in it already.']);
    expect(peopleOf(again.book)).toHaveLength(1);
    expect(Object.keys(both.entries).every((id) => Object.hasOwn(one.entries, id))).toBe(true);
    expect(readBook(bookText(one))).toEqual({ book: one, problems: [] });
  });
  test('what another copy has under the joined name follows', () => {
    const one = joinedPeople(both, idNamed(both, 'Chloe'), idNamed(both, 'Chloë'));
    const elsewhere = paste(both, code('Chloe', { sheet: '1234567' })).book;
    const together = followed(joined(one, elsewhere));
    expect(peopleOf(together)).toHaveLength(1);
    expect(allOf(together, 'result')).toHaveLength(3);
    expect(new Set(allOf(together, 'result').map(({ person }) => person))).toEqual(new Set([idNamed(both, 'Chloë')])); // prettier-ignore
    expect(followed(together)).toBe(together);
  });
  test('are changed with nothing lost, and the old one is still theirs', () => {
    const id = idNamed(book, 'Chloë');
    const next = renamed(book, id, 'Chloë Marsh') as ClassBook;
    expect(peopleOf(next).map(({ name }) => name)).toEqual(['Chloë Marsh']);
    expect(paste(next, code('Chloë')).notes).toEqual(['Nothing new: this result was in it already.']);
    expect(freeId(next, 'Chloë')).not.toBe(id);
    expect(renamed(both, id, 'chloe')).toMatch(/join the two instead/);
    expect(renamed(book, id, '')).toBe('Write the new name.');
    expect(renamed(book, 'p-none', 'Una')).toBe('Choose a person.');
  });
});

describe('records of observed tasks', () => {
  const record: ObservedRecord = {
    ...freshRecord('distilling'),
    about: { ...freshRecord('distilling').about, trainee: 'Björn', assessor: 'Henrike', role: 'trainer', validUntil: '1 May 2028' }, // prettier-ignore
    seen: {
      'heat-up': { outcome: 'alone', day: '2026-05-14', note: 'batch 7' },
      'haze-cut': { outcome: 'not yet', day: '2026-05-14', note: '' },
    },
  };
  const read = readAnyRecord(recordText(record, 'book 1')) as ObservedRecord;
  const start = withThings(empty, { 'p-1': { is: 'person', name: 'Björn', role: 'trainee' } });
  test('land in the book with outcome, day and assessor, once', () => {
    expect(read).toEqual(record);
    expect(nameOn(read)).toBe('Björn');
    const { book, added } = withSeen(start, 'p-1', read);
    expect(added).toBe(2);
    expect(withSeen(book, 'p-1', read)).toEqual({ book, added: 0, known: 2 });
    expect(seenOf(book)).toEqual([{ person: 'p-1', name: 'Björn', stage: 'distilling', counts: { alone: 1, prompted: 0, 'not yet': 1 }, lastDay: '2026-05-14', assessors: ['Henrike, trainer'] }]); // prettier-ignore
    expect(readBook(bookText(book))).toEqual({ book, problems: [] });
    expect(allOf(withoutThing(book, 'p-1'), 'seen')).toEqual([]);
  });
  test('of each task the latest is told', () => {
    const later = { ...record, seen: { 'haze-cut': { outcome: 'alone', day: '2026-06-01', note: '' } } } as const; // prettier-ignore
    const { book } = withSeen(withSeen(start, 'p-1', read).book, 'p-1', later);
    expect(allOf(book, 'seen')).toHaveLength(3);
    expect(seenOf(book)[0]!.counts).toEqual({ alone: 2, prompted: 0, 'not yet': 0 });
  });
  test('that are hostile, damaged or empty are a sentence', () => {
    const texts = [...injections, ...prototypeKeys, nested(5000), '{"stage":"distilling"}', recordText(freshRecord('mashing'), 'book 1'), recordText({ ...record, stage: '__proto__' }, 'book 1')]; // prettier-ignore
    for (const text of texts) expect(typeof readAnyRecord(text)).toBe('string');
  });
});

describe('one person’s record', () => {
  const text = [code('Björn'), code('Björn', { attempt: 2, day: '2026-05-18', marks: [{ verdict: 'right' }, { verdict: 'unit' }, { verdict: 'right' }] }), code('Una')].join('\n'); // prettier-ignore
  const raw = paste(empty, text).book;
  const person = idNamed(raw, 'Björn');
  const standing = { is: 'standing', person, outcome: 'mashing', day: '2026-05-01', until: '2028-05-01', assessor: 'Henrike', evidence: 'sheet 3' } as const; // prettier-ignore
  const book = withThings(raw, { [idOf('standing', person)]: standing });
  test('has first results and re-sits apart, each with its own day, misses and blanks', () => {
    const one = ofOne(book, person)!;
    expect(one.first.map(({ result, got, of, missed, blank, counts }) => [result.day, result.attempt, got, of, missed, blank, counts])).toEqual([['2026-05-14', 1, 1, 3, [2], [3], false]]); // prettier-ignore
    expect(one.again.map(({ result, got, missed, blank, counts }) => [result.day, result.attempt, got, missed, blank, counts])).toEqual([['2026-05-18', 2, 2.5, [2], [], true]]); // prettier-ignore
    expect(one.standings.map(({ outcome, day, until, assessor }) => [outcome, day, until, assessor])).toEqual([['mashing', '2026-05-01', '2028-05-01', 'Henrike']]); // prettier-ignore
    expect(ofOne(book, 'p-none')).toBeUndefined();
  });
});

describe('what the class confuses', () => {
  test('does not count what was left blank', () => {
    const { book: raw } = paste(empty, [code('Una'), code('Björn', { marks: [{ verdict: 'unanswered' }, { verdict: 'unanswered' }, { verdict: 'unanswered' }], answers: '0000' })].join('\n')); // prettier-ignore
    const work = worksOf(raw)[0]!;
    const book = withThings(raw, {
      [work.id]: { ...work, kinds: [['strike-water', 'pure-alcohol', 'draff']] },
    });
    expect(confusions(book)).toEqual([{ kind: 'pure-alcohol', asked: 1, missed: 1, people: ['Una'], families: [['percent', 1]] }]); // prettier-ignore
  });
  test('gives six questions of four kinds where so many were missed', () => {
    expect(sixOn(['a', 'b', 'c', 'd', 'e'], 6, 'six').items.map(({ kind }) => kind)).toEqual(['a', 'a', 'b', 'b', 'c', 'd']); // prettier-ignore
  });
});
