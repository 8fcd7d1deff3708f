// The reader's walks in the browser: one open, and the others by name on a shelf. What cannot be read is set aside, and never written over.
import { keepAside, keepText, textsKeptAside, keptText, storageKey } from '../browser/browser-store.ts';
import { dropRemoved, keepRemoved, namesRemoved, removedUnder } from '../browser/removed-store.ts';
import { plainName } from '../house/name.ts';
import { quotedGiven } from '../core/quoted-given.ts';
import { freeName, readShelf, withHouse, withoutHouse, type Shelf } from '../house/shelf.ts';
import { decodeWalk, encodeWalk, FIRST_WALK_NAME, type WalkRead } from '../walk/text.ts';
import { firstWalk, type Walk } from '../walk/walk.ts';

const OPEN = storageKey('walk');
const SHELF = storageKey('walks');
const ASIDE = storageKey('walk-kept-aside');
const REMOVED = storageKey('walks-removed');
export const NO_ROOM_FOR_WALK =
  'This browser has no room to keep this walk beside another, so nothing was changed. Save it to a file, or remove a walk.';
const held = new Set<string>(); // keys whose text could neither be read in full nor set aside

/** Every text of a walk that was set aside. */
export const walksAside = (): readonly string[] => textsKeptAside(ASIDE);

/** Sets a text aside that could not be read in full; what stands under its key is then free to change. */
function setAside(key: string, text: string): string {
  const isAside = keepAside(ASIDE, text);
  if (isAside) held.delete(key);
  else held.add(key);
  return isAside
    ? 'What was kept is set aside and can be saved.'
    : 'There is no room to set aside what was kept, so it stays, and what you change now lasts until the page is closed.';
}

/** The walk that was open, or the one to begin with; what was wrong with it. */
export function keptWalk(): WalkRead {
  const text = keptText(OPEN);
  seen = text;
  if (text === null) return { walk: firstWalk(FIRST_WALK_NAME), problems: [] };
  const read = decodeWalk(text);
  const { walk, problems } = 'problem' in read ? { walk: firstWalk(FIRST_WALK_NAME), problems: [read.problem] } : read; // prettier-ignore
  return problems.length === 0 ? { walk, problems } : { walk, problems: [...problems, setAside(OPEN, text)] };
}

let seen: string | null = null; // the text of the open walk, as this tab wrote or read it last

/** Keeps the open walk; false when the browser does not let it be kept. */
export function keepWalk(walk: Walk): boolean {
  const text = encodeWalk(walk);
  if (held.has(OPEN) || !keepText(OPEN, text)) return false;
  seen = text;
  return true;
}

/** Calls back with the open walk once another tab has written it, also while this page slept; or, of one that cannot be read in full, with what is wrong. Gives back what ends it. */
export function onWalkChanged(take: (walk: Walk) => void, tell: (problems: readonly string[]) => void): () => void {
  const look = () => {
    const text = keptText(OPEN);
    if (text === null || text === seen) return;
    seen = text;
    const read = decodeWalk(text);
    if (!('problem' in read) && read.problems.length === 0) return take(read.walk);
    const problems = 'problem' in read ? [read.problem] : read.problems;
    tell(['Another tab has written this walk, and it cannot be read in full. The walk here goes on as it was.', ...problems, setAside(OPEN, text)]);
  };
  const written = ({ key }: StorageEvent) => key === OPEN && look();
  const woken = () => document.visibilityState === 'visible' && look();
  addEventListener('storage', written);
  addEventListener('pageshow', woken);
  document.addEventListener('visibilitychange', woken);
  return () => {
    removeEventListener('storage', written);
    removeEventListener('pageshow', woken);
    document.removeEventListener('visibilitychange', woken);
  };
} // prettier-ignore

/** The walks on the shelf. One that is damaged is set aside before it is written over. */
export function keptWalks(): Shelf {
  const text = keptText(SHELF);
  const { shelf, isWhole } = readShelf(text);
  if (!isWhole) setAside(SHELF, text!);
  return shelf;
}
const keepWalks = (shelf: Shelf): boolean => !held.has(SHELF) && keepText(SHELF, JSON.stringify(shelf));

/** A name for a walk that none on the shelf has. */
export const freeWalkName = (wanted: string): string => freeName(wanted, keptWalks());

/** Puts a walk on the shelf under its name, or one like it where another walk has it; false when it could not be kept. */
export function shelveWalk(walk: Walk): boolean {
  const shelf = keptWalks();
  const name = Object.hasOwn(shelf, walk.name) && shelf[walk.name] !== encodeWalk(walk) ? freeName(walk.name, shelf) : walk.name; // prettier-ignore
  return keepWalks(withHouse(shelf, name, encodeWalk({ ...walk, name })));
}

export const dropWalk = (name: string): boolean => keepWalks(withoutHouse(keptWalks(), name));

/** The names of the walks that were removed and can be had back, the last removed first. */
export const removedWalks = (): readonly string[] => namesRemoved(REMOVED);

/** Takes a walk off the shelf and keeps it among those removed; its name there, or nothing where it could not be kept, and then it stays. */
export function removeWalk(name: string): string | undefined {
  const text = keptWalks()[name];
  const aside = text === undefined ? undefined : keepRemoved(REMOVED, name, text);
  return aside !== undefined && dropWalk(name) ? aside : undefined;
}

/** Puts a walk that was removed back on the shelf, under another name where its own is taken by now; that name, or nothing when it could not be kept. */
export function putWalkBack(removed: string): string | undefined {
  const text = removedUnder(REMOVED)[removed];
  if (text === undefined) return undefined;
  const read = decodeWalk(text);
  const isWhole = !('problem' in read) && read.problems.length === 0;
  const name = freeWalkName(isWhole ? read.walk.name : removed);
  const isBack = keepWalks(withHouse(keptWalks(), name, isWhole ? encodeWalk({ ...read.walk, name }) : text));
  if (isBack) dropRemoved(REMOVED, removed);
  return isBack ? name : undefined;
}

/** What is wrong with a name for a walk, or nothing. */
export function walkNameProblem(wanted: string): string | undefined {
  if (plainName(wanted) !== wanted || wanted === '')
    return `“${quotedGiven(wanted)}” is no name for a walk: it can have up to 80 characters on one line, at least one of them a letter or sign.`;
  return Object.hasOwn(keptWalks(), wanted)
    ? `You have a walk called “${quotedGiven(wanted)}” already; choose another name.`
    : undefined;
}
