// The reader's talks: their text form, and the browser in which they are kept by name, one open and the others on a shelf.
import { keepText, keptText, storageKey } from '../browser/browser-store.ts';
import { plainName } from '../house/name.ts';
import { freeName, readShelf, withHouse, withoutHouse, type Shelf } from '../house/shelf.ts';
import { quotedGiven } from '../core/quoted-given.ts';
import { readCorrections, type Correction } from './script-corrections.ts';

export interface Talk {
  readonly name: string;
  readonly text: string;
  readonly corrections: readonly Correction[];
  /** Whether it is held against the house, where the reader has said so. */
  readonly held?: boolean;
}

export const LONGEST_TALK = 100_000; // characters of a talk that are read; a tour has some 15,000
const FORMAT = 'malt-spirit-talk';
const VERSION = 1;
export const FIRST_TALK_NAME = 'My talk';
const OPEN = storageKey('script');
const SHELF = storageKey('scripts');
const REMOVED = storageKey('scripts-removed');
const MOST_REMOVED = 20; // talks that were removed and can still be had back

/** The text that keeps a talk, in the browser and in a file. */
export const encodeTalk = ({ name, text, corrections, held }: Talk): string =>
  JSON.stringify({ format: FORMAT, version: VERSION, name, text, corrections, held });

/** A talk from its text, or from what an older build kept without a name; nothing where there is none, it is too long, or cannot be read. */
export function decodeTalk(kept: string | null): Talk | undefined {
  try {
    const data: unknown = JSON.parse(kept ?? '');
    if (typeof data !== 'object' || data === null) return undefined;
    const { format, version, name, text, corrections, settled, held } = data as Readonly<
      Record<string, unknown>
    >;
    if (format !== undefined && (format !== FORMAT || version !== VERSION)) return undefined;
    if (typeof text !== 'string' || text.length > LONGEST_TALK) return undefined;
    return {
      name: (typeof name === 'string' && plainName(name)) || FIRST_TALK_NAME,
      text,
      corrections: readCorrections(text, corrections ?? settled),
      ...(typeof held === 'boolean' ? { held } : {}),
    };
  } catch {
    return undefined;
  }
}

/** The talk of a file: one that was saved here, or else the file's text under the file's name; a sentence where it is of another version. */
export function talkOfFile(fileName: string, content: string): Talk | { readonly problem: string } {
  const saved = decodeTalk(content);
  if (saved) return saved;
  if (content.startsWith(`{"format":"${FORMAT}"`))
    return {
      problem: `${quotedGiven(fileName)} cannot be read as a talk by this handbook. Nothing was changed.`,
    };
  return {
    name: plainName(fileName.replace(/\.[^.]*$/, '')) || FIRST_TALK_NAME,
    text: content.slice(0, LONGEST_TALK),
    corrections: [],
  };
}

/** The talk that is open, and those on the shelf. */
export const keptTalk = (): Talk | undefined => decodeTalk(keptText(OPEN));
export const keptTalks = (): Shelf => readShelf(keptText(SHELF)).shelf;

/** Keeps the open talk; false when the browser does not let it be kept. */
export const keepTalk = (talk: Talk): boolean => keepText(OPEN, encodeTalk(talk));
const keepTalks = (shelf: Shelf): boolean => keepText(SHELF, JSON.stringify(shelf));

/** A name for a talk that none on the shelf has, nor the one that is open where its name is given. */
export const freeTalkName = (wanted: string, open?: string): string =>
  freeName(wanted, open === undefined ? keptTalks() : withHouse(keptTalks(), open, ''));

/** Puts a talk on the shelf, under a name of its own; one without words is not worth it. False when it could not be kept there. */
export function shelveTalk(talk: Talk): boolean {
  if (talk.text.trim() === '') return true;
  const shelf = keptTalks();
  const there = decodeTalk(Object.hasOwn(shelf, talk.name) ? shelf[talk.name]! : null);
  const name = there && encodeTalk(there) !== encodeTalk(talk) ? freeName(talk.name, shelf) : talk.name;
  return keepTalks(withHouse(shelf, name, encodeTalk({ ...talk, name })));
}

/** Takes a talk off the shelf. */
export const dropTalk = (name: string): boolean => keepTalks(withoutHouse(keptTalks(), name));

/** The talks that were removed and can be had back, the last of them last. */
export const removedTalks = (): Shelf => readShelf(keptText(REMOVED)).shelf;

/** Takes a talk off the shelf and keeps it among those that were removed; its name there, or nothing where it could not be kept, and then it stays on the shelf. */
export function removeTalk(name: string): string | undefined {
  const text = keptTalks()[name];
  if (text === undefined) return undefined;
  const removed = removedTalks();
  const free = freeName(name, removed);
  const all = Object.entries(withHouse(removed, free, text)).slice(-MOST_REMOVED);
  if (!keepText(REMOVED, JSON.stringify(Object.fromEntries(all)))) return undefined;
  return dropTalk(name) ? free : undefined;
}

/** Puts a talk that was removed back on the shelf, under another name where its own is taken by now; that name, or nothing where there is no room. */
export function putTalkBack(removed: string, open: string): string | undefined {
  const text = removedTalks()[removed];
  if (text === undefined) return undefined;
  const talk = decodeTalk(text);
  const name = freeTalkName(talk?.name ?? removed, open);
  if (!keepTalks(withHouse(keptTalks(), name, talk ? encodeTalk({ ...talk, name }) : text))) return undefined;
  keepText(REMOVED, JSON.stringify(withoutHouse(removedTalks(), removed)));
  return name;
}

/** What is wrong with a name for a talk, or nothing. */
export function talkNameProblem(wanted: string): string | undefined {
  if (plainName(wanted) !== wanted || wanted === '')
    return `The name of the talk: “${quotedGiven(wanted)}” was given; it can have up to 80 characters on one line, at least one of them a letter or sign, and none that cannot be seen.`;
  return Object.hasOwn(keptTalks(), wanted)
    ? `The name of the talk: you have one called “${quotedGiven(wanted)}” already; choose another.`
    : undefined;
}
