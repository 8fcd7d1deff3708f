// What a talk comes to: one sentence with the sum that decides, and the sentences that follow.
import type { Reconciliation } from '../core/cross-check/reconcile.ts';
import { findingSentences } from '../core/cross-check/verdict.ts';

export interface TalkVerdict {
  readonly first: string;
  readonly more: readonly string[];
}

/** The sentence that comes first, with the sum where it does not hold one itself, and the others. */
export function verdictOf(found: Reconciliation): TalkVerdict {
  const [first = '', ...rest] = findingSentences(found);
  const sum = found.impossible.length > 0 ? undefined : rest.find((each) => isSum(each, found));
  return {
    first: sum === undefined ? first : `${first} ${sum}`,
    more: rest.filter((each) => each !== sum),
  };
}
const isSum = (sentence: string, { decides }: Reconciliation) =>
  sentence.startsWith('The sum:') || (decides !== undefined && sentence.startsWith(decides.says));
