// A trainer's own sheet as a text, for its link, its file and the browser; and its strict reader.
import { decode, encode } from '../../house/codec.ts';
import { linkOf, textOfLink } from '../../house/link.ts';
import { GENERATOR } from '../draw.ts';
import { readNotes } from '../notes.ts';
import { partsOfLine } from '../own-line.ts';
import { fingerprint } from '../worksheet.ts';
import { oneLine } from './one-line.ts';
import { OWN_ID, readOwnQuestion, type OwnQuestion } from './own-question.ts';
import { OWN_LIMITS, showings, type Item, type OwnSheet } from './own-sheet.ts';

export const SHEET_FORMAT = 'malt-spirit-handbook/own-sheet';
const VERSION = 1; // raised when the text changes its meaning; the old one is read ever after
export const LONGEST_TEXT = 400_000; // characters of a sheet's text that are read
const SEED = /^[a-z0-9-]{1,24}$/;
const KIND = /^[a-z0-9-]{1,60}$/;

/** The text of a sheet. */
export function ownSheetText({ house, items, ...sheet }: OwnSheet): string {
  return JSON.stringify({
    format: SHEET_FORMAT,
    version: VERSION,
    ...sheet,
    house: house === 'built-in' ? house : linkOf(encode(house)).slice(1),
    items: items.map(({ kind, key, marks, kept }) => [
      kind,
      key,
      marks,
      ...(kept === undefined ? [] : [kept]),
    ]),
  });
}

/** The short name by which a result finds its sheet. */
export const ownMark = (sheet: OwnSheet): string => fingerprint(ownSheetText(sheet));

const DAMAGED = 'This sheet is damaged: open it once more from where it was kept, or ask whoever sent it.';
const whole = (given: unknown, low: number, high: number): given is number =>
  typeof given === 'number' && Number.isInteger(given) && given >= low && given <= high;
const isNote = (given: unknown) => typeof given === 'string' && readNotes(given, 1)?.length === 1;

function itemRead(given: unknown): Item | undefined {
  if (!Array.isArray(given) || given.length < 3 || given.length > 4) return undefined;
  const [kind, key, marks, kept] = given as unknown[];
  if (typeof kind !== 'string' || !KIND.test(kind) || !whole(key, 1, OWN_LIMITS.key)) return undefined;
  if (
    typeof marks !== 'number' ||
    !(marks > 0 && marks <= OWN_LIMITS.marks) ||
    (given.length === 4 && !isNote(kept))
  )
    return undefined;
  return { kind, key, marks, ...(given.length === 4 ? { kept: kept as string } : {}) };
}

function houseRead(given: unknown): OwnSheet['house'] | string | undefined {
  if (given === 'built-in') return given;
  if (typeof given !== 'string') return undefined;
  const { house, name, parts, problems } = decode(textOfLink(`#${given}`) ?? '');
  return problems.length === 0
    ? { house, name, ...partsOfLine(parts) }
    : `The house of this sheet cannot be used: ${problems[0]}`;
}

/** Reads a sheet from its text; a sentence when it cannot be. */
export function readOwnSheet(text: string): OwnSheet | string {
  if (text.length > LONGEST_TEXT) return `This sheet has ${text.length} characters, and at most ${LONGEST_TEXT} are read.`;
  let of: Record<string, unknown>;
  try {
    const given: unknown = JSON.parse(text);
    if (typeof given !== 'object' || given === null || Array.isArray(given)) return DAMAGED;
    of = { ...given };
  } catch {
    return DAMAGED;
  }
  const { generator, title, minutes, passMark, shows, seed, versions, notes } = of;
  if (of['format'] !== SHEET_FORMAT) return 'This is no sheet of your own: it was not written by “Your own sheet”.';
  if (!whole(generator, 1, 9999)) return DAMAGED;
  if (of['version'] !== VERSION || generator > GENERATOR)
    return 'This sheet was made by a newer handbook. Open it where it was made, or bring this handbook up to date.';
  if (typeof title !== 'string' || title.length > OWN_LIMITS.title || oneLine(title) !== title) return DAMAGED;
  if (!whole(minutes, 0, OWN_LIMITS.minutes) || !whole(passMark, 0, 100) || !whole(versions, 1, OWN_LIMITS.versions)) return DAMAGED;
  if (typeof seed !== 'string' || !SEED.test(seed)) return DAMAGED;
  const showing = showings.find((each) => each === shows);
  if (showing === undefined || !Array.isArray(of['items']) || !Array.isArray(of['own'])) return DAMAGED;
  if (of['items'].length > OWN_LIMITS.items || of['own'].length > OWN_LIMITS.items) return DAMAGED;
  const items = of['items'].map(itemRead);
  if (items.includes(undefined)) return DAMAGED;
  const own: OwnQuestion[] = [];
  for (const each of of['own']) {
    const read = readOwnQuestion(each);
    if (typeof read === 'string') return read;
    own.push(read);
  }
  const isHere = (item: Item | undefined) => !OWN_ID.test(item!.kind) || own.some(({ id }) => id === item!.kind);
  if (!items.every(isHere)) return DAMAGED;
  const house = houseRead(of['house']);
  if (house === undefined) return DAMAGED;
  if (typeof house === 'string' && house !== 'built-in') return house;
  const isNotes =
    notes === undefined ||
    (Array.isArray(notes) &&
      notes.length === versions &&
      notes.every((each) => typeof each === 'string' && readNotes(each, OWN_LIMITS.items)?.length === items.length));
  if (!isNotes) return DAMAGED;
  return {
    generator, title, minutes, passMark, shows: showing, seed, versions, own,
    house: house as OwnSheet['house'],
    items: items as Item[],
    ...(notes === undefined ? {} : { notes: notes as readonly string[] }),
  };
} // prettier-ignore
