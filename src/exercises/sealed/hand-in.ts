// Answers that are handed in sealed: the text that a trainee copies, and what is in it once the trainer's key has opened it.
import { shown, UNSEEN } from '../../core/shown.ts';
import { MOST_ATTEMPTS } from '../result.ts';

export interface HandIn {
  /** The sheet that it answers; said outside the seal as well, and held against it. */
  readonly sheet: string;
  readonly version: number;
  readonly name: string;
  readonly answers: readonly string[];
  /** When it was begun and handed in, in ms, by the trainee's machine. */
  readonly begun: number;
  readonly handedIn: number;
  /** The day that machine had then: 2026-05-14. */
  readonly day: string;
  readonly attempt: number;
  /** A code of the questions as they stood on that machine. */
  readonly seen: string;
}

const FORM = 'hs1'; // what the text begins with: hand-in, sealed, the first form
const WRITTEN = /^hs1-([0-9a-z]{12})-([\w-]{100,60000})$/;
const VERSION = 1;
const LONGEST_NAME = 60;
const LONGEST_ANSWER = 200; // as a field of an answer takes
const MOST_ANSWERS = 60;
const LAST_TIME = 8.64e15; // ms, the last day that a clock knows

/** The text to hand in, from the sheet and the seal in base64url. */
export const handInText = (sheet: string, seal: string): string => `${FORM}-${sheet}-${seal}`;

/** The sheet and the seal of such a text; a sentence when it is none. */
export function readHandInText(text: string): { readonly sheet: string; readonly seal: string } | string {
  const found = WRITTEN.exec(text.trim());
  return found
    ? { sheet: found[1]!, seal: found[2]! }
    : `“${shown(text)}” is not a whole sealed hand-in; ask for it once more.`;
}

/** What goes into the seal. */
export const handInInside = (handIn: HandIn): string => JSON.stringify({ version: VERSION, handIn });

const isTime = (given: unknown): given is number =>
  typeof given === 'number' && given >= 0 && given <= LAST_TIME;
const isLine = (given: unknown, most: number): given is string =>
  typeof given === 'string' && given.length <= most && given.replace(UNSEEN, '') === given;

/** Reads what was in the seal: anyone who has the sheet can write one, so it is read as strictly as any other. */
export function readHandIn(text: string, sheet: string): HandIn | string {
  const damaged = 'A hand-in opened, but what is in it cannot be read.';
  try {
    const outer = Object(JSON.parse(text)) as Readonly<Record<string, unknown>>;
    const of = Object(outer['handIn']) as Partial<Record<keyof HandIn, unknown>>;
    const { version, name, answers, begun, handedIn, day, attempt, seen } = of;
    if (outer['version'] !== VERSION) return damaged;
    if (of.sheet !== sheet) return 'A hand-in says outside that it is of one sheet and inside of another; it is not taken.';
    const isSound =
      Number.isInteger(version) && (version as number) >= 1 && (version as number) <= 99 &&
      isLine(name, LONGEST_NAME) &&
      Array.isArray(answers) && answers.length >= 1 && answers.length <= MOST_ANSWERS &&
      answers.every((answer) => isLine(answer, LONGEST_ANSWER)) &&
      isTime(begun) && isTime(handedIn) &&
      typeof day === 'string' && /^\d{4}-\d{2}-\d{2}$/.test(day) && !Number.isNaN(Date.parse(day)) &&
      Number.isInteger(attempt) && (attempt as number) >= 1 && (attempt as number) <= MOST_ATTEMPTS &&
      typeof seen === 'string' && /^[\w-]{16}$/.test(seen);
    if (!isSound) return damaged;
    return { sheet, version: version as number, name, answers: answers as readonly string[], begun, handedIn, day, attempt: attempt as number, seen };
  } catch {
    return damaged;
  }
} // prettier-ignore
