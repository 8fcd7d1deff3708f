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

/** Finds words in a text from a place on, however they are spaced. */
function finderOf(words: string): (text: string, from: number) => Place | undefined {
  const parts = words.split(/\s+/).map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
  const says = new RegExp(parts.join('\\s+'), 'g');
  return (text, from) => {
    says.lastIndex = from;
    const found = says.exec(text);
    return found ? { at: found.index, end: found.index + found[0].length } : undefined;
  };
}

/** The quantity that each correction speaks of, by its number in the list; nothing where its words are gone. */
export function placesOfCorrections(
  corrections: readonly Correction[],
  text: string,
  quantities: readonly ReadQuantity[],
): readonly (number | undefined)[] {
  const taken = new Set<number>();
  return corrections.map((each) => {
    let best: { place: number; like: number; away: number } | undefined;
    const find = finderOf(each.words);
    let found = find(text, 0);
    for (const quantity of quantities) {
      while (found && found.end <= quantity.start) found = find(text, found.at + 1);
      if (!found) break;
      if (found.at >= quantity.end || taken.has(quantity.start)) continue;
      const [like, away] = [likeness(each, text, found), Math.abs(found.at - each.at)];
      if (like < LEAST || (best && (like < best.like || (like === best.like && away >= best.away)))) continue;
      best = { place: quantity.start, like, away };
    }
    if (best) taken.add(best.place);
    return best?.place;
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
