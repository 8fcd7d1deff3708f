// Dividing the run: nothing is lost, and every cut does what the stillman expects.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cutRun } from '../../src/core/distilling/cuts.ts';
import { runStill } from '../../src/core/distilling/run.ts';
import { litres20, share, strength, type Quantity } from '../../src/core/quantity.ts';
import { amountsOf, plus } from '../../src/core/spirit/amounts.ts';
import { always, answer, apart, between, settings, strengths } from './draw.ts';

const charge = { volume: litres20(5000), strength: strength(25) };
const run = answer(runStill({ charge, reflux: share(0.1), until: strength(0.5) }));
const cut = (foreshots: Quantity<'strength'> | { share: Quantity<'share'> }, heart: number, feints: number) =>
  cutRun(run, { foreshots, heart: strength(heart), feints: strength(feints) });

test('the four parts hold the ethanol and the water of the charge', () => {
  const plans = fc.record({
    reflux: settings,
    charge: strengths(15, 40),
    heart: strengths(40, 55),
    feints: strengths(0.5, 20),
    first: between(0, 0.05),
  });
  always(plans, ({ reflux, charge: s, heart, feints, first }) => {
    const whole = { volume: litres20(1000), strength: s };
    const started = answer(runStill({ ...reflux, charge: whole, until: feints }));
    const parts = answer(cutRun(started, { foreshots: { share: share(first) }, heart, feints }));
    const [sum, all] = [
      [parts.foreshots, parts.heart, parts.feints, parts.residue].map(amountsOf).reduce(plus),
      amountsOf(whole),
    ];
    expect(apart(sum.ethanol, all.ethanol)).toBeLessThan(1e-9);
    expect(apart(sum.water, all.water)).toBeLessThan(1e-9);
  });
});

test('foreshots by share take that share of the alcohol', () => {
  always(between(0, 0.2), (part) => {
    const { foreshots } = answer(cut({ share: share(part) }, 55, 1));
    expect(Math.abs(foreshots.alcohol / 1250 - part)).toBeLessThan(1e-9);
  });
});

test('a lower end gives more heart, and a weaker one', () => {
  always(fc.tuple(between(56, 68), between(0.1, 3)), ([heart, step]) => {
    const [high, low] = [heart, heart - step].map((end) => answer(cut({ share: share(0.02) }, end, 1)).heart);
    expect(low!.volume).toBeGreaterThan(high!.volume);
    expect(low!.strength).toBeLessThan(high!.strength);
  });
});

test('longer foreshots leave less heart, and more foreshots', () => {
  always(fc.tuple(between(0, 0.2), between(0.001, 0.05)), ([part, more]) => {
    const [a, b] = [part, part + more].map((end) => answer(cut({ share: share(end) }, 60, 1)));
    expect(b!.heart.alcohol).toBeLessThan(a!.heart.alcohol);
    expect(b!.foreshots.volume).toBeGreaterThan(a!.foreshots.volume);
    expect(
      apart(a!.heart.alcohol - b!.heart.alcohol, b!.foreshots.alcohol - a!.foreshots.alcohol),
    ).toBeLessThan(1e-8);
  });
});

test('a lower end of the feints leaves less alcohol in the pot', () => {
  always(fc.tuple(between(0.6, 30), between(0.1, 20)), ([low, more]) => {
    const [a, b] = [low, low + more].map((end) => answer(cut({ share: share(0.02) }, 60, end)));
    expect(a!.residue.alcohol).toBeLessThan(b!.residue.alcohol);
  });
});

test('foreshots that end above the first drop are exactly nothing', () => {
  always(fc.tuple(strengths(8, 40), strengths(85, 90)), ([s, foreshots]) => {
    const started = answer(runStill({ charge: { volume: litres20(1000), strength: s }, until: strength(1) }));
    const parts = answer(cutRun(started, { foreshots, heart: strength(40), feints: strength(1) }));
    expect(parts.foreshots).toEqual({ volume: 0, strength: 0, alcohol: 0 });
  });
});

test('a share of foreshots too small to tell is none', () => {
  for (const first of [0, Number.MIN_VALUE, 1e-300, 1e-17]) {
    expect(answer(cut({ share: share(first) }, 60, 1)).foreshots).toEqual({
      volume: 0,
      strength: 0,
      alcohol: 0,
    });
  }
});

test('cuts out of order, or never reached, are refused with a sentence', () => {
  for (const refusal of [
    cut(strength(60), 65, 1),
    cut({ share: share(0.6) }, 70, 1),
    cut({ share: share(1) }, 60, 1),
    cut({ share: share(0.02) }, 20, 30),
    cut({ share: share(0.02) }, 90, 1),
  ]) {
    expect(refusal).toHaveProperty('refused', expect.stringMatching(/^[A-Z].*% vol.*\.$/));
  }
});
