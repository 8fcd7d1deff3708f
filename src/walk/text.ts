// A walk as text, for the browser and for a file: written in version 1, and read strictly. What cannot be used is told of in a sentence.
import { isData, jsonIn, ownValue, type Data } from '../core/reading/data.ts';
import { also, canRead, closedRecord, list, number, oneOf, only, quietly, record, text, whole, written, type Reader } from '../core/reading/given.ts'; // prettier-ignore
import { houseName, plainName } from '../house/name.ts';
import { stages, type Stage } from '../house/figures.ts';
import { quotedGiven, UNSEEN } from '../core/quoted-given.ts';
import { cardFigures } from '../house/card-figures.ts';
import { isTalkFigure } from './pieces.ts';
import {
  comings,
  audienceMarks,
  saidIns,
  type Coming,
  type AudienceMark,
  type SaidIn,
} from './audience-kinds.ts';
import { readCard } from './printed-card.ts';
import { minutesOf } from './time.ts';
import { roomBans, firstWalk, walkLimits, mostInWalk, type Ban, type LeftAsIs, type Piece, type PrintedCard, type Room, type SaidHere, type Walk } from './walk.ts'; // prettier-ignore

const FORMAT = 'malt-spirit-walk';
const VERSION = 1;
export const LONGEST_WALK_TEXT = 1_000_000; // characters of a text that is read: the longest talk, escaped, with its figures
export const FIRST_WALK_NAME = 'My walk';

/** The text of a walk. */
export const encodeWalk = (walk: Walk): string =>
  JSON.stringify({ format: FORMAT, version: VERSION, ...walk });

export interface WalkRead {
  readonly walk: Walk;
  /** What could not be used, a sentence for each. */
  readonly problems: readonly string[];
}

const TOLD = 20; // sentences about one text; of more only how many

/** A reader that gathers what it could not use. */
class Telling {
  readonly problems: string[] = [];
  tell(problem: string): void {
    this.problems.push(problem);
  }
  /** A whole number between two, or what stands where none is given. */
  whole(what: string, given: unknown, [low, high]: readonly [number, number], usual: number): number {
    const read = quietly(whole(low, high), given);
    if (read === undefined && given !== undefined)
      this.tell(`${what}: “${quotedGiven(given)}” is no whole number from ${low} to ${high}; ${usual} stands.`);
    return read ?? usual;
  }
  /** A text of one or more lines, bounded; what cannot be seen is left out. */
  words(what: string, given: unknown, longest: number): string {
    if (given === undefined) return '';
    if (!canRead(text(Infinity), given)) return (this.tell(`${what}: “${quotedGiven(given)}” is no text.`), '');
    if (given.length > longest)
      this.tell(`${what}: ${given.length} characters are given, and ${longest} are read.`);
    return given.slice(0, longest).replace(/\p{Cs}$/u, '');
  }
  /** One line of words. */
  line(what: string, given: unknown): string {
    return this.words(what, given, mostInWalk.words)
      .replace(/[\s\u2028\u2029]+/g, ' ')
      .replace(UNSEEN, '');
  }
  list(what: string, given: unknown, longest: number): readonly unknown[] {
    if (given === undefined) return [];
    if (!Array.isArray(given)) return (this.tell(`${what}: “${quotedGiven(given)}” is no list.`), []);
    if (given.length > longest)
      this.tell(`${what}: ${given.length} are given, and ${longest} are read; the rest is left out.`);
    return given.slice(0, longest);
  }
  /** Those of a list that are known names, each once. */
  known<T extends string>(what: string, given: unknown, names: readonly string[], longest = names.length): readonly T[] {
    return [...new Set(this.list(what, given, longest))].filter((each): each is T => {
      const isKnown = names.includes(each as string);
      if (!isKnown) this.tell(`${what}: “${quotedGiven(each)}” is not known.`);
      return isKnown;
    });
  }
  /** One of known names, or nothing. */
  one<T extends string>(what: string, given: unknown, names: readonly string[]): T | undefined {
    return given === undefined ? undefined : this.known<T>(what, [given], names, 1)[0];
  }
  /** Tells of what a record carries beside the keys that are read. */
  only(what: string, data: Data, keys: readonly string[]): void {
    for (const key of Object.keys(data).filter((each) => !keys.includes(each)).slice(0, TOLD))
      this.tell(`${what}: “${quotedGiven(key)}” is nothing that is known of it.`);
  }
} // prettier-ignore

const anyNumber = number(-Number.MAX_VALUE, Number.MAX_VALUE);
const talkFigure = only<SaidHere['figure']>(isTalkFigure, 'it can be a figure of a talk.');
const words = (longest: number) => text(longest, (given) => given !== '');
const anyName = text(Infinity, (given) => plainName(given) !== '');
const clock = text(Infinity, (given) => minutesOf(given) !== undefined);

const saidHere: Reader<SaidHere> = record({
  at: whole(0, mostInWalk.text),
  words: words(mostInWalk.text),
  figure: talkFigure,
  value: anyNumber,
});

function readSaid(telling: Telling, what: string, given: unknown, text: string): readonly SaidHere[] {
  const standsThere = also(saidHere, ({ at, words }) => text.startsWith(words, at), 'it can stand there.');
  const figures = telling.list(`${what}, figures`, given, mostInWalk.figures).flatMap((each): SaidHere[] => {
    const said = quietly(standsThere, each);
    if (said) return [said];
    telling.tell(
      `${what}: “${quotedGiven(isData(each) ? (ownValue(each, 'words') ?? each) : each)}” is no figure that stands there.`,
    );
    return [];
  });
  return figures
    .toSorted((a, b) => a.at - b.at)
    .filter(({ at }, i, all) => i === 0 || at >= all[i - 1]!.at + all[i - 1]!.words.length);
}

/** Counts what was read of pieces, so that a text can hold no more than a walk may. */
interface Left {
  pieces: number;
  text: number;
}

const answer = oneOf(['out', 'stays']);
const leavingOut = closedRecord({}, { adults: answer, long: answer });

/** What was answered when it was proposed to leave a piece out. */
function readAsked(telling: Telling, what: string, given: unknown): Pick<Piece, 'asked'> {
  if (given === undefined) return {};
  const asked = quietly(leavingOut, given);
  if (asked && Object.keys(asked).length > 0) return { asked };
  telling.tell(`${what}: “${quotedGiven(given)}” is no answer to leaving it out, and it is asked again.`);
  return {};
}

function readPiece(telling: Telling, what: string, given: unknown, left: Left): readonly Piece[] {
  if (!isData(given)) return (telling.tell(`${what}: “${quotedGiven(given)}” is no piece of a talk.`), []);
  telling.only(what, given, ['text', 'long', 'whom', 'asked', 'figures']);
  const text = telling.words(what, ownValue(given, 'text'), left.text);
  if (text.trim() === '') return (telling.tell(`${what} has no words, and is left out.`), []);
  left.pieces--;
  left.text -= text.length;
  const long = ownValue(given, 'long') ?? false;
  if (!canRead(oneOf([true, false]), long)) telling.tell(`${what}: “${quotedGiven(long)}” does not say whether it is for long walks only; it is told in all.`);
  const whom = telling.one<AudienceMark>(`${what}, told to`, ownValue(given, 'whom'), Object.keys(audienceMarks));
  return [{ text, long: long === true, ...(whom ? { whom } : {}), ...readAsked(telling, what, ownValue(given, 'asked')), figures: readSaid(telling, what, ownValue(given, 'figures'), text) }];
} // prettier-ignore

const askName = written(/^[a-z0-9-]{1,200}$/);

function readRoom(telling: Telling, at: number, given: unknown, left: Left): readonly Room[] {
  if (!isData(given)) return (telling.tell(`Room ${at}: “${quotedGiven(given)}” is no room.`), []);
  const named = ownValue(given, 'name');
  const name = plainName(quietly(anyName, named) ?? '') || `Room ${at}`;
  if (name !== named)
    telling.tell(`Room ${at}: “${quotedGiven(named)}” is no name for a room; it is called ${name}.`);
  const what = (of: string) => `${name}, ${of}`;
  telling.only(name, given, ['name', 'stages', 'minutes', 'shows', 'line', 'asks', 'figures', 'bans', 'rule', 'pieces']); // prettier-ignore
  const figures = ownValue(given, 'figures');
  const minutes = telling.whole(what('minutes'), ownValue(given, 'minutes'), walkLimits.minutes, 10);
  return [
    {
      name,
      stages: telling.known<Stage>(what('stages'), ownValue(given, 'stages'), stages),
      minutes,
      shows: telling.line(what('what is shown'), ownValue(given, 'shows')),
      line: telling.line(what('the line of its card'), ownValue(given, 'line')),
      asks: telling
        .list(what('questions'), ownValue(given, 'asks'), mostInWalk.asks)
        .filter((each): each is string => {
          const isName = canRead(askName, each);
          if (!isName)
            telling.tell(`${what('questions')}: “${quotedGiven(each)}” is no question of the book.`);
          return isName;
        }),
      ...(figures === undefined
        ? {}
        : {
            figures: telling.known<NonNullable<Room['figures']>[number]>(
              what('figures of its card'),
              figures,
              cardFigures.map(({ id }) => id),
              mostInWalk.cardFigures,
            ),
          }),
      bans: telling.known<Ban>(what('what it forbids'), ownValue(given, 'bans'), Object.keys(roomBans)),
      rule: telling.line(what('its own rule'), ownValue(given, 'rule')),
      pieces: telling
        .list(what('pieces'), ownValue(given, 'pieces'), Math.max(0, left.pieces))
        .flatMap((piece, i) => readPiece(telling, what(`piece ${i + 1}`), piece, left)),
    },
  ];
}

/** Where the party has to be by when, if it is a room of the walk and a time. */
function readDue(telling: Telling, given: unknown, rooms: number): Pick<Walk, 'due'> {
  if (given === undefined) return {};
  const due = quietly(record({ room: whole(0, rooms - 1), by: clock }), given);
  if (due) return { due: { room: due.room, by: due.by.trim() } };
  telling.tell('Where the party has to be by when cannot be read, and is left out.');
  return {};
}

const leftAsIs: Reader<LeftAsIs> = record({
  words: words(mostInWalk.leftWords),
  house: list(record({ figure: talkFigure, value: anyNumber }), mostInWalk.leftFigures),
});

/** The sentences that are left as they are. */
function readLeft(telling: Telling, given: unknown): Pick<Walk, 'left'> {
  const left = telling.list('Left as they are', given, mostInWalk.left).flatMap((each): LeftAsIs[] => {
    const read = quietly(leftAsIs, each);
    if (!read) telling.tell(`Left as they are: “${quotedGiven(isData(each) ? (ownValue(each, 'words') ?? each) : each)}” cannot be read, and is asked again.`);
    return read ? [read] : [];
  });
  return left.length > 0 ? { left } : {};
} // prettier-ignore

/** The cards that were printed, one of each room. */
function readPrinted(telling: Telling, given: unknown): Pick<Walk, 'printed'> {
  const rooms = new Set<string>();
  const printed = telling.list('Printed cards', given, mostInWalk.printed).flatMap((each): readonly PrintedCard[] => {
    const card = readCard(each, mostInWalk.cardFigures, mostInWalk.asks);
    if (!card || rooms.has(card.room)) return (telling.tell(`Printed cards: “${quotedGiven(isData(each) ? ownValue(each, 'room') : each)}” cannot be read, and is left out.`), []);
    rooms.add(card.room);
    return [card];
  });
  return printed.length > 0 ? { printed } : {};
} // prettier-ignore

/** The house that it was written for, where a house can have that name. */
function readHouse(telling: Telling, given: unknown): Pick<Walk, 'house'> {
  if (given === undefined) return {};
  if (canRead(houseName, given)) return { house: given };
  telling.tell(`“${quotedGiven(given)}” is no name for the house that it was written for, and is left out.`);
  return {};
}

/**
 * Reads a walk's text. What is none, or is of a version that this handbook does not know, gives only a sentence; of a walk,
 * what cannot be used is left out and told of.
 */
export function decodeWalk(given: string): WalkRead | { readonly problem: string } {
  if (given.length > LONGEST_WALK_TEXT)
    return { problem: `That text has ${given.length} characters; a walk has at most ${LONGEST_WALK_TEXT}.` };
  const data = jsonIn(given);
  if (data === undefined) return { problem: 'That is no walk, or not all of one.' };
  if (!isData(data) || ownValue(data, 'format') !== FORMAT) return { problem: 'That is no walk.' };
  const version = ownValue(data, 'version');
  if (version !== VERSION)
    return {
      problem:
        typeof version === 'number' && version > VERSION
          ? `That walk is of version ${quotedGiven(version)}; this handbook reads version ${VERSION}. Open it with a newer one.`
          : `“${quotedGiven(version)}” is no version of a walk.`,
    };
  const telling = new Telling();
  const first = firstWalk(FIRST_WALK_NAME);
  telling.only('The walk', data, ['format', 'version', 'name', 'house', 'length', 'least', 'begins', 'due', 'coming', 'saidIn', 'pace', 'left', 'printed', 'rooms']); // prettier-ignore
  const named = ownValue(data, 'name');
  const name = plainName(quietly(anyName, named) ?? '') || FIRST_WALK_NAME;
  if (name !== named) telling.tell(`“${quotedGiven(named)}” is no name for a walk; it is called ${name}.`);
  const begins = ownValue(data, 'begins') ?? first.begins;
  const isClock = canRead(clock, begins);
  if (!isClock) telling.tell(`It begins at “${quotedGiven(begins)}”, which is no time of day; ${first.begins} stands.`);
  const left: Left = { pieces: mostInWalk.pieces, text: mostInWalk.text };
  const rooms = telling
    .list('Rooms', ownValue(data, 'rooms'), mostInWalk.rooms)
    .flatMap((room, i) => readRoom(telling, i + 1, room, left));
  if (rooms.length === 0) telling.tell('It has no rooms, so the usual ones stand.');
  const coming = telling.one<Coming>('Who is coming', ownValue(data, 'coming'), comings);
  const saidIn = telling.one<SaidIn>('Units and numbers', ownValue(data, 'saidIn'), saidIns);
  const walk: Walk = {
    name,
    ...readHouse(telling, ownValue(data, 'house')),
    length: telling.whole('Length', ownValue(data, 'length'), walkLimits.length, first.length),
    least: telling.whole('Least in a room', ownValue(data, 'least'), walkLimits.least, first.least),
    begins: isClock ? begins.trim() : first.begins,
    ...readDue(telling, ownValue(data, 'due'), rooms.length),
    ...(coming ? { coming } : {}),
    ...(saidIn ? { saidIn } : {}),
    pace: telling.whole('Words a minute', ownValue(data, 'pace'), walkLimits.pace, first.pace),
    ...readLeft(telling, ownValue(data, 'left')),
    ...readPrinted(telling, ownValue(data, 'printed')),
    rooms: rooms.length > 0 ? rooms : first.rooms,
  };
  const { problems } = telling;
  const more = problems.length - TOLD;
  return {
    walk,
    problems: more > 0 ? [...problems.slice(0, TOLD), `And ${more} more like these.`] : problems,
  };
} // prettier-ignore
