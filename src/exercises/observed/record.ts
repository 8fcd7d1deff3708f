// The record of what one person did under another's eyes: kept as text, read strictly, summed up without a verdict of its own.
import { isData, jsonIn } from '../../core/reading/data.ts';
import { entriesIn, oneOf, quietly, record, text, written, type Reader } from '../../core/reading/given.ts';
import { oneLine } from '../own/one-line.ts';
import { outcomes, type TaskOutcome } from './task.ts';

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
export interface SeenTask {
  readonly outcome: TaskOutcome;
  /** The day, as 2026-05-14. */
  readonly day: string;
  /** The evidence, in a line: what was seen, a batch number, a sheet’s code. */
  readonly note: string;
}
export interface ObservedRecord {
  readonly stage: string;
  readonly about: Readonly<Record<Particular, string>>;
  readonly seen: Readonly<Record<string, SeenTask>>;
}

export const RECORD_FORMAT = 'malt-spirit-handbook/observed-record';
const VERSION = 1; // raised when the text changes its meaning; the old one is read ever after
export const LONGEST_RECORD = 60_000; // characters that are read
export const LONGEST_RECORD_LINE = 160; // characters of a particular or a note
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

const line = text(LONGEST_RECORD_LINE, (given) => oneLine(given) === given);
const seen = record({ outcome: oneOf(outcomes), day: written(DAY), note: line });
const about = record(
  Object.fromEntries(particularNames.map((name) => [name, line])) as Record<Particular, Reader<string>>,
);

/** Reads a record of a stage; a sentence when it is damaged or of another stage. */
export function readRecord(kept: string, stage: string): ObservedRecord | string {
  const damaged = 'This record is damaged, and nothing was taken from it.';
  const of = jsonIn(kept, LONGEST_RECORD);
  if (typeof of !== 'object' || of === null) return damaged;
  if (!isData(of) || of['format'] !== RECORD_FORMAT) return 'This is no record of observed tasks.';
  if (of['version'] !== VERSION)
    return 'This record was written by a newer handbook; bring this one up to date.';
  if (of['stage'] !== stage) return 'This record is of another stage; open it on that stage’s page.';
  const particular = quietly(about, of['about']);
  const { sound, lost } = entriesIn<SeenTask>(of['seen'], ID, seen);
  if (!particular || !isData(of['seen']) || lost > 0 || sound.length > 60) return damaged;
  return { stage, about: particular, seen: Object.fromEntries(sound) };
}

/** What a record comes to for some tasks or questions: how many of each outcome. The judgement is the assessor's. */
export function recordTotals(
  ids: readonly string[],
  { seen }: Pick<ObservedRecord, 'seen'>,
): Readonly<Record<TaskOutcome | 'not seen', number>> {
  const count = (outcome: TaskOutcome) => ids.filter((id) => seen[id]?.outcome === outcome).length;
  const [alone, prompted, notYet] = [count('alone'), count('prompted'), count('not yet')];
  return { alone, prompted, 'not yet': notYet, 'not seen': ids.length - alone - prompted - notYet };
}
