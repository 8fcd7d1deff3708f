// The reader's shift of a kind in this browser. One that cannot be read is set aside, and never written over.
import { keepAside, keepText, keptText, keyOf } from '../house/browser-store.ts';

type Problem = { readonly problem: string };

/** Where a kind of shift is kept, by its id. */
export function keeperOf<K extends object>(id: string, encode: (shift: K) => string, decode: (text: string) => K | Problem) {
  const [key, aside] = [keyOf(id), keyOf(`${id}-kept-aside`)];
  let isHeld = false; // what stands there could neither be read nor set aside
  return {
    /** The shift that was kept, or why it cannot be read; undefined when there is none. */
    kept(): K | Problem | undefined {
      const text = keptText(key);
      if (text === null) return undefined;
      const read = decode(text);
      if (!('problem' in read)) return read;
      isHeld = !keepAside(aside, text);
      return { problem: `${read.problem} ${isHeld ? 'It stays where it is, and a new shift lasts until the page is closed.' : 'It is set aside, and nothing is lost.'}` };
    },
    /** Keeps a shift; false when the browser does not let it be kept. */
    keep: (shift: K): boolean => !isHeld && keepText(key, encode(shift)),
  };
} // prettier-ignore
