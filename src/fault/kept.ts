// The cases that were answered, as text: the first answer to each, as a later go has seen what was right; strictly read.
import { jsonIn } from '../core/reading/data.ts';
import { list, only, quietly, record, whole, written } from '../core/reading/given.ts';
import { isSeed } from '../shift/seed.ts';

export interface CaseDone {
  readonly seed: number;
  readonly total: number;
  readonly day: string;
  /** The code of the house that it was drawn in; none where it was kept before codes were. */
  readonly house?: string;
}
export const MOST_CASES_KEPT = 200; // cases; the oldest go first

const done = record(
  {
    seed: only<number>(isSeed, 'it can be a case.'),
    total: whole(0, 100),
    day: written(/^\d{4}-\d\d-\d\d$/),
  },
  { house: written(/^[0-9A-Z]{7}$/) },
);
const all = list(done, MOST_CASES_KEPT);

/** Reads kept cases; undefined for a text that cannot be read in full. */
export const readDone = (text: string): readonly CaseDone[] | undefined => quietly(all, jsonIn(text));

/** Whether the answer to a case was shown here before: the number in that house, or in one that was not kept. */
export const wasShown = (kept: readonly CaseDone[], seed: number, house: string): boolean =>
  kept.some((each) => each.seed === seed && (each.house ?? house) === house);

/** The cases with one more: one that was shown before keeps the points of its first go. */
export const withDone = (all: readonly CaseDone[], one: Required<CaseDone>): readonly CaseDone[] =>
  wasShown(all, one.seed, one.house) ? all : [...all, one].slice(-MOST_CASES_KEPT);
