// Houses that the reader removed, or whose figures were all put back: each can be had back, with its parts.
import { decodeHouse, encodeHouse } from '../house/codec.ts';
import { freeName, withHouse, withoutHouse } from '../house/shelf.ts';
import { storageKey } from './browser-store.ts';
import { keepShelf, keptShelf, liveName, liveShelf } from './house-store.ts';
import { dropRemoved, keepRemoved, namesRemoved, removedUnder } from './removed-store.ts';

const KEY = storageKey('shelf-removed');

/** Their names, the last removed first. */
export const removedHouses = (): readonly string[] => namesRemoved(KEY);

/** Takes a house off the shelf; its name among those removed, or nothing where it could not be kept there, and then it stays. The open one stays too. */
export function removeHouse(unwanted: string): string | undefined {
  const text = unwanted === liveName() ? undefined : keptShelf()[unwanted];
  const aside = text === undefined ? undefined : keepRemoved(KEY, unwanted, text);
  if (aside !== undefined) keepShelf(withoutHouse(keptShelf(), unwanted));
  return aside;
}

/** Keeps the text of the open house, as it stood before it changed as a whole, among those removed. */
export const keepHouseBefore = (text: string): string | undefined => keepRemoved(KEY, liveName(), text);

/** Puts a house back on the shelf, under another name where its own is taken by now; that name, or nothing where it is not there. */
export function putHouseBack(removed: string): string | undefined {
  const text = removedUnder(KEY)[removed];
  if (text === undefined) return undefined;
  const reading = decodeHouse(text);
  const name = freeName(reading.isNamed ? reading.name : removed, withHouse(liveShelf(), liveName(), ''));
  keepShelf(withHouse(keptShelf(), name, reading.isHouse ? encodeHouse({ ...reading, name }) : text));
  if (Object.hasOwn(keptShelf(), name)) dropRemoved(KEY, removed);
  return name;
}
