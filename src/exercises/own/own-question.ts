// A question of a trainer's own, as it is written and kept: wording, named values, a formula or choices; and its strict reader.
// Its formula is read by a grammar and never run as code; every draw that its values allow is tried before it is kept; what may be meant is a doubt (doubts.ts) and no refusal. A changed question gets another id.
// Tested by tests/exercises/own-question.test.ts.
import { kinds, type KindName } from '../../core/kinds.ts';
import { isData } from '../../core/reading/data.ts';
import { also, list, number, oneOf, record, text, type Reader } from '../../core/reading/given.ts';
import { levels, topics, type Level, type Topic } from '../topics.ts';
import type { WholeRounding } from '../question.ts';
import { oneLine } from './one-line.ts';
import { LONGEST_FORMULA, VALUE_NAME, isFunction } from './formula.ts';
import { unitIn } from './reckon.ts';

/** The numbers that a value may take, in its own unit: from, to and step, or a list. */
export type Takes =
  | { readonly from: number; readonly to: number; readonly step: number }
  | { readonly list: readonly number[] };

/** A value named in the wording as {malt}. */
export interface Value {
  readonly name: string;
  readonly kind: KindName;
  readonly unit: string;
  readonly takes: Takes;
}
/** A known mistake: the formula that leads to its number, and what is said to whoever made it. */
export interface OwnSlip {
  readonly formula: string;
  readonly say: string;
}
export interface OwnChoice {
  readonly text: string;
  readonly why: string;
  readonly isRight: boolean;
}
interface Written {
  /** Its name in sheets; never changed, as what it draws hangs on it. */
  readonly id: string;
  readonly title: string;
  readonly topic: Topic;
  readonly level: Level;
  readonly wording: string;
  readonly values: readonly Value[];
  /** What the question rests on, in the trainer's own words: a book, the site's own procedure. */
  readonly rests: string;
}
export interface OwnNumber extends Written {
  readonly asks: 'number';
  readonly formula: string;
  /** Of what kind the answer is; the formula gives it in the unit that the book has for the kind. */
  readonly of: KindName;
  readonly digits: number;
  /** Largest difference that counts as right, in per cent of the answer. */
  readonly within: number;
  readonly whole?: WholeRounding;
  readonly slips: readonly OwnSlip[];
}
export interface OwnChoices extends Written {
  readonly asks: 'choice';
  readonly options: readonly OwnChoice[];
}
export type OwnQuestion = OwnNumber | OwnChoices;

export const OWN_QUESTION_LIMITS = {
  title: 80,
  wording: 600,
  say: 200,
  rests: 120,
  values: 8,
  list: 60,
  slips: 6,
  options: 6,
  digits: 6,
  within: 30,
} as const;
export const OWN_ID = /^own-[a-z0-9]{4,16}$/;

const line = (most: number, fewest = 1) =>
  text(
    most,
    (given) => given.length >= fewest && oneLine(given) === given,
    `it can be a line of ${fewest} to ${most} characters.`,
  );
const FARTHEST = 1e9; // a number of a value
const kindNames = Object.keys(kinds) as KindName[];
const far = number(-FARTHEST, FARTHEST);
const range = record({ from: far, to: far, step: number(1e-6, FARTHEST) });
const listed = record({ list: list(far, OWN_QUESTION_LIMITS.list, 1) });
const takes: Reader<Takes> = (given, what, tell) =>
  isData(given) && Object.hasOwn(given, 'list') ? listed(given, what, tell) : range(given, what, tell);
const value = also(
  record({
    name: text(24, (name) => VALUE_NAME.test(name) && !isFunction(name), 'a value cannot be called so.'),
    kind: oneOf(kindNames),
    unit: line(24, 0),
    takes,
  }),
  ({ kind, unit }) => unitIn(kind, unit) !== undefined,
  'it can be in a unit of its kind.',
);
const written = record({
  id: text(20, (id) => OWN_ID.test(id), 'it can be that of a question of one’s own.'),
  title: line(OWN_QUESTION_LIMITS.title),
  topic: oneOf(topics),
  level: oneOf(levels),
  wording: line(OWN_QUESTION_LIMITS.wording),
  values: also(
    list(value, OWN_QUESTION_LIMITS.values),
    (values) => new Set(values.map(({ name }) => name)).size === values.length,
    'each value can have a name of its own.',
  ),
  rests: line(OWN_QUESTION_LIMITS.rests, 0),
  asks: oneOf(['number', 'choice']),
});
const option = record({
  text: line(OWN_QUESTION_LIMITS.say),
  why: line(OWN_QUESTION_LIMITS.say, 0),
  isRight: (given) => given === true,
});
const choices = record({ options: list(option, OWN_QUESTION_LIMITS.options, 2) });
const slip = record({ formula: line(LONGEST_FORMULA), say: line(OWN_QUESTION_LIMITS.say) });
const asked = record({
  formula: line(LONGEST_FORMULA),
  of: oneOf(kindNames),
  digits: number(0, OWN_QUESTION_LIMITS.digits),
  within: number(0, OWN_QUESTION_LIMITS.within),
});
const rounded = record({}, { whole: oneOf(['up', 'down']) });
const slips = record({ slips: list(slip, OWN_QUESTION_LIMITS.slips) });

/**
 * Reads a question of one's own from what a file, a link or the browser holds; a sentence when it is damaged. Its fields
 * keep their order, as the short name of a sheet is made from their text.
 */
export function readOwnQuestion(given: unknown): OwnQuestion | string {
  const problems: string[] = [];
  const read = <T>(reader: Reader<T>) => reader(given, '', (problem) => problems.push(problem));
  const [head, asks] = [read(written), isData(given) ? given['asks'] : undefined];
  if (asks === 'choice') {
    const rest = read(choices);
    if (head && rest) return { ...head, asks, ...rest };
  } else if (asks === 'number') {
    const [sum, up, known] = [read(asked), read(rounded), read(slips)];
    if (head && sum && up && known)
      return { ...head, asks, ...sum, digits: Math.round(sum.digits), ...up, ...known };
  }
  return `A question of your own cannot be read: ${problems[0]}`;
}

const GRID_HAIR = 1e-9;
/** Every number that a value may take, in its own unit, in order; none where the range is upside down. */
export function numbersTaken(takes: Takes): readonly number[] {
  if ('list' in takes) return [...new Set(takes.list)];
  const steps = Math.floor((takes.to - takes.from) / takes.step + GRID_HAIR);
  if (!(steps >= 0 && steps < 100_000)) return [];
  return Array.from({ length: steps + 1 }, (_, i) => Number((takes.from + i * takes.step).toFixed(9)));
}

/** A name in braces, as it stands in a text. */
export const NAME_IN_BRACES = /\{([^{}]*)\}/g;
/** The names in the braces of a text. */
export const holesIn = (text: string): readonly string[] =>
  [...text.matchAll(NAME_IN_BRACES)].map(([, name]) => name!);
