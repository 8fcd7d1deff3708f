// Several houses side by side: a shelf of saved texts by name. Pure: it takes the stored text and gives the new one.
import { isData, jsonIn } from '../core/reading/data.ts';

/** Each house's saved text, by its name. */
export type Shelf = Readonly<Record<string, string>>;

/** Reads a shelf; anything that is not a text under a name is left out, and the shelf is then not whole. */
export function readShelf(kept: string | null): { readonly shelf: Shelf; readonly isWhole: boolean } {
  const data = jsonIn(kept ?? '{}');
  const entries = isData(data) ? Object.entries(data) : [];
  const sound = entries.filter((entry): entry is [string, string] => typeof entry[1] === 'string');
  return { shelf: Object.fromEntries(sound), isWhole: isData(data) && sound.length === entries.length };
}

/** A name that the shelf does not have yet, made from one that is wanted. */
export function freeName(wanted: string, shelf: Shelf): string {
  if (!Object.hasOwn(shelf, wanted)) return wanted;
  let n = 2;
  while (Object.hasOwn(shelf, `${wanted} ${n}`)) n++;
  return `${wanted} ${n}`;
}

/** The shelf with a house put on it, in place of one of the same name. */
export function withHouse(shelf: Shelf, name: string, text: string): Shelf {
  return { ...shelf, [name]: text };
}

/** The shelf without a house. */
export function withoutHouse(shelf: Shelf, name: string): Shelf {
  return Object.fromEntries(Object.entries(shelf).filter(([key]) => key !== name));
}
