// A trainer's own questions and sheets as this browser keeps them: read strictly, and what cannot be read is set aside word for word.
import { keepAside, keepText, keptText, storageKey } from '../browser/browser-store.ts';
import { readOwnQuestion, type OwnQuestion } from '../exercises/own/own-question.ts';
import type { OwnSheet } from '../exercises/own/own-sheet.ts';
import { ownSheetText, readOwnSheet } from '../exercises/own/own-text.ts';

const BANK = storageKey('own-questions');
const SHEETS = storageKey('own-sheets');
const DRAFT = storageKey('own-sheet-now');
export const MOST_OWN_KEPT = 200; // questions, or sheets, in a browser

export interface KeptAll<T> {
  readonly all: readonly T[];
  /** What cannot be read, in a sentence. */
  readonly problem?: string;
}

function kept<T>(key: string, what: string, read: (given: unknown) => T | string): KeptAll<T> {
  const text = keptText(key);
  if (text === null) return { all: [] };
  const damaged = (all: readonly T[]): KeptAll<T> => {
    const isAside = keepAside(`${key}-kept-aside`, text);
    return { all, problem: `Some of the ${what} kept in this browser cannot be read.${isAside ? ' They are set aside in it, word for word.' : ''}` }; // prettier-ignore
  };
  try {
    const given: unknown = JSON.parse(text);
    if (!Array.isArray(given)) return damaged([]);
    const readings = given.slice(0, MOST_OWN_KEPT).map(read);
    const all = readings.filter((each): each is Exclude<typeof each, string> => typeof each !== 'string');
    return all.length === given.length ? { all: all as readonly T[] } : damaged(all as readonly T[]);
  } catch {
    return damaged([]);
  }
}

export const keptBank = (): KeptAll<OwnQuestion> => kept(BANK, 'questions', readOwnQuestion);
/** Keeps the questions; false when the browser does not let it. */
export const keepBank = (all: readonly OwnQuestion[]): boolean =>
  keepText(BANK, JSON.stringify(all.slice(0, MOST_OWN_KEPT)));

export const keptSheets = (): KeptAll<OwnSheet> =>
  kept(SHEETS, 'sheets', (given) => readOwnSheet(typeof given === 'string' ? given : ''));
/** Keeps a sheet under its title, in place of one of that title; without a sheet, removes it. */
export function keepSheet(title: string, sheet?: OwnSheet): boolean {
  const others = keptSheets().all.filter((each) => each.title !== title);
  return keepText(SHEETS, JSON.stringify([...others, ...(sheet ? [sheet] : [])].slice(-MOST_OWN_KEPT).map(ownSheetText)));
} // prettier-ignore

/** Whether a key of storage is that of the sheet on the desk: another tab has changed it. */
export const isDraftKey = (key: string | null): boolean => key === DRAFT;
/** The sheet that is being put together, so that closing the page loses nothing. */
export const keptDraft = (): OwnSheet | undefined => {
  const read = readOwnSheet(keptText(DRAFT) ?? '');
  return typeof read === 'string' ? undefined : read;
};
export const keepDraft = (sheet: OwnSheet): boolean => keepText(DRAFT, ownSheetText(sheet));
