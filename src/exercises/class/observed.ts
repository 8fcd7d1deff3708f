// Records of observed tasks in a class book: each task and question with its outcome, day and assessor.
import { oneLine } from '../own/one-line.ts';
import { readRecord, type ObservedRecord } from '../observed/record.ts';
import { entriesOfKind, entryId, peopleOf, withThings, type ClassBook, type SeenDone } from './book.ts';
import { FIRST_OUTCOMES } from './competence.ts';
import { LONGEST_BOOK_LINE, LONGEST_PERSON_NAME } from './text.ts';

/** Reads the file of a record, of whatever stage; a sentence when it is damaged or says nothing. */
export function readAnyRecord(text: string): ObservedRecord | string {
  const stage = FIRST_OUTCOMES.find((each) => new RegExp(`"stage"\\s*:\\s*"${each}"`).test(text.slice(0, 1000))) ?? ''; // prettier-ignore
  const read = readRecord(text, stage);
  if (typeof read === 'string') return read;
  return Object.keys(read.seen).length > 0 ? read : 'Nothing is marked in this record yet.';
}

/** The name on a record, as the book keeps names. */
export const nameOnRecord = ({ about }: ObservedRecord): string =>
  about.trainee.slice(0, LONGEST_PERSON_NAME).trim();

/** Puts what a record says of a person into the book; what it has is not put in twice. */
export function withSeen(book: ClassBook, person: string, { stage, about, seen }: ObservedRecord): { readonly book: ClassBook; readonly added: number; readonly known: number } {
  const assessor = oneLine([about.assessor, about.role].filter(Boolean).join(', ')).slice(0, LONGEST_BOOK_LINE).trim();
  const besides = Object.fromEntries(wholeRecord.filter((name) => about[name] !== '').map((name) => [name, about[name]]));
  const stood = new Set(entriesOfKind(book, 'seen').map((each) => seenId(each)));
  const all = Object.entries(seen).map(([task, { outcome, day, note }]): SeenDone => ({ is: 'seen', person, stage, task, outcome, day, assessor, until: about.validUntil, note, ...besides }));
  const fresh = all.filter((each) => !stood.has(seenId(each)));
  const next = fresh.length === 0 ? book : withThings(book, Object.fromEntries(fresh.map((each) => [placeOf(book, each), each])));
  return { book: next, added: fresh.length, known: all.length - fresh.length };
} // prettier-ignore

/** What an assessor writes of a whole record, which goes with each of its tasks. */
export const wholeRecord = ['place', 'standard', 'method', 'conditions'] as const;

/** The id of what was seen. What it may have besides is in it only where there is some, so that ids of older books stay. */
const seenId = (seen: SeenDone) => {
  const { person, stage, task, outcome, day, assessor, until, note } = seen;
  const besides = wholeRecord.flatMap((name) => (seen[name] ? [`${name} ${seen[name]}`] : []));
  return entryId('seen', 'seen', person, stage, task, outcome, day, assessor, until, note, ...besides);
};

/** What came of a record, in a sentence. */
export const observedInWords = (
  name: string,
  added: number,
  known: number,
  where = 'in the class book',
): string =>
  added === 0
    ? `Nothing new: what this record says of ${name} was in it already.`
    : `${added} ${added === 1 ? 'task or question' : 'tasks and questions'} of ${name} ${added === 1 ? 'is' : 'are'} ${where} now${known > 0 ? `; ${known} stood in it already` : ''}.`;

/** Where it is put: in place of the same from an older handbook, which did not keep what the record says besides. */
function placeOf({ entries }: ClassBook, seen: SeenDone): string {
  const { place: _, standard: __, method: ___, conditions: ____, ...bare } = seen;
  const id = seenId(bare);
  const there = Object.hasOwn(entries, id) ? entries[id] : undefined;
  const isBare =
    there?.is === 'seen' && !there.gone && wholeRecord.every((name) => !(there as SeenDone)[name]);
  return isBare ? id : seenId(seen);
}

export interface SeenOf {
  readonly person: string;
  readonly name: string;
  readonly stage: string;
  readonly counts: Readonly<Record<SeenDone['outcome'], number>>;
  readonly lastDay: string;
  readonly assessors: readonly string[];
}

/** For each person and stage how many stand as what, by the latest of each task. */
export function observedOf(book: ClassBook): readonly SeenOf[] {
  const all = entriesOfKind(book, 'seen');
  return peopleOf(book).flatMap(({ id, name }) =>
    FIRST_OUTCOMES.flatMap((stage): SeenOf[] => {
      const own = all.filter((each) => each.person === id && each.stage === stage).sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : a.stamp - b.stamp));
      if (own.length === 0) return [];
      const latest = [...new Map(own.map((each) => [each.task, each])).values()];
      const count = (outcome: SeenDone['outcome']) => latest.filter((each) => each.outcome === outcome).length;
      return [{ person: id, name, stage, counts: { alone: count('alone'), prompted: count('prompted'), 'not yet': count('not yet') }, lastDay: own.at(-1)!.day, assessors: [...new Set(own.map(({ assessor }) => assessor).filter(Boolean))] }];
    }),
  );
} // prettier-ignore
