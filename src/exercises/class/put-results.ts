// Puts results into a class book: whose each is, of what, and which attempt.
import { MOST_ATTEMPTS, scoreOfMarks, signsOfMarks, type SheetResult } from '../result.ts';
import {
  entriesOfKind,
  entryId,
  lastStamp,
  sameName,
  withThings,
  worksOf,
  type ClassBook,
  type Got,
  type Thing,
  type WayOfWork,
  type WorkKind,
} from './book.ts';
import { freeId, idByName } from './names.ts';

/** A result on its way into the book. */
export interface FoundResult {
  readonly name: string;
  readonly way: WayOfWork;
  readonly work: { readonly kind: 'sheet' | 'shift' | 'other'; readonly title: string; readonly mark: string; readonly address: string; readonly day: string };
  readonly got: Omit<Got, 'is' | 'person' | 'work' | 'way'>;
} // prettier-ignore

/** A result as an entry of the book has it. */
export const entryOfResult = (result: SheetResult): FoundResult['got'] => ({
  day: result.day ?? '',
  attempt: result.attempt ?? 1,
  version: result.version,
  signs: signsOfMarks(result.marks),
  answers: result.answers ?? '',
  got: scoreOfMarks(result),
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
/** The attempt that a result says it is, which may stand as a later one. */
const saidOf = ({ said, attempt }: Pick<Got, 'said' | 'attempt'>) => said ?? attempt;

/** A result with the attempt that it counts as; what it says itself is kept beside that where it differs. */
function withAttempt(got: Got, attempt: number, kind: WorkKind): Got {
  const { said: _, ...rest } = got;
  return {
    ...rest,
    attempt,
    ...(saysAttempt(got, kind) && attempt !== saidOf(got) ? { said: saidOf(got) } : {}),
  };
}

/**
 * Results of one person for one thing, numbered by day, and of one day as they came. One that does not say its attempt comes after those
 * before it. A machine counts the attempts at one version, and seals none but the first: what was tried before on another counts as well.
 */
function numbered(results: readonly Standing[], kind: WorkKind): Record<string, Got> {
  const things: Record<string, Got> = {};
  const beforeOf = new Map<number, number>(); // attempts at others before the first at a version
  const versionAt = new Map<number, number>(); // the version of each attempt
  let before = 0;
  const inOrder = (a: Standing, b: Standing) =>
    Number(a.isFresh) - Number(b.isFresh) || (a.isFresh ? 0 : a.got.attempt - b.got.attempt) || a.stamp - b.stamp;
  const sorted = [...results].sort((a, b) => (a.got.day < b.got.day ? -1 : a.got.day > b.got.day ? 1 : inOrder(a, b)));
  for (const { id, got } of sorted) {
    const { version, way } = got;
    if (version > 0 && !beforeOf.has(version)) beforeOf.set(version, saidOf(got) > before ? 0 : before);
    const counted = saidOf(got) + (beforeOf.get(version) ?? 0);
    const isTaken = version > 0 && versionAt.has(counted) && (way === 'sealed' || versionAt.get(counted) !== version);
    const attempt = Math.min(MOST_ATTEMPTS, !saysAttempt(got, kind) || isTaken ? before + 1 : counted);
    if (version > 0) versionAt.set(attempt, version);
    if (attempt !== got.attempt) things[id] = withAttempt(got, attempt, kind);
    before = Math.max(before, attempt);
  }
  return things;
} // prettier-ignore

/** Puts what was found into the book in its order: people and sheets that it has not got are added; a result that it has is not put in twice. */
export function putResults(book: ClassBook, found: readonly FoundResult[]): { readonly book: ClassBook; readonly added: number; readonly known: number; readonly newPeople: readonly string[] } {
  const people = idByName(book);
  const works = worksOf(book);
  const kindAt = new Map(works.map(({ id, kind }) => [id, kind]));
  /** What makes a result that result; its attempt only where it says that itself. */
  const whole = (person: string, set: string, way: WayOfWork, { version, attempt, said, day, signs, answers, got }: FoundResult['got']) =>
    [person, set, version, saysAttempt({ way, day }, kindAt.get(set) ?? 'other') ? saidOf({ said, attempt }) : 1, day, signs, answers, got] as const;
  const stood = new Set(entriesOfKind(book, 'result').map((each) => whole(each.person, each.work, each.way, each).join()));
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
      set = entryId('work', work.mark, work.mark === '' ? work.title : '');
      things[set] = { is: 'work', passMark: 0, marks: [], kinds: [], ...work };
      kindAt.set(set, work.kind);
      (work.mark === '' ? byTitle : byMark).set(work.mark === '' ? work.title : work.mark, set);
    }
    const all = whole(person, set, way, got);
    const id = entryId('result', ...all);
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
  for (const { id, stamp, ...got } of entriesOfKind(next, 'result')) {
    const cell = `${got.person} ${got.work}`;
    if (touched.has(cell)) cells.set(cell, [...(cells.get(cell) ?? []), { id, got, stamp, isFresh: isFresh.has(id) }]);
  }
  const renumbered = Object.assign({}, ...[...cells.values()].map((of) => numbered(of, kindAt.get(of[0]!.got.work) ?? 'other'))) as Record<string, Got>;
  const entries = Object.fromEntries(Object.entries(renumbered).map(([id, got]) => [id, { ...got, stamp: isFresh.has(id) ? next.entries[id]!.stamp : ++stamp }]));
  return { book: { ...next, entries: { ...next.entries, ...entries } }, added, known, newPeople };
} // prettier-ignore

/** What came of putting results in, in a sentence. */
export function takenWords(added: number, known: number): string {
  const results = (count: number) => `${count} ${count === 1 ? 'result' : 'results'}`;
  if (added === 0) return `Nothing new: ${known === 1 ? 'this result' : `these ${results(known)}`} ${known === 1 ? 'was' : 'were'} in it already.`;
  return `${results(added)} ${added === 1 ? 'is' : 'are'} in the class book now${known > 0 ? `; ${known} stood in it already` : ''}.`;
} // prettier-ignore
