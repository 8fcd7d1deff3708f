// What a class confuses: the kinds of question most missed, by whom and by which mistakes; and a lesson of ten minutes on them.
import type { Family } from '../families.ts';
import type { Item, OwnSheet } from '../own/own-sheet.ts';
import { marksOfSigns } from '../result.ts';
import { pointsOf } from '../verdict.ts';
import { grid } from './counts.ts';
import type { ClassBook } from './book.ts';

export interface Confused {
  readonly kind: string;
  /** How often it was answered, and how many points of those were missed. */
  readonly asked: number;
  readonly missed: number;
  /** How often it was left blank: not asked, and not missed. */
  readonly blank: number;
  /** Those who left it blank. */
  readonly blankBy: readonly string[];
  /** Those who missed it, wholly or in part. */
  readonly people: readonly string[];
  /** Mistakes that were recognised, the most frequent first. */
  readonly families: readonly (readonly [Family, number])[];
}

/** The kinds that were missed or left blank at all, those with most missed points first; of as many, the larger share, then the more blanks first. Only results that count are looked at. */
export function confusions(book: ClassBook, { from = '', to = '9999' } = {}): readonly Confused[] {
  const met = new Map<string, { asked: number; missed: number; blankBy: string[]; people: Set<string>; families: Map<Family, number> }>();
  for (const { person, work, counts } of grid(book).flat()) {
    const kinds = counts && work.kinds[counts.version - 1];
    const marks = counts && marksOfSigns(counts.signs);
    if (!counts || !kinds || !marks || kinds.length !== marks.length) continue;
    if (counts.day !== '' && (counts.day < from || counts.day > to)) continue;
    kinds.forEach((kind, i) => {
      const there = met.get(kind) ?? { asked: 0, missed: 0, blankBy: [] as string[], people: new Set(), families: new Map() };
      const { verdict, family } = marks[i]!;
      met.set(kind, there);
      if (verdict === 'unanswered') {
        there.blankBy.push(person.name); // a blank is no mistake
        return;
      }
      there.asked += 1;
      there.missed += 1 - pointsOf(verdict);
      if (pointsOf(verdict) < 1) there.people.add(person.name);
      if (family) there.families.set(family, (there.families.get(family) ?? 0) + 1);
    });
  }
  return [...met]
    .filter(([, { missed, blankBy }]) => missed > 0 || blankBy.length > 0)
    .map(([kind, { asked, missed, blankBy, people, families }]) => ({ kind, asked, missed, blank: blankBy.length, blankBy: [...new Set(blankBy)], people: [...people], families: [...families].sort((a, b) => b[1] - a[1]) }))
    .sort((a, b) => b.missed - a.missed || (b.missed && b.missed / b.asked - a.missed / a.asked) || b.blank - a.blank || (a.kind < b.kind ? -1 : 1));
} // prettier-ignore

/** Results that count, of sheets whose kinds are not known: they tell nothing of what is confused. */
export const resultsUntold = (book: ClassBook): number =>
  grid(book).flat().filter(({ work, counts }) => counts !== undefined && counts.signs !== '' && work.kinds[counts.version - 1] === undefined).length; // prettier-ignore

export const QUESTIONS_ON_MISSED = 6; // questions of the lesson

/** The kinds that the six are of: of those most missed, the first six, and of these what keeps people safe first; where a safety kind was missed it is among them. */
export function kindsTaught(
  missed: readonly string[],
  isSafety: (kind: string) => boolean,
): readonly string[] {
  const safety = missed.filter(isSafety).slice(0, QUESTIONS_ON_MISSED);
  return [...safety, ...missed.filter((kind) => !isSafety(kind))].slice(0, QUESTIONS_ON_MISSED);
}

/** Six questions, first one of each kind, then again from the first. As a sheet of one version, not drawn yet. */
export function questionsOnMissed(kinds: readonly string[], generator: number, seed: string): OwnSheet {
  const some = kinds.slice(0, QUESTIONS_ON_MISSED);
  const items: Item[] = Array.from({ length: QUESTIONS_ON_MISSED }, (_, i) => ({ kind: some[i % some.length]!, key: i + 1, marks: 1 })); // prettier-ignore
  items.sort((a, b) => some.indexOf(a.kind) - some.indexOf(b.kind));
  return { generator, title: 'Six on what we missed', minutes: 0, passMark: 0, shows: 'at once', seed, versions: 1, house: 'built-in', items, own: [] }; // prettier-ignore
}

/** The ten minutes, one after another: from which minute to which, and what is done. */
export const tenMinutes: readonly (readonly [from: number, to: number, does: string])[] = [
  [0, 1, 'Say what was missed, and by how many. Name nobody.'],
  [1, 4, 'Work the example on the board. At each line ask what comes next before you write it.'],
  [4, 5, 'Open the first passage named below, and have somebody read out the sentence that explains it.'],
  [5, 9, 'Two of the six questions, in pairs, without help. The other four go home with them.'],
  [9, 10, 'Have one pair say what they would look at first next time.'],
];
