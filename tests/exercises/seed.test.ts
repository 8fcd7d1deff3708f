// Seeds and chance: the published values of the hash, and the generator by whole numbers without bounds.
import { expect, test } from 'vitest';
import { normalRandom, uniformRandom } from '../../src/core/numerics/random.ts';
import { seededChance } from '../../src/exercises/seeded-random.ts';
import { seedOf } from '../../src/exercises/seed.ts';

test('seeds are the hash FNV-1a of 32 bits', () => {
  // Test vectors of the Internet draft “The FNV Non-Cryptographic Hash Algorithm” (Fowler, Noll, Vo, Eastlake), from memory.
  for (const [text, hash] of [['', 0x811c9dc5], ['a', 0xe40c292c], ['b', 0xe70c2de5], ['foobar', 0xbf9cf968]] as const)
    expect(seedOf(text), text).toBe(hash);
}); // prettier-ignore

/** The same mixing, written over whole numbers without bounds and cut to 32 bits at each step. */
function mixed(seed: number, count: number): number[] {
  const cut = (n: bigint) => n & 0xffffffffn;
  let state = cut(BigInt(seed));
  return Array.from({ length: count }, () => {
    state = cut(state + 0x6d2b79f5n);
    let t = cut((state ^ (state >> 15n)) * (1n | state));
    t = cut(t + cut((t ^ (t >> 7n)) * (61n | t))) ^ t;
    return Number(cut(t ^ (t >> 14n))) / 2 ** 32;
  });
}

test('chance is the 32-bit mixing of its source', () => {
  for (const seed of [0, 1, 32058, 0xffffffff]) {
    const uniform = uniformRandom(seed);
    expect(mixed(seed, 50)).toEqual(Array.from({ length: 50 }, () => uniform()));
  }
});

test('normal numbers are those of Box and Muller: two uniform ones each', () => {
  const [u, v] = mixed(7, 2) as [number, number];
  expect(normalRandom(7)()).toBeCloseTo(Math.sqrt(-2 * Math.log(1 - u)) * Math.cos(2 * Math.PI * v), 12);
});

test('a pick takes a place by its share of one, and a shuffle goes down from the end', () => {
  const draws = mixed(seedOf('malt'), 8);
  expect(seededChance('malt').below(10)).toBe(Math.floor(draws[0]! * 10));
  expect(seededChance('malt').pick(['a', 'b', 'c'])).toBe(['a', 'b', 'c'][Math.floor(draws[0]! * 3)]);
  const list = ['a', 'b', 'c', 'd'];
  const by = [...list];
  for (const [i, at] of [[0, 3], [1, 2], [2, 1]] as const) {
    const with_ = Math.floor(draws[i]! * (at + 1));
    [by[at], by[with_]] = [by[with_]!, by[at]!];
  }
  expect(seededChance('malt').shuffle(list)).toEqual(by);
  expect(list).toEqual(['a', 'b', 'c', 'd']);
}); // prettier-ignore
