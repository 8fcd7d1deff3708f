// Whether an answer holds what a right one must: patterns that were written before any question was put, with figures of the house in braces.
import { isAnswer, type Answer, type NotKnown } from '../../src/asking/answer-given.ts';
import { fillHoles } from '../../src/asking/holes.ts';
import { builtInLine } from '../../src/house/line-of.ts';

/** A question, and what a right answer must hold: every pattern; “?” where nothing in the book does. */
export interface HeldQuestion {
  readonly q: string;
  readonly holds: readonly string[];
}
/** Right and sure; right but told as what may be meant, or quoted; wrong as if sure; neither. */
export type Fate = 'right' | 'meant' | 'wrong' | 'neither';

const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ');
const escaped = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
const patternOf = (text: string) =>
  new RegExp(text.replace(/\{[a-zA-Z][^}]*\}/g, (hole) => `(?<![\\d.,])${escaped(plain(fillHoles(hole, { line: builtInLine() }).text))}`), 'i'); // prettier-ignore

export const saidBy = (found: Answer | NotKnown): string =>
  isAnswer(found)
    ? plain([found, ...(found.also ?? [])].map(({ says, sum = '' }) => `${says} ${sum}`).join(' '))
    : '';

/** What became of a question. */
export function fateOf(
  { holds }: HeldQuestion,
  found: Answer | NotKnown,
  unknown: ReadonlySet<string>,
): Fate {
  const isKnown = isAnswer(found) && !(found.id !== undefined && unknown.has(found.id));
  if (holds[0] === '?') return !isKnown ? 'right' : found.meant || found.isQuoted ? 'neither' : 'wrong';
  if (!isAnswer(found)) return 'neither';
  const isSure = found.meant === undefined && !found.isQuoted && !found.isLoose;
  const does = holds.every((each) => patternOf(each).test(saidBy(found)));
  return does ? (isSure ? 'right' : 'meant') : isSure ? 'wrong' : 'neither';
}
