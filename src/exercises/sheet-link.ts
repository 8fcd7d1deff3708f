// A sheet as the end of an address, and back: strict, and the same questions in every release of one major number.
import { decodeHouse, encodeHouse } from '../house/codec.ts';
import { linkOf, textOfLink } from '../house/link.ts';
import { GENERATOR } from './draw.ts';
import { readNotes } from './notes.ts';
import { partsOfLine } from './own-line.ts';
import { forms, levels, topics } from './topics.ts';
import { MOST_QUESTIONS, MOST_SHEET_VERSIONS, type SheetHouse, type Worksheet } from './worksheet.ts';

const MARK = '#sheet=';
const SETTINGS = 8; // parts of every link; from generator 2 on the notes of each version follow
const BETWEEN = '/'; // the notes of two versions
/** Characters of a link that are read: ten questions for twelve trainees take about 500, a house of one's own 3,000 more. */
export const LONGEST_SHEET_LINK = 60_000;
const SEED = /^[a-z0-9-]{1,24}$/;

/** Names as their places in the published lists, which only ever grow at the end. */
const placesOf = <T>(list: readonly T[], chosen: readonly T[]) =>
  list.flatMap((each, i) => (chosen.includes(each) ? i.toString(36) : [])).join('');
const houseText = (house: SheetHouse) =>
  typeof house === 'string' ? house : linkOf(encodeHouse(house)).slice(1);

/** The part of an address that carries a sheet; with a version when it is meant for one trainee. */
export function sheetLink(sheet: Worksheet, version?: number): string {
  const { generator, count, seed, versions, house, notes } = sheet;
  const parts = [
    generator,
    placesOf(topics, sheet.topics),
    placesOf(forms, sheet.forms),
    placesOf(levels, sheet.levels),
    count,
    seed,
    versions,
    houseText(house),
    ...(notes ? [notes.join(BETWEEN)] : []),
  ];
  return `${MARK}${parts.join('.')}${version === undefined ? '' : `&version=${version}`}`;
}

/** Why a sheet cannot be sent as a link, in a sentence; undefined when it can. */
export const linkProblem = (link: string): string | undefined =>
  link.length > LONGEST_SHEET_LINK
    ? `A link to this sheet would have ${link.length} characters, and at most ${LONGEST_SHEET_LINK} are read: choose fewer versions or fewer questions. It can be printed all the same.`
    : undefined;

export type SheetReading =
  { readonly sheet: Worksheet; readonly version?: number } | { readonly problem: string };

function chosen<T>(list: readonly T[], places: string): readonly T[] | undefined {
  const found = [...places].map((place) => list[parseInt(place, 36)]);
  return places !== '' && new Set(places).size === places.length && found.every((each) => each !== undefined)
    ? (found as T[])
    : undefined;
}

function houseRead(text: string): SheetHouse | string {
  if (text === 'built-in' || text === 'random') return text;
  const { house, name, parts, problems } = decodeHouse(textOfLink(`#${text}`) ?? '');
  return problems.length === 0
    ? { house, name, ...partsOfLine(parts) }
    : `The house in this link cannot be used: ${problems[0]}`;
}

const whole = (text: string, most: number) =>
  /^[1-9]\d{0,3}$/.test(text) && Number(text) <= most ? Number(text) : undefined;

/** Reads a sheet from an address; undefined when it carries none, a sentence when it cannot be drawn. */
export function readSheetLink(hash: string): SheetReading | undefined {
  if (!hash.startsWith(MARK)) return undefined;
  const damaged = { problem: 'This link to a sheet is damaged; ask whoever sent it to send it once more.' };
  if (hash.length > LONGEST_SHEET_LINK)
    return {
      problem: `This link has ${hash.length} characters, and a sheet’s has at most ${LONGEST_SHEET_LINK}.`,
    };
  const [body, tail, ...rest] = hash.slice(MARK.length).split('&');
  const parts = body!.split('.');
  if (parts.length < SETTINGS || parts.length > SETTINGS + 1 || rest.length > 0) return damaged;
  const [by, topicPlaces, formPlaces, levelPlaces, countText, seed, versionsText, houseName] = parts as [
    string,
    string,
    string,
    string,
    string,
    string,
    string,
    string,
  ];
  const generator = whole(by, 9999);
  if (generator === undefined) return damaged;
  if (generator > GENERATOR)
    return {
      problem: `This sheet was made by a newer handbook (generator ${generator}; this one has ${GENERATOR}). Open it where it was made, or bring this handbook up to date.`,
    };
  const count = whole(countText, MOST_QUESTIONS);
  const versions = whole(versionsText, MOST_SHEET_VERSIONS);
  const [someTopics, someForms, someLevels] = [
    chosen(topics, topicPlaces),
    chosen(forms, formPlaces),
    chosen(levels, levelPlaces),
  ];
  if (!count || !versions || !someTopics || !someForms || !someLevels || !SEED.test(seed)) return damaged;
  const notes = parts[SETTINGS]?.split(BETWEEN);
  const isWhole = notes?.length === versions && notes.every((each) => readNotes(each, count));
  if (generator === 1 ? notes : !isWhole) return damaged;
  const house = houseRead(houseName);
  if (typeof house === 'string' && house !== 'built-in' && house !== 'random') return { problem: house };
  const sheet: Worksheet = {
    generator,
    topics: someTopics,
    forms: someForms,
    levels: someLevels,
    count,
    seed,
    versions,
    house: house as SheetHouse,
    ...(notes ? { notes } : {}),
  };
  if (tail === undefined) return { sheet };
  const version = whole(tail.replace(/^version=/, ''), versions);
  return version === undefined ? damaged : { sheet, version };
}
