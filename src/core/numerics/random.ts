// Seeded random numbers: the same seed gives the same numbers everywhere.

/**
 * Uniform numbers from 0 up to 1, from a whole-number seed. Good for drawing examples, not for secrets.
 * Source: the 32-bit mixing function known as mulberry32, in the public domain, from memory.
 * @example uniformRandom(7)() === uniformRandom(7)() // true (the same seed)
 */
export function uniformRandom(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/**
 * Normal numbers of mean 0 and standard deviation 1. Source: Box and Muller, Annals of Mathematical Statistics 29 (1958).
 * @example normalRandom(7)() === normalRandom(7)() // true (the same seed)
 */
export function normalRandom(seed: number): () => number {
  const uniform = uniformRandom(seed);
  return () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
}
