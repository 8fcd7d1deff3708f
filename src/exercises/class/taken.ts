// Results pasted into a class book, many at once: result codes, with or without a name before them, and lines of shifts and of faults found.
import { shown } from '../../core/shown.ts';
import { oneLine } from '../own/one-line.ts';
import { MOST_ATTEMPTS, readResult, scoreOf, signsOf, type Result } from '../result.ts';
import {
  allOf,
  idOf,
  lastStamp,
  sameName,
  withThings,
  worksOf,
  type ClassBook,
  type Got,
  type Thing,
  type Way,
  type WorkKind,
} from './book.ts';
import { freeId, idByName } from './names.ts';
import { LONGEST_NAME } from './text.ts';

/** What is known of a sheet by the short name that a code carries. */
export type KnownSheet = { readonly title: string; readonly address: string };

const SHIFT =
  /^(?:(.{1,60}?):\s*)?(Shift \d{1,6}, [a-z][a-z ]{0,20} [0-9A-Z]{7}), [a-z][a-z ]{0,20} (\d{1,3}): (\d{1,3}) of 100, (\d{4}-\d{2}-\d{2})$/;
const CASE =
  /^(?:(.{1,60}?):\s*)?(Case (\d{1,6}), house [0-9A-Z]{7}): (\d{1,3}) of 100[,.] (\d{1,4} min asked for, \d{1,4} (?:needed|would have done)(?:; named “[^“”;]{1,60}” \((?:right|wrong)\))?(?:; a dangerous act first)?(?:; second go or later)?), (\d{4}-\d{2}-\d{2})$/;
/** What was meant as such a line, whole or not. */
const MEANT = /(?:^|[:\s])(?:Shift|Case) \d|\d of 100\b/;
const CODE_LIKE = /^[0-9a-z]{2,7}-\S+$/;
const ITS_WORD = 'as the trainee’s own machine says';
const NAMED = /^(.{1,60}?):\s+(\S+)$/;
const LONGEST = 400_000; // characters of what is pasted
const MOST_TOLD = 8;

interface Found {
  readonly name: string;
  readonly way: Way;
  readonly work: { readonly kind: 'sheet' | 'shift' | 'other'; readonly title: string; readonly mark: string; readonly address: string; readonly day: string };
  readonly got: Omit<Got, 'is' | 'person' | 'work' | 'way'>;
} // prettier-ignore

/** A result as an entry of the book has it. */
export const gotOf = (result: Result): Found['got'] => ({
  day: result.day ?? '',
  attempt: result.attempt ?? 1,
  version: result.version,
  signs: signsOf(result.marks),
  answers: result.answers ?? '',
  got: scoreOf(result),
  of: result.marks.length,
  note: '',
});

/** Whether a result says itself which attempt it is: codes of the first form, which have no day, and lines of the fault desk do not. */
const saysAttempt = ({ way, day }: Pick<Got, 'way' | 'day'>, kind: WorkKind) =>
  way === 'code' ? day !== '' : way !== 'line' || kind === 'shift';

/** A result that stands in the book, and whether it came in just now. */
interface Standing {
  readonly id: string;
  readonly got: Got;
  readonly stamp: number;
  readonly isFresh: boolean;
}
/** Results of one person for one thing, each that does not say its attempt numbered after those before it: by day, and of one day as they came. */
function numbered(results: readonly Standing[], kind: WorkKind): Record<string, Got> {
  const things: Record<string, Got> = {};
  let before = 0;
  const inOrder = (a: Standing, b: Standing) =>
    Number(a.isFresh) - Number(b.isFresh) || (a.isFresh ? 0 : a.got.attempt - b.got.attempt) || a.stamp - b.stamp;
  const sorted = [...results].sort((a, b) => (a.got.day < b.got.day ? -1 : a.got.day > b.got.day ? 1 : inOrder(a, b)));
  for (const { id, got } of sorted) {
    const attempt = saysAttempt(got, kind) ? got.attempt : Math.min(MOST_ATTEMPTS, before + 1);
    if (attempt !== got.attempt) things[id] = { ...got, attempt };
    before = Math.max(before, attempt);
  }
  return things;
} // prettier-ignore

/** Puts what was found into the book in its order: people and sheets that it has not got are added; a result that it has is not put in twice. */
export function put(book: ClassBook, found: readonly Found[]): { readonly book: ClassBook; readonly added: number; readonly known: number; readonly newPeople: readonly string[] } {
  const people = idByName(book);
  const works = worksOf(book);
  const kindAt = new Map(works.map(({ id, kind }) => [id, kind]));
  /** What makes a result that result; its attempt only where it says that itself. */
  const whole = (person: string, set: string, way: Way, { version, attempt, day, signs, answers, got }: Found['got']) =>
    [person, set, version, saysAttempt({ way, day }, kindAt.get(set) ?? 'other') ? attempt : 1, day, signs, answers, got] as const;
  const stood = new Set(allOf(book, 'result').map((each) => whole(each.person, each.work, each.way, each).join()));
  const byMark = new Map(works.filter(({ mark }) => mark !== '').map(({ mark, id }) => [mark, id]));
  const byTitle = new Map(works.filter(({ mark }) => mark === '').map(({ title, id }) => [title, id]));
  const things: Record<string, Thing> = {};
  const newPeople: string[] = [];
  const fresh: [string, Got][] = [];
  let [added, known] = [0, 0];
  for (const { name, way, work, got } of found) {
    const same = sameName(name);
    let person = people.get(same);
    if (person === undefined) {
      person = freeId(book, same);
      things[person] = { is: 'person', name, role: 'trainee' };
      people.set(same, person);
      newPeople.push(name);
    }
    let set = work.mark === '' ? byTitle.get(work.title) : byMark.get(work.mark);
    if (set === undefined) {
      set = idOf('work', work.mark, work.mark === '' ? work.title : '');
      things[set] = { is: 'work', passMark: 0, marks: [], kinds: [], ...work };
      kindAt.set(set, work.kind);
      (work.mark === '' ? byTitle : byMark).set(work.mark === '' ? work.title : work.mark, set);
    }
    const all = whole(person, set, way, got);
    const id = idOf('result', ...all);
    const there = Object.hasOwn(book.entries, id) ? book.entries[id] : undefined;
    // What was given to somebody else is known as well.
    if (stood.has(all.join()) || (there !== undefined && !there.gone)) known++;
    else {
      stood.add(all.join());
      fresh.push([id, { is: 'result', person, work: set, way, ...got }]);
      added++;
    }
  }
  // Each has a stamp of its own, so that those of one day stand as they were pasted.
  const put = withThings(book, things);
  let stamp = lastStamp(put);
  const next = { ...put, entries: { ...put.entries, ...Object.fromEntries(fresh.map(([id, got]) => [id, { ...got, stamp: ++stamp }])) } };
  const isFresh = new Set(fresh.map(([id]) => id));
  const touched = new Set(fresh.map(([, { person, work }]) => `${person} ${work}`));
  const cells = new Map<string, Standing[]>();
  for (const { id, stamp, ...got } of allOf(next, 'result')) {
    const cell = `${got.person} ${got.work}`;
    if (touched.has(cell)) cells.set(cell, [...(cells.get(cell) ?? []), { id, got, stamp, isFresh: isFresh.has(id) }]);
  }
  const renumbered = Object.assign({}, ...[...cells.values()].map((of) => numbered(of, kindAt.get(of[0]!.got.work) ?? 'other'))) as Record<string, Got>;
  const entries = Object.fromEntries(Object.entries(renumbered).map(([id, got]) => [id, { ...got, stamp: isFresh.has(id) ? next.entries[id]!.stamp : ++stamp }]));
  return { book: { ...next, entries: { ...next.entries, ...entries } }, added, known, newPeople };
} // prettier-ignore

/** The line of a shift or of a case at the fault desk; a sentence where it is damaged or nobody's, undefined where it is neither. */
function lineIn(line: string): Found | string | undefined {
  if (!MEANT.test(line)) return undefined;
  const shift = SHIFT.exec(line);
  const found = shift ?? CASE.exec(line);
  const [, name, title, number, points, more, last] = found ?? [];
  const day = shift ? more : last;
  if (!found || Number(points) > 100 || Number.isNaN(Date.parse(day!)) || Number(number) < 1)
    return `“${shown(line)}” is no whole line of a shift or a case; copy it once more, on one line.`;
  if (name === undefined || oneLine(name) === '') return `“${shown(line)}” does not say whose it is: write the name and a colon before it.`;
  return {
    name: oneLine(name),
    way: 'line',
    work: { kind: shift ? 'shift' : 'other', title: title!, mark: '', address: shift ? 'shift/' : `faults/#fault=${number}`, day: day! },
    got: {
      day: day!, attempt: shift ? Math.min(35, Number(number)) : 1, version: 0, signs: '', answers: '', got: Number(points), of: 100,
      note: shift ? ITS_WORD : more!.includes('; named ') ? more! : `${more}, ${ITS_WORD}`, // a note has at most 160 characters
    },
  };
} // prettier-ignore

/** What came of putting results in, in a sentence. */
export function takenWords(added: number, known: number): string {
  const results = (count: number) => `${count} ${count === 1 ? 'result' : 'results'}`;
  if (added === 0) return `Nothing new: ${known === 1 ? 'this result' : `these ${results(known)}`} ${known === 1 ? 'was' : 'were'} in it already.`;
  return `${results(added)} ${added === 1 ? 'is' : 'are'} in the class book now${known > 0 ? `; ${known} stood in it already` : ''}.`;
} // prettier-ignore

/** Takes what was pasted; says what was taken and what was not. */
export function withPasted(book: ClassBook, text: string, today: string, sheetOf: (mark: string) => KnownSheet | undefined): { readonly book: ClassBook; readonly notes: readonly string[] } {
  const notes: string[] = [];
  const found: Found[] = [];
  const take = (code: string, named?: string) => {
    const result = readResult(code);
    if (typeof result === 'string') return void notes.push(result);
    const name = oneLine(named ?? result.name).slice(0, LONGEST_NAME).trim();
    if (name === '') return void notes.push(`“${shown(code)}” has no name: write the name, a colon and a space before it.`);
    const known = sheetOf(result.sheet);
    found.push({
      name,
      way: 'code',
      work: { kind: 'sheet', title: known?.title || `Sheet ${result.sheet}`, mark: result.sheet, address: known?.address ?? '', day: result.day ?? today },
      got: gotOf(result),
    });
  };
  for (const line of text.slice(0, LONGEST).split('\n').map((each) => each.trim()).filter(Boolean)) {
    const told = lineIn(line);
    if (typeof told === 'string') notes.push(told);
    else if (told) found.push(told);
    else {
      const named = NAMED.exec(line);
      const words = line.split(/\s+/);
      const codes = words.filter((each) => CODE_LIKE.test(each));
      if (named) take(named[2]!, named[1]);
      else if (codes.length === 0) take(line);
      else {
        for (const code of codes) take(code);
        const beside = words.filter((each) => !codes.includes(each)).join(' ');
        if (beside !== '') notes.push(`“${shown(beside)}” stands beside a code and was not read: a name before a code needs a colon.`);
      }
    }
  }
  if (text.length > LONGEST) notes.push(`What was pasted has ${text.length} characters; the first ${LONGEST} are read.`);
  const { book: next, added, known, newPeople } = put(book, found);
  const told = notes.length > MOST_TOLD ? [...notes.slice(0, MOST_TOLD), `${notes.length - MOST_TOLD} more could not be taken.`] : notes;
  return {
    book: found.length === 0 ? book : next,
    notes: [
      ...(found.length > 0 ? [takenWords(added, known)] : []),
      ...(newPeople.length > 0 ? [`New in the class: ${newPeople.slice(0, 20).join(', ')}${newPeople.length > 20 ? ` and ${newPeople.length - 20} more` : ''}.`] : []),
      ...told,
    ],
  };
} // prettier-ignore
