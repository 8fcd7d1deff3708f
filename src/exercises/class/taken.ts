// Results pasted into a class book, many at once: result codes, with or without a name before them, and lines of shifts.
import { shown } from '../../core/shown.ts';
import { oneLine } from '../own/one-line.ts';
import { readResult, scoreOf, signsOf, type Result } from '../result.ts';
import {
  idOf,
  peopleOf,
  sameName,
  withThings,
  worksOf,
  type ClassBook,
  type Got,
  type Thing,
  type Way,
} from './book.ts';
import { LONGEST_NAME } from './text.ts';

/** What is known of a sheet by the short name that a code carries. */
export type KnownSheet = { readonly title: string; readonly address: string };

const SHIFT =
  /^(?:(.{1,60}?):\s*)?(Shift \d{1,6}, [a-z][a-z ]{0,20} [0-9A-Z]{7}), [a-z][a-z ]{0,20} (\d{1,3}): (\d{1,3}) of 100, (\d{4}-\d{2}-\d{2})$/;
const NAMED = /^(.{1,60}?):\s+(\S+)$/;
const LONGEST = 400_000; // characters of what is pasted
const MOST_TOLD = 8;

interface Found {
  readonly name: string;
  readonly way: Way;
  readonly work: { readonly kind: 'sheet' | 'shift'; readonly title: string; readonly mark: string; readonly address: string; readonly day: string };
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

/** Puts what was found into the book: people and sheets that it has not got are added; a result that it has is not put in twice. */
export function put(book: ClassBook, found: readonly Found[]): { readonly book: ClassBook; readonly added: number; readonly known: number; readonly newPeople: readonly string[] } {
  const people = new Map(peopleOf(book).map(({ id, name }) => [sameName(name), id]));
  const works = worksOf(book);
  const byMark = new Map(works.filter(({ mark }) => mark !== '').map(({ mark, id }) => [mark, id]));
  const byTitle = new Map(works.filter(({ mark }) => mark === '').map(({ title, id }) => [title, id]));
  const things: Record<string, Thing> = {};
  const newPeople: string[] = [];
  let [added, known] = [0, 0];
  for (const { name, way, work, got } of found) {
    const same = sameName(name);
    let person = people.get(same);
    if (person === undefined) {
      person = idOf('person', same);
      things[person] = { is: 'person', name, role: 'trainee' };
      people.set(same, person);
      newPeople.push(name);
    }
    let set = work.mark === '' ? byTitle.get(work.title) : byMark.get(work.mark);
    if (set === undefined) {
      set = idOf('work', work.mark, work.mark === '' ? work.title : '');
      things[set] = { is: 'work', passMark: 0, marks: [], kinds: [], ...work };
      (work.mark === '' ? byTitle : byMark).set(work.mark === '' ? work.title : work.mark, set);
    }
    const id = idOf('result', person, set, got.version, got.attempt, got.day, got.signs, got.answers, got.got);
    const there = Object.hasOwn(book.entries, id) ? book.entries[id] : things[id];
    if (there && !('gone' in there)) known++;
    else {
      things[id] = { is: 'result', person, work: set, way, ...got };
      added++;
    }
  }
  return { book: withThings(book, things), added, known, newPeople };
} // prettier-ignore

function shiftIn(line: string): Found | string | undefined {
  const found = SHIFT.exec(line);
  if (!found) return undefined;
  const [, name, title, round, points, day] = found;
  if (name === undefined) return `“${shown(line)}” does not say whose it is: write the name and a colon before it.`;
  if (Number(points) > 100 || Number.isNaN(Date.parse(day!)) || Number(round) < 1) return `“${shown(line)}” is no line of a shift.`;
  return {
    name: oneLine(name),
    way: 'line',
    work: { kind: 'shift', title: title!, mark: '', address: 'shift/', day: day! },
    got: { day: day!, attempt: Math.min(35, Number(round)), version: 0, signs: '', answers: '', got: Number(points), of: 100, note: '' },
  };
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
    const shift = shiftIn(line);
    if (typeof shift === 'string') notes.push(shift);
    else if (shift) found.push(shift);
    else {
      const named = NAMED.exec(line);
      if (named) take(named[2]!, named[1]);
      else for (const code of line.split(/\s+/)) take(code);
    }
  }
  if (text.length > LONGEST) notes.push(`What was pasted has ${text.length} characters; the first ${LONGEST} are read.`);
  const { book: next, added, known, newPeople } = put(book, found);
  const told = notes.length > MOST_TOLD ? [...notes.slice(0, MOST_TOLD), `${notes.length - MOST_TOLD} more could not be taken.`] : notes;
  return {
    book: found.length === 0 ? book : next,
    notes: [
      ...(found.length > 0 ? [`${added} ${added === 1 ? 'result was' : 'results were'} taken${known > 0 ? `; ${known} stood in the book already` : ''}.`] : []),
      ...(newPeople.length > 0 ? [`New in the class: ${newPeople.slice(0, 20).join(', ')}${newPeople.length > 20 ? ` and ${newPeople.length - 20} more` : ''}.`] : []),
      ...told,
    ],
  };
} // prettier-ignore
