// What was removed by name and can be had back: texts under a key of their own, the last removed last.
import { freeName, readShelf, withHouse, withoutHouse, type Shelf } from '../house/shelf.ts';
import { keepAside, keepText, keptText } from './browser-store.ts';

const MOST = 20; // that can still be had back

/** The texts that were removed, by name. */
export const removedUnder = (key: string): Shelf => readShelf(keptText(key)).shelf;

/** Their names, the last removed first. */
export const namesRemoved = (key: string): readonly string[] => Object.keys(removedUnder(key)).toReversed();

/** Keeps a text among those that were removed; its name there, or nothing where the browser has no room for it. */
export function keepRemoved(key: string, name: string, text: string): string | undefined {
  const kept = keptText(key);
  const { shelf, isWhole } = readShelf(kept);
  if (!isWhole && !keepAside(`${key}-kept-aside`, kept!)) return undefined;
  const same = Object.keys(shelf).find((other) => shelf[other] === text);
  if (same !== undefined) return same;
  const free = freeName(name, shelf);
  const others = Object.fromEntries(Object.entries(shelf).slice(1 - MOST));
  return keepText(key, JSON.stringify(withHouse(others, free, text))) ? free : undefined;
}

/** Keeps a text no longer among those that were removed: it is back. */
export function dropRemoved(key: string, name: string): void {
  keepText(key, JSON.stringify(withoutHouse(removedUnder(key), name)));
}
