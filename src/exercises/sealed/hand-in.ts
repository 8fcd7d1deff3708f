// Answers that are handed in sealed: the text that a trainee copies, and what is in it once the trainer's key has opened it.
import { isData, jsonIn, ownValue } from '../../core/reading/data.ts';
import { list, number, quietly, record, text, whole, written } from '../../core/reading/given.ts';
import { quotedGiven, UNSEEN } from '../../core/quoted-given.ts';
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
    : `“${quotedGiven(text)}” is not a whole sealed hand-in; ask for it once more.`;
}

/** What goes into the seal. */
export const handInInside = (handIn: HandIn): string => JSON.stringify({ version: VERSION, handIn });

const time = number(0, LAST_TIME);
const line = (most: number) => text(most, (given) => given.replace(UNSEEN, '') === given);
const isDay = (day: string) => /^\d{4}-\d{2}-\d{2}$/.test(day) && !Number.isNaN(Date.parse(day));
const inside = record({
  sheet: text(12),
  version: whole(1, 99),
  name: line(LONGEST_NAME),
  answers: list(line(LONGEST_ANSWER), MOST_ANSWERS, 1),
  begun: time,
  handedIn: time,
  day: text(10, isDay),
  attempt: whole(1, MOST_ATTEMPTS),
  seen: written(/^[\w-]{16}$/),
});

/** Reads what was in the seal: anyone who has the sheet can write one, so it is read as strictly as any other. */
export function readHandIn(opened: string, sheet: string): HandIn | string {
  const damaged = 'A hand-in opened, but what is in it cannot be read.';
  const outer = jsonIn(opened);
  if (!isData(outer) || outer['version'] !== VERSION) return damaged;
  const given = ownValue(outer, 'handIn');
  if (!isData(given) || ownValue(given, 'sheet') !== sheet)
    return 'A hand-in says outside that it is of one sheet and inside of another; it is not taken.';
  return quietly<HandIn>(inside, given) ?? damaged;
}
