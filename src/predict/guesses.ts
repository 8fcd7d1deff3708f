// The reader’s guesses as a text, and back.
import { directions, type Guess } from './judge.ts';

/** A guess that was given: what it was, and whether it was right in the house of that day. */
export interface Given {
  readonly guess: Guess;
  readonly right: boolean;
  /** Day, as 2026-05-14. */
  readonly day: string;
}
export type Guesses = Readonly<Record<string, Given>>;

const FORMAT = 'malt-spirit-handbook/guesses';
const VERSION = 1;
const LONGEST = 100_000; // characters that are read

export const encodeGuesses = (guesses: Guesses): string =>
  JSON.stringify({ format: FORMAT, version: VERSION, guesses });

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const isGuess = (value: unknown): value is Guess =>
  (typeof value === 'number' && Number.isFinite(value)) || (directions as readonly unknown[]).includes(value);

function givenIn(value: unknown): Given | undefined {
  if (!isRecord(value)) return undefined;
  const { guess, right, day } = value;
  const isWhole =
    isGuess(guess) && typeof right === 'boolean' && typeof day === 'string' && /^\d{4}-\d\d-\d\d$/.test(day);
  return isWhole ? { guess, right, day } : undefined;
}

/** Reads guesses from their text; what cannot be read is left out. Undefined when the text is none. */
export function decodeGuesses(text: string): Guesses | undefined {
  if (text.length > LONGEST) return undefined;
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return undefined;
  }
  if (
    !isRecord(data) ||
    data['format'] !== FORMAT ||
    data['version'] !== VERSION ||
    !isRecord(data['guesses'])
  )
    return undefined;
  const entries = Object.entries(data['guesses']).flatMap(([id, value]) => {
    const given = /^[a-z0-9-]{1,60}$/.test(id) ? givenIn(value) : undefined;
    return given ? [[id, given] as const] : [];
  });
  return Object.fromEntries(entries);
}
