// A shift as text for the browser: written whole, and read whole or not at all. What is special to a kind it reads itself.
import { jsonIn } from '../core/reading/data.ts';
import { also, called, list, readAs, number, oneOf, only, record, text, whole, closedRecord, withNoOther, type Reader } from '../core/reading/given.ts'; // prettier-ignore
import type { Logged } from '../core/shift/course.ts';
import { litres20, strength } from '../core/quantity.ts';
import type { KeptShift } from './kept.ts';
import { isSeed, ROUNDS_OF_SHIFT, SEEDS } from './seed.ts';

export const LONGEST_SHIFT_TEXT = 400_000; // characters of a text that is read
export const MOST_ACTIONS = 2000; // of one round
export const LONGEST_NOTE = 200; // characters

/** A number from each range, in a record of ranges. */
export const numbersWithin = <K extends string>(ranges: Readonly<Record<K, readonly [number, number]>>) =>
  Object.fromEntries(Object.entries<readonly [number, number]>(ranges).map(([key, [low, high]]) => [key, number(low, high)])) as Readonly<Record<K, Reader<number>>>; // prettier-ignore

/** An amount of at least so many litres. */
export const spiritFrom = (least: number) =>
  closedRecord({
    volume: readAs(number(least, 400_000), litres20),
    strength: readAs(number(0, 96), strength),
  });

/** Points that a round made. */
export const points = called('Points', whole(0, 100));
/** A mark of a valve or a dose. */
export const toMark = record({ to: whole(0, 10) });
/** A temperature that can be set by halves, °C. */
export const toHalves = ([low, high]: readonly [number, number]) =>
  record({ to: also(number(low, high), (to) => Number.isInteger(2 * to), `it can be from ${low} to ${high}, by halves.`) }); // prettier-ignore
/** What is done without anything more to say of it. */
export const plainly = record({});

/** What can be done in any shift: a note, and a reading whose marks are from `low` to `high`. */
export const doneInAny = (low: number, high: number) => ({
  note: record({ text: text(LONGEST_NOTE) }),
  read: record({ read: number(low, high), corrected: number(low, high) }),
});

/** What a kind of shift says of its text. */
export interface TextForm<K extends KeptShift<unknown, unknown, unknown>> {
  readonly format: string;
  readonly version: number;
  readonly longest: number;
  /** What an action may carry. */
  readonly actionKeys: readonly string[];
  readonly house: Reader<K['house']>;
  readonly action: Reader<K['log'][number]['action']>;
  readonly done: Reader<K['done'][number]>;
  /** What it keeps beside what all keep, each with its reader. */
  readonly more?: Readonly<Record<string, Reader<unknown>>>;
}

export const encodeKept = (form: Pick<TextForm<never>, 'format' | 'version'>, shift: object): string => JSON.stringify({ format: form.format, version: form.version, ...shift }); // prettier-ignore

const inOrder = (log: readonly Logged<unknown>[]) => log.every(({ step }, i) => i === 0 || step >= log[i - 1]!.step); // prettier-ignore

/** The whole of a shift's text, by what its kind says of it. */
function shiftOf<K extends KeptShift<unknown, unknown, unknown>>(form: TextForm<K>) {
  const step = whole(0, form.longest);
  const line = closedRecord({ step, action: withNoOther(form.actionKeys, form.action) });
  return closedRecord({
    format: oneOf([form.format]),
    version: oneOf([form.version]),
    seed: called('Its number', only<number>(isSeed, `it can be a whole number from ${SEEDS[0]} to ${SEEDS[1]}.`)), // prettier-ignore
    house: called('Its house', form.house),
    ...form.more,
    done: called('Its rounds', list(form.done, ROUNDS_OF_SHIFT)),
    log: called('Its log', also(list(line, MOST_ACTIONS), inOrder, 'its lines follow one another.')),
    step: called('Its time', step),
  });
}

/** Reads a shift's text: the shift, or the sentence why it cannot be read. */
export function decodeKept<K extends KeptShift<unknown, unknown, unknown>>(form: TextForm<K>, text: string): K | { readonly problem: string } {
  if (text.length > LONGEST_SHIFT_TEXT) return { problem: `That text is longer than any shift: ${text.length} characters.` };
  const data = jsonIn(text);
  const problems: string[] = [];
  const read = data === undefined ? void problems.push('It is no text of one.') : shiftOf(form)(data, 'The text', (problem) => problems.push(problem));
  if (read === undefined) return { problem: `A shift was kept here that cannot be read. ${problems[0]}` };
  const { format: _format, version: _version, ...shift } = read;
  return shift as unknown as K;
} // prettier-ignore
