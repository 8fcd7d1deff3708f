// The reader’s guesses in this browser: one to a question, the last that was given.
import { keepAside, keepText, keptText, storageKey } from '../browser/browser-store.ts';
import { decodeGuesses, encodeGuesses, type GivenGuess, type Guesses } from '../predict/guesses.ts';

const KEY = storageKey('guesses');
const ASIDE = storageKey('guesses-kept-aside');
let here: Guesses = {}; // those of this page, where the browser keeps none

/** The guesses as they are kept now. */
export function keptGuesses(): Guesses {
  const text = keptText(KEY);
  const read = text === null ? {} : decodeGuesses(text);
  return { ...here, ...read };
}

/** Keeps a guess, beside the others; what stood there and cannot be read is set aside first. */
export function keepGuess(id: string, given: GivenGuess): void {
  const text = keptText(KEY);
  if (text !== null && !decodeGuesses(text) && !keepAside(ASIDE, text)) return;
  here = { ...keptGuesses(), [id]: given };
  keepText(KEY, encodeGuesses(here));
}
