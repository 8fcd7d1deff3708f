// A class book as text, for its file and the browser; and its strict reader, which tells what it cannot use.
import { isData, jsonIn } from '../../core/reading/data.ts';
import { recordByKind, list, number, oneOf, quietly, record, text, whole, written, type Reader } from '../../core/reading/given.ts'; // prettier-ignore
import { quotedGiven } from '../../core/quoted-given.ts';
import type { TaskOutcome } from '../observed/task.ts';
import { oneLine } from '../own/one-line.ts';
import { marksOfSigns, MOST_ATTEMPTS } from '../result.ts';
import { countings, roles, resultWays, workKinds, type ClassBook, type BookEntry } from './book.ts';

export const CLASS_FORMAT = 'malt-spirit-handbook/class-book';
const VERSION = 1; // raised when the text changes its meaning; the old one is read ever after
export const LONGEST_BOOK = 4_000_000; // characters that are read: a class of twelve over ten years takes about a tenth
const MOST = 20_000; // entries
const MOST_TOLD = 5; // entries that are told one by one
const ID = /^[a-z0-9-]{1,40}$/;
const BOOK_ID = /^[0-9a-z]{12}$/;
const DAY = /^\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01])$/;
const DAY_OR_NONE = new RegExp(`^$|${DAY.source}`);
const KIND = /^[a-z0-9-]{1,60}$/;
const ADDRESS =
  /^(?:(?:sheet|sheet\/own|sheet\/sealed|shift|shift\/[a-z-]+|faults|tasks|tasks\/[a-z-]+)\/(?:#[^\s"<>]{0,60000})?)?$/;
export const LONGEST_PERSON_NAME = 60;
export const LONGEST_BOOK_LINE = 160;
const seenOutcomes: readonly TaskOutcome[] = ['alone', 'prompted', 'not yet'];
const LAST_STAMP = 1e12;

export const bookText = (book: ClassBook): string =>
  JSON.stringify({ format: CLASS_FORMAT, version: VERSION, ...book });

const line = (most: number) => text(most, (given) => oneLine(given) === given);
const said = (most: number) => text(most, (given) => given !== '' && oneLine(given) === given);
const id = written(ID);
const day = written(DAY);
const dayOrNone = written(DAY_OR_NONE);
const name = said(LONGEST_PERSON_NAME);
const title = said(LONGEST_BOOK_LINE);
const words = line(LONGEST_BOOK_LINE);
const was = list(id, 20);

const stamp = whole(1, LAST_STAMP);
const gone = oneOf([true]);
/**
 * What each kind of entry has, each field with what it may be; then what it may have besides, since this form was first
 * written: left out where there is nothing, so that older handbooks read the file as before.
 */
const entry = recordByKind('is', {
  person: record({ stamp, name, role: oneOf(roles) }, { gone, into: id }),
  work: record(
    {
      stamp,
      kind: oneOf(workKinds),
      title,
      day,
      mark: written(/^(?:[0-9a-z]{7})?$/),
      address: written(ADDRESS),
      passMark: whole(0, 100),
      marks: list(number(0.01, 20), 60),
      kinds: list(list(written(KIND), 60), 99),
    },
    { gone },
  ),
  result: record(
    {
      stamp,
      person: id,
      work: id,
      day: dayOrNone,
      attempt: whole(1, MOST_ATTEMPTS),
      version: whole(0, 99),
      signs: text(60, (signs) => marksOfSigns(signs) !== undefined),
      answers: written(/^(?:[0-9a-z]{4})?$/),
      got: number(0, 100_000),
      of: number(0.01, 100_000),
      way: oneOf(resultWays),
      note: words,
    },
    { gone, was, minutes: whole(0, 1440), said: whole(1, MOST_ATTEMPTS) },
  ),
  standing: record(
    {
      stamp,
      person: id,
      outcome: title,
      day,
      until: dayOrNone,
      assessor: words,
      evidence: words,
    },
    { gone, was },
  ),
  seen: record(
    {
      stamp,
      person: id,
      stage: id,
      task: id,
      outcome: oneOf(seenOutcomes),
      day,
      assessor: words,
      until: words,
      note: words,
    },
    { gone, place: words, standard: words, method: words, conditions: words, was },
  ),
  told: record({ stamp, name, person: id, same: oneOf([true, false]) }, { gone, was }),
  settings: record({ stamp, name, counts: oneOf(countings), refresher: whole(0, 52) }, { gone }),
} satisfies { readonly [K in BookEntry['is']]: Reader<Omit<Extract<BookEntry, { readonly is: K }>, 'is'>> });

export interface BookRead {
  readonly book: ClassBook;
  /** What could not be used, in sentences; the text itself is to be set aside where there are some. */
  readonly problems: readonly string[];
}

/** Reads a class book: as much of it as can be used, and what could not; a sentence where it is none. */
export function readBook(text: string): BookRead | string {
  if (text.length > LONGEST_BOOK) return `This class book has ${text.length} characters, and at most ${LONGEST_BOOK} are read.`; // prettier-ignore
  const of = jsonIn(text);
  if (!isData(of)) return 'This is no class book, or it is damaged.';
  const { id, version, entries } = of;
  if (of['format'] !== CLASS_FORMAT || typeof id !== 'string' || !BOOK_ID.test(id)) return 'This is no class book, or it is damaged.'; // prettier-ignore
  if (version !== VERSION)
    return `This class book is of version ${quotedGiven(version)}; this handbook reads version ${VERSION}. Bring the handbook up to date, and open it again.`;
  if (!isData(entries)) return 'This is no class book, or it is damaged.'; // prettier-ignore
  const all = Object.entries(entries);
  const read: [string, BookEntry][] = [];
  const damaged: string[] = [];
  for (const [key, given] of all.slice(0, MOST)) {
    const one = ID.test(key) ? quietly<BookEntry>(entry, given) : undefined;
    if (one) read.push([key, one]);
    else damaged.push(key);
  }
  const problems = [
    ...damaged
      .slice(0, MOST_TOLD)
      .map((key) => `The entry “${quotedGiven(key)}” of the class book cannot be used.`),
    ...(damaged.length > MOST_TOLD ? [`Nor can ${damaged.length - MOST_TOLD} more.`] : []),
    ...(all.length > MOST ? [`The class book has ${all.length} entries; the first ${MOST} are read.`] : []),
  ];
  return { book: { id, entries: Object.fromEntries(read) }, problems };
}
