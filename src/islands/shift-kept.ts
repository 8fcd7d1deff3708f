// The reader's shift in this browser. One that cannot be read is set aside, and never written over.
import { keepAside, keepText, keptText, keyOf } from '../house/browser-store.ts';
import { decodeShift, encodeShift } from '../shift/text.ts';
import type { Shift } from '../shift/shift.ts';

const KEY = keyOf('shift');
const ASIDE = keyOf('shift-kept-aside');
let isHeld = false; // what stands there could neither be read nor set aside

/** The shift that was kept, or why it cannot be read; undefined when there is none. */
export function keptShift(): Shift | { readonly problem: string } | undefined {
  const text = keptText(KEY);
  if (text === null) return undefined;
  const read = decodeShift(text);
  if (!('problem' in read)) return read;
  isHeld = !keepAside(ASIDE, text);
  return { problem: `${read.problem} ${isHeld ? 'It stays where it is, and a new shift lasts until the page is closed.' : 'It is set aside, and nothing is lost.'}` }; // prettier-ignore
}

/** Keeps a shift; false when the browser does not let it be kept. */
export const keepShift = (shift: Shift): boolean => !isHeld && keepText(KEY, encodeShift(shift));
