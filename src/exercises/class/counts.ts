// Which result counts of each person for each thing set, what it comes to, and the table of who × what.
import { csvOf } from '../csv.ts';
import { marksOfSigns, type SheetResult } from '../result.ts';
import { alikeNotes } from '../results-alike.ts';
import { pointsOf } from '../verdict.ts';
import {
  entriesOfKind,
  peopleOf,
  settingsOf,
  worksOf,
  type ClassBook,
  type Counting,
  type Got,
  type Person,
  type Work,
} from './book.ts';

type WithId<T> = T & { readonly id: string; readonly stamp: number };
export interface Scored {
  readonly got: number;
  readonly of: number;
  /** From 0 to 1. */
  readonly share: number;
  /** Left out where the thing is not passed or failed. */
  readonly isPass?: boolean;
}

/** What a result comes to, by the marks of the sheet where they are known. */
export function resultScore(result: Got, work: Pick<Work, 'marks' | 'passMark'>): Scored {
  const signs = result.signs === '' ? undefined : marksOfSigns(result.signs);
  const isByMarks = signs !== undefined && work.marks.length === signs.length;
  const got = isByMarks ? signs.reduce((sum, { verdict }, i) => sum + pointsOf(verdict) * work.marks[i]!, 0) : result.got;
  const of = isByMarks ? work.marks.reduce((sum, each) => sum + each, 0) : result.of;
  const share = Math.min(1, got / of);
  return { got, of, share, ...(work.passMark > 0 ? { isPass: got >= (work.passMark / 100) * of - 1e-9 } : {}) };
} // prettier-ignore

const inOrder = (a: WithId<Got>, b: WithId<Got>) =>
  a.attempt - b.attempt ||
  (a.day < b.day ? -1 : a.day > b.day ? 1 : a.stamp - b.stamp || (a.id < b.id ? -1 : 1));

/** Of several results of one person for one thing the one that counts. By attempt, then by day, then as they came. */
export function countingResult(results: readonly WithId<Got>[], work: Pick<Work, 'marks' | 'passMark'>, rule: Counting): WithId<Got> | undefined {
  const ordered = [...results].sort(inOrder);
  if (rule === 'first') return ordered[0];
  if (rule === 'latest') return ordered.at(-1);
  return ordered.reduce<WithId<Got> | undefined>((best, each) => (best && resultScore(best, work).share >= resultScore(each, work).share ? best : each), undefined);
} // prettier-ignore

export interface Cell {
  readonly person: WithId<Person>;
  readonly work: WithId<Work>;
  /** The result that counts; undefined where there is none. */
  readonly counts?: WithId<Got>;
  readonly scored?: Scored;
  /** All results, in order. */
  readonly all: readonly WithId<Got>[];
}

/** A row for each trainee, a cell for each thing set. */
export function grid(book: ClassBook): readonly (readonly Cell[])[] {
  const works = worksOf(book);
  const rule = settingsOf(book).counts;
  const byCell = new Map<string, WithId<Got>[]>();
  for (const result of entriesOfKind(book, 'result')) {
    const key = `${result.person} ${result.work}`;
    byCell.set(key, [...(byCell.get(key) ?? []), result]);
  }
  const isShown = ({ id, role }: WithId<Person>) => role === 'trainee' || works.some((work) => byCell.has(`${id} ${work.id}`));
  return peopleOf(book).filter(isShown).map((person) =>
    works.map((work) => {
      const all = [...(byCell.get(`${person.id} ${work.id}`) ?? [])].sort(inOrder);
      const counts = countingResult(all, work, rule);
      return { person, work, all, ...(counts && { counts, scored: resultScore(counts, work) }) };
    }),
  );
} // prettier-ignore

/** What is to be looked at: versions and answers that are alike, by the codes in the book. */
export function alikeResults(book: ClassBook): readonly string[] {
  const names = new Map(peopleOf(book).map(({ id, name }) => [id, name]));
  const marks = new Map(worksOf(book).map(({ id, mark }) => [id, mark]));
  const results = entriesOfKind(book, 'result').flatMap(({ person, work, version, signs, day, attempt, answers }): SheetResult[] => {
    const [name, sheet, read] = [names.get(person), marks.get(work), signs === '' ? undefined : marksOfSigns(signs)];
    return name === undefined || !sheet || !read ? [] : [{ sheet, version, name, marks: read, day, attempt, ...(answers === '' ? {} : { answers }) }];
  });
  return alikeNotes(results);
} // prettier-ignore

/** All results as a table for a spreadsheet; the one that counts is said. */
export function resultsTable(book: ClassBook): string {
  const rows = grid(book).flat().flatMap(({ person, work, counts, all }) =>
    all.map((result) => {
      const { got, of, isPass } = resultScore(result, work);
      return [person.name, work.title, work.mark, result.day, result.attempt, result.version === 0 ? '' : result.version, got, of, isPass === undefined ? '' : isPass ? 'pass' : 'not yet', result === counts ? 'counts' : '', result.way, result.note];
    }),
  );
  return csvOf([['Name', 'What', 'Sheet', 'Day', 'Attempt', 'Version', 'Got', 'Of', 'Outcome', 'Counts', 'Came as', 'Note'], ...rows]);
} // prettier-ignore
