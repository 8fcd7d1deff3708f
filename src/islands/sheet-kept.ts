// The sheet that was last made in this browser, and the one that a trainer begins with.
import { keepText, keptText, storageKey } from '../browser/browser-store.ts';
import { GENERATOR } from '../exercises/draw.ts';
import { linkProblem, readSheetLink } from '../exercises/sheet-link.ts';
import { forms, levels, topics } from '../exercises/topics.ts';
import type { Worksheet } from '../exercises/worksheet.ts';

const KEY = storageKey('sheet');

/** What the desk shows before anything is chosen. */
export const firstSheet: Worksheet = {
  generator: GENERATOR,
  topics,
  forms,
  levels,
  count: 10,
  house: 'built-in',
  seed: 'sheet-4',
  versions: 12,
};

/** The sheet of a link, or else the kept one, where it can still be read; a link that cannot be read says why. */
export function openedSheet(link: string): ReturnType<typeof readSheetLink> {
  const reading = readSheetLink(link);
  if (reading || link !== '') return reading;
  const kept = readSheetLink(keptText(KEY) ?? '');
  return kept && 'problem' in kept ? undefined : kept;
}

/** Puts a sheet's link into the address, and keeps it; not one that could not be read again. */
export function keepSheetLink(link: string): void {
  if (linkProblem(link)) return;
  history.replaceState(null, '', link);
  keepText(KEY, link);
}
