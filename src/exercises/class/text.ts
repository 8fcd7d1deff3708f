// A class book as text, for its file and the browser; and its strict reader, which tells what it cannot use.
import { shown } from '../../core/shown.ts';
import type { Outcome } from '../observed/task.ts';
import { oneLine } from '../own/one-line.ts';
import { marksOf, MOST_ATTEMPTS } from '../result.ts';
import { countings, roles, ways, workKinds, type ClassBook, type Entry } from './book.ts';

export const CLASS_FORMAT = 'malt-spirit-handbook/class-book';
const VERSION = 1; // raised when the text changes its meaning; the old one is read ever after
export const LONGEST_BOOK = 4_000_000; // characters that are read: a class of twelve over ten years takes about a tenth
const MOST = 20_000; // entries
const MOST_TOLD = 5; // entries that are told one by one
const ID = /^[a-z0-9-]{1,40}$/;
const BOOK_ID = /^[0-9a-z]{12}$/;
const DAY = /^\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01])$/;
const KIND = /^[a-z0-9-]{1,60}$/;
const ADDRESS =
  /^(?:(?:sheet|sheet\/own|sheet\/sealed|shift|shift\/[a-z-]+|faults|tasks|tasks\/[a-z-]+)\/(?:#[^\s"<>]{0,60000})?)?$/;
export const LONGEST_NAME = 60;
export const LONGEST_LINE = 160;
const seenOutcomes: readonly Outcome[] = ['alone', 'prompted', 'not yet'];
const LAST_STAMP = 1e12;

export const bookText = (book: ClassBook): string =>
  JSON.stringify({ format: CLASS_FORMAT, version: VERSION, ...book });

type Given = Readonly<Record<string, unknown>>;
const isLine = (given: unknown, most: number): given is string =>
  typeof given === 'string' && given.length <= most && oneLine(given) === given;
const isDay = (given: unknown): given is string => typeof given === 'string' && DAY.test(given);
const isDayOrNone = (given: unknown): given is string => given === '' || isDay(given);
const isNumber = (given: unknown, low: number, high: number): given is number =>
  typeof given === 'number' && given >= low && given <= high;
const isCount = (given: unknown, low: number, high: number): given is number =>
  isNumber(given, low, high) && Number.isInteger(given);
const isId = (given: unknown): given is string => typeof given === 'string' && ID.test(given);
const isIn = <T>(list: readonly T[], given: unknown): given is T => list.includes(given as T);
const isList = (given: unknown, most: number, each: (one: unknown) => boolean): given is readonly unknown[] =>
  Array.isArray(given) && given.length <= most && given.every(each);

/** What each kind of entry has, each field with what it may be. */
const fields: Readonly<Record<Entry['is'], Readonly<Record<string, (given: unknown) => boolean>>>> = {
  person: { name: (given) => isLine(given, LONGEST_NAME) && given !== '', role: (given) => isIn(roles, given) },
  work: {
    kind: (given) => isIn(workKinds, given),
    title: (given) => isLine(given, LONGEST_LINE) && given !== '',
    day: isDay,
    mark: (given) => typeof given === 'string' && /^(?:[0-9a-z]{7})?$/.test(given),
    address: (given) => typeof given === 'string' && ADDRESS.test(given),
    passMark: (given) => isCount(given, 0, 100),
    marks: (given) => isList(given, 60, (each) => isNumber(each, 0.01, 20)),
    kinds: (given) => isList(given, 99, (version) => isList(version, 60, (kind) => typeof kind === 'string' && KIND.test(kind))),
  },
  result: {
    person: isId,
    work: isId,
    day: isDayOrNone,
    attempt: (given) => isCount(given, 1, MOST_ATTEMPTS),
    version: (given) => isCount(given, 0, 99),
    signs: (given) => typeof given === 'string' && given.length <= 60 && marksOf(given) !== undefined,
    answers: (given) => typeof given === 'string' && /^(?:[0-9a-z]{4})?$/.test(given),
    got: (given) => isNumber(given, 0, 100_000),
    of: (given) => isNumber(given, 0.01, 100_000),
    way: (given) => isIn(ways, given),
    note: (given) => isLine(given, LONGEST_LINE),
  },
  standing: {
    person: isId,
    outcome: (given) => isLine(given, LONGEST_LINE) && given !== '',
    day: isDay,
    until: isDayOrNone,
    assessor: (given) => isLine(given, LONGEST_LINE),
    evidence: (given) => isLine(given, LONGEST_LINE),
  },
  seen: {
    person: isId,
    stage: isId,
    task: isId,
    outcome: (given) => isIn(seenOutcomes, given),
    day: isDay,
    assessor: (given) => isLine(given, LONGEST_LINE),
    until: (given) => isLine(given, LONGEST_LINE),
    note: (given) => isLine(given, LONGEST_LINE),
  },
  told: {
    name: (given) => isLine(given, LONGEST_NAME) && given !== '',
    person: isId,
    same: (given) => typeof given === 'boolean',
  },
  settings: {
    name: (given) => isLine(given, LONGEST_NAME) && given !== '',
    counts: (given) => isIn(countings, given),
    refresher: (given) => isCount(given, 0, 52),
  },
}; // prettier-ignore

const isWas = (given: unknown) => isList(given, 20, isId);
/** What an entry may have besides, since this form was first written: left out where there is nothing, so that older handbooks read the file as before. */
const besides: Readonly<Partial<Record<Entry['is'], Readonly<Record<string, (given: unknown) => boolean>>>>> = {
  person: { into: isId },
  result: { was: isWas, minutes: (given) => isCount(given, 0, 1440), said: (given) => isCount(given, 1, MOST_ATTEMPTS) },
  standing: { was: isWas },
  seen: Object.fromEntries([...(['place', 'standard', 'method', 'conditions'] as const).map((name) => [name, (given: unknown) => isLine(given, LONGEST_LINE)] as const), ['was', isWas]]),
  told: { was: isWas },
}; // prettier-ignore

/** One entry with its own fields and no others; undefined when any is not what it may be. */
function entryRead(given: unknown): Entry | undefined {
  const of = Object(given) as Given;
  const is = of['is'];
  if (typeof is !== 'string' || !Object.hasOwn(fields, is)) return undefined;
  const own = fields[is as Entry['is']];
  if (!Object.entries(own).every(([name, may]) => Object.hasOwn(of, name) && may(of[name]))) return undefined;
  if (!isCount(of['stamp'], 1, LAST_STAMP) || (of['gone'] !== undefined && of['gone'] !== true)) return undefined;
  const more = Object.entries(besides[is as Entry['is']] ?? {}).filter(([name]) => Object.hasOwn(of, name));
  if (!more.every(([name, may]) => may(of[name]))) return undefined;
  const kept = [...Object.keys(own), ...more.map(([name]) => name)].map((name) => [name, of[name]]);
  return { is, stamp: of['stamp'], ...(of['gone'] && { gone: true }), ...Object.fromEntries(kept) } as Entry;
} // prettier-ignore

export interface BookRead {
  readonly book: ClassBook;
  /** What could not be used, in sentences; the text itself is to be set aside where there are some. */
  readonly problems: readonly string[];
}

/** Reads a class book: as much of it as can be used, and what could not; a sentence where it is none. */
export function readBook(text: string): BookRead | string {
  if (text.length > LONGEST_BOOK) return `This class book has ${text.length} characters, and at most ${LONGEST_BOOK} are read.`; // prettier-ignore
  let of: Given;
  try {
    of = Object(JSON.parse(text)) as Given;
  } catch {
    return 'This is no class book, or it is damaged.';
  }
  const { id, version, entries } = of;
  if (of['format'] !== CLASS_FORMAT || typeof id !== 'string' || !BOOK_ID.test(id)) return 'This is no class book, or it is damaged.'; // prettier-ignore
  if (version !== VERSION)
    return `This class book is of version ${shown(version)}; this handbook reads version ${VERSION}. Bring the handbook up to date, and open it again.`;
  if (typeof entries !== 'object' || entries === null || Array.isArray(entries)) return 'This is no class book, or it is damaged.'; // prettier-ignore
  const all = Object.entries(entries);
  const read: [string, Entry][] = [];
  const damaged: string[] = [];
  for (const [key, given] of all.slice(0, MOST)) {
    const entry = ID.test(key) ? entryRead(given) : undefined;
    if (entry) read.push([key, entry]);
    else damaged.push(key);
  }
  const problems = [
    ...damaged
      .slice(0, MOST_TOLD)
      .map((key) => `The entry “${shown(key)}” of the class book cannot be used.`),
    ...(damaged.length > MOST_TOLD ? [`Nor can ${damaged.length - MOST_TOLD} more.`] : []),
    ...(all.length > MOST ? [`The class book has ${all.length} entries; the first ${MOST} are read.`] : []),
  ];
  return { book: { id, entries: Object.fromEntries(read) }, problems };
}
