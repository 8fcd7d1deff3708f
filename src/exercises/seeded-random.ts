// Chance by seed: the same seed draws the same question on every machine.
import { uniformRandom } from '../core/numerics/random.ts';
import { quotesOf, type Quotes } from './quotes.ts';
import { seedOf } from './seed.ts';

export interface Chance {
  /** A whole number from 0 up to, not including, `n`. */
  readonly below: (n: number) => number;
  readonly pick: <T>(list: readonly T[]) => T;
  /** The list in another order. */
  readonly shuffle: <T>(list: readonly T[]) => T[];
  /** For figures that are not drawn but computed, and printed all the same. */
  readonly quotes: Quotes;
  /** The generator that draws by it: a kind that was mended goes on drawing as it did for sheets of older ones. */
  readonly generator: number;
}

/** Chance from a seed: a text, such as a question's kind and number; with the codes of what was quoted, if a link carries them, and the generator where it matters. */
export function seededChance(seed: string, carried?: readonly number[], generator = 1): Chance {
  const uniform = uniformRandom(seedOf(seed));
  const below = (n: number) => Math.floor(uniform() * n);
  return {
    below,
    generator,
    quotes: quotesOf(carried),
    pick: (list) => list[below(list.length)]!,
    shuffle: (list) => {
      const mixed = [...list];
      for (let i = mixed.length - 1; i > 0; i--) {
        const j = below(i + 1);
        [mixed[i], mixed[j]] = [mixed[j]!, mixed[i]!];
      }
      return mixed;
    },
  };
}
