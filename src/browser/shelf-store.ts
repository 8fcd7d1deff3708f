// The reader's houses by name: one is open, and the others stand on the shelf.
import { decodeHouse, type WholeHouse } from '../house/codec.ts';
import { nameProblem } from '../house/name.ts';
import type { HouseParts } from '../house/parts/part.ts';
import { freeName, withoutHouse } from '../house/shelf.ts';
import {
  endVisit,
  wholeHouseNow,
  isVisit,
  keptShelf,
  liveName,
  liveShelf,
  keepShelf,
  saveHouse,
  setName,
  shelveOwn,
  takeHouse,
  tellTrouble,
  tellOfKept,
} from './house-store.ts';

/** Gives the house another name; on the shelf it moves. Refuses a name that is empty or taken. */
export function renameHouse(wanted: string): string | undefined {
  const next = wanted.trim();
  const problem = nameProblem(next);
  if (problem !== undefined) return problem;
  if (next === liveName()) return undefined;
  if (Object.hasOwn(liveShelf(), next))
    return `The name of the house: “${next}” is on the shelf already; choose another.`;
  if (!isVisit()) keepShelf(withoutHouse(keptShelf(), liveName())); // the reader's own may have the name of one that is visited
  setName(next);
  return undefined;
}

/** Leaves the house on the shelf as it is, and goes on with a copy of it. */
export function copyHouse(): void {
  shelveOwn();
  setName(freeName(`${liveName()}, copy`, liveShelf()));
}

/** Takes a house from the shelf; the one that was open stays there. */
export function openHouse(wanted: string): void {
  shelveOwn();
  if (!Object.hasOwn(liveShelf(), wanted)) return;
  const text = liveShelf()[wanted]!;
  const reading = decodeHouse(text);
  if (!reading.isHouse)
    return void tellTrouble('shelf', [`${wanted} cannot be opened. ${reading.problems.join(' ')}`]);
  endVisit();
  tellTrouble('link', []);
  tellTrouble('tab', []);
  takeHouse(reading.name === wanted ? reading : { ...reading, name: freeName(reading.name, liveShelf()) });
  tellOfKept(text, reading.problems);
}

/**
 * Opens a house from a file's text under a name of its own. Returns what was wrong, in its parts as well if `ofParts`
 * says so; a text that is no house changes nothing.
 */
export function loadHouse(
  text: string,
  ofParts?: (parts: HouseParts) => readonly string[],
): readonly string[] {
  const reading = decodeHouse(text);
  if (!reading.isHouse) return reading.problems;
  shelveOwn();
  endVisit();
  tellTrouble('link', []);
  takeHouse({ ...reading, name: freeName(reading.name, liveShelf()) });
  return [...reading.problems, ...(ofParts?.(reading.parts) ?? [])];
}

/** The reader's own house of a name as it stands now; undefined when there is none that can be read. */
export function ownHouse(wanted: string): WholeHouse | undefined {
  if (!isVisit() && wanted === liveName()) return wholeHouseNow();
  if (!Object.hasOwn(keptShelf(), wanted)) return undefined;
  const reading = decodeHouse(keptShelf()[wanted]!);
  return reading.isHouse ? { ...reading, name: wanted } : undefined;
}

/** Opens one of the reader's houses as it has become, under its name. */
export function changeHouseWhole(next: WholeHouse): void {
  shelveOwn();
  endVisit();
  tellTrouble('link', []);
  takeHouse(next);
  saveHouse();
}
