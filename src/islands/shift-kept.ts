// The reader's shift of a kind in this browser. One that cannot be read is set aside, and never written over.
import { keepAside, keepText, keptText, storageKey } from '../browser/browser-store.ts';

type Problem = { readonly problem: string };

const LONGEST = 2000; // characters of what was said

/** A desk as it was left, and in which shift, round and step. */
export interface Desk {
  readonly seed: number;
  readonly round: number;
  readonly step: number;
  readonly pace: number;
  readonly said: string;
}

/** Where a kind of shift is kept, by its id. */
export function keeperOf<K extends object>(id: string, encode: (shift: K) => string, decode: (text: string) => K | Problem) {
  const [key, aside, deskKey] = [storageKey(id), storageKey(`${id}-kept-aside`), storageKey(`${id}-desk`)];
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
    /** What the desk showed when it was left: how fast the clock went, and what was said last. */
    desk(): Desk | undefined {
      try {
        const { seed, round, step, pace, said } = JSON.parse(keptText(deskKey) ?? '{}') as Partial<Desk>;
        const isDesk = [seed, round, step, pace].every((each) => Number.isFinite(each)) && typeof said === 'string' && said.length <= LONGEST;
        return isDesk ? ({ seed, round, step, pace, said } as Desk) : undefined;
      } catch {
        return undefined;
      }
    },
    keepDesk: (desk: Desk): boolean => keepText(deskKey, JSON.stringify({ ...desk, said: desk.said.slice(0, LONGEST) })),
    /** Keeps a shift; false when the browser does not let it be kept. */
    keep: (shift: K): boolean => !isHeld && keepText(key, encode(shift)),
  };
} // prettier-ignore
