// Results pasted into a class book, many at once: result codes, with or without a name before them, and lines of shifts and of faults found.
import { shown } from '../../core/shown.ts';
import { oneLine } from '../own/one-line.ts';
import { readResult, scoreOf, signsOf, type Result } from '../result.ts';
import {
  allOf,
  idOf,
  sameName,
  withThings,
  worksOf,
  type ClassBook,
  type Got,
  type Thing,
  type Way,
} from './book.ts';
import { freeId, idByName } from './names.ts';
import { LONGEST_NAME } from './text.ts';

/** What is known of a sheet by the short name that a code carries. */
export type KnownSheet = { readonly title: string; readonly address: string };

const SHIFT =
  /^(?:(.{1,60}?):\s*)?(Shift \d{1,6}, [a-z][a-z ]{0,20} [0-9A-Z]{7}), [a-z][a-z ]{0,20} (\d{1,3}): (\d{1,3}) of 100, (\d{4}-\d{2}-\d{2})$/;
const CASE =
  /^(?:(.{1,60}?):\s*)?(Case (\d{1,6}), house [0-9A-Z]{7}): (\d{1,3}) of 100[,.] (\d{1,4} min asked for, \d{1,4} (?:needed|would have done)), (\d{4}-\d{2}-\d{2})$/;
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

/** Puts what was found into the book: people and sheets that it has not got are added; a result that it has is not put in twice. */
export function put(book: ClassBook, found: readonly Found[]): { readonly book: ClassBook; readonly added: number; readonly known: number; readonly newPeople: readonly string[] } {
  const people = idByName(book);
  const whole = (person: string, set: string, { version, attempt, day, signs, answers, got }: Found['got']) => [person, set, version, attempt, day, signs, answers, got] as const;
  const stood = new Set(allOf(book, 'result').map((each) => whole(each.person, each.work, each).join()));
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
      person = freeId(book, same);
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
    const all = whole(person, set, got);
    if (stood.has(all.join())) known++;
    else {
      stood.add(all.join());
      things[idOf('result', ...all)] = { is: 'result', person, work: set, way, ...got };
      added++;
    }
  }
  return { book: withThings(book, things), added, known, newPeople };
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
      note: shift ? ITS_WORD : `${more}, ${ITS_WORD}`,
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
