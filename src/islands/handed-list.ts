// The lists of who gets which version, as this browser keeps them: one for each sheet, by its short name.
import { keepText, keptText, storageKey } from '../browser/browser-store.ts';

const keyOfList = (mark: string) => storageKey(`handed-out/${mark}`);

/** The names that were written down for a sheet, one a line; null where there are none. */
export const keptNameList = (mark: string): string | null => keptText(keyOfList(mark));
/** Keeps them; false when the browser does not let it. */
export const keepNameList = (mark: string, names: string): boolean => keepText(keyOfList(mark), names);
