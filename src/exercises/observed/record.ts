// The record of what one person did under another's eyes: kept as text, read strictly, summed up without a verdict of its own.
import { oneLine } from '../own/one-line.ts';
import { outcomes, type Outcome } from './task.ts';

/** What a record says beside its tasks; each a line of text. */
export const particulars = {
  trainee: 'Trainee',
  assessor: 'Assessor',
  role: 'The assessor’s role and authority',
  place: 'Site, plant and product',
  standard: 'Standard: the site’s procedure and its issue',
  method: 'Method: at work, in a drill, by talk',
  conditions: 'Conditions: shift, state of the plant, help at hand',
  validUntil: 'Valid until, or what ends it sooner',
} as const;
export type Particular = keyof typeof particulars;
export const particularNames = Object.keys(particulars) as Particular[];

/** What was seen of one task or heard of one question. */
export interface Seen {
  readonly outcome: Outcome;
  /** The day, as 2026-05-14. */
  readonly day: string;
  /** The evidence, in a line: what was seen, a batch number, a sheet’s code. */
  readonly note: string;
}
export interface ObservedRecord {
  readonly stage: string;
  readonly about: Readonly<Record<Particular, string>>;
  readonly seen: Readonly<Record<string, Seen>>;
}

export const RECORD_FORMAT = 'malt-spirit-handbook/observed-record';
const VERSION = 1; // raised when the text changes its meaning; the old one is read ever after
export const LONGEST_RECORD = 60_000; // characters that are read
export const LONGEST_LINE = 160; // characters of a particular or a note
const DAY = /^\d{4}-\d{2}-\d{2}$/;
const ID = /^[a-z0-9-]{1,40}$/;

export const freshRecord = (stage: string): ObservedRecord => ({
  stage,
  about: Object.fromEntries(particularNames.map((name) => [name, ''])) as Record<Particular, string>,
  seen: {},
});

/** The text of a record, with the edition of the book that its tasks stand in. */
export const recordText = (record: ObservedRecord, book: string): string =>
  JSON.stringify({ format: RECORD_FORMAT, version: VERSION, book, ...record }, undefined, 1);

const isLine = (given: unknown): given is string =>
  typeof given === 'string' && given.length <= LONGEST_LINE && oneLine(given) === given;

function seenRead(given: unknown): Seen | undefined {
  if (typeof given !== 'object' || given === null) return undefined;
  const { outcome, day, note } = given as Readonly<Record<string, unknown>>;
  const isWhole =
    outcomes.includes(outcome as Outcome) && typeof day === 'string' && DAY.test(day) && isLine(note);
  return isWhole ? { outcome: outcome as Outcome, day, note } : undefined;
}

/** Reads a record of a stage; a sentence when it is damaged or of another stage. */
export function readRecord(text: string, stage: string): ObservedRecord | string {
  const damaged = 'This record is damaged, and nothing was taken from it.';
  if (text.length > LONGEST_RECORD) return damaged;
  let given: unknown;
  try {
    given = JSON.parse(text);
  } catch {
    return damaged;
  }
  if (typeof given !== 'object' || given === null) return damaged;
  const of = { ...given } as Readonly<Record<string, unknown>>;
  if (of['format'] !== RECORD_FORMAT) return 'This is no record of observed tasks.';
  if (of['version'] !== VERSION)
    return 'This record was written by a newer handbook; bring this one up to date.';
  if (of['stage'] !== stage) return 'This record is of another stage; open it on that stage’s page.';
  if (typeof of['about'] !== 'object' || of['about'] === null) return damaged;
  if (typeof of['seen'] !== 'object' || of['seen'] === null) return damaged;
  const about = { ...of['about'] } as Readonly<Record<string, unknown>>;
  if (!particularNames.every((name) => isLine(about[name]))) return damaged;
  const seen = Object.entries(of['seen']).map(
    ([id, each]) => [id, ID.test(id) ? seenRead(each) : undefined] as const,
  );
  if (seen.length > 60 || seen.some(([, each]) => each === undefined)) return damaged;
  return {
    stage,
    about: Object.fromEntries(particularNames.map((name) => [name, about[name]])) as Record<
      Particular,
      string
    >,
    seen: Object.fromEntries(seen) as Record<string, Seen>,
  };
}

/** What a record comes to for some tasks or questions: how many of each outcome. The judgement is the assessor's. */
export function summed(
  ids: readonly string[],
  { seen }: Pick<ObservedRecord, 'seen'>,
): Readonly<Record<Outcome | 'not seen', number>> {
  const count = (outcome: Outcome) => ids.filter((id) => seen[id]?.outcome === outcome).length;
  const [alone, prompted, notYet] = [count('alone'), count('prompted'), count('not yet')];
  return { alone, prompted, 'not yet': notYet, 'not seen': ids.length - alone - prompted - notYet };
}
