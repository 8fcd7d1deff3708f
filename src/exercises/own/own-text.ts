// A trainer's own sheet as a text, for its link, its file and the browser; and its strict reader.
import { isData, jsonIn } from '../../core/reading/data.ts';
import { list, number, oneOf, quietly, record, text, whole, written, type Reader } from '../../core/reading/given.ts'; // prettier-ignore
import { decodeHouse, encodeHouse } from '../../house/codec.ts';
import { linkOf, textOfLink } from '../../house/link.ts';
import { GENERATOR } from '../draw.ts';
import { readNotes } from '../notes.ts';
import { partsOfLine } from '../own-line.ts';
import { sheetMark } from '../worksheet.ts';
import { oneLine } from './one-line.ts';
import { OWN_ID, readOwnQuestion, type OwnQuestion } from './own-question.ts';
import { OWN_SHEET_LIMITS, showings, type Item, type OwnSheet } from './own-sheet.ts';

export const SHEET_FORMAT = 'malt-spirit-handbook/own-sheet';
const VERSION = 1; // raised when the text changes its meaning; the old one is read ever after
export const LONGEST_OWN_SHEET = 400_000; // characters of a sheet's text that are read
const SEED = /^[a-z0-9-]{1,24}$/;
const KIND = /^[a-z0-9-]{1,60}$/;

/** The text of a sheet. */
export function ownSheetText({ house, items, ...sheet }: OwnSheet): string {
  return JSON.stringify({
    format: SHEET_FORMAT,
    version: VERSION,
    ...sheet,
    house: house === 'built-in' ? house : linkOf(encodeHouse(house)).slice(1),
    items: items.map(({ kind, key, marks, kept }) => [
      kind,
      key,
      marks,
      ...(kept === undefined ? [] : [kept]),
    ]),
  });
}

/** The short name by which a result finds its sheet. */
export const ownSheetMark = (sheet: OwnSheet): string => sheetMark(ownSheetText(sheet));

const DAMAGED = 'This sheet is damaged: open it once more from where it was kept, or ask whoever sent it.';
const isNote = (given: string) => readNotes(given, 1)?.length === 1;
const kind = written(KIND);
const key = whole(1, OWN_SHEET_LIMITS.key);
const marks = number(Number.MIN_VALUE, OWN_SHEET_LIMITS.marks);
const kept = text(Infinity, isNote);
/** A question of a sheet, in the order of its text. */
const item: Reader<Item> = (given, what, tell) => {
  if (!Array.isArray(given) || given.length < 3 || given.length > 4) return undefined;
  const [first, second, third, fourth] = given as unknown[];
  const read = record({ kind, key, marks }, { kept });
  const fields = { kind: first, key: second, marks: third, ...(given.length === 4 && { kept: fourth }) };
  return read(fields, what, tell);
};
const head = record({
  generator: whole(1, 9999),
  title: text(OWN_SHEET_LIMITS.title, (given) => oneLine(given) === given),
  minutes: whole(0, OWN_SHEET_LIMITS.minutes),
  passMark: whole(0, 100),
  shows: oneOf(showings),
  seed: written(SEED),
  versions: whole(1, OWN_SHEET_LIMITS.versions),
});
const items = list(item, OWN_SHEET_LIMITS.items);

function houseRead(given: unknown): OwnSheet['house'] | string | undefined {
  if (given === 'built-in') return given;
  if (typeof given !== 'string') return undefined;
  const { house, name, parts, problems } = decodeHouse(textOfLink(`#${given}`) ?? '');
  return problems.length === 0
    ? { house, name, ...partsOfLine(parts) }
    : `The house of this sheet cannot be used: ${problems[0]}`;
}

/** Reads a sheet from its text; a sentence when it cannot be. */
export function readOwnSheet(given: string): OwnSheet | string {
  if (given.length > LONGEST_OWN_SHEET)
    return `This sheet has ${given.length} characters, and at most ${LONGEST_OWN_SHEET} are read.`;
  const of = jsonIn(given);
  if (!isData(of)) return DAMAGED;
  if (of['format'] !== SHEET_FORMAT)
    return 'This is no sheet of your own: it was not written by “Your own sheet”.';
  const generator = quietly(whole(1, 9999), of['generator']);
  if (generator === undefined) return DAMAGED;
  if (of['version'] !== VERSION || generator > GENERATOR)
    return 'This sheet was made by a newer handbook. Open it where it was made, or bring this handbook up to date.';
  const [sheet, asked] = [quietly(head, of), quietly<readonly Item[]>(items, of['items'])];
  if (!sheet || !asked || !Array.isArray(of['own']) || of['own'].length > OWN_SHEET_LIMITS.items)
    return DAMAGED;
  const own: OwnQuestion[] = [];
  for (const each of of['own']) {
    const read = readOwnQuestion(each);
    if (typeof read === 'string') return read;
    own.push(read);
  }
  if (!asked.every((each) => !OWN_ID.test(each.kind) || own.some(({ id }) => id === each.kind)))
    return DAMAGED;
  const house = houseRead(of['house']);
  if (house === undefined) return DAMAGED;
  if (typeof house === 'string' && house !== 'built-in') return house;
  const note = text(Infinity, (each) => readNotes(each, OWN_SHEET_LIMITS.items)?.length === asked.length);
  const notes =
    of['notes'] === undefined ? undefined : quietly(list(note, sheet.versions, sheet.versions), of['notes']);
  if (of['notes'] !== undefined && !notes) return DAMAGED;
  return { ...sheet, own, house: house as OwnSheet['house'], items: asked, ...(notes && { notes }) };
}
