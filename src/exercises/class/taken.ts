// Results pasted into a class book, many at once: result codes, with or without a name before them, and lines of shifts and of faults found.
import { quotedGiven } from '../../core/quoted-given.ts';
import { oneLine } from '../own/one-line.ts';
import { readResult } from '../result.ts';
import type { ClassBook } from './book.ts';
import { entryOfResult, putResults, takenWords, type FoundResult } from './put-results.ts';
import { LONGEST_PERSON_NAME } from './text.ts';
import { doubtsIn, type Doubtful } from './whose.ts';

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
const MOST_PIECES = 12; // lines into which a mail breaks a code of at most a thousand signs

/** The line of a shift or of a case at the fault desk; a sentence where it is damaged or nobody's, undefined where it is neither. */
function lineIn(line: string): FoundResult | string | undefined {
  if (!MEANT.test(line)) return undefined;
  const shift = SHIFT.exec(line);
  const found = shift ?? CASE.exec(line);
  const [, name, title, number, points, more, last] = found ?? [];
  const day = shift ? more : last;
  if (!found || Number(points) > 100 || Number.isNaN(Date.parse(day!)) || Number(number) < 1)
    return `“${quotedGiven(line)}” is no whole line of a shift or a case; copy it once more, on one line.`;
  if (name === undefined || oneLine(name) === '') return `“${quotedGiven(line)}” does not say whose it is: write the name and a colon before it.`;
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

/** The lines of what was pasted; a code that a mail broke stands on one where that gives a sound one. */
function linesIn(text: string): readonly string[] {
  const lines = text.split('\n').map((each) => each.replace(/^[>\s]+/, '').trim()).filter(Boolean);
  for (let i = 0; i + 1 < lines.length; i++) {
    const begun = /(?:^|\s)([0-9a-z]{2,7}-\S*)$/.exec(lines[i]!)?.[1];
    if (begun === undefined || typeof readResult(begun) !== 'string') continue;
    let joined = begun;
    for (let pieces = 1; pieces <= MOST_PIECES && i + pieces < lines.length; pieces++) {
      const [first = '', ...others] = lines[i + pieces]!.split(/\s+/);
      joined += first;
      if (typeof readResult(joined) !== 'string') {
        lines.splice(i, pieces + 1, lines[i]! + joined.slice(begun.length), ...(others.length > 0 ? [others.join(' ')] : []));
        break;
      }
      if (others.length > 0) break;
    }
  }
  return lines;
} // prettier-ignore

/** Takes what was pasted; says what was taken and what was not, and whose it is to be asked by the lists of who gets which version. */
export function withPasted(
  book: ClassBook,
  text: string,
  today: string,
  sheetOf: (mark: string) => KnownSheet | undefined,
  listOf: (mark: string) => string = () => '',
): { readonly book: ClassBook; readonly notes: readonly string[]; readonly doubtful: readonly Doubtful[] } {
  const notes: string[] = [];
  const found: FoundResult[] = [];
  const take = (code: string, named?: string) => {
    const result = readResult(code);
    if (typeof result === 'string') return void notes.push(result);
    const name = oneLine(named ?? result.name).slice(0, LONGEST_PERSON_NAME).trim();
    if (name === '') return void notes.push(`“${quotedGiven(code)}” has no name: write the name, a colon and a space before it.`);
    const known = sheetOf(result.sheet);
    found.push({
      name,
      way: 'code',
      work: { kind: 'sheet', title: known?.title || `Sheet ${result.sheet}`, mark: result.sheet, address: known?.address ?? '', day: result.day ?? today },
      got: entryOfResult(result),
    });
  };
  let passedOver = 0;
  for (const line of linesIn(text.slice(0, LONGEST))) {
    const told = lineIn(line);
    const named = NAMED.exec(line);
    const words = line.split(/\s+/);
    const codes = words.filter((each) => CODE_LIKE.test(each));
    if (typeof told === 'string') notes.push(told);
    else if (told) found.push(told);
    else if (codes.length === 0) passedOver++;
    else if (named) take(named[2]!, named[1]);
    else {
      for (const code of codes) take(code);
      const beside = words.filter((each) => !codes.includes(each)).join(' ');
      if (beside !== '') notes.push(`“${quotedGiven(beside)}” stands beside a code and was not read: a name before a code needs a colon.`);
    }
  }
  if (text.length > LONGEST) notes.push(`What was pasted has ${text.length} characters; the first ${LONGEST} are read.`);
  const { sure, doubtful } = doubtsIn(book, found, ({ work }) => (work.mark === '' ? '' : listOf(work.mark)));
  const { book: next, added, known, newPeople } = putResults(book, sure);
  const told = notes.length > MOST_TOLD ? [...notes.slice(0, MOST_TOLD), `${notes.length - MOST_TOLD} more could not be taken.`] : notes;
  return {
    book: sure.length === 0 ? book : next,
    doubtful,
    notes: [
      ...(sure.length > 0 ? [takenWords(added, known)] : []),
      ...(newPeople.length > 0 ? [`New in the class: ${newPeople.slice(0, 20).join(', ')}${newPeople.length > 20 ? ` and ${newPeople.length - 20} more` : ''}.`] : []),
      ...told,
      ...(passedOver > 0 ? [`${passedOver} ${passedOver === 1 ? 'line' : 'lines'} without a code ${passedOver === 1 ? 'was' : 'were'} passed over.`] : []),
    ],
  };
} // prettier-ignore
