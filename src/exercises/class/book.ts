// A trainer's class book: people, what was set, results and standings, each an entry with a stamp, so that two copies of a book are put together and nothing is lost.
// Of each entry the later counts, so tabs and files join in any order; a join of people leaves on each thing whose it was (back.ts undoes it whole). Nothing computed is kept but the attempt, counted by person and sheet.
// Promised in tests/exercises/promised-class-book.json.
import type { TaskOutcome } from '../observed/task.ts';
import { seedOf } from '../seed.ts';

export const roles = ['trainee', 'trainer', 'assessor'] as const;
export type Role = (typeof roles)[number];
export const workKinds = ['sheet', 'shift', 'task', 'other'] as const;
export type WorkKind = (typeof workKinds)[number];
/** Which of several results of one person for one thing counts. */
export const countings = ['latest', 'best', 'first'] as const;
export type Counting = (typeof countings)[number];
/** How a result came: as a code, from a sealed hand-in, as the line of a shift, or written down by hand. */
export const resultWays = ['code', 'sealed', 'line', 'hand'] as const;
export type WayOfWork = (typeof resultWays)[number];

/** Whose a thing was before people were joined, the first of them first; left out where nobody was. */
export interface OnceOwned {
  readonly was?: readonly string[];
}
export interface Person {
  readonly is: 'person';
  readonly name: string;
  readonly role: Role;
  /** Whom this person was joined to; left out of anybody who was not. */
  readonly into?: string;
}
/** A sheet, a shift or a task that was set. */
export interface Work {
  readonly is: 'work';
  readonly kind: WorkKind;
  readonly title: string;
  /** The day it was set: 2026-05-14. */
  readonly day: string;
  /** The short name that its result codes carry; empty where it has none. */
  readonly mark: string;
  /** Its address from the root of the book, by which it is found again; empty where it has none. */
  readonly address: string;
  /** Per cent of the marks to pass; 0 where it is not passed or failed. */
  readonly passMark: number;
  /** Marks of each question; empty where each has one. */
  readonly marks: readonly number[];
  /** The kinds that each version asks, in the order of its questions; empty where that is not known yet. */
  readonly kinds: readonly (readonly string[])[];
}
export interface Got extends OnceOwned {
  readonly is: 'result';
  readonly person: string;
  readonly work: string;
  /** The day it was handed in; empty where it is not said. */
  readonly day: string;
  readonly attempt: number;
  /** The attempt that the hand-in says; left out where it counts as that. */
  readonly said?: number | undefined;
  readonly version: number;
  /** A sign for each question, as a result code has it; empty where only points are known. */
  readonly signs: string;
  /** A code of the answers; empty where it is not known. */
  readonly answers: string;
  readonly got: number;
  readonly of: number;
  readonly way: WayOfWork;
  readonly note: string;
  /** Minutes from opening to handing in, by the trainee’s machine; left out where the hand-in does not say. */
  readonly minutes?: number;
}
/** That somebody can do something, on whose word, and until when. */
export interface StandingOutcome extends OnceOwned {
  readonly is: 'standing';
  readonly person: string;
  readonly outcome: string;
  readonly day: string;
  /** The last day on which it is valid; empty where no end was set. */
  readonly until: string;
  readonly assessor: string;
  readonly evidence: string;
}
/** One task or question that was seen done or heard, from a record of observed tasks. */
export interface SeenDone extends OnceOwned {
  readonly is: 'seen';
  readonly person: string;
  readonly stage: string;
  /** The id of the task or question in its stage. */
  readonly task: string;
  readonly outcome: TaskOutcome;
  readonly day: string;
  readonly assessor: string;
  /** Until when it is valid, or what ends it sooner, in the assessor's words. */
  readonly until: string;
  readonly note: string;
  /** What the assessor wrote of the whole record, as its particulars have it; left out where nothing was. */
  readonly place?: string;
  readonly standard?: string;
  readonly method?: string;
  readonly conditions?: string;
}
/** What the trainer said of a name: that it is a person's as well, or that it is somebody else's. */
export interface ToldWhose extends OnceOwned {
  readonly is: 'told';
  readonly name: string;
  readonly person: string;
  readonly same: boolean;
}
export interface Settings {
  readonly is: 'settings';
  readonly name: string;
  readonly counts: Counting;
  /** Weeks before the end of validity from which a refresher is due. */
  readonly refresher: number;
}
export type Thing = Person | Work | Got | StandingOutcome | SeenDone | ToldWhose | Settings;
/** A thing with its stamp; the higher of two stands. What is taken out stays, marked as gone, so that another copy does not bring it back. */
export type BookEntry<T extends Thing = Thing> = T & { readonly stamp: number; readonly gone?: true };
export interface ClassBook {
  /** Made by chance when the book is begun: two files of one book know each other by it. */
  readonly id: string;
  readonly entries: Readonly<Record<string, BookEntry>>;
}

export const SETTINGS = 'settings'; // the id of the settings
const DEFAULTS: Settings = { is: 'settings', name: 'A class', counts: 'latest', refresher: 8 };

export const freshBook = (id: string): ClassBook => ({ id, entries: {} });

export const lastStamp = ({ entries }: ClassBook) =>
  Object.values(entries).reduce((last, { stamp }) => Math.max(last, stamp), 0);

/** The book with things put in, or in place of what stood under their ids. */
export function withThings(book: ClassBook, things: Readonly<Record<string, Thing>>): ClassBook {
  const stamp = lastStamp(book) + 1;
  const put = Object.fromEntries(Object.entries(things).map(([id, thing]) => [id, { ...thing, stamp }]));
  return { ...book, entries: { ...book.entries, ...put } };
}

/** The book without a thing; what belongs to a person, or results of a thing set, go with it. */
export function withoutThing(book: ClassBook, id: string): ClassBook {
  const stamp = lastStamp(book) + 1;
  const hangsOn = (thing: BookEntry) =>
    ('person' in thing && thing.person === id) || (thing.is === 'result' && thing.work === id);
  const entries = Object.entries(book.entries).map(([each, thing]) =>
    (each === id || hangsOn(thing)) && thing.gone === undefined
      ? [each, { ...thing, stamp, gone: true as const }]
      : [each, thing],
  );
  return { ...book, entries: Object.fromEntries(entries) };
}

/** One text of an entry, whatever the order of its fields. */
const textOf = (entry: BookEntry) =>
  JSON.stringify(Object.entries(entry).sort(([a], [b]) => (a < b ? -1 : 1)));
const isLater = (a: BookEntry, b: BookEntry) =>
  a.stamp > b.stamp || (a.stamp === b.stamp && textOf(a) > textOf(b));

/** Two copies of one book as one: of each entry the later, and of two at once the same in both copies. */
export function joinedBooks(one: ClassBook, other: ClassBook): ClassBook {
  const entries: Record<string, BookEntry> = { ...one.entries };
  for (const [id, theirs] of Object.entries(other.entries)) {
    const ours = Object.hasOwn(entries, id) ? entries[id] : undefined;
    if (!ours || isLater(theirs, ours)) entries[id] = theirs;
  }
  return { id: one.id, entries };
}

type Of<K extends Thing['is']> = Extract<Thing, { readonly is: K }> & {
  readonly id: string;
  readonly stamp: number;
};
/** All things of a kind that stand in the book, with their ids. */
export function entriesOfKind<K extends Thing['is']>(book: ClassBook, is: K): readonly Of<K>[] {
  return Object.entries(book.entries).flatMap(([id, entry]) =>
    entry.is === is && entry.gone === undefined ? [{ ...entry, id } as unknown as Of<K>] : [],
  );
} // prettier-ignore

const byName = (a: string, b: string) => a.localeCompare(b, 'en');
export const peopleOf = (book: ClassBook) =>
  [...entriesOfKind(book, 'person')].sort((a, b) => byName(a.name, b.name));
/** What was set, the earliest first. */
export const worksOf = (book: ClassBook) =>
  [...entriesOfKind(book, 'work')].sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : byName(a.title, b.title))); // prettier-ignore
export const settingsOf = (book: ClassBook): Settings => {
  const kept = Object.hasOwn(book.entries, SETTINGS) ? book.entries[SETTINGS] : undefined;
  return kept?.is === 'settings' ? kept : DEFAULTS;
};

/** A name as two ways of writing it are alike: whatever capitals, spaces and ways of Unicode. */
export const sameName = (name: string): string =>
  name.normalize('NFC').toLowerCase().replace(/\s+/g, ' ').trim();

/** An id from what makes a thing that thing, so that two tabs that put it in at once put in one. */
export const entryId = (is: Thing['is'], ...what: readonly (string | number)[]): string =>
  `${is[0]}-${[0, 1].map((turn) => seedOf(`${turn}${JSON.stringify(what)}`).toString(36).padStart(7, '0')).join('')}`; // prettier-ignore
