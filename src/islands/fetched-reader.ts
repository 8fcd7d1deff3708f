// The reader of what people type in words, with units or ±. It comes with the first touch of a field; plain figures are read without it.
import { readAtOnce } from '../core/reading/at-once.ts';
import type { KindAsked, readQuantity } from '../core/reading/quantity.ts';

let reader: typeof readQuantity | undefined;
let coming: Promise<void> | undefined;

/** Fetches the reader, once; when it does not come, the page says that a part of it is missing. */
export function fetchReader(): Promise<void> {
  coming ??= import('../core/reading/quantity.ts').then(
    ({ readQuantity }) => void (reader = readQuantity),
    () => void (document.documentElement.dataset['script'] = 'lost'),
  );
  return coming;
}

/** What a text says; undefined while the reader that it needs is on its way. */
export const readTyped = (text: string, asked: KindAsked) =>
  reader ? reader(text, asked) : readAtOnce(text, asked);
