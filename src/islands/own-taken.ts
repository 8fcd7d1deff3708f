// A trainee's answers to a trainer's own sheet while they are on their way, as this browser keeps them.
import { MOST_ATTEMPTS } from '../exercises/result.ts';

export interface Taken {
  readonly name: string;
  readonly answers: readonly string[];
  /** Questions that were marked one by one: their answers stand. */
  readonly done: readonly boolean[];
  /** When it was begun and handed in, in ms; 0 when it is not yet. */
  readonly begun: number;
  readonly handedIn: number;
  /** 1 for the first time; left out it is that. */
  readonly attempt?: number;
}

export const freshTaken = (count: number, begun = 0): Taken => ({
  name: '',
  answers: Array.from({ length: count }, () => ''),
  done: Array.from({ length: count }, () => false),
  begun,
  handedIn: 0,
});

const isTime = (given: unknown): given is number =>
  typeof given === 'number' && given >= 0 && given <= 8.64e15; // the last day that a clock knows

/** The answers that a text keeps; undefined when it is damaged. */
export function readTaken(text: string, count: number): Taken | undefined {
  try {
    const { name, answers, done, begun, handedIn, attempt } = (JSON.parse(text) ?? {}) as Partial<Taken>;
    const isWhole =
      typeof name === 'string' &&
      [answers, done].every((list) => Array.isArray(list) && list.length === count) &&
      answers!.every((each) => typeof each === 'string') &&
      done!.every((each) => typeof each === 'boolean') &&
      isTime(begun) &&
      isTime(handedIn) &&
      (attempt === undefined || (Number.isInteger(attempt) && attempt >= 1 && attempt <= MOST_ATTEMPTS));
    return isWhole
      ? { name, answers: answers!, done: done!, begun, handedIn, ...(attempt === undefined ? {} : { attempt }) }
      : undefined; // prettier-ignore
  } catch {
    return undefined;
  }
}

/** The day of a time, by this machine's clock: 2026-05-14. */
export function dayOf(time: number): string {
  const at = new Date(time);
  return [at.getFullYear(), at.getMonth() + 1, at.getDate()].map((part) => String(part).padStart(2, '0')).join('-'); // prettier-ignore
}

/** A time of day: 9:05. */
export function timeText(time: number): string {
  const at = new Date(time);
  return `${at.getHours()}:${String(at.getMinutes()).padStart(2, '0')}`;
}
