// A class book: pasted results, two tabs, which result counts, what is confused, validity over years, and hostile texts.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { withPutBack, hasTakenOut } from '../../src/exercises/class/put-back.ts';
import {
  entriesOfKind,
  freshBook,
  joinedBooks,
  peopleOf,
  settingsOf,
  withoutThing,
  withThings,
  worksOf,
  type ClassBook,
  type Thing,
} from '../../src/exercises/class/book.ts';
import {
  matrixOn,
  monthsAfter,
  outcomesOf,
  standingsTable,
  standingOn,
  weeksBefore,
} from '../../src/exercises/class/competence.ts';
import {
  confusions,
  questionsOnMissed,
  tenMinutes,
  resultsUntold,
} from '../../src/exercises/class/confuses.ts';
import {
  alikeResults,
  countingResult,
  grid,
  resultsTable,
  resultScore,
} from '../../src/exercises/class/counts.ts';
import { withPasted } from '../../src/exercises/class/taken.ts';
import { bookText, LONGEST_BOOK, readBook } from '../../src/exercises/class/text.ts';
import { ownSheetText, readOwnSheet } from '../../src/exercises/own/own-text.ts';
import { answersCode, resultCode, type SheetResult } from '../../src/exercises/result.ts';
import { injections, nested, prototypeKeys } from '../hostile-texts.ts';
import promised from './promised-class-book.json' with { type: 'json' };

const TODAY = '2026-05-20';
const empty = freshBook('abcdef012345');
const none = () => undefined;
const right = { verdict: 'right' } as const;
const wrong = { verdict: 'wrong', family: 'percent' } as const;
const una: SheetResult = {
  sheet: '0abcdef',
  version: 1,
  name: 'Una Thornwath',
  marks: [right, wrong, right],
  day: '2026-05-14',
  attempt: 1,
  answers: answersCode(['1', '2', '3']),
};
const zoe: SheetResult = {
  ...una,
  name: 'Zoë Marsh',
  version: 2,
  marks: [right, wrong, { verdict: 'unit' }],
  answers: answersCode(['4']),
};
const pasted = (book: ClassBook, ...results: readonly SheetResult[]) =>
  withPasted(book, results.map(resultCode).join('\n'), TODAY, none);
const read = (text: string) => {
  const found = readBook(text);
  if (typeof found === 'string') throw new Error(found);
  return found;
};

describe('results pasted into a class book', () => {
  test('many at once, codes of both forms and lines of shifts', () => {
    const { day: _, attempt: __, answers: ___, ...old } = una;
    const text = [
      resultCode(una),
      resultCode(zoe),
      `Bo Hale: Shift 12, still 0AB12CD, charge 1: 85 of 100, 2026-05-15`,
      resultCode({ ...old, sheet: '1234567' }),
    ].join('\n');
    const { book, notes } = withPasted(empty, text, TODAY, (mark) =>
      mark === '0abcdef' ? { title: 'Week two', address: 'sheet/#sheet=1' } : undefined,
    );
    expect(notes).toEqual([
      '4 results are in the class book now.',
      'New in the class: Una Thornwath, Zoë Marsh, Bo Hale.',
    ]);
    expect(peopleOf(book).map(({ name }) => name)).toEqual(['Bo Hale', 'Una Thornwath', 'Zoë Marsh']);
    expect(worksOf(book).map(({ title, day }) => [title, day])).toEqual([
      ['Week two', '2026-05-14'],
      ['Shift 12, still 0AB12CD', '2026-05-15'],
      ['Sheet 1234567', TODAY],
    ]);
    const again = withPasted(book, text, TODAY, none);
    expect(again.notes).toEqual(['Nothing new: these 4 results were in it already.']);
    expect(entriesOfKind(again.book, 'result')).toHaveLength(4);
  });
  test('a name before a code counts; what has no name or is no code is told', () => {
    const code = resultCode({ ...una, name: '' });
    const { book, notes } = withPasted(
      empty,
      `${code}\nUna: ${code}\nnonsense\nShift 12, still 0AB12CD, charge 1: 85 of 100, 2026-05-15`,
      TODAY,
      none,
    );
    expect(peopleOf(book).map(({ name }) => name)).toEqual(['Una']);
    expect(notes).toHaveLength(5);
    expect(notes.slice(2).join(' ')).toMatch(
      /has no name.*does not say whose.*1 line without a code was passed over/,
    );
  });
  test('one name in two ways of Unicode or capitals is one person', () => {
    const { book } = pasted(empty, zoe, { ...zoe, name: 'zoe\u0308  marsh'.replace('  ', ' '), attempt: 2 });
    expect(peopleOf(book)).toHaveLength(1);
  });
  test('alike answers and versions are told', () => {
    const { book } = pasted(empty, una, { ...zoe, version: 1, answers: una.answers! });
    expect(alikeResults(book)).toHaveLength(2);
  });
  test('hostile texts change nothing and are told in bounds', () => {
    for (const text of [
      ...injections,
      ...prototypeKeys,
      nested(50_000),
      '\u202e'.repeat(1000),
      'x: '.repeat(100_000),
    ]) {
      const taken = withPasted(empty, text, TODAY, none);
      expect(taken.book).toEqual(empty);
      expect(taken.notes.length).toBeLessThan(14);
    }
  });
});

describe('which result counts', () => {
  const { book } = pasted(
    empty,
    una,
    { ...una, attempt: 2, day: '2026-05-15', marks: [wrong, wrong, wrong] },
    { ...una, attempt: 3, day: '2026-05-16', marks: [right, right, wrong] },
  );
  const all = entriesOfKind(book, 'result');
  const work = worksOf(book)[0]!;
  test('is the latest, the best or the first, as the trainer says', () => {
    expect(countingResult(all, work, 'latest')!.attempt).toBe(3);
    expect(countingResult(all, work, 'first')!.attempt).toBe(1);
    expect(countingResult(all, work, 'best')!.attempt).toBe(1); // two of three both times: the earlier
    expect(settingsOf(book).counts).toBe('latest');
    expect(grid(book)[0]![0]!.scored).toEqual({ got: 2, of: 3, share: 2 / 3 });
  });
  test('marks of the questions and the pass mark are those of the sheet', () => {
    // By hand: right 2, wrong 0 of 1, right 3 of 6: 5; 70 % of 6 is 4.2.
    expect(resultScore(all[0]!, { marks: [2, 1, 3], passMark: 70 })).toEqual({
      got: 5,
      of: 6,
      share: 5 / 6,
      isPass: true,
    });
    expect(resultScore(all[0]!, { marks: [2, 1], passMark: 0 })).toEqual({ got: 2, of: 3, share: 2 / 3 });
  });
  test('goes to a spreadsheet with its accents, and no cell is a formula', () => {
    const { book: two } = pasted(empty, zoe, { ...una, name: '=1+1' });
    const csv = resultsTable(two);
    expect(csv.startsWith('\ufeffName,What,Sheet,Day,')).toBe(true);
    expect(csv).toContain('Zoë Marsh,Sheet 0abcdef,0abcdef,2026-05-14,1,2,1.5,3,');
    expect(csv).toContain("\r\n'=1+1,");
  });
});

describe('two copies of one book', () => {
  const thing = fc.oneof(
    fc.record({
      is: fc.constant('person' as const),
      name: fc.constantFrom('Una', 'Ada', 'Bo'),
      role: fc.constantFrom('trainee' as const, 'trainer' as const),
    }),
    fc.record({
      is: fc.constant('standing' as const),
      person: fc.constantFrom('p-1', 'p-2'),
      outcome: fc.constantFrom('mashing', 'milling'),
      day: fc.constant('2026-05-14'),
      until: fc.constant(''),
      assessor: fc.constant(''),
      evidence: fc.constantFrom('a', 'b'),
    }),
  );
  const change = fc.oneof(
    fc.tuple(fc.constantFrom('p-1', 'p-2', 's-1', 's-2'), thing).map(
      ([id, what]) =>
        (book: ClassBook) =>
          withThings(book, { [id]: what as Thing }),
    ),
    fc.constantFrom('p-1', 'p-2', 's-1').map((id) => (book: ClassBook) => withoutThing(book, id)),
  );
  const changes = fc.array(change, { maxLength: 8 });
  const made = (from: ClassBook, done: readonly ((book: ClassBook) => ClassBook)[]) =>
    done.reduce((book, each) => each(book), from);
  test('come to the same, in whatever order they hear of each other, and hearing twice changes nothing', () => {
    fc.assert(
      fc.property(changes, changes, changes, (before, here, there) => {
        const from = made(empty, before);
        const [one, other] = [made(from, here), made(from, there)];
        const both = joinedBooks(one, other);
        expect(joinedBooks(other, one)).toEqual(both);
        expect(joinedBooks(both, other)).toEqual(both);
        expect(joinedBooks(joinedBooks(from, other), one)).toEqual(both);
        expect(new Set(Object.keys(both.entries))).toEqual(
          new Set([...Object.keys(one.entries), ...Object.keys(other.entries)]),
        );
      }),
      { numRuns: 300 },
    );
  });
  test('what two tabs put in at once is there once, and results of both are kept', () => {
    const [one, other] = [pasted(empty, una).book, pasted(empty, una, zoe).book];
    const both = joinedBooks(one, other);
    expect(peopleOf(both)).toHaveLength(2);
    expect(entriesOfKind(both, 'result')).toHaveLength(2);
  });
  test('what was taken out stays out, and can be put back with all that went with it', () => {
    const { book } = pasted(empty, una, zoe);
    const person = peopleOf(book).find(({ name }) => name === 'Zoë Marsh')!.id;
    const without = withoutThing(book, person);
    expect(entriesOfKind(without, 'result')).toHaveLength(1);
    expect(peopleOf(joinedBooks(without, book))).toHaveLength(1);
    expect(hasTakenOut(without)).toBe(true);
    expect(entriesOfKind(withPutBack(without).book, 'result')).toHaveLength(2);
    expect(peopleOf(withPutBack(without).book)).toHaveLength(2);
  });
});

describe('what the class confuses', () => {
  const { book: raw } = pasted(empty, una, zoe);
  const work = worksOf(raw)[0]!;
  const kinds = ['strike-water', 'pure-alcohol', 'grist-split'];
  const book = withThings(raw, { [work.id]: { ...work, kinds: [kinds, kinds] } });
  test('is the kind most missed, with those who missed it and by which mistake', () => {
    // By hand: pure-alcohol missed by both, two points of two; grist-split half a point by Zoë; strike-water by nobody.
    expect(confusions(book)).toEqual([
      {
        kind: 'pure-alcohol',
        asked: 2,
        missed: 2,
        blank: 0,
        blankBy: [],
        people: ['Una Thornwath', 'Zoë Marsh'],
        families: [['percent', 2]],
      },
      {
        kind: 'grist-split',
        asked: 2,
        missed: 0.5,
        blank: 0,
        blankBy: [],
        people: ['Zoë Marsh'],
        families: [],
      },
    ]);
    expect(confusions(book, { from: '2026-05-15' })).toEqual([]);
    expect(resultsUntold(raw)).toBe(2);
    expect(resultsUntold(book)).toBe(0);
  });
  test('gives six questions that are a sheet, and ten minutes without a gap', () => {
    for (const some of [['a'], ['a', 'b'], ['a', 'b', 'c', 'd']]) {
      const six = questionsOnMissed(some, 5, 'six-1');
      expect(six.items).toHaveLength(6);
      expect(new Set(six.items.map(({ kind }) => kind)).size).toBe(some.length);
      expect(readOwnSheet(ownSheetText(six))).toEqual(six);
    }
    expect(tenMinutes[0]![0]).toBe(0);
    expect(tenMinutes.at(-1)![1]).toBe(10);
    tenMinutes.slice(1).forEach(([from], i) => expect(from).toBe(tenMinutes[i]![1]));
  });
});

describe('the matrix of competence', () => {
  test('days and months are those of the calendar', () => {
    // By hand: eight weeks are 56 days; from 1 March back, 2028 being a leap year, 29 + 27 days lead to 5 January.
    expect(weeksBefore('2028-03-01', 8)).toBe('2028-01-05');
    expect(monthsAfter('2026-01-31', 1)).toBe('2026-02-28');
    expect(monthsAfter('2027-11-30', 3)).toBe('2028-02-29');
    expect(monthsAfter('2026-05-14', 36)).toBe('2029-05-14');
  });
  test.each([
    ['2026-07-04', 'valid'],
    ['2026-07-05', 'refresher due'], // eight weeks before 30 August: 26 days of August back to the 4th, 30 more
    ['2026-08-30', 'refresher due'],
    ['2026-08-31', 'expired'],
  ])('on %s it is %s', (day, state) => {
    expect(standingOn({ until: '2026-08-30' }, day, 8)).toBe(state);
  });
  test('without an end it is valid, and without a word there is none', () => {
    expect(standingOn({ until: '' }, '2099-01-01', 8)).toBe('valid');
    expect(standingOn(undefined, '2026-01-01', 8)).toBe('none');
  });
  test('over years: each day has what was known then', () => {
    const standing = (day: string, until: string) =>
      ({
        is: 'standing',
        person: 'p-1',
        outcome: 'distilling',
        day,
        until,
        assessor: 'Ann',
        evidence: '',
      }) as const;
    const book = withThings(empty, {
      'p-1': { is: 'person', name: 'Zoë', role: 'trainee' },
      's-1': standing('2024-03-01', '2025-03-01'),
      's-2': standing('2026-02-01', '2028-02-01'),
      's-3': { ...standing('2026-02-01', ''), outcome: '-lifting' },
    });
    expect(outcomesOf(book)).toEqual(['distilling', '-lifting']);
    const on = (day: string) => matrixOn(book, day)[0]!.map(({ state }) => state);
    expect(on('2024-02-29')).toEqual(['none', 'none']);
    expect(on('2024-06-01')).toEqual(['valid', 'none']);
    expect(on('2025-02-01')).toEqual(['refresher due', 'none']);
    expect(on('2025-09-01')).toEqual(['expired', 'none']);
    expect(on('2027-01-01')).toEqual(['valid', 'valid']);
    const csv = standingsTable(book, '2027-01-01');
    expect(csv).toContain("Zoë,trainee,'-lifting,2026-02-01,,,valid,Ann,");
    expect(csv.split('\r\n')).toHaveLength(5);
  });
});

describe('the text of a class book', () => {
  test('goes out and comes back', () => {
    const { book } = pasted(empty, una, zoe);
    const out = withoutThing(book, peopleOf(book)[0]!.id);
    expect(read(bookText(out))).toEqual({ book: out, problems: [] });
  });
  test('of the first form is read ever after', () => {
    const { book, problems } = read(JSON.stringify(promised));
    expect(problems).toEqual([]);
    expect(peopleOf(book).map(({ name }) => name)).toEqual(['Una Thornwath', 'Zoë Marsh']);
    expect(grid(book)[0]![0]!.scored).toEqual({ got: 2, of: 3, share: 2 / 3, isPass: false });
    expect(matrixOn(book, '2026-06-01')[0]!.map(({ outcome, state }) => [outcome, state])).toEqual([['mashing', 'valid']]);
    expect(book.entries['o-1']).toMatchObject({ is: 'seen', outcome: 'prompted', day: '2026-05-17' });
    expect(entriesOfKind(withPutBack(book).book, 'seen').find(({ id }) => id === 'o-2')).toMatchObject({ person: 'p-joined', standard: 'Procedure 12, issue 3' });
    expect(book.entries['t-1']).toMatchObject({ is: 'told', name: 'Zoe Marsh', same: true });
  });
  test('what cannot be used is told, and the rest is in use', () => {
    const whole = JSON.parse(bookText(pasted(empty, una).book));
    const { book, problems } = read(JSON.stringify({ ...whole, entries: { ...whole.entries, 'p-9': { is: 'person', stamp: 1, name: '<b>\u202e', role: 'trainee' }, '<b>': {}, 'w-9': { is: 'work' } } }));
    expect(entriesOfKind(book, 'result')).toHaveLength(1);
    expect(problems).toHaveLength(3);
  });
  test.each([
    ['an address that is a script', { is: 'work', stamp: 1, kind: 'sheet', title: 'a', day: TODAY, mark: '', address: 'javascript:alert(1)', passMark: 0, marks: [], kinds: [] }],
    ['an address of another site', { is: 'work', stamp: 1, kind: 'sheet', title: 'a', day: TODAY, mark: '', address: '//example.org/', passMark: 0, marks: [], kinds: [] }],
    ['a stamp without end', { is: 'person', stamp: 1e300, name: 'Una', role: 'trainee' }],
    ['a stamp of none', { is: 'person', name: 'Una', role: 'trainee' }],
    ['signs that stand for nothing', { is: 'result', stamp: 1, person: 'p', work: 'w', day: '', attempt: 1, version: 1, signs: '9', answers: '', got: 1, of: 1, way: 'code', note: '' }],
    ['nought to be had', { is: 'result', stamp: 1, person: 'p', work: 'w', day: '', attempt: 1, version: 1, signs: '', answers: '', got: 1, of: 0, way: 'code', note: '' }],
    ['a kind of thing that is a key of the prototype', { is: 'constructor', stamp: 1 }],
  ])('%s is no entry', (_, entry) => {
    const { book, problems } = read(JSON.stringify({ ...JSON.parse(bookText(empty)), entries: { 'x-1': entry } }));
    expect(book.entries).toEqual({});
    expect(problems).toHaveLength(1);
  });
  test('that is none, or without end, is refused in a sentence', () => {
    const whole = JSON.parse(bookText(empty));
    const texts = ['', 'null', '[]', '3', JSON.stringify({ ...whole, version: 2 }), JSON.stringify({ ...whole, id: '<b>' }), JSON.stringify({ ...whole, entries: [] }), ...injections, ...prototypeKeys, nested(5000), 'x'.repeat(LONGEST_BOOK + 1)];
    for (const text of texts) expect(typeof readBook(text)).toBe('string');
  });
  test('an entry called __proto__ or constructor is an entry as any other, or none', () => {
    const text = bookText(empty).replace('"entries":{}', '"entries":{"__proto__":{"is":"person"},"constructor":{"is":"person","stamp":1,"name":"Una","role":"trainee"}}');
    const { book } = read(text);
    expect(peopleOf(book)).toHaveLength(1);
    expect(joinedBooks(empty, book)).toEqual(book);
    expect(({} as { is?: string }).is).toBeUndefined();
  });
  test('of a class of twelve over ten years is far below what is read', () => {
    let book = empty;
    for (let year = 2026; year < 2036; year++)
      for (let sheet = 0; sheet < 20; sheet++) {
        const results = Array.from({ length: 12 }, (_, i): SheetResult => ({ sheet: `${year}${String(sheet).padStart(3, '0')}`, version: i + 1, name: `Trainee number ${i}`, marks: Array.from({ length: 12 }, () => right), day: `${year}-05-14`, attempt: 1, answers: 'abcd' }));
        book = pasted(book, ...results).book;
      }
    expect(entriesOfKind(book, 'result')).toHaveLength(2400);
    expect(bookText(book).length).toBeLessThan(LONGEST_BOOK / 4);
  });
}); // prettier-ignore
