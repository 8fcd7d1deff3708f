// Names of a class, observed tasks, lines of the fault desk, and one person's record: nothing is lost, and nothing put in twice.
import { describe, expect, test } from 'vitest';
import { withPutBack, hasTakenOut } from '../../src/exercises/class/put-back.ts';
import { entriesOfKind, freshBook, entryId, joinedBooks, peopleOf, withoutThing, withThings, worksOf, type ClassBook } from '../../src/exercises/class/book.ts'; // prettier-ignore
import { confusions, questionsOnMissed, kindsTaught } from '../../src/exercises/class/confuses.ts';
import { alikePeople, withJoinedFollowed, freeId, withResultGiven, isAlike, withPeopleJoined, withPeopleApart, withPersonRenamed } from '../../src/exercises/class/names.ts'; // prettier-ignore
import { recordOfPerson } from '../../src/exercises/class/of-one-person.ts';
import { nameOnRecord, readAnyRecord, observedOf, withSeen } from '../../src/exercises/class/observed.ts';
import { withNames } from '../../src/exercises/class/names-put.ts';
import { putResults, type FoundResult } from '../../src/exercises/class/put-results.ts';
import { withPasted } from '../../src/exercises/class/taken.ts';
import { whoseWords, type Doubtful } from '../../src/exercises/class/whose.ts';
import { bookText, readBook } from '../../src/exercises/class/text.ts';
import { freshRecord, recordText, type ObservedRecord } from '../../src/exercises/observed/record.ts';
import { answersCode, resultCode, type SheetResult } from '../../src/exercises/result.ts';
import { benches } from '../../src/fault/benches.ts';
import { faultLine } from '../../src/fault/link.ts';
import { codeOfHouse, resultLine } from '../../src/shift/link.ts';
import { injections, nested, prototypeKeys } from '../hostile-texts.ts';

const TODAY = '2026-05-20';
const empty = freshBook('abcdef012345');
const paste = (book: ClassBook, text: string) => withPasted(book, text, TODAY, () => undefined);
const code = (name: string, more: Partial<SheetResult> = {}) =>
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
  const line = faultLine('', 26, codeOfHouse({ name: 'Harrowmere', wash: 1 }), { total: 86, spent: 20, least: 15, named: 'The cask leaks', isCause: true, harm: undefined, isAgain: false }, '2026-05-15'); // prettier-ignore
  test('as their desks write them are results of their case or shift', () => {
    const shift = resultLine({ seed: 12, house: { name: 'Harrowmere' }, done: [] }, { at: 'washback', round: 'round' }, 72, '2026-05-16'); // prettier-ignore
    const { book, notes } = paste(empty, `Åsa: ${line}\nBjörn: ${line.replace(': 86', ': 31')}\r\nÅsa: ${shift}`); // prettier-ignore
    expect(notes).toEqual(['3 results are in the class book now.', 'New in the class: Åsa, Björn.']);
    expect(worksOf(book).map(({ title, address }) => [title.replace(/\w{7}$/, ''), address])).toEqual([
      ['Case 26, house ', 'faults/#fault=26'],
      ['Shift 12, washback ', 'shift/'],
    ]);
    const got = entriesOfKind(book, 'result').map(({ got, of, signs, note }) => [got, of, signs, note]);
    expect(got).toContainEqual([86, 100, '', '20 min asked for, 15 needed; named “The cask leaks” (right)']); // prettier-ignore
    expect(got).toContainEqual([72, 100, '', 'as the trainee’s own machine says']);
    expect(readBook(bookText(book))).toEqual({ book, problems: [] });
    expect(paste(book, `Åsa: ${line}`).notes).toEqual(['Nothing new: this result was in it already.']);
  });
  test('a line of every cause, with a dangerous act and a second go, fits into the book; one of before is read as before', () => {
    for (const { causes } of benches)
      for (const { title } of causes) {
        const full = faultLine('Una', 999999, '0G4RJ8T', { total: 0, spent: 9999, least: 9999, named: title, isCause: false, harm: 'It burns.', isAgain: true }, '2026-05-15');
        const { book } = paste(empty, full);
        expect(entriesOfKind(book, 'result').map(({ note }) => note)).toEqual([`9999 min asked for, 9999 needed; named “${title}” (wrong); a dangerous act first; second go or later`]);
        expect(readBook(bookText(book))).toEqual({ book, problems: [] });
      }
    const { book } = paste(empty, 'Una: Case 26, house 0G4RJ8T: 86 of 100. 20 min asked for, 15 needed, 2026-05-15');
    expect(entriesOfKind(book, 'result').map(({ note }) => note)).toEqual(['20 min asked for, 15 needed, as the trainee’s own machine says']);
  }); // prettier-ignore
  test.each([
    [
      'damaged',
      'Åsa: Case 26, house 0G4RJ8T: 86 of 100, 20 min asked for',
      /no whole line of a shift or a case/,
    ],
    ['of more than all points', `Åsa: ${line.replace(': 86', ': 186')}`, /no whole line/],
    ['of no day', `Åsa: ${line.replace('05-15', '15-45')}`, /no whole line/],
    ['of nobody', line, /does not say whose it is/],
    ['of words', 'these are some words that were pasted', /^1 line without a code was passed over/],
  ])('one that is %s gives one sentence', (_, text, says) => {
    const { book, notes } = paste(empty, text);
    expect(book).toEqual(empty);
    expect(notes).toHaveLength(1);
    expect(notes[0]).toMatch(says);
  });
  test('a code that a mail broke is joined, and lines without one are counted', () => {
    const una = code('Una Marsh');
    const broken = `${una.slice(0, 12)}\n> ${una.slice(12, 20)}\n${una.slice(20)}`;
    const { book, notes } = paste(empty, `From: una@post.example\nGood morning\n${broken}\nBo: ${code('').slice(0, 15)}\n${code('').slice(15)}\nUna`); // prettier-ignore
    expect(peopleOf(book).map(({ name }) => name)).toEqual(['Bo', 'Una Marsh']);
    expect(notes).toEqual(['2 results are in the class book now.', 'New in the class: Una Marsh, Bo.', '3 lines without a code were passed over.']); // prettier-ignore
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
    const apart = withPeopleApart(both, later, earlier);
    expect(alikePeople(apart)).toEqual([]);
    expect(peopleOf(apart)).toHaveLength(2);
    expect(readBook(bookText(apart))).toEqual({ book: apart, problems: [] });
  });
  test('joined are one person: what both had stands once, the rest is theirs, and later codes come to them', () => {
    const one = withPeopleJoined(both, idNamed(both, 'Chloe'), idNamed(both, 'Chloë'));
    expect(peopleOf(one).map(({ name }) => name)).toEqual(['Chloë']);
    expect(entriesOfKind(one, 'result').map(({ person, attempt }) => [person, attempt]).sort()).toEqual([[idNamed(both, 'Chloë'), 1], [idNamed(both, 'Chloë'), 2]]); // prettier-ignore
    expect(alikePeople(one)).toEqual([]);
    const again = paste(one, [code('Chloe', { attempt: 2, day: '2026-05-15' }), code('Chloe', { attempt: 3 })].join('\n')); // prettier-ignore
    expect(again.notes).toEqual(['1 result is in the class book now; 1 stood in it already.']);
    expect(peopleOf(again.book)).toHaveLength(1);
    expect(Object.keys(both.entries).every((id) => Object.hasOwn(one.entries, id))).toBe(true);
    expect(readBook(bookText(one))).toEqual({ book: one, problems: [] });
  });
  test('what another copy has under the joined name follows', () => {
    const one = withPeopleJoined(both, idNamed(both, 'Chloe'), idNamed(both, 'Chloë'));
    const elsewhere = paste(both, code('Chloe', { sheet: '1234567' })).book;
    const together = withJoinedFollowed(joinedBooks(one, elsewhere));
    expect(peopleOf(together)).toHaveLength(1);
    expect(entriesOfKind(together, 'result')).toHaveLength(3);
    expect(new Set(entriesOfKind(together, 'result').map(({ person }) => person))).toEqual(new Set([idNamed(both, 'Chloë')])); // prettier-ignore
    expect(withJoinedFollowed(together)).toBe(together);
  });
  test('are changed with nothing lost, and the old one is still theirs', () => {
    const id = idNamed(book, 'Chloë');
    const next = withPersonRenamed(book, id, 'Chloë Marsh') as ClassBook;
    expect(peopleOf(next).map(({ name }) => name)).toEqual(['Chloë Marsh']);
    expect(paste(next, code('Chloë')).notes).toEqual(['Nothing new: this result was in it already.']);
    expect(freeId(next, 'Chloë')).not.toBe(id);
    expect(withPersonRenamed(both, id, 'chloe')).toMatch(/join the two instead/);
    expect(withPersonRenamed(book, id, '')).toBe('Write the new name.');
    expect(withPersonRenamed(book, 'p-none', 'Una')).toBe('Choose a person.');
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
    expect(nameOnRecord(read)).toBe('Björn');
    const { book, added } = withSeen(start, 'p-1', read);
    expect(added).toBe(2);
    expect(withSeen(book, 'p-1', read)).toEqual({ book, added: 0, known: 2 });
    expect(observedOf(book)).toEqual([{ person: 'p-1', name: 'Björn', stage: 'distilling', counts: { alone: 1, prompted: 0, 'not yet': 1 }, lastDay: '2026-05-14', assessors: ['Henrike, trainer'] }]); // prettier-ignore
    expect(readBook(bookText(book))).toEqual({ book, problems: [] });
    expect(entriesOfKind(withoutThing(book, 'p-1'), 'seen')).toEqual([]);
  });
  test('of each task the latest is told', () => {
    const later = { ...record, seen: { 'haze-cut': { outcome: 'alone', day: '2026-06-01', note: '' } } } as const; // prettier-ignore
    const { book } = withSeen(withSeen(start, 'p-1', read).book, 'p-1', later);
    expect(entriesOfKind(book, 'seen')).toHaveLength(3);
    expect(observedOf(book)[0]!.counts).toEqual({ alone: 2, prompted: 0, 'not yet': 0 });
    // Of two on one day the one that was entered later counts, however they lie in the book.
    const once = (outcome: 'alone' | 'not yet') => ({ is: 'seen', person: 'p-1', stage: 'distilling', task: 'haze-cut', outcome, day: '2026-06-01', note: '', assessor: '', until: '' }) as const; // prettier-ignore
    const day = withThings(withThings(start, { 'o-9': once('not yet') }), { 'o-1': once('alone') });
    const turned = { ...day, entries: Object.fromEntries(Object.entries(day.entries).toReversed()) };
    for (const each of [day, turned]) expect(observedOf(each)[0]!.counts.alone).toBe(1);
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
  const book = withThings(raw, { [entryId('standing', person)]: standing });
  test('has first results and re-sits apart, each with its own day, misses and blanks', () => {
    const one = recordOfPerson(book, person)!;
    expect(one.first.map(({ result, got, of, missed, blank, counts }) => [result.day, result.attempt, got, of, missed, blank, counts])).toEqual([['2026-05-14', 1, 1, 3, [2], [3], false]]); // prettier-ignore
    expect(one.again.map(({ result, got, missed, blank, counts }) => [result.day, result.attempt, got, missed, blank, counts])).toEqual([['2026-05-18', 2, 2.5, [2], [], true]]); // prettier-ignore
    expect(one.standings.map(({ outcome, day, until, assessor }) => [outcome, day, until, assessor])).toEqual([['mashing', '2026-05-01', '2028-05-01', 'Henrike']]); // prettier-ignore
    expect(recordOfPerson(book, 'p-none')).toBeUndefined();
  });
});

describe('what the class confuses', () => {
  test('tells what was left blank beside what was missed, and does not count it', () => {
    const { book: raw } = paste(empty, [code('Una'), code('Björn', { marks: [{ verdict: 'unanswered' }, { verdict: 'unanswered' }, { verdict: 'unanswered' }], answers: '0000' })].join('\n')); // prettier-ignore
    const work = worksOf(raw)[0]!;
    const book = withThings(raw, {
      [work.id]: { ...work, kinds: [['strike-water', 'pure-alcohol', 'draff']] },
    });
    // By hand: the second was wrong once and blank once; the third blank twice; the first right once and blank once.
    expect(confusions(book)).toEqual([
      { kind: 'pure-alcohol', asked: 1, missed: 1, blank: 1, blankBy: ['Björn'], people: ['Una'], families: [['percent', 1]] },
      { kind: 'draff', asked: 0, missed: 0, blank: 2, blankBy: ['Björn', 'Una'], people: [], families: [] },
      { kind: 'strike-water', asked: 1, missed: 0, blank: 1, blankBy: ['Björn'], people: [], families: [] },
    ]); // prettier-ignore
  });
  test('gives one question of each of the most missed kinds, safety first, and then again', () => {
    const kinds = (some: readonly string[]) =>
      questionsOnMissed(some, 6, 'six').items.map(({ kind }) => kind);
    expect(kinds(['a', 'b', 'c', 'd', 'e', 'f', 'g'])).toEqual(['a', 'b', 'c', 'd', 'e', 'f']);
    expect(kinds(['a', 'b', 'c', 'd'])).toEqual(['a', 'a', 'b', 'b', 'c', 'd']);
    const missed = ['a', 'b', 'c', 'd', 'e', 'f', 'vapour'];
    expect(kindsTaught(missed, (kind) => kind === 'vapour')).toEqual(['vapour', 'a', 'b', 'c', 'd', 'e']);
    expect(kindsTaught(['a'], () => false)).toEqual(['a']);
  });
});

describe('what was joined, taken out or given away', () => {
  const both = paste(empty, [code('Noor'), code('Bram'), code('Noor', { attempt: 2, day: '2026-05-15' })].join('\n')).book; // prettier-ignore
  const [noor, bram] = [idNamed(both, 'Noor'), idNamed(both, 'Bram')];
  const seen = { is: 'seen', person: noor, stage: 'mashing', task: 'a', outcome: 'alone', day: '2026-05-14', assessor: 'Ann', until: '', note: '' } as const; // prettier-ignore
  const start = withThings(both, { 'o-1': seen });
  const of = (book: ClassBook, person: string) =>
    Object.entries(book.entries).filter(([, entry]) => 'person' in entry && entry.is !== 'told' && entry.person === person && !entry.gone).map(([id]) => id).sort(); // prettier-ignore
  test('a join undone leaves both as they were, what both had twice as well', () => {
    const joinedUp = withPeopleJoined(start, noor, bram);
    expect(of(joinedUp, noor)).toEqual([]);
    expect(of(joinedUp, bram)).toHaveLength(3); // the first result was both’s
    const { book, says } = withPutBack(joinedUp);
    expect(says).toMatch(/^Noor and Bram are two again/);
    expect(peopleOf(book).map(({ name }) => name)).toEqual(['Bram', 'Noor']);
    for (const person of [noor, bram]) expect(of(book, person)).toEqual(of(start, person));
    for (const id of of(start, noor)) expect({ ...book.entries[id], stamp: 0 }).toEqual({ ...start.entries[id], stamp: 0 }); // prettier-ignore
    expect(paste(book, code('Noor', { attempt: 3 })).book.entries).toSatisfy((entries: object) => Object.values(entries).some((each) => each.person === noor && each.attempt === 3)); // prettier-ignore
    expect(readBook(bookText(joinedUp))).toEqual({ book: joinedUp, problems: [] });
  });
  test('what came in since the join stays, and what was taken out since stays out', () => {
    const later = paste(withPeopleJoined(start, noor, bram), code('Bram', { sheet: '1234567' })).book;
    expect(of(withPutBack(later).book, bram)).toHaveLength(2);
    expect(of(withPutBack(later).book, noor)).toEqual(of(start, noor));
    const back = withPutBack(withPutBack(withoutThing(later, 'o-1')).book).book;
    expect(of(back, noor)).toEqual(of(start, noor));
    expect(hasTakenOut(back)).toBe(false);
  });
  test('another copy that still has the join, or joined anew from another file, comes back too', () => {
    const one = withPeopleJoined(start, noor, bram);
    const undone = withPutBack(one).book;
    expect(withJoinedFollowed(joinedBooks(one, undone))).toEqual(undone);
    const elsewhere = paste(start, code('Noor', { sheet: '1234567' })).book;
    const together = withJoinedFollowed(joinedBooks(one, elsewhere));
    expect(of(together, noor)).toEqual([]);
    expect(of(withPutBack(together).book, noor)).toEqual(of(elsewhere, noor));
  });
  test('joins one after another are undone one after another', () => {
    const three = paste(start, code('Cai', { sheet: '7654321' })).book;
    const cai = idNamed(three, 'Cai');
    const chain = withPeopleJoined(withPeopleJoined(three, noor, bram), bram, cai);
    const once = withPutBack(chain).book;
    expect([of(once, noor).length, of(once, bram).length, of(once, cai).length]).toEqual([0, 3, 1]);
    expect(of(withPutBack(once).book, noor)).toEqual(of(three, noor));
  });
  test('a join of a file that did not keep whose a thing was is undone by its stamp', () => {
    const now = withPeopleJoined(start, noor, bram);
    const old = { ...now, entries: Object.fromEntries(Object.entries(now.entries).map(([id, { was: _, into: __, ...entry }]: [string, any]) => [id, entry])) } as ClassBook; // prettier-ignore
    for (const person of [noor, bram]) expect(of(withPutBack(old).book, person)).toEqual(of(start, person));
  });
  test('a result given to somebody is theirs, is known when it is pasted again, and can be given back', () => {
    const id = of(both, noor)[0]!;
    const next = withResultGiven(both, id, bram);
    expect(of(next, bram)).toContain(id);
    const text = [code('Noor'), code('Bram'), code('Noor', { attempt: 2, day: '2026-05-15' })].join('\n'); // prettier-ignore
    expect(paste(next, text).notes).toEqual(['Nothing new: these 3 results were in it already.']);
    expect(of(withResultGiven(next, id, noor), noor)).toEqual(of(both, noor));
    expect(withResultGiven(both, 'r-none', bram)).toBe(both);
    expect(withResultGiven(both, id, 'p-none')).toBe(both);
  });
  test('a result given to a third person stays there when a join is undone', () => {
    const three = withThings(start, { 'p-3': { is: 'person', name: 'Cai', role: 'trainee' } });
    const id = of(three, noor).find((each) => each !== 'o-1' && (three.entries[each] as { attempt?: number }).attempt === 2)!; // prettier-ignore
    const book = withPutBack(withResultGiven(withPeopleJoined(three, noor, bram), id, 'p-3')).book;
    expect(of(book, 'p-3')).toEqual([id]);
    expect(of(book, noor)).toEqual(of(three, noor).filter((each) => each !== id));
  });
  test('one result taken out comes back alone', () => {
    const id = of(both, noor)[0]!;
    const { book, says } = withPutBack(withoutThing(both, id));
    expect(says).toBe('The result of Noor is back.');
    expect(of(book, noor)).toEqual(of(both, noor));
  });
});

describe('results that do not say which attempt they are', () => {
  const first = (signs: boolean) => code('Una', { day: undefined, attempt: undefined, answers: undefined, marks: [{ verdict: signs ? 'right' : 'wrong' }] } as never); // prettier-ignore
  const attempts = (book: ClassBook) => recordOfPerson(book, idNamed(book, 'Una'));
  const gots = (book: ClassBook) => [...attempts(book)!.first, ...attempts(book)!.again].map(({ got, result }) => [got, result.attempt]); // prettier-ignore
  test('stand as they were pasted, the second as attempt 2, whichever came first, and once', () => {
    for (const [one, two] of [[true, false], [false, true]] as const) {
      const { book } = paste(empty, [first(one), first(two)].join('\n'));
      expect(gots(book)).toEqual([[Number(one), 1], [Number(two), 2]]);
      expect(paste(book, [first(one), first(two)].join('\n')).book).toEqual(book);
      const apart = paste(paste(empty, first(one)).book, first(two)).book;
      expect(gots(apart)).toEqual(gots(book));
    }
  }); // prettier-ignore
  test('of the fault desk go by their days, pasted in whatever order', () => {
    const line = (points: number, day: string) => `Una: Case 26, house 0G4RJ8T: ${points} of 100, 20 min asked for, 15 needed, ${day}`; // prettier-ignore
    const { book } = paste(empty, [line(40, '2026-05-16'), line(70, '2026-05-15'), line(90, '2026-05-16')].join('\n')); // prettier-ignore
    expect(gots(book)).toEqual([[70, 1], [40, 2], [90, 3]]); // prettier-ignore
    expect(gots(paste(paste(empty, line(40, '2026-05-16')).book, line(70, '2026-05-15')).book)).toEqual([[70, 1], [40, 2]]); // prettier-ignore
  });
  test('and codes that say it keep it; of one day and attempt they stand as they were pasted', () => {
    for (const order of [[1, 0], [0, 1]] as const) {
      const two = [code('Una', { marks: [{ verdict: 'wrong' }] }), code('Una', { marks: [{ verdict: 'right' }], answers: '0001' })]; // prettier-ignore
      const { book } = paste(empty, order.map((i) => two[i]).join('\n'));
      expect(gots(book)).toEqual(order.map((i) => [i, 1]));
    }
  }); // prettier-ignore
});

describe('what an assessor wrote of a whole record', () => {
  const about = { ...freshRecord('distilling').about, trainee: 'Una', assessor: 'Ann', place: 'Still house', standard: 'SOP 12, issue 3', method: 'at work', conditions: 'night shift', validUntil: '1 May 2028' }; // prettier-ignore
  const record: ObservedRecord = { stage: 'distilling', about, seen: { 'heat-up': { outcome: 'alone', day: '2026-05-14', note: '' } } }; // prettier-ignore
  const start = withThings(empty, { 'p-1': { is: 'person', name: 'Una', role: 'trainee' } });
  test('stands in the book, goes through its file, and is told with its tasks', () => {
    const { book } = withSeen(start, 'p-1', record);
    expect(readBook(bookText(book))).toEqual({ book, problems: [] });
    const [sitting] = recordOfPerson(book, 'p-1')!.seen;
    expect(sitting!.about).toEqual({ stage: 'distilling', assessor: 'Ann', until: '1 May 2028', place: 'Still house', standard: 'SOP 12, issue 3', method: 'at work', conditions: 'night shift' }); // prettier-ignore
    expect(withSeen(book, 'p-1', record)).toEqual({ book, added: 0, known: 1 });
  });
  test('comes to what an older handbook kept without it, and two sites are two entries', () => {
    const bare = { ...record, about: { ...about, place: '', standard: '', method: '', conditions: '' } };
    const old = withSeen(start, 'p-1', bare).book;
    const { book } = withSeen(old, 'p-1', record);
    expect(entriesOfKind(book, 'seen')).toHaveLength(1);
    const other = withSeen(book, 'p-1', { ...record, about: { ...about, place: 'Wash house' } });
    expect(entriesOfKind(other.book, 'seen')).toHaveLength(2);
    expect(recordOfPerson(other.book, 'p-1')!.seen).toHaveLength(2);
  });
  test.each([['place', 3], ['standard', 'a\u202eb'], ['method', 'x'.repeat(161)], ['was', ['<b>']], ['was', 'p-1']])('%s that is hostile is no entry', (name, value) => {
    const { book } = withSeen(start, 'p-1', record);
    const [id, entry] = Object.entries(book.entries).find(([, { is }]) => is === 'seen')!;
    const read = readBook(JSON.stringify({ ...JSON.parse(bookText(book)), entries: { [id]: { ...entry, [name]: value } } }));
    expect(read).toMatchObject({ book: { entries: {} }, problems: [expect.any(String)] });
  }); // prettier-ignore
});

describe('a result whose version was given to somebody else', () => {
  const [liv, night] = ['Liv Dahlby', 'Liv Dahlby (night shift)'];
  const both = withThings(empty, {
    a: { is: 'person', name: liv, role: 'trainee' },
    b: { is: 'person', name: night, role: 'trainee' },
  });
  const list = `Una\nZoë\nBo\n${liv}\n${night}`;
  const take = (book: ClassBook, text: string) => withPasted(book, text, TODAY, () => undefined, () => list); // prettier-ignore
  test('is asked about and not put in; what is sure goes in beside it', () => {
    const { book, doubtful } = take(both, `${code(liv, { version: 5 })}\n${code(liv, { version: 4 })}`);
    expect(entriesOfKind(book, 'result').map(({ person, version }) => [person, version])).toEqual([['a', 4]]);
    expect(doubtful.map(whoseWords)).toEqual([
      'Version 5 of “Sheet 0abcdef” was given to Liv Dahlby (night shift), and the name on it is Liv Dahlby. Whose is it?',
    ]);
  });
  test.each([
    ['listed', night],
    ['named', liv],
  ])('is not asked about again once it is said: the %s', (_, name) => {
    const [{ found }] = take(both, code(liv, { version: 5 })).doubtful as [Doubtful];
    const { book, added } = putResults(both, [{ ...found, name }]);
    expect(added).toBe(1);
    const again = take(book, code(liv, { version: 5 }));
    expect([again.doubtful, again.notes]).toEqual([[], name === liv ? ['Nothing new: this result was in it already.'] : ['1 result is in the class book now.']]); // prettier-ignore
  });
  test('is taken without asking where the names are one, the version is nobody’s, or there is no list', () => {
    const joinedBook = withPeopleJoined(both, 'a', 'b');
    expect(take(joinedBook, code(liv, { version: 5 })).doubtful).toEqual([]);
    expect(take(both, code(liv, { version: 6 })).doubtful).toEqual([]);
    expect(paste(both, code(liv, { version: 5 })).doubtful).toEqual([]);
    expect(take(both, code('LIV  dahlby', { version: 4 })).doubtful).toEqual([]);
  });
});

describe('attempts at several versions of one sheet', () => {
  const sealed = (version: number, day: string, attempt = 1): FoundResult => ({
    name: 'Una',
    way: 'sealed',
    work: { kind: 'sheet', title: 'Week two', mark: '0abcdef', address: '', day },
    got: { day, attempt, version, signs: '1', answers: 'abcd', got: 1, of: 1, note: '' },
  });
  const attempts = (book: ClassBook) =>
    entriesOfKind(book, 'result')
      .map(({ version, attempt, said }) => [version, attempt, said])
      .sort();
  test('count by person and sheet: two sealed first ones are the first and the second', () => {
    const both = putResults(empty, [sealed(4, '2026-05-14'), sealed(5, '2026-05-15')]).book;
    expect(attempts(both)).toEqual([[4, 1, undefined], [5, 2, 1]]); // prettier-ignore
    expect(readBook(bookText(both))).toEqual({ book: both, problems: [] });
    expect(putResults(both, [sealed(5, '2026-05-15')])).toMatchObject({ added: 0, known: 1 });
  });
  test('come out the same in whatever order they are put in', () => {
    const later = putResults(empty, [sealed(5, '2026-05-15')]).book;
    expect(attempts(putResults(later, [sealed(4, '2026-05-14')]).book)).toEqual([[4, 1, undefined], [5, 2, 1]]); // prettier-ignore
  });
  test('of one that was joined to another are known by what they say', () => {
    const una = putResults(empty, [sealed(4, '2026-05-14'), sealed(5, '2026-05-15')]).book;
    const two = withThings(una, { x: { is: 'person', name: 'Una Marsh', role: 'trainee' } });
    const one = withPeopleJoined(two, idNamed(two, 'Una'), 'x');
    expect(putResults(one, [sealed(5, '2026-05-15')])).toMatchObject({ added: 0, known: 1 });
  });
  test('go on at the second version where its own machine counts them', () => {
    const una = (version: number, attempt: number, day: string) => code('Una', { version, attempt, day, answers: answersCode([`${version} ${attempt}`]) }); // prettier-ignore
    const { book } = paste(empty, [una(1, 1, '2026-05-14'), una(2, 1, '2026-05-15'), una(2, 2, '2026-05-16')].join('\n')); // prettier-ignore
    expect(attempts(book)).toEqual([[1, 1, undefined], [2, 2, 1], [2, 3, 2]]); // prettier-ignore
  });
});

describe('names typed at once', () => {
  test('stand once each, and one that stands twice is told', () => {
    const { book, says } = withNames(empty, 'Una, Liv Dahlby; Bo\nliv  dahlby', 'trainee');
    expect(peopleOf(book).map(({ name }) => name)).toEqual(['Bo', 'Liv Dahlby', 'Una']);
    expect(says).toBe('3 people were put in. Liv Dahlby stands twice: put in once; write something behind the name if they are two.'); // prettier-ignore
  });
  test('that are in the book already change nothing', () => {
    const { book } = withNames(empty, 'Una', 'trainee');
    expect(withNames(book, 'una, UNA', 'trainer')).toEqual({ book, says: 'In the book already: una, UNA.' });
  });
});
