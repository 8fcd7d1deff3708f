// What a reader put right in a talk, held by its words and those around them, so that it outlives edits elsewhere, reloads and other readings.
import { figureIds, type TalkFigureId } from '../talk/figures.ts';
import type { ReadQuantity } from '../talk/script.ts';
import { NOT_OURS, type SettledMarks } from '../talk/settled.ts';

export type PutRight = TalkFigureId | typeof NOT_OURS;
export interface Correction {
  /** The quantity as it was said. */
  readonly words: string;
  /** What stood before and behind it, spaces made even. */
  readonly before: string;
  readonly after: string;
  /** Where it stood: of places that are alike the nearest counts. */
  readonly at: number;
  readonly figure: PutRight;
}

const AROUND = 40; // characters on either side that are kept
const LEAST = 0.25; // part of them that must still stand there
const REACH = 3 * AROUND; // characters in which those words are looked for that an edit has moved away
const LOOSE = 0.4; // part of the words around that must still stand there, in their order, where an edit came between
const MOST = 500; // corrections of a talk; as many quantities are read
const LONGEST = 200; // characters of a quantity

const even = (text: string) => text.replace(/\s+/g, ' ');
const beforeAt = (text: string, at: number) =>
  even(text.slice(Math.max(0, at - 2 * AROUND), at)).slice(-AROUND);
const afterAt = (text: string, at: number) => even(text.slice(at, at + 2 * AROUND)).slice(0, AROUND);

/** What stands from one place of a text to another, put right. */
export function correctionAt(text: string, start: number, end: number, figure: PutRight): Correction {
  const words = text.slice(start, Math.min(end, start + LONGEST));
  return { words, before: beforeAt(text, start), after: afterAt(text, end), at: start, figure };
}

/** How many characters two texts share from their beginning. */
function shared(a: string, b: string): number {
  let n = 0;
  while (n < a.length && n < b.length && a[n] === b[n]) n++;
  return n;
}
const backwards = (text: string) => [...text].reverse().join('');

/** The part of what stood around a correction that stands around a place of a text, 0 to 1. */
function likeness({ before, after }: Correction, text: string, { at, end }: Place): number {
  const whole = before.length + after.length;
  if (whole === 0) return 1;
  const ahead = shared(backwards(before), backwards(beforeAt(text, at)));
  return (ahead + shared(after, afterAt(text, end))) / whole;
}

interface Place {
  readonly at: number;
  readonly end: number;
}

/** Words that go on with a number: “three” is another in “three hundred” and in “twenty-three”. */
const goesOn =
  /^(?:[.,]\d|[\d\p{L}]|[\s-]+(?:hundred|thousand|million|dozen|point|and a (?:half|quarter)|(?:and )?\d)(?!\p{L}))/u;
const wentBefore =
  /(?:\d[.,]|[\d\p{L}]|(?<!\p{L})(?:\w+ty|hundred|thousand|million|point|half|quarter)[\s-]+(?:(?:and|a|an) )?)$/iu;

/** What goes on with a number at a place, on both sides: where that is another than it was, so is the number. */
const numberAbout = (before: string, after: string): string =>
  `${wentBefore.exec(before)?.[0] ?? ''}|${goesOn.exec(after)?.[0] ?? ''}`.toLowerCase();

/** Words that may come between a number and its unit, or go. */
const describes = /^(?:whole|full|long|good|solid|short|clear)$/i;

/** Finds words in a text from a place on, however they are spaced; the loose way also with an adjective more or less among them. */
function finderOf(words: string, isLoose = false): (text: string, from: number) => Place | undefined {
  const all = words.split(/\s+/);
  const parts = (isLoose ? all.filter((part) => !describes.test(part)) : all).map((part) =>
    part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'),
  );
  const says = new RegExp(
    parts.join(isLoose ? '\\s+(?:(?:whole|full|long|good|solid|short|clear)\\s+)?' : '\\s+'),
    'g',
  );
  return (text, from) => {
    says.lastIndex = from;
    const found = says.exec(text);
    return found ? { at: found.index, end: found.index + found[0].length } : undefined;
  };
}

const wordsOf = (text: string) => text.toLowerCase().match(/[\p{L}\d]+/gu) ?? [];

/** How many words of a list stand in another in the same order. */
function inOrder(wanted: readonly string[], there: readonly string[]): number {
  let row = Array.from({ length: there.length + 1 }, () => 0);
  for (const word of wanted) {
    const next = [0];
    for (const [i, other] of there.entries())
      next.push(word === other ? row[i]! + 1 : Math.max(row[i + 1]!, next[i]!));
    row = next;
  }
  return row.at(-1)!;
}

/** The part of the words around a correction that still stand around a place in their order, 0 to 1. */
function looseLikeness({ before, after }: Correction, text: string, { at, end }: Place): number {
  const [ahead, behind] = [wordsOf(before), wordsOf(after)];
  const whole = ahead.length + behind.length;
  if (whole === 0) return 0;
  const found =
    inOrder(ahead, wordsOf(text.slice(Math.max(0, at - REACH), at))) +
    inOrder(behind, wordsOf(text.slice(end, end + REACH)));
  return found / whole;
}

/** The quantity about which an edit left most of a correction's words in their order; nothing where another has as many. */
function loosely(each: Correction, text: string, quantities: readonly ReadQuantity[], taken: ReadonlySet<number>): number | undefined {
  const find = finderOf(each.words, true);
  const own = numberAbout(each.before, each.after);
  const found: { readonly place: number; readonly like: number }[] = [];
  for (let at = find(text, 0); at; at = find(text, at.at + 1)) {
    const there = at;
    const quantity = quantities.find(({ start, end }) => start < there.end && there.at < end);
    if (!quantity || taken.has(quantity.start)) continue;
    if (numberAbout(text.slice(Math.max(0, there.at - AROUND), there.at), text.slice(there.end, there.end + AROUND)) !== own) continue;
    found.push({ place: quantity.start, like: looseLikeness(each, text, there) });
  }
  const [best, second] = found.toSorted((a, b) => b.like - a.like);
  return best && best.like >= LOOSE && best.like > (second?.like ?? 0) ? best.place : undefined;
} // prettier-ignore

/** The quantity that each correction speaks of, by its number in the list; nothing where its words are gone. What stands close about its words decides first, then what an edit left of it. */
export function placesOfCorrections(
  corrections: readonly Correction[],
  text: string,
  quantities: readonly ReadQuantity[],
): readonly (number | undefined)[] {
  const taken = new Set<number>();
  const close = corrections.map((each) => {
    const own = numberAbout(each.before, each.after);
    let best: { place: number; like: number; away: number } | undefined;
    const find = finderOf(each.words);
    let found = find(text, 0);
    for (const quantity of quantities) {
      while (found && found.end <= quantity.start) found = find(text, found.at + 1);
      if (!found) break;
      if (found.at >= quantity.end || taken.has(quantity.start)) continue;
      const [before, after] = [
        text.slice(Math.max(0, found.at - AROUND), found.at),
        text.slice(found.end, found.end + AROUND),
      ];
      if (numberAbout(before, after) !== own) continue;
      const [like, away] = [likeness(each, text, found), Math.abs(found.at - each.at)];
      if (like < LEAST || (best && (like < best.like || (like === best.like && away >= best.away)))) continue;
      best = { place: quantity.start, like, away };
    }
    if (best) taken.add(best.place);
    return best?.place;
  });
  return close.map((place, i) => {
    const found = place ?? loosely(corrections[i]!, text, quantities, taken);
    if (found !== undefined) taken.add(found);
    return found;
  });
}

/** What is settled of the quantities of a text. */
export function settledBy(
  corrections: readonly Correction[],
  text: string,
  quantities: readonly ReadQuantity[],
): SettledMarks {
  const places = placesOfCorrections(corrections, text, quantities);
  return Object.fromEntries(
    places.flatMap((place, i) => (place === undefined ? [] : [[place, corrections[i]!.figure]])),
  ) as SettledMarks;
}

const isPutRight = (figure: unknown): figure is PutRight =>
  figure === NOT_OURS || figureIds.includes(figure as TalkFigureId);

function isCorrection(given: unknown): given is Correction {
  if (typeof given !== 'object' || given === null) return false;
  const { words, before, after, at, figure } = given as Partial<Record<keyof Correction, unknown>>;
  const isText = (text: unknown, most: number) => typeof text === 'string' && text.length <= most;
  return (
    isText(words, LONGEST) &&
    words !== '' &&
    isText(before, AROUND) &&
    isText(after, AROUND) &&
    Number.isSafeInteger(at) &&
    isPutRight(figure)
  );
}

/** Corrections as they were kept; what is none counts for nothing. Those of an older build were kept by their places in the text. */
export function readCorrections(text: string, given: unknown): readonly Correction[] {
  if (Array.isArray(given))
    return given
      .slice(0, MOST)
      .flatMap((each: unknown) =>
        isCorrection(each)
          ? [{ words: each.words, before: each.before, after: each.after, at: each.at, figure: each.figure }]
          : [],
      );
  if (typeof given !== 'object' || given === null) return [];
  return Object.entries(given)
    .slice(0, MOST)
    .flatMap(([place, figure]: [string, unknown]) => {
      const words = /^\d+$/.test(place) ? (/^\S+/.exec(text.slice(Number(place)))?.[0] ?? '') : '';
      if (words === '' || !isPutRight(figure)) return [];
      return [correctionAt(text, Number(place), Number(place) + words.length, figure)];
    });
}
