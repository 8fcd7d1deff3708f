// What a reader has practised: the standing of each kind, and a log for the record sheet; and its text form.
import { type Standing, after } from './spacing.ts';
import type { Verdict } from './verdict.ts';

export interface Practised {
  readonly kind: string;
  /** Day, as 2026-05-14. */
  readonly day: string;
  readonly verdict: Verdict;
}
export interface Progress {
  readonly standing: Readonly<Record<string, Standing>>;
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

const outcome = (verdict: Verdict) =>
  verdict === 'right' ? 'right' : verdict === 'rounded' || verdict === 'unit' ? 'nearly' : 'missed';

/** Progress after an answer. One that was not given or cannot be read changes nothing. */
export function practised(progress: Progress, kind: string, verdict: Verdict, day: string): Progress {
  if (verdict === 'unanswered' || verdict === 'unreadable') return progress;
  return {
    standing: {
      ...progress.standing,
      [kind]: after(
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

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const isId = (text: unknown): text is string => typeof text === 'string' && /^[a-z0-9-]{1,60}$/.test(text);
const isDay = (text: unknown): text is string =>
  typeof text === 'string' && /^\d{4}-\d{2}-\d{2}$/.test(text) && isWhole(dayNumber(text), 0, LAST_DAY);
const isWhole = (value: unknown, low: number, high: number): value is number =>
  Number.isInteger(value) && (value as number) >= low && (value as number) <= high;
const logged: readonly unknown[] = ['right', 'rounded', 'unit', 'wrong'] satisfies Verdict[];

/** One answer, read strictly; undefined when a part of it cannot be. */
const answerIn = (entry: unknown): Practised | undefined =>
  isRecord(entry) && isId(entry['kind']) && isDay(entry['day']) && logged.includes(entry['verdict'])
    ? { kind: entry['kind'], day: entry['day'], verdict: entry['verdict'] as Verdict }
    : undefined;

/** What one tab tells the others: an answer that was given, or that practice was opened from a file. */
export type News =
  { readonly answer: readonly [kind: string, verdict: Verdict, day: string] } | { readonly file: true };
const LONGEST_NEWS = 1000; // characters

/** Reads what another tab told, as strictly as what is kept; undefined when it cannot be read. */
export function newsIn(text: string): News | undefined {
  if (text.length > LONGEST_NEWS) return undefined;
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return undefined; // another program's text
  }
  if (!isRecord(data)) return undefined;
  if (data['file'] === true) return { file: true };
  if (!Array.isArray(data['answer']) || data['answer'].length !== 3) return undefined;
  const [kind, verdict, day] = data['answer'] as readonly unknown[];
  const answer = answerIn({ kind, verdict, day });
  return answer && { answer: [answer.kind, answer.verdict, answer.day] };
}

export interface ProgressReading {
  readonly progress: Progress;
  /** What could not be used, in sentences. */
  readonly problems: readonly string[];
}
const unusable = (problem: string): ProgressReading => ({ progress: noProgress, problems: [problem] });

/** Reads progress from its text; what cannot be used is left out and told of. */
export function decodeProgress(text: string): ProgressReading {
  if (text.length > LONGEST)
    return unusable(`The text is ${text.length} characters long; practice has at most ${LONGEST}.`);
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return unusable('The saved practice is damaged and cannot be read.');
  }
  if (!isRecord(data) || data['format'] !== FORMAT)
    return unusable('The text is not practice saved by this handbook.');
  if (data['version'] !== VERSION)
    return unusable(`The saved practice is of another version than ${VERSION}, which this handbook reads.`);
  const { standing = {}, log: given = [] } = data;
  if (!isRecord(standing) || !Array.isArray(given) || (!data['standing'] && !data['log']))
    return unusable('The saved practice is not whole: its answers, or how each kind stands, are missing.');
  const standings = Object.entries(standing);
  const sound = standings.filter(
    (entry): entry is [string, Standing] =>
      isId(entry[0]) &&
      isRecord(entry[1]) &&
      isWhole(entry[1]['box'], 1, 5) &&
      isWhole(entry[1]['due'], 0, LAST_DUE),
  );
  const entries: readonly unknown[] = given;
  const log = entries
    .map(answerIn)
    .filter((entry) => entry !== undefined)
    .slice(-LONGEST_LOG);
  // Practice saved before answers were counted has as many as its log.
  const answers = isWhole(data['answers'], log.length, MOST_ANSWERS) ? data['answers'] : log.length;
  const lost =
    standings.length - sound.length + Math.max(0, Math.min(entries.length, LONGEST_LOG) - log.length);
  return {
    progress: {
      standing: Object.fromEntries(sound.map(([id, { box, due }]) => [id, { box, due }])),
      log,
      answers,
    },
    problems:
      lost === 0
        ? []
        : [`${lost} ${lost === 1 ? 'entry' : 'entries'} of the saved practice could not be read.`],
  };
}
