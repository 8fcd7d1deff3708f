// The lesson that the reader is in, in this browser; there is one at most.
import { keepText, keptText, storageKey } from '../browser/browser-store.ts';
import { decodeLesson, encodeLesson, type OpenLesson } from '../path/open-lesson.ts';

const KEY = storageKey('lesson');

export function keptLesson(): OpenLesson | undefined {
  const text = keptText(KEY);
  return text === null ? undefined : decodeLesson(text);
}
export const keepLesson = (lesson: OpenLesson): boolean => keepText(KEY, encodeLesson(lesson));
/** The lesson is over: nothing leads back to it. */
export const dropLesson = (): boolean => keepText(KEY, '');
