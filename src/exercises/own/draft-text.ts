// A question that is being written, as the browser keeps it: its form as text, and its strict reader.
import { kinds, type KindName } from '../../core/kinds.ts';
import { levels, topics, type Level, type Topic } from '../topics.ts';
import { freshDraft, type Draft } from './draft.ts';
import { LONGEST_FORMULA } from './formula.ts';
import { LIMITS, OWN_ID } from './own-question.ts';
import { unitIn } from './reckon.ts';

/** What is in the form, and the question of the bank that it changes. */
export interface Written {
  readonly draft: Draft;
  readonly editing?: string | undefined;
}

const LONGEST_TEXT = 20_000; // characters of a kept form; the fields at their limits have about 6,000
const LONGEST_FIELD = 200; // of a name, or of what a value takes
type Fields = Readonly<Record<string, unknown>>;

const isText = (given: unknown, most: number) => typeof given === 'string' && given.length <= most;
const isListOf = (given: unknown, most: number, is: (each: Fields) => boolean) =>
  Array.isArray(given) && given.length <= most && given.every((each) => is(Object(each) as Fields));
const isNumber = (given: unknown, most: number) => typeof given === 'number' && given >= 0 && given <= most;
const isWhole = (given: unknown, most: number) => isNumber(given, most) && Number.isInteger(given);
const isUnit = (given: unknown) => {
  const [kind, unit, more] = typeof given === 'string' ? given.split('|') : [];
  return kind !== undefined && unit !== undefined && more === undefined && Object.hasOwn(kinds, kind) && unitIn(kind as KindName, unit) !== undefined;
}; // prettier-ignore

/** Whether each field is what the form itself can hold. */
const holds: Readonly<Record<keyof Draft, (given: unknown) => boolean>> = {
  title: (given) => isText(given, LIMITS.title),
  topic: (given) => topics.includes(given as Topic),
  level: (given) => levels.includes(given as Level),
  wording: (given) => isText(given, LIMITS.wording),
  rests: (given) => isText(given, LIMITS.rests),
  values: (given) => isListOf(given, LIMITS.values, ({ name, unit, takes }) => isText(name, LONGEST_FIELD) && isUnit(unit) && isText(takes, LONGEST_FIELD)),
  asks: (given) => given === 'number' || given === 'choice',
  formula: (given) => isText(given, LONGEST_FORMULA),
  of: (given) => typeof given === 'string' && Object.hasOwn(kinds, given),
  digits: (given) => isWhole(given, LIMITS.digits),
  within: (given) => isNumber(given, LIMITS.within),
  whole: (given) => given === '' || given === 'up' || given === 'down',
  slips: (given) => isListOf(given, LIMITS.slips, ({ formula, say }) => isText(formula, LONGEST_FORMULA) && isText(say, LIMITS.say)),
  options: (given) => isListOf(given, LIMITS.options, ({ text, why }) => isText(text, LIMITS.say) && isText(why, LIMITS.say)),
  right: (given) => isWhole(given, LIMITS.options - 1),
}; // prettier-ignore
const names = Object.keys(freshDraft) as (keyof Draft)[];

export const writtenText = ({ draft, editing }: Written): string => JSON.stringify({ draft, editing });

/** Reads a kept form; undefined for what no form has written. */
export function readWritten(text: string): Written | undefined {
  if (text.length > LONGEST_TEXT) return undefined;
  try {
    const { draft: given, editing } = Object(JSON.parse(text)) as Fields;
    const draft = Object(given) as Fields;
    if (editing !== undefined && !(typeof editing === 'string' && OWN_ID.test(editing))) return undefined;
    if (!names.every((name) => Object.hasOwn(draft, name) && holds[name](draft[name]))) return undefined;
    return {
      draft: Object.fromEntries(names.map((name) => [name, draft[name]])) as unknown as Draft,
      editing,
    };
  } catch {
    return undefined;
  }
}
