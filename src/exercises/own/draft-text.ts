// A question that is being written, as the browser keeps it: its form as text, and its strict reader.
import { jsonIn } from '../../core/reading/data.ts';
import {
  list,
  number,
  oneOf,
  quietly,
  record,
  text,
  whole,
  written,
  type Reader,
} from '../../core/reading/given.ts';
import { kinds, type KindName } from '../../core/kinds.ts';
import { levels, topics } from '../topics.ts';
import type { Draft } from './draft.ts';
import { LONGEST_FORMULA } from './formula.ts';
import { OWN_QUESTION_LIMITS, OWN_ID } from './own-question.ts';
import { unitIn } from './reckon.ts';

/** What is in the form, and the question of the bank that it changes. */
export interface WrittenDraft {
  readonly draft: Draft;
  readonly editing?: string | undefined;
}

const LONGEST_TEXT = 20_000; // characters of a kept form; the fields at their limits have about 6,000
const LONGEST_FIELD = 200; // of a name, or of what a value takes
const isUnit = (given: string) => {
  const [kind, unit, more] = given.split('|');
  return kind !== undefined && unit !== undefined && more === undefined && Object.hasOwn(kinds, kind) && unitIn(kind as KindName, unit) !== undefined;
}; // prettier-ignore

/** What the form itself can hold. */
const form = record({
  title: text(OWN_QUESTION_LIMITS.title),
  topic: oneOf(topics),
  level: oneOf(levels),
  wording: text(OWN_QUESTION_LIMITS.wording),
  rests: text(OWN_QUESTION_LIMITS.rests),
  values: list(record({ name: text(LONGEST_FIELD), unit: text(LONGEST_FIELD, isUnit), takes: text(LONGEST_FIELD) }), OWN_QUESTION_LIMITS.values),
  asks: oneOf(['number', 'choice']),
  formula: text(LONGEST_FORMULA),
  of: oneOf(Object.keys(kinds) as KindName[]),
  digits: whole(0, OWN_QUESTION_LIMITS.digits),
  within: number(0, OWN_QUESTION_LIMITS.within),
  whole: oneOf(['', 'up', 'down']),
  slips: list(record({ formula: text(LONGEST_FORMULA), say: text(OWN_QUESTION_LIMITS.say) }), OWN_QUESTION_LIMITS.slips),
  options: list(record({ text: text(OWN_QUESTION_LIMITS.say), why: text(OWN_QUESTION_LIMITS.say) }), OWN_QUESTION_LIMITS.options),
  right: whole(0, OWN_QUESTION_LIMITS.options - 1),
} satisfies { readonly [K in keyof Draft]: Reader<Draft[K]> }); // prettier-ignore
const kept = record({ draft: form }, { editing: written(OWN_ID) });

export const draftText = ({ draft, editing }: WrittenDraft): string => JSON.stringify({ draft, editing });

/** Reads a kept form; undefined for what no form has written. */
export const readDraft = (given: string): WrittenDraft | undefined =>
  quietly(kept, jsonIn(given, LONGEST_TEXT));
