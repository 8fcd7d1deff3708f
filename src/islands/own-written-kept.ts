// The question of one's own that is being written, as this browser keeps it, so that closing the page loses nothing.
import { keepAside, keepText, keptText, storageKey } from '../browser/browser-store.ts';
import { readDraft, draftText, type WrittenDraft } from '../exercises/own/draft-text.ts';

const WRITTEN = storageKey('own-question-now');

/** Whether a key of storage is that of the form: another tab has changed it. */
export const isWrittenKey = (key: string | null): boolean => key === WRITTEN;

/** What stands in the form; what cannot be read is set aside. */
export function keptWritten(): WrittenDraft | undefined {
  const text = keptText(WRITTEN);
  if (text === null) return undefined;
  const read = readDraft(text);
  if (read === undefined) keepAside(`${WRITTEN}-kept-aside`, text);
  return read;
}
export const keepWritten = (written: WrittenDraft): boolean => keepText(WRITTEN, draftText(written));
