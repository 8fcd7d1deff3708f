// How long a walk takes: words against minutes, minutes shared among the rooms, and times of day.
import { formatNumber } from '../core/format.ts';
import { isRefusal, refuse, type Refusal } from '../core/refusal.ts';
import { isPieceTold, type Room, type WalkFor, type Walk } from './walk.ts';

/** How many words a text has, a figure counting as one. */
export const wordsIn = (text: string): number => text.match(/[\p{L}\p{N}][^\s—–]*/gu)?.length ?? 0;

/** The words that are told in a room, in a walk of this length, to those who come. */
export const wordsTold = ({ pieces }: Room, of: WalkFor): number =>
  pieces.reduce((sum, piece) => sum + (isPieceTold(piece, of) ? wordsIn(piece.text) : 0), 0);

/** Whole minutes shared by weights, with a least for each; all alike where nothing weighs. Refuses what is too short for that. */
export function minutesShared(
  total: number,
  weights: readonly number[],
  least: number,
): readonly number[] | Refusal {
  if (weights.length === 0) return [];
  if (least * weights.length > total)
    return refuse(
      `${formatNumber(total, 0)} minutes are too few for ${weights.length} rooms of at least ${formatNumber(least, 0)}: take a room out, or let each have less.`,
    );
  const weighs = weights.some((each) => each > 0) ? weights : weights.map(() => 1);
  // Those whose part is less than the least have the least, and the others share what is left.
  const held = new Set<number>();
  let parts: readonly number[] = [];
  for (;;) {
    const free = weighs.reduce((sum, each, i) => (held.has(i) ? sum : sum + each), 0);
    const left = total - least * held.size;
    parts = weighs.map((each, i) => (held.has(i) ? least : (left * each) / free));
    const under = parts.findIndex((part, i) => !held.has(i) && part < least);
    if (under < 0) break;
    held.add(under);
  }
  const whole = parts.map(Math.floor);
  const order = parts.map((part, i) => [part - whole[i]!, i] as const).sort(([a], [b]) => b - a);
  const over = total - whole.reduce((sum, each) => sum + each, 0);
  for (const [, i] of order.slice(0, over)) whole[i]!++;
  return whole;
}

/** A walk of another length: its minutes shared anew by what is told in each room. */
export function withLength(walk: Walk, length: number, least = walk.least): Walk | Refusal {
  const minutes = minutesShared(
    length,
    walk.rooms.map((room) => wordsTold(room, { ...walk, length })),
    least,
  );
  if (isRefusal(minutes)) return minutes;
  return { ...walk, length, least, rooms: walk.rooms.map((room, i) => ({ ...room, minutes: minutes[i]! })) };
}

const DAY = 24 * 60;

/** The minutes of a time of day such as 9:05, 09.05 or 2130; nothing for what is none. */
export function minutesOf(clock: string): number | undefined {
  const [, hours, minutes] = /^\s*(\d{1,2})(?:\s*[:.h]?\s*([0-5]\d))?\s*$/.exec(clock) ?? [];
  if (hours === undefined || Number(hours) > 23) return undefined;
  return 60 * Number(hours) + Number(minutes ?? 0);
}

/** A time of day from minutes, as 9:05; past midnight it begins anew. */
export function clockOf(minutes: number): string {
  const within = ((Math.round(minutes) % DAY) + DAY) % DAY;
  return `${Math.floor(within / 60)}:${String(within % 60).padStart(2, '0')}`;
}

export interface RoomTime {
  readonly words: number;
  /** Minutes that the words take. */
  readonly spoken: number;
  /** When the party comes in and goes on, as minutes of the day. */
  readonly from: number;
  readonly to: number;
}

/** When the party is in each room, and how much is said there. */
export function timesOf(walk: Walk): readonly RoomTime[] {
  const { rooms, pace, begins } = walk;
  let from = minutesOf(begins) ?? 0;
  return rooms.map((room) => {
    const words = wordsTold(room, walk);
    const time = { words, spoken: words / pace, from, to: from + room.minutes };
    from = time.to;
    return time;
  });
}

/** Minutes to the half, in words. */
export function inMinutes(minutes: number): string {
  const half = Math.round(2 * minutes) / 2;
  if (half === 0) return minutes > 0 ? 'less than half a minute' : 'no time';
  if (half === 0.5) return 'half a minute';
  if (half === 1) return 'a minute';
  const whole = formatNumber(Math.floor(half), 0);
  return `${whole}${half % 1 ? '½' : ''} minutes`;
}

const inWords = (words: number) => (words === 1 ? 'one word' : `${formatNumber(words, 0)} words`);
const toTen = (words: number) => (words < 20 ? Math.ceil(words) : Math.ceil(words / 10) * 10);
const EMPTY = 0.5; // a room with less than half of the talk that its minutes would have on this walk is told of
const WORTH = 3; // minutes of a room that must be left over for that

/** What is wrong with a room's time, in a sentence: too much said, nothing, or much less than in the others; nothing where it is well. */
export function troubleOf(
  { name, minutes }: Room,
  { words, spoken }: RoomTime,
  of: Walk,
): string | undefined {
  const over = words - minutes * of.pace;
  if (over > 0.5)
    return `${name}: ${inMinutes(spoken)} of talk in ${inMinutes(minutes)}. Cut about ${inWords(toTen(over))}, or give it more time.`;
  const times = timesOf(of);
  const [all, said] = [
    of.rooms.reduce((sum, room) => sum + room.minutes, 0),
    times.reduce((sum, time) => sum + time.spoken, 0),
  ];
  if (said === 0 || minutes < WORTH) return undefined;
  if (words === 0) return `${name}: nothing is said in its ${inMinutes(minutes)}.`;
  if (minutes - spoken >= WORTH && spoken / minutes < (EMPTY * said) / all)
    return `${name}: ${inMinutes(spoken)} of talk in ${inMinutes(minutes)}. About ${inWords(toTen(((said / all) * minutes - spoken) * of.pace))} more would fill it like the others; or give it less time.`;
  return undefined;
}

/** What is to be said of the whole: how much of it is talk, and what does not fit. */
export function walkTimeInWords(walk: Walk): readonly string[] {
  const times = timesOf(walk);
  const minutes = walk.rooms.reduce((sum, room) => sum + room.minutes, 0);
  const words = times.reduce((sum, time) => sum + time.words, 0);
  const spoken = words / walk.pace;
  const found = [
    `${inWords(words)}, ${inMinutes(spoken)} of talk in ${inMinutes(minutes)}${spoken < minutes ? '; the rest is for the way, looking and questions' : ''}.`,
  ];
  if (spoken > minutes)
    found.push(`That is too much: cut about ${inWords(toTen(words - minutes * walk.pace))}.`);
  if (minutes !== walk.length)
    found.push(
      `The rooms have ${inMinutes(minutes)} and the walk ${inMinutes(walk.length)}: share them anew, or change a room.`,
    );
  return found;
}

/** What is wrong with where the party has to be by when, or nothing. */
export function lateFor(walk: Walk): string | undefined {
  const { due, rooms } = walk;
  const by = due && minutesOf(due.by);
  const room = due && rooms[due.room];
  if (by === undefined || !room || minutesOf(walk.begins) === undefined) return undefined;
  const late = timesOf(walk)[due!.room]!.from - by;
  if (late <= 0) return undefined;
  return `The party cannot be in the ${room.name} by ${clockOf(by)}: it comes at ${clockOf(by + late)}, ${inMinutes(late)} late. Begin earlier, or shorten the rooms before it.`;
}

/** A guide's pace from a passage read aloud: words a minute, or a sentence where it was not read through. */
export function paceOf(words: number, seconds: number, [low, high]: readonly [number, number]): number | Refusal {
  const pace = Math.round((60 * words) / seconds);
  if (pace > high) return refuse(`That was ${formatNumber(seconds, 0)} seconds, too short to read it aloud. Read it once more, to the end.`);
  if (!(pace >= low)) return refuse(`That took ${inMinutes(seconds / 60)}, longer than reading it aloud takes. Start once more, and stop at the last word.`);
  return pace;
} // prettier-ignore
