// All that a class book has of one person, in order, for whoever looks from outside.
import { marksOfSigns, missedIn } from '../result.ts';
import {
  entriesOfKind,
  peopleOf,
  type ClassBook,
  type Got,
  type Person,
  type SeenDone,
  type StandingOutcome,
  type WayOfWork,
} from './book.ts';
import { grid, resultScore } from './counts.ts';

export interface LineOf {
  readonly title: string;
  readonly mark: string;
  readonly result: Got;
  readonly got: number;
  readonly of: number;
  readonly isPass?: boolean;
  /** Per cent of the marks to pass; 0 where it is not passed or failed. */
  readonly passMark: number;
  readonly counts: boolean;
  /** The numbers of the questions that were answered wrongly, wholly or in part, and of those left blank; undefined where only points are known. */
  readonly missed?: readonly number[];
  readonly blank?: readonly number[];
  /** The kinds that the version asks; empty where that is not known. */
  readonly kinds: readonly string[];
}
/** What was seen under one record: by whom, until when, where, to which standard and how; and its tasks by their days. */
export interface RecordSitting {
  readonly about: Pick<
    SeenDone,
    'stage' | 'assessor' | 'until' | 'place' | 'standard' | 'method' | 'conditions'
  >;
  readonly seen: readonly SeenDone[];
}
export interface OfOne {
  readonly person: Person & { readonly id: string };
  /** The first result for each thing set, and those that came after it. */
  readonly first: readonly LineOf[];
  readonly again: readonly LineOf[];
  readonly seen: readonly RecordSitting[];
  readonly standings: readonly StandingOutcome[];
}

/** What each way of a result is called. */
export const wayWords: Readonly<Record<WayOfWork, string>> = {
  code: 'open code',
  sealed: 'sealed',
  line: 'line of the trainee’s machine',
  hand: 'written down by hand',
};

/** What the modes prove and do not. As in the guide for trainers. */
export const modesProve = [
  'An open code, or the line of a shift or a case, was marked and dated by the trainee’s own machine and can be made by anyone who tries: it shows what was handed in under this name, not who answered or with what help.',
  'A sealed hand-in could be opened and marked only with the trainer’s key: it shows that nobody read or changed the answers on the way, not who sat there, when, or whether a book or a person helped.',
] as const;

const byDay = <T extends { readonly day: string }>(all: readonly T[]) => [...all].sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0)); // prettier-ignore

/** What was seen, under the records that it came with. */
function sittings(all: readonly SeenDone[]): readonly RecordSitting[] {
  const found = new Map<string, { about: RecordSitting['about']; seen: SeenDone[] }>();
  for (const each of all) {
    const { stage, assessor, until, place = '', standard = '', method = '', conditions = '' } = each;
    const about = { stage, assessor, until, place, standard, method, conditions };
    const key = JSON.stringify(about);
    const there = found.get(key);
    if (there) there.seen.push(each);
    else found.set(key, { about, seen: [each] });
  }
  return [...found.values()];
}

/** What a book has of a person; undefined where they are not in it. */
export function recordOfPerson(book: ClassBook, id: string): OfOne | undefined {
  const person = peopleOf(book).find((each) => each.id === id);
  if (!person) return undefined;
  const row = grid(book).find(([cell]) => cell?.person.id === id) ?? [];
  const lines = row.map(({ work, counts, all }) =>
    all.map((result): LineOf => {
      const marks = result.signs === '' ? undefined : marksOfSigns(result.signs);
      const blank = marks?.flatMap(({ verdict }, i) => (verdict === 'unanswered' ? [i + 1] : []));
      const { got, of, isPass } = resultScore(result, work);
      return {
        title: work.title, mark: work.mark, passMark: work.passMark, result, got, of, counts: result === counts, kinds: work.kinds[result.version - 1] ?? [],
        ...(isPass === undefined ? {} : { isPass }),
        ...(marks && blank ? { blank, missed: missedIn({ marks }).filter((each) => !blank.includes(each)) } : {}),
      };
    }),
  );
  return {
    person,
    first: lines.flatMap(([first]) => first ?? []),
    again: lines.flatMap(([, ...rest]) => rest),
    seen: sittings(byDay(entriesOfKind(book, 'seen').filter((each) => each.person === id))),
    standings: byDay(entriesOfKind(book, 'standing').filter((each) => each.person === id)),
  };
} // prettier-ignore
