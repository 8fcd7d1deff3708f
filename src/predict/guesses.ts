// The reader’s guesses as a text, and back.
import { isData, jsonIn } from '../core/reading/data.ts';
import { entriesIn, oneOf, only, record, written } from '../core/reading/given.ts';
import { directions, type Guess } from './judge.ts';

/** A guess that was given: what it was, and whether it was right in the house of that day. */
export interface GivenGuess {
  readonly guess: Guess;
  readonly right: boolean;
  /** Day, as 2026-05-14. */
  readonly day: string;
}
export type Guesses = Readonly<Record<string, GivenGuess>>;

const FORMAT = 'malt-spirit-handbook/guesses';
const VERSION = 1;
const LONGEST = 100_000; // characters that are read

export const encodeGuesses = (guesses: Guesses): string =>
  JSON.stringify({ format: FORMAT, version: VERSION, guesses });

const isGuess = (value: unknown): value is Guess =>
  (typeof value === 'number' && Number.isFinite(value)) || (directions as readonly unknown[]).includes(value);
const given = record({
  guess: only<Guess>(isGuess, 'it can be a number or a direction.'),
  right: oneOf([true, false]),
  day: written(/^\d{4}-\d\d-\d\d$/),
});

/** Reads guesses from their text; what cannot be read is left out. Undefined when the text is none. */
export function decodeGuesses(text: string): Guesses | undefined {
  const data = jsonIn(text, LONGEST);
  if (!isData(data) || data['format'] !== FORMAT || data['version'] !== VERSION) return undefined;
  return isData(data['guesses'])
    ? Object.fromEntries(entriesIn<GivenGuess>(data['guesses'], /^[a-z0-9-]{1,60}$/, given).sound)
    : undefined;
}
