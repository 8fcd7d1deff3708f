// The hydrometer in a sample that is not at 20 °C: against printed densities, by straight lines between table rows.
import { expect, test } from 'vitest';
import { celsius, strength } from '../../../../src/core/quantity.ts';
import { correctedTo20, standsAt } from '../../../../src/core/shift/still/samples.ts';
import densities from '../../../../src/published/reference/density-published.json' with { type: 'json' };
import { always, between } from '../../draw.ts';
import fc from 'fast-check';

const at20 = densities
  .filter((row) => row.abv_pct !== undefined)
  .map((row) => [row.rho_published, row.abv_pct!] as const)
  .sort(([a], [b]) => a - b);
/** Strength of a density at 20 °C, straight between the rows of the table. */
function strengthOf(rho: number): number {
  const i = Math.max(
    1,
    at20.findIndex(([each]) => each >= rho),
  );
  const [[r0, s0], [r1, s1]] = [at20[i - 1]!, at20[i]!];
  return s0 + ((rho - r0) / (r1 - r0)) * (s1 - s0);
}
const PURE = at20[0]![0];
const rows = densities.filter((row) => row.mass_pct !== undefined && row.t_C !== undefined && row.t_C !== 20 && row.t_C >= 5 && row.mass_pct >= 30 && row.mass_pct <= 75); // prettier-ignore

test.each(rows.map((row) => [row.mass_pct!, row.t_C!, row.rho_published] as const))(
  'the glass in spirit of %s parts in a hundred by mass at %s °C stands where its printed density of %s says',
  (mass, t, rho) => {
    // Strength by volume of a mass share: mass × density of the mixture ÷ density of ethanol, found by the table alone.
    let was = mass;
    for (let i = 0; i < 60; i++) {
      const [lighter, heavier] = [at20.findLast(([, s]) => s >= was)!, at20.find(([, s]) => s <= was)!];
      const mixed = lighter[1] === heavier[1] ? lighter[0] : heavier[0] + ((was - heavier[1]) / (lighter[1] - heavier[1])) * (lighter[0] - heavier[0]); // prettier-ignore
      was = (mass * mixed) / PURE;
    }
    const stands = strengthOf(rho * (1 + 25e-6 * (t - 20))); // the glass grows by 25 millionths a kelvin
    // The printed densities are up to 0.12 kg/m³ off, 0.1 % vol; straight lines between rows of the table another 0.05. Above 75 its rows stand too far apart for straight lines.
    expect(Math.abs(standsAt(strength(was), celsius(t)) - stands)).toBeLessThan(0.2);
  },
);

test('there are such rows, warm and cold', () => {
  expect(rows.length).toBeGreaterThan(3);
});

test('what the glass shows, brought to 20 °C, is what it was', () => {
  always(fc.tuple(between(5, 90), between(5, 40)), ([was, t]) => {
    const back = correctedTo20(standsAt(strength(was), celsius(t)), celsius(t));
    expect(Math.abs(back - was)).toBeLessThan(1e-6);
  });
});

test('what is next to water is read at any warmth: no mark is without a strength', () => {
  always(fc.tuple(between(0, 100), between(0, 40)), ([shown, t]) => {
    const made = correctedTo20(strength(shown), celsius(t));
    expect(made).toBeGreaterThanOrEqual(0);
    expect(made).toBeLessThanOrEqual(100);
  });
  expect(correctedTo20(strength(0), celsius(21))).toBe(0); // warm water is lighter than the mark of water
  expect(correctedTo20(strength(100), celsius(5))).toBeLessThanOrEqual(100);
});

test('a warm sample shows more than it has, a cold one less', () => {
  expect(standsAt(strength(70), celsius(30))).toBeGreaterThan(72.5);
  expect(standsAt(strength(70), celsius(12))).toBeLessThan(68);
});
