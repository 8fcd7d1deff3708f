// Strength, share by mass and density: each undoes the other.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { celsius, massPercent, moleFraction, strength } from '../../src/core/quantity.ts';
import { massPercentFromMoleFraction, moleFractionFromMassPercent } from '../../src/core/spirit/amounts.ts';
import {
  densityFromStrength,
  massPercentFromStrength,
  strengthFromDensity,
  strengthFromMassPercent,
} from '../../src/core/spirit/strength.ts';
import { always, between, ordered, strengths, temperatures } from './draw.ts';

test('strength to mass and back', () => {
  always(strengths(), (s) => {
    expect(Math.abs(strengthFromMassPercent(massPercentFromStrength(s)) - s)).toBeLessThan(1e-9);
  });
});

test('mass to strength and back', () => {
  always(between(0, 100).map(massPercent), (w) => {
    expect(Math.abs(massPercentFromStrength(strengthFromMassPercent(w)) - w)).toBeLessThan(1e-9);
  });
});

test('mass to mole fraction and back', () => {
  always(between(0, 1).map(moleFraction), (x) => {
    expect(Math.abs(moleFractionFromMassPercent(massPercentFromMoleFraction(x)) - x)).toBeLessThan(1e-12);
  });
});

test('strength to density at a temperature and back, above freezing', () => {
  always(fc.tuple(strengths(), temperatures(0)), ([s, t]) => {
    expect(Math.abs(strengthFromDensity(densityFromStrength(s, t), t) - s)).toBeLessThan(1e-9);
  });
});

test('the ends are fixed and the share by mass is always the smaller between them', () => {
  expect([0, 100].map((end) => massPercentFromStrength(strength(end)))).toEqual([0, 100]);
  always(strengths(0.01, 99.99), (s) => expect(massPercentFromStrength(s)).toBeLessThan(s));
});

test('the faintest mixture that a number can hold still has a share, never more than its strength', () => {
  for (const faint of [5e-324, 1e-323, 9.4e-323, 1e-305, 1e-299]) {
    const mass = massPercentFromStrength(strength(faint));
    expect(mass).toBeGreaterThanOrEqual(0);
    expect(mass).toBeLessThanOrEqual(faint); // ethanol is lighter than the water that it stands in
  }
});

test('stronger by volume is stronger by mass', () => {
  always(ordered(0, 100, 1e-6), ([weak, strong]) => {
    expect(massPercentFromStrength(strength(strong))).toBeGreaterThan(
      massPercentFromStrength(strength(weak)),
    );
  });
});

test('a density reads stronger on a cold day than the same density on a warm one reads', () => {
  always(fc.tuple(strengths(20, 85), ordered(0, 40, 0.5)), ([s, [cold, warm]]) => {
    const rho = densityFromStrength(s, celsius(warm));
    expect(strengthFromDensity(rho, celsius(cold))).toBeGreaterThan(s);
  });
});
