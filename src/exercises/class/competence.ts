// The matrix of competence: who may be counted on for what, since when, until when, and when a refresher is due. It keeps what was written down and judges nobody.
import { csvOf } from '../csv.ts';
import {
  entriesOfKind,
  peopleOf,
  settingsOf,
  type ClassBook,
  type Person,
  type StandingOutcome,
} from './book.ts';

export const standingStates = ['valid', 'refresher due', 'expired', 'none'] as const;
export type State = (typeof standingStates)[number];
/** A sign for each, so that none is told by colour alone. */
export const stateSigns: Readonly<Record<State, string>> = { valid: '●', 'refresher due': '◐', expired: '○', none: '–' }; // prettier-ignore
/** What is asked for first; a trainer adds others by their names. */
export const FIRST_OUTCOMES = [
  'malting',
  'milling',
  'mashing',
  'fermenting',
  'distilling',
  'maturing',
] as const;

const DAY_LENGTH = 86_400_000; // ms

/** A day so many weeks before another: 2026-05-14. */
export const weeksBefore = (day: string, weeks: number): string =>
  new Date(Date.parse(`${day}T00:00:00Z`) - weeks * 7 * DAY_LENGTH).toISOString().slice(0, 10);

/** The same day a number of months later; of a day that the month has not, its last. */
export function monthsAfter(day: string, months: number): string {
  const [year, month, date] = day.split('-').map(Number) as [number, number, number];
  const first = new Date(Date.UTC(year, month - 1 + months, 1));
  const last = new Date(Date.UTC(first.getUTCFullYear(), first.getUTCMonth() + 1, 0)).getUTCDate();
  return new Date(Date.UTC(first.getUTCFullYear(), first.getUTCMonth(), Math.min(date, last))).toISOString().slice(0, 10); // prettier-ignore
}

/** How a standing is on a day. On its last day it is still valid. */
export function standingOn(standing: Pick<StandingOutcome, 'until'> | undefined, day: string, refresherWeeks: number): State {
  if (standing === undefined) return 'none';
  if (standing.until === '') return 'valid';
  if (day > standing.until) return 'expired';
  return day >= weeksBefore(standing.until, refresherWeeks) ? 'refresher due' : 'valid';
} // prettier-ignore

export interface HeldOutcome {
  readonly person: Person & { readonly id: string };
  readonly outcome: string;
  readonly state: State;
  /** The latest that was written down up to that day. */
  readonly standing?: StandingOutcome & { readonly id: string };
  /** The day from which a refresher is due; empty where no end is set. */
  readonly refresherFrom: string;
}

/** The outcomes of a book: the six stages, then those written down, in the order of their names. */
export function outcomesOf(book: ClassBook): readonly string[] {
  const written = new Set(entriesOfKind(book, 'standing').map(({ outcome }) => outcome));
  const first = FIRST_OUTCOMES.filter((outcome) => written.has(outcome));
  return [...first, ...[...written].filter((outcome) => !(first as readonly string[]).includes(outcome)).sort()]; // prettier-ignore
}

/** The matrix on a day: what was written down later is not in it, so that years gone by can be asked for. */
export function matrixOn(book: ClassBook, day: string): readonly (readonly HeldOutcome[])[] {
  const { refresher } = settingsOf(book);
  const all = entriesOfKind(book, 'standing').filter((standing) => standing.day <= day);
  const outcomes = outcomesOf(book);
  return peopleOf(book).map((person) =>
    outcomes.map((outcome) => {
      const own = all.filter((standing) => standing.person === person.id && standing.outcome === outcome);
      const standing = own.sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : a.stamp - b.stamp)).at(-1);
      const refresherFrom = standing && standing.until !== '' ? weeksBefore(standing.until, refresher) : '';
      return { person, outcome, state: standingOn(standing, day, refresher), refresherFrom, ...(standing && { standing }) };
    }),
  );
} // prettier-ignore

/** All that was ever written down, as a table for a spreadsheet, each with its state on a day. */
export function standingsTable(book: ClassBook, day: string): string {
  const names = new Map(peopleOf(book).map(({ id, name, role }) => [id, { name, role }]));
  const { refresher } = settingsOf(book);
  const rows = [...entriesOfKind(book, 'standing')]
    .sort((a, b) => (a.day < b.day ? -1 : 1))
    .flatMap((each) => {
      const person = names.get(each.person);
      const from = each.until === '' ? '' : weeksBefore(each.until, refresher);
      return person ? [[person.name, person.role, each.outcome, each.day, each.until, from, standingOn(each, day, refresher), each.assessor, each.evidence]] : [];
    });
  return csvOf([['Name', 'Role', 'Outcome', 'Day', 'Valid until', 'Refresher from', `State on ${day}`, 'Assessor', 'Evidence'], ...rows]);
} // prettier-ignore
