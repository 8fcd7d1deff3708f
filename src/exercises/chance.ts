// Chance by seed: the same seed draws the same question on every machine.
import { uniformRandom } from '../core/numerics/random.ts';

/** A whole number from a text. Source: the 32-bit hash FNV-1a, in the public domain, from memory. */
export function seedOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return hash >>> 0;
}

export interface Chance {
  /** A whole number from 0 up to, not including, `n`. */
  readonly below: (n: number) => number;
  readonly pick: <T>(list: readonly T[]) => T;
  /** The list in another order. */
  readonly shuffle: <T>(list: readonly T[]) => T[];
}

/** Chance from a seed: a text, such as a question's kind and number. */
export function chanceOf(seed: string): Chance {
  const uniform = uniformRandom(seedOf(seed));
  const below = (n: number) => Math.floor(uniform() * n);
  return {
    below,
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
