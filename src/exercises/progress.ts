// What a reader has practised: the standing of each kind, and a log for the record sheet; and its text form.
import { isData, jsonIn } from '../core/reading/data.ts';
import { entriesIn, oneOf, quietly, record, text, whole, written } from '../core/reading/given.ts';
import { type SpacingState, standingAfter } from './spacing.ts';
import type { MarkVerdict } from './verdict.ts';

export interface Practised {
  readonly kind: string;
  /** Day, as 2026-05-14. */
  readonly day: string;
  readonly verdict: MarkVerdict;
}
export interface Progress {
  readonly standing: Readonly<Record<string, SpacingState>>;
  readonly log: readonly Practised[];
  /** Answers in all, of which the log keeps the last: the next question's numbers are drawn by it. */
  readonly answers: number;
}
export const noProgress: Progress = { standing: {}, log: [], answers: 0 };

const FORMAT = 'malt-spirit-handbook/practice';
const VERSION = 1;
const LONGEST_LOG = 2000; // answers kept; the oldest go first
const MOST_ANSWERS = 1e9; // more than anyone gives
const LONGEST = 1_000_000; // characters that are read
const MS_IN_DAY = 86_400_000;
const LAST_DUE = 1e6; // number of the last day on which a kind can fall due, of the year 4707
const LAST_DAY = LAST_DUE - 1000; // number of the last day on which an answer can be given

/** The number of a day written as 2026-05-14. */
export const dayNumber = (day: string): number => Math.round(Date.parse(`${day}T00:00:00Z`) / MS_IN_DAY);

const outcome = (verdict: MarkVerdict) =>
  verdict === 'right' ? 'right' : verdict === 'rounded' || verdict === 'unit' ? 'nearly' : 'missed';

/** Progress after an answer. One that was not given or cannot be read changes nothing. */
export function practised(progress: Progress, kind: string, verdict: MarkVerdict, day: string): Progress {
  if (verdict === 'unanswered' || verdict === 'unreadable') return progress;
  return {
    standing: {
      ...progress.standing,
      [kind]: standingAfter(
        Object.hasOwn(progress.standing, kind) ? progress.standing[kind] : undefined,
        outcome(verdict),
        dayNumber(day),
      ),
    },
    log: [...progress.log, { kind, day, verdict }].slice(-LONGEST_LOG),
    answers: progress.answers + 1,
  };
}

/** The text that keeps progress in the browser or a file. */
export const encodeProgress = (progress: Progress): string =>
  JSON.stringify({ format: FORMAT, version: VERSION, ...progress });

const DAY = /^\d{4}-\d{2}-\d{2}$/;
const ID = /^[a-z0-9-]{1,60}$/;
const dayIn = whole(0, LAST_DAY);
const isDay = (day: string) => DAY.test(day) && quietly(dayIn, dayNumber(day)) !== undefined;
const logged = ['right', 'rounded', 'unit', 'wrong'] as const satisfies MarkVerdict[];

/** One answer, read strictly. */
const answer = record({ kind: written(ID), day: text(10, isDay), verdict: oneOf(logged) });
const kept = record({ box: whole(1, 5), due: whole(0, LAST_DUE) });

/** What one tab tells the others: an answer that was given, or that practice was opened from a file. */
export type News =
  { readonly answer: readonly [kind: string, verdict: MarkVerdict, day: string] } | { readonly file: true };
const LONGEST_NEWS = 1000; // characters

/** Reads what another tab told, as strictly as what is kept; undefined when it cannot be read. */
export function newsIn(told: string): News | undefined {
  const data = jsonIn(told, LONGEST_NEWS); // or another program’s text
  if (!isData(data)) return undefined;
  if (data['file'] === true) return { file: true };
  if (!Array.isArray(data['answer']) || data['answer'].length !== 3) return undefined;
  const [kind, verdict, day] = data['answer'] as readonly unknown[];
  const read = quietly(answer, { kind, verdict, day });
  return read && { answer: [read.kind, read.verdict, read.day] };
}

export interface ProgressReading {
  readonly progress: Progress;
  /** What could not be used, in sentences. */
  readonly problems: readonly string[];
}
const unusable = (problem: string): ProgressReading => ({ progress: noProgress, problems: [problem] });

/** Reads progress from its text; what cannot be used is left out and told of. */
export function decodeProgress(given: string): ProgressReading {
  if (given.length > LONGEST)
    return unusable(`The text is ${given.length} characters long; practice has at most ${LONGEST}.`);
  const data = jsonIn(given);
  if (data === undefined) return unusable('The saved practice is damaged and cannot be read.');
  if (!isData(data) || data['format'] !== FORMAT)
    return unusable('The text is not practice saved by this handbook.');
  if (data['version'] !== VERSION)
    return unusable(`The saved practice is of another version than ${VERSION}, which this handbook reads.`);
  const { standing = {}, log: entries = [] } = data;
  if (!isData(standing) || !Array.isArray(entries) || (!data['standing'] && !data['log']))
    return unusable('The saved practice is not whole: its answers, or how each kind stands, are missing.');
  const { sound, lost: fell } = entriesIn<SpacingState>(standing, ID, kept);
  const log = (entries as readonly unknown[])
    .map((entry) => quietly<Practised>(answer, entry))
    .filter((entry) => entry !== undefined)
    .slice(-LONGEST_LOG);
  // Practice saved before answers were counted has as many as its log.
  const answers = quietly(whole(log.length, MOST_ANSWERS), data['answers']) ?? log.length;
  const lost = fell + Math.max(0, Math.min(entries.length, LONGEST_LOG) - log.length);
  return {
    progress: {
      standing: Object.fromEntries(sound),
      log,
      answers,
    },
    problems:
      lost === 0
        ? []
        : [`${lost} ${lost === 1 ? 'entry' : 'entries'} of the saved practice could not be read.`],
  };
}
