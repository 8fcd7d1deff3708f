// A talk cut into rooms by itself: pieces in the order of telling, each in the room that its trade words and figures speak of.
import { talkFigures, type TalkFigureId } from '../talk/figures.ts';
import { mentionsIn, stageOf, type ConceptName } from '../talk/words.ts';
import { wordsIn } from './time.ts';
import type { Stage } from './walk.ts';

/** What the cutter knows of a room. */
export interface RoomOf {
  readonly name: string;
  readonly stages: readonly Stage[];
}
/** A quantity of the talk, and the figure it was taken for, if it was. */
export interface Placed {
  readonly start: number;
  readonly end: number;
  readonly figure?: TalkFigureId;
}
export interface Cut {
  readonly from: number;
  readonly to: number;
  /** The number of its room. */
  readonly room: number;
}

// What counts for a room, in the loudness of trade words (talk/words.ts); set by hand.
const FIGURE = 1.5; // a figure of one of its stages
const NAMED = 2; // a word of its own name, where another room has its stages as well
const HEAD = 80; // characters of a paragraph, in which a guide says where the party is: trade words count so much more there,
const HEADED = 0.5;
const LED_HEAD = 1.5; // and so much where it begins as on arriving
const LED = 1; // words that say where the party is, towards going on here, and
const MOVED = 1.25; // words that take it on
const ON = 1; // what going on to the next room must be worth
const PAST = 0.75; // and to pass a room
const WITHIN = 4; // and to go on within a paragraph, where the talk has paragraphs
const LONG = 220; // words of a paragraph that may be cut within
const SHORT_PIECE = 60; // words: lines of one room are put together up to so many
const BREATH = 30; // words after which a talk without stops is cut, and
const LEAST = 12; // words before it may be

const well = '^["“‘(\\s]*(?:(?:right|okay|ok|so|and|then|well|please|now)[\\s,.:—–-]+)*';
const moves = new RegExp(
  `${well}(?:through|up|down|out|across|into|follow|come|over|next|last|mind)\\b`,
  'i',
);
const stands = new RegExp(`${well}(?:this (?:here )?is|these are|here (?:is|are|we)|the)\\b`, 'i');
/** How much the beginning of some words leads the party on. */
const leads = (words: string) => (moves.test(words) ? MOVED : stands.test(words) ? LED : 0);
const breathes = /\s(?=(?:right|okay|ok|so|anyway|now|then|well|next|and then)\s)/gi;

interface Unit {
  readonly from: number;
  readonly to: number;
  /** True where a paragraph begins. */
  readonly opens: boolean;
}

/** Places within a paragraph where it may be cut: behind a sentence; where there are none, at a breath. */
function placesWithin(text: string): readonly number[] {
  const ends = [...text.matchAll(/[.!?…]["”’)]*\s+/g)].map((found) => found.index + found[0].length);
  const places: number[] = [];
  let from = 0;
  for (const end of [...ends, text.length]) {
    if (wordsIn(text.slice(from, end)) > 3 * BREATH) {
      let begun = from;
      const breaths = [...text.slice(from, end).matchAll(breathes)].map(({ index }) => from + index + 1);
      const words = [...text.slice(from, end).matchAll(/\S+\s+/g)].map((found) => from + found.index + found[0].length);
      for (const word of words) {
        const said = wordsIn(text.slice(begun, word));
        if (said >= LEAST && (breaths.includes(word) || said >= BREATH)) places.push((begun = word));
      }
    }
    if (end < text.length) places.push(end);
    from = end;
  }
  return places;
} // prettier-ignore

interface Paragraphs {
  readonly all: readonly (readonly [from: number, to: number])[];
  /** True where no line is blank, so that a piece may be of several lines. */
  readonly byLine: boolean;
}

/** The paragraphs of a text: behind a blank line; where none is blank, behind each line that ends with a stop, or, if those are few, each. */
function paragraphs(text: string, few: number, isFree: (place: number) => boolean): Paragraphs {
  const ends = (pattern: RegExp) =>
    [...text.matchAll(pattern)].map((found) => found.index + found[0].length).filter(isFree);
  const blank = ends(/\n[^\S\n]*\n\s*/g);
  const stopped = ends(/(?<=[.!?…:]["”’)]*)[^\S\n]*\n\s*/g);
  const places = blank.length > 0 ? blank : stopped.length >= few ? stopped : ends(/\n\s*/g);
  const all = [...places, text.length]
    .map((to, i) => [places[i - 1] ?? 0, to] as const)
    .filter(([from, to]) => text.slice(from, to).trim() !== '');
  return { all, byLine: blank.length === 0 };
}

/** What is given to rooms one by one: paragraphs; sentences of those that are long, or of all where they are fewer than rooms. */
function unitsOf(text: string, quantities: readonly Placed[], rooms: number) {
  const isFree = (place: number) => quantities.every(({ start, end }) => place <= start || place >= end);
  const { all, byLine } = paragraphs(text, rooms, isFree);
  const units = all.flatMap(([from, to]): Unit[] => {
    const words = text.slice(from, to);
    const within = all.length < rooms || wordsIn(words) > LONG ? placesWithin(words) : [];
    const starts = [from, ...within.map((place) => from + place).filter(isFree)];
    return starts.map((start, i) => ({ from: start, to: starts[i + 1] ?? to, opens: i === 0 }));
  });
  return { units, byLine };
}

/** True for a figure of a week or a year: it is told anywhere. */
const ofPace = (figure: TalkFigureId) =>
  talkFigures[figure].parts.some((part) => /^per(?:Week|Year)$/.test(part));

const common = new Set(['room', 'house', 'store', 'and', 'the', 'our', 'old', 'new', 'number']);
const nameWords = (name: string) =>
  (name.toLowerCase().match(/\p{L}{4,}/gu) ?? []).filter((word) => !common.has(word));

/** How much each room is spoken of in each unit. A word said again in a unit counts less each time. */
function spokenOf(text: string, units: readonly Unit[], quantities: readonly Placed[], rooms: readonly RoomOf[]) {
  const mentions = mentionsIn(text);
  const names = rooms.map(({ name }) => nameWords(name));
  const isShared = rooms.map(({ stages }, room) =>
    stages.length === 0 || rooms.some((other, i) => i !== room && other.stages.some((stage) => stages.includes(stage))),
  );
  return units.map(({ from, to, opens }) => {
    const within = mentions.filter(({ start }) => start >= from && start < to);
    const counts = new Map<ConceptName, number>();
    for (const { concept } of within) counts.set(concept, (counts.get(concept) ?? 0) + 1);
    const headed = opens ? within.filter(({ start }) => start < from + HEAD) : [];
    const isLed = leads(text.slice(from, to)) > 0;
    const figures = quantities.flatMap(({ start, figure }) =>
      figure && start >= from && start < to && !ofPace(figure) ? [talkFigures[figure].stage] : [],
    );
    const said = new Set(text.slice(from, to).toLowerCase().match(/\p{L}{4,}/gu));
    return rooms.map(({ stages }, room) => {
      let sum = 0;
      for (const [concept, count] of counts) {
        const of = stageOf(concept);
        if (of && stages.includes(of.stage)) sum += of.loud * Math.sqrt(count);
      }
      for (const { concept } of headed) {
        const of = stageOf(concept);
        if (of && stages.includes(of.stage)) sum += of.loud * (isLed ? LED_HEAD : HEADED);
      }
      sum += FIGURE * figures.filter((stage) => stages.includes(stage)).length;
      return sum + (isShared[room] ? NAMED * names[room]!.filter((word) => said.has(word)).length : 0);
    });
  });
} // prettier-ignore

/**
 * Cuts a talk into rooms: of all ways through the rooms in order the one in which what is said speaks most of where it is said.
 * The pieces together are the talk, spaces between them left out; the first begins in the first room unless it speaks of another.
 */
export function cutIntoRooms(
  text: string,
  quantities: readonly Placed[],
  rooms: readonly RoomOf[],
): readonly Cut[] {
  if (rooms.length === 0) return [];
  const { units, byLine } = unitsOf(text, quantities, rooms.length);
  const spoken = spokenOf(text, units, quantities, rooms);
  /** The best that comes of a unit being in a room, and the room of the unit before it. */
  const best: { worth: number; before: number }[][] = [];
  const within = units.filter(({ opens }) => opens).length < rooms.length ? 0 : WITHIN;
  units.forEach(({ from, to, opens }, u) => {
    const led = leads(text.slice(from, to));
    best.push(
      rooms.map((_, room) => {
        if (u === 0) return { worth: spoken[0]![room]! - room * (ON + PAST), before: 0 };
        let [worth, before] = [-Infinity, 0];
        for (let at = 0; at <= room; at++) {
          const going = at === room ? 0 : ON + PAST * (room - at - 1) + (opens ? 0 : within) - led;
          const here = best[u - 1]![at]!.worth - going;
          if (here > worth) [worth, before] = [here, at];
        }
        return { worth: worth + spoken[u]![room]!, before };
      }),
    );
  });
  const path: number[] = [];
  if (units.length === 0) return [];
  let room = best.at(-1)!.reduce((top, { worth }, i, all) => (worth > all[top]!.worth ? i : top), 0);
  for (let u = units.length - 1; u >= 0; u--) {
    path.unshift(room);
    room = best[u]![room]!.before;
  }
  return units.reduce<Cut[]>((cuts, { from, to, opens }, u) => {
    const last = cuts.at(-1);
    const goesOn = !opens || (byLine && last && wordsIn(text.slice(last.from, to)) < SHORT_PIECE);
    if (last && goesOn && last.room === path[u]) cuts[cuts.length - 1] = { ...last, to };
    else cuts.push({ from, to, room: path[u]! });
    return cuts;
  }, []);
}
