// A trainee's answers to a trainer's own sheet while they are on their way, as this browser keeps them.
import { jsonIn } from '../core/reading/data.ts';
import { list, number, oneOf, quietly, record, text, whole } from '../core/reading/given.ts';
import { MOST_ATTEMPTS } from '../exercises/result.ts';

export interface TakenOwnSheet {
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

export const freshTaken = (count: number, begun = 0): TakenOwnSheet => ({
  name: '',
  answers: Array.from({ length: count }, () => ''),
  done: Array.from({ length: count }, () => false),
  begun,
  handedIn: 0,
});

const time = number(0, 8.64e15); // the last day that a clock knows

/** The answers that a text keeps; undefined when it is damaged. */
export function readTaken(kept: string, count: number): TakenOwnSheet | undefined {
  const taken = record(
    {
      name: text(Infinity),
      answers: list(text(Infinity), count, count),
      done: list(oneOf([true, false]), count, count),
      begun: time,
      handedIn: time,
    },
    { attempt: whole(1, MOST_ATTEMPTS) },
  );
  return quietly<TakenOwnSheet>(taken, jsonIn(kept));
}

/** The day of a time, by this machine's clock: 2026-05-14. */
export function localDay(time: number): string {
  const at = new Date(time);
  return [at.getFullYear(), at.getMonth() + 1, at.getDate()].map((part) => String(part).padStart(2, '0')).join('-'); // prettier-ignore
}

/** A time of day: 9:05. */
export function timeText(time: number): string {
  const at = new Date(time);
  return `${at.getHours()}:${String(at.getMinutes()).padStart(2, '0')}`;
}
