// The pace that a question names: a mash, a week, a year, a tonne.
import type { LedgerPace } from '../core/line/ledger.ts';

const PACES: readonly (readonly [RegExp, LedgerPace])[] = [
  [/\b(?:a|per|each|every|one|in a|this|last) year\b|\byearly\b|\bannual(?:ly)?\b|\bper annum\b/i, 'year'],
  [/\b(?:a|per|each|every|one|this) week\b|\bweekly\b/i, 'week'],
  [/\b(?:a|per|each|every|one|from a) (?:mash|batch|brew)\b/i, 'mash'],
  [/\b(?:a|per|each|every|one) tonn?e?\b/i, 'tonne'],
];
/** The pace at which amounts are wanted; nothing where none is named. */
export const paceIn = (text: string): LedgerPace | undefined => PACES.find(([says]) => says.test(text))?.[1];
