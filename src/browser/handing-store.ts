// The owner's key and what the reader was handed, kept in this browser.
import { dropText, keepAside, keepText, keptText, storageKey } from './browser-store.ts';
import { readHanded, type HandedThings } from '../handing/handed.ts';
import { keyText, readKey, type OwnKey } from '../handing/own-key.ts';

const KEY = storageKey('signing-key');
const HANDED = storageKey('handed');

/** The key that is kept here, or a sentence where one is kept that cannot be read; that one is kept aside before another takes its place. */
export function keptKey(): { readonly own?: OwnKey; readonly problem?: string } {
  const text = keptText(KEY);
  return text === null ? {} : readKey(text);
}

/** Keeps the key; false when the browser does not let it be kept, or one that cannot be read would be lost. */
export function keepKey(own: OwnKey): boolean {
  const before = keptText(KEY);
  if (before !== null && 'problem' in readKey(before) && !keepAside(`${KEY}-kept-aside`, before))
    return false;
  return keepText(KEY, keyText(own));
}

/** What the reader was handed. */
export const keptHanded = () => readHanded(keptText(HANDED));

/** Keeps it; false when the browser does not let it be kept, or a list that cannot be read would be lost. */
export function keepHanded(handed: HandedThings): boolean {
  const before = keptText(HANDED);
  if (before !== null && !readHanded(before).isWhole && !keepAside(`${HANDED}-kept-aside`, before))
    return false;
  return keepText(HANDED, JSON.stringify(handed));
}

/** Takes the key out of this browser; false when the browser does not let it be. */
export const dropKey = (): boolean => dropText(KEY);
