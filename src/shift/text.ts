// A shift as text for the browser: written whole, and read whole or not at all. What is special to a kind it reads itself.
import { isData, ownValue, type Data } from '../core/reading/data.ts';
import { quotedGiven } from '../core/quoted-given.ts';
import type { Logged, LogNote, LogRead } from '../core/shift/course.ts';
import { litres20, strength, type Spirit } from '../core/quantity.ts';
import { plainName } from '../house/name.ts';
import type { KeptShift } from './kept.ts';
import { isSeed, ROUNDS_OF_SHIFT } from './seed.ts';

export const LONGEST_SHIFT_TEXT = 400_000; // characters of a text that is read
export const MOST_ACTIONS = 2000; // of one round
export const LONGEST_NOTE = 200; // characters

/** Why a text cannot be read, a sentence. */
export class Unread extends Error {}

/** A record that has no key but these. */
export function givenRecord(what: string, data: unknown, keys: readonly string[]): Data {
  if (!isData(data)) throw new Unread(`${what} is “${quotedGiven(data)}”.`);
  const odd = Object.keys(data).find((key) => !keys.includes(key));
  if (odd !== undefined) throw new Unread(`${what} has “${quotedGiven(odd)}”, which is not known.`);
  return data;
}
/** A number from `low` to `high`. */
export function givenNumber(
  what: string,
  given: unknown,
  low: number,
  high: number,
  isWhole = false,
): number {
  if (typeof given === 'number' && given >= low && given <= high && (!isWhole || Number.isInteger(given)))
    return given === 0 ? 0 : given;
  throw new Unread(`${what} is “${quotedGiven(given)}”; it can be ${isWhole ? 'a whole number ' : ''}from ${low} to ${high}.`); // prettier-ignore
}
export function givenList(what: string, given: unknown, most: number): readonly unknown[] {
  if (Array.isArray(given) && given.length <= most) return given;
  throw new Unread(`${what} cannot be read, or is longer than ${most}.`);
}

/** A record of numbers, each with its range. */
export function givenNumbers<K extends string>(what: string, given: unknown, ranges: Readonly<Record<K, readonly [number, number]>>): Record<K, number> {
  const keys = Object.keys(ranges) as K[];
  const data = givenRecord(what, given, keys);
  return Object.fromEntries(keys.map((key) => [key, givenNumber(`${what}, ${key},`, ownValue(data, key), ranges[key][0], ranges[key][1])])) as Record<K, number>;
} // prettier-ignore

export function readSpirit(what: string, given: unknown, least: number): Spirit {
  const data = givenRecord(what, given, ['volume', 'strength']);
  return {
    volume: litres20(givenNumber(`${what}, litres`, ownValue(data, 'volume'), least, 400_000)),
    strength: strength(givenNumber(`${what}, strength`, ownValue(data, 'strength'), 0, 96)),
  };
}
export function readName(given: unknown): string {
  if (typeof given === 'string' && given !== '' && plainName(given) === given) return given;
  throw new Unread(`The house is called “${quotedGiven(given)}”.`);
}

/** A note or a reading, whose marks are from `low` to `high`; undefined for any other action. */
export function readCommon(
  data: Data,
  [low, high]: readonly [number, number],
): LogNote | LogRead | undefined {
  const text = ownValue(data, 'text');
  if (ownValue(data, 'do') === 'note' && typeof text === 'string' && text.length <= LONGEST_NOTE) return { do: 'note', text }; // prettier-ignore
  if (ownValue(data, 'do') !== 'read') return undefined;
  return {
    do: 'read',
    read: givenNumber('A reading', ownValue(data, 'read'), low, high),
    corrected: givenNumber('A reading at 20 °C', ownValue(data, 'corrected'), low, high),
  };
}

/** What a kind of shift says of its text. */
export interface TextForm<K extends KeptShift<unknown, unknown, unknown>> {
  readonly format: string;
  readonly version: number;
  readonly longest: number;
  /** What an action may carry. */
  readonly actionKeys: readonly string[];
  readonly house: (given: unknown) => K['house'];
  readonly action: (data: Data) => K['log'][number]['action'] | undefined;
  readonly done: (given: unknown) => K['done'][number];
  /** What it keeps beside what all keep, each with its reader. */
  readonly more?: Readonly<Record<string, (given: unknown) => unknown>>;
}

export const encodeKept = (form: Pick<TextForm<never>, 'format' | 'version'>, shift: object): string => JSON.stringify({ format: form.format, version: form.version, ...shift }); // prettier-ignore

/** Reads a shift's text: the shift, or the sentence why it cannot be read. */
export function decodeKept<K extends KeptShift<unknown, unknown, unknown>>(form: TextForm<K>, text: string): K | { readonly problem: string } {
  if (text.length > LONGEST_SHIFT_TEXT) return { problem: `That text is longer than any shift: ${text.length} characters.` };
  const readAction = (given: unknown): Logged<K['log'][number]['action']> => {
    const line = givenRecord('A line of the log', given, ['step', 'action']);
    const step = givenNumber('The time of a line', ownValue(line, 'step'), 0, form.longest, true);
    const data = givenRecord('What was done', ownValue(line, 'action'), form.actionKeys);
    const action = form.action(data);
    if (!action) throw new Unread(`“${quotedGiven(ownValue(data, 'do'))}” is nothing that can be done in this shift.`);
    return { step, action };
  };
  try {
    const more = Object.entries(form.more ?? {});
    const data = givenRecord('The text', JSON.parse(text), ['format', 'version', 'seed', 'house', 'done', 'log', 'step', ...more.map(([key]) => key)]);
    if (ownValue(data, 'format') !== form.format) throw new Unread('It is none.');
    if (ownValue(data, 'version') !== form.version) throw new Unread(`Its version is “${quotedGiven(ownValue(data, 'version'))}”; this handbook reads version ${form.version}.`);
    const seed = ownValue(data, 'seed');
    if (!isSeed(seed)) throw new Unread(`Its number is “${quotedGiven(seed)}”.`);
    const log = givenList('The log', ownValue(data, 'log'), MOST_ACTIONS).map(readAction);
    if (log.some(({ step }, i) => i > 0 && step < log[i - 1]!.step)) throw new Unread('Its log is out of order.');
    return {
      seed,
      house: form.house(ownValue(data, 'house')),
      ...Object.fromEntries(more.map(([key, read]) => [key, read(ownValue(data, key))])),
      done: givenList('The rounds', ownValue(data, 'done'), ROUNDS_OF_SHIFT).map(form.done),
      log,
      step: givenNumber('The time', ownValue(data, 'step'), 0, form.longest, true),
    } as unknown as K;
  } catch (error) {
    const why = error instanceof Unread ? error.message : 'It is no text of one.';
    return { problem: `A shift was kept here that cannot be read. ${why}` };
  }
} // prettier-ignore
