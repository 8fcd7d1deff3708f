// What can be said of an answer that was marked, and what it is worth.
import type { Family } from './families.ts';

export type MarkVerdict = 'unanswered' | 'unreadable' | 'right' | 'rounded' | 'unit' | 'wrong';

export interface Mark {
  readonly verdict: MarkVerdict;
  /** One or two sentences for whoever answered. */
  readonly say: string;
  /** The family of a mistake that was recognised. */
  readonly family?: Family;
}

const points: Readonly<Record<MarkVerdict, number>> = {
  unanswered: 0,
  unreadable: 0,
  right: 1,
  rounded: 0.5,
  unit: 0.5,
  wrong: 0,
};
/** What a verdict is worth: one, a half for a right number with a fault of form, or nothing. */
export const pointsOf = (verdict: MarkVerdict): number => points[verdict];
