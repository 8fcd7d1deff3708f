// What reads the address of a sheet that was set comes with the first address.
import type { sheetAt as read } from './class-sheets.ts';

/** The sheet of an address; a sentence when it is none, or its reader does not come. */
export const fetchSheetAt = async (...asked: Parameters<typeof read>): ReturnType<typeof read> => {
  const part = await import('./class-sheets.ts').catch(() => undefined);
  return part ? part.sheetAt(...asked) : 'A part of the book did not come; load the page again.';
};
