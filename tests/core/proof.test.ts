// Two scales of proof: how they run and where they meet the definition.
import { expect, test } from 'vitest';
import { strength } from '../../src/core/quantity.ts';
import { alcoholFromUsProofGallons, sikesProof, usProof } from '../../src/core/spirit/proof.ts';
import { always, apart, between, ordered, strengths } from './draw.ts';

test('both scales start at nothing, and pure alcohol is 200 American degrees', () => {
  expect([usProof(strength(0)), sikesProof(strength(0))]).toEqual([0, 0]);
  expect(usProof(strength(100))).toBeCloseTo(200, 9);
});

test('stronger is of higher proof on both scales', () => {
  always(ordered(0, 100, 1e-6), ([weak, strong]) => {
    for (const proof of [usProof, sikesProof])
      expect(proof(strength(strong))).toBeGreaterThan(proof(strength(weak)));
  });
});

test('American proof is within 0.15 of twice the strength, and hardly ever above it', () => {
  always(strengths(), (s) => {
    expect(2 * s - usProof(s)).toBeGreaterThan(-1e-4);
    expect(2 * s - usProof(s)).toBeLessThan(0.15);
  });
});

test('British proof is within 1.3 parts in a hundred of seven quarters of the strength', () => {
  always(strengths(1), (s) => expect(apart(sikesProof(s), (7 / 4) * s)).toBeLessThan(0.013));
});

test('proof gallons add', () => {
  always(between(0, 1e5), (n) => {
    expect(apart(alcoholFromUsProofGallons(n), n * alcoholFromUsProofGallons(1))).toBeLessThan(1e-12);
  });
});
