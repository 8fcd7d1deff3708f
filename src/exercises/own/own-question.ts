// A question of a trainer's own, as it is written and kept: wording, named values, a formula or choices; and its strict reader.
// Its formula is read by a grammar and never run as code; every draw that its values allow is tried before it is kept; what may be meant is a doubt (doubts.ts) and no refusal. A changed question gets another id.
// Tested by tests/exercises/own-question.test.ts.
import { kinds, type KindName } from '../../core/kinds.ts';
import { shown } from '../../core/shown.ts';
import { levels, topics, type Level, type Topic } from '../topics.ts';
import type { Whole } from '../question.ts';
import { oneLine } from './one-line.ts';
import { LONGEST_FORMULA, NAME, isFunction } from './formula.ts';
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
  readonly whole?: Whole;
  readonly slips: readonly OwnSlip[];
}
export interface OwnChoices extends Written {
  readonly asks: 'choice';
  readonly options: readonly OwnChoice[];
}
export type OwnQuestion = OwnNumber | OwnChoices;

export const LIMITS = {
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

const isRecord = (given: unknown): given is Record<string, unknown> =>
  typeof given === 'object' && given !== null && !Array.isArray(given);

/** Thrown by a piece that cannot be read; leaves the reader as a sentence. */
class Damaged extends Error {}
const fail = (what: string): never => {
  throw new Damaged(what);
};
function textIn(of: Record<string, unknown>, key: string, most: number, isNeeded = true): string {
  const given = Object.hasOwn(of, key) ? of[key] : undefined;
  if (typeof given !== 'string' || given.length > most || oneLine(given) !== given)
    fail(`“${key}” is no line of at most ${most} signs`);
  if (isNeeded && given === '') fail(`“${key}” is empty`);
  return given as string;
}
function numberIn(of: Record<string, unknown>, key: string, low: number, high: number): number {
  const given = Object.hasOwn(of, key) ? of[key] : undefined;
  if (typeof given !== 'number' || !(given >= low && given <= high))
    fail(`“${key}” is no number from ${low} to ${high}`);
  return given as number;
}
function listIn(of: Record<string, unknown>, key: string, fewest: number, most: number): readonly unknown[] {
  const given = Object.hasOwn(of, key) ? of[key] : undefined;
  if (!Array.isArray(given) || given.length < fewest || given.length > most)
    fail(`“${key}” is no list of ${fewest} to ${most}`);
  return given as readonly unknown[];
}
const oneOf = <T>(list: readonly T[], given: unknown, key: string): T =>
  list.includes(given as T) ? (given as T) : fail(`“${key}” is none of those that there are`);
const record = (given: unknown, what: string): Record<string, unknown> =>
  isRecord(given) ? given : fail(`${what} is not written as one`);

const FARTHEST = 1e9; // a number of a value
function valueRead(given: unknown): Value {
  const of = record(given, 'a value');
  const name = textIn(of, 'name', 24);
  if (!NAME.test(name) || isFunction(name)) fail(`a value cannot be called “${shown(name)}”`);
  const kind = oneOf(Object.keys(kinds) as KindName[], of['kind'], 'kind');
  const unit = textIn(of, 'unit', 24, false);
  if (!unitIn(kind, unit)) fail(`${name} cannot be in “${shown(unit)}”`);
  const takes = record(of['takes'], 'what a value takes');
  if (Object.hasOwn(takes, 'list')) {
    const list = listIn(takes, 'list', 1, LIMITS.list).map((_, i, all) =>
      numberIn({ list: all[i] }, 'list', -FARTHEST, FARTHEST),
    );
    return { name, kind, unit, takes: { list } };
  }
  const [from, to] = [
    numberIn(takes, 'from', -FARTHEST, FARTHEST),
    numberIn(takes, 'to', -FARTHEST, FARTHEST),
  ];
  return { name, kind, unit, takes: { from, to, step: numberIn(takes, 'step', 1e-6, FARTHEST) } };
}

/** Reads a question of one's own from what a file, a link or the browser holds; a sentence when it is damaged. */
export function readOwnQuestion(given: unknown): OwnQuestion | string {
  try {
    const of = record(given, 'a question');
    const id = textIn(of, 'id', 20);
    if (!OWN_ID.test(id)) fail('“id” is not that of a question of one’s own');
    const values = listIn(of, 'values', 0, LIMITS.values).map(valueRead);
    if (new Set(values.map(({ name }) => name)).size !== values.length) fail('two values have one name');
    const written = {
      id,
      title: textIn(of, 'title', LIMITS.title),
      topic: oneOf(topics, of['topic'], 'topic'),
      level: oneOf(levels, of['level'], 'level'),
      wording: textIn(of, 'wording', LIMITS.wording),
      values,
      rests: textIn(of, 'rests', LIMITS.rests, false),
    };
    if (of['asks'] === 'choice')
      return {
        ...written,
        asks: 'choice',
        options: listIn(of, 'options', 2, LIMITS.options).map((each) => {
          const option = record(each, 'an option');
          return {
            text: textIn(option, 'text', LIMITS.say),
            why: textIn(option, 'why', LIMITS.say, false),
            isRight: option['isRight'] === true,
          };
        }),
      };
    if (of['asks'] !== 'number') fail('“asks” is neither a number nor a choice');
    const whole =
      of['whole'] === undefined ? undefined : oneOf(['up', 'down'] as const, of['whole'], 'whole');
    return {
      ...written,
      asks: 'number',
      formula: textIn(of, 'formula', LONGEST_FORMULA),
      of: oneOf(Object.keys(kinds) as KindName[], of['of'], 'of'),
      digits: Math.round(numberIn(of, 'digits', 0, LIMITS.digits)),
      within: numberIn(of, 'within', 0, LIMITS.within),
      ...(whole ? { whole } : {}),
      slips: listIn(of, 'slips', 0, LIMITS.slips).map((each) => {
        const slip = record(each, 'a mistake');
        return { formula: textIn(slip, 'formula', LONGEST_FORMULA), say: textIn(slip, 'say', LIMITS.say) };
      }),
    };
  } catch (problem) {
    if (problem instanceof Damaged) return `A question of your own cannot be read: ${problem.message}.`;
    throw problem;
  }
}

const GRID_HAIR = 1e-9;
/** Every number that a value may take, in its own unit, in order; none where the range is upside down. */
export function numbersOf(takes: Takes): readonly number[] {
  if ('list' in takes) return [...new Set(takes.list)];
  const steps = Math.floor((takes.to - takes.from) / takes.step + GRID_HAIR);
  if (!(steps >= 0 && steps < 100_000)) return [];
  return Array.from({ length: steps + 1 }, (_, i) => Number((takes.from + i * takes.step).toFixed(9)));
}

/** A name in braces, as it stands in a text. */
export const HOLE = /\{([^{}]*)\}/g;
/** The names in the braces of a text. */
export const holesIn = (text: string): readonly string[] => [...text.matchAll(HOLE)].map(([, name]) => name!);
