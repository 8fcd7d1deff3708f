// From wort to wash: what goes in comes out, as liquid, gas or yeast.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fermentWort } from '../../src/core/fermenting/wash.ts';
import { wortExtract, wortMass } from '../../src/core/mashing/wort.ts';
import { gravity, litres20 } from '../../src/core/quantity.ts';
import { ETHANOL_DENSITY } from '../../src/core/spirit/density.ts';
import {
  attenuate,
  exciseFactor,
  fermentabilityFromGravities,
  strengthByExciseFactor,
  strengthFromGravities,
} from '../../src/core/wort/attenuation.ts';
import { always, apart, between, ordered } from './draw.ts';

const falls = ordered(0.985, 1.12, 1e-4)
  .filter(([, original]) => original > 1.001)
  .map(([final, original]) => ({ original: gravity(original), final: gravity(final) }));

test('the rule of the gravities: 81.4 × 64 ÷ 60 and 81.4 × 60 ÷ 58, by hand', () => {
  expect(fermentabilityFromGravities({ original: gravity(1.06), final: gravity(0.996) })).toBeCloseTo(
    86.827,
    3,
  );
  expect(fermentabilityFromGravities({ original: gravity(1.058), final: gravity(0.998) })).toBeCloseTo(
    84.207,
    3,
  );
});

test('mass in is mass out: wort = wash + carbon dioxide + yeast', () => {
  always(falls, (gravities) => {
    const { wash, carbonDioxide, yeast } = attenuate(gravities);
    expect(wash + carbonDioxide + yeast).toBeCloseTo(1, 12);
  });
});

test('extract in is extract left plus 2.0665 times the ethanol', () => {
  always(falls, (gravities) => {
    const { originalExtract, realExtract, wash, ethanol } = attenuate(gravities);
    expect(Math.abs(originalExtract / 100 - (wash * realExtract) / 100 - 2.0665 * ethanol)).toBeLessThan(
      1e-9,
    );
  });
});

test('no fall of gravity makes no alcohol and no gas', () => {
  always(between(1.001, 1.12).map(gravity), (sg) => {
    const { strength, carbonDioxide, wash } = attenuate({ original: sg, final: sg });
    for (const nothing of [strength, carbonDioxide, wash - 1]) expect(Math.abs(nothing)).toBeLessThan(1e-12);
  });
});

test('more original gravity, or a lower final one, makes stronger wash by both rules', () => {
  always(fc.tuple(ordered(1.03, 1.08, 1e-3), ordered(0.99, 1.02, 1e-3)), ([[thin, thick], [low, high]]) => {
    const balling = (original: number, final: number) =>
      strengthFromGravities({ original: gravity(original), final: gravity(final) });
    expect(balling(thick, low)).toBeGreaterThan(balling(thin, low));
    expect(balling(thick, low)).toBeGreaterThan(balling(thick, high));
    const excise = (original: number, present: number) =>
      strengthByExciseFactor({ original: gravity(original), present: gravity(present) });
    expect(excise(thick, low)).toBeGreaterThan(excise(thin, low));
    expect(excise(thick, low)).toBeGreaterThan(excise(thick, high));
  });
});

test('the two rules agree within 0.2 % vol from gravity 1.030 to 1.080, down to 1.010 to 0.996', () => {
  always(fc.tuple(between(1.03, 1.08), between(0.996, 1.01)), ([original, present]) => {
    const balling = strengthFromGravities({ original: gravity(original), final: gravity(present) });
    const excise = strengthByExciseFactor({ original: gravity(original), present: gravity(present) });
    expect(Math.abs(balling - excise)).toBeLessThan(0.2);
  });
});

test('excise factors never fall as the fall of gravity grows, and end with a reason', () => {
  const factors = Array.from({ length: 1008 }, (_, i) => exciseFactor(i / 10));
  for (let i = 1; i < factors.length; i++)
    expect(factors[i]).toBeGreaterThanOrEqual(factors[i - 1] as number);
  for (const outside of [100.8, -0.1, NaN]) expect(exciseFactor(outside)).toHaveProperty('refused');
});

test('a whole washback keeps the same balance', () => {
  const worts = fc.record({
    volume: between(20, 300_000).map(litres20),
    gravity: between(1.02, 1.12).map(gravity),
  });
  always(fc.tuple(worts, between(0.985, 1.015).map(gravity)), ([wort, final]) => {
    const wash = fermentWort(wort, final);
    expect(apart(wash.washMass + wash.carbonDioxide + wash.yeastGrown, wortMass(wort))).toBeLessThan(1e-12);
    expect(apart(wash.alcohol, (wash.volume * wash.strength) / 100)).toBeLessThan(1e-9);
    const ethanol = (wash.alcohol * ETHANOL_DENSITY) / 1000;
    const left = (wash.washMass * wash.attenuation.realExtract) / 100;
    expect(apart(left + 2.0665 * ethanol, wortExtract(wort))).toBeLessThan(1e-9);
  });
});
