// Spirit on scales, and what a regauge says of a cask.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ageCask } from '../../src/core/maturing/cask.ts';
import { compareRegauge, expectedNow } from '../../src/core/maturing/regauge.ts';
import { massFromScales, volumeAt20, weighSpirit } from '../../src/core/maturing/weighing.ts';
import { bracketedRoot } from '../../src/core/numerics/root.ts';
import {
  celsius,
  density,
  kilograms,
  litres,
  litres20,
  litresOfAlcohol,
  percent,
  strength,
  years,
} from '../../src/core/quantity.ts';
import { alcoholFromUsProofGallons, usProof } from '../../src/core/spirit/proof.ts';
import { densityFromStrength } from '../../src/core/spirit/strength.ts';
import us from '../../src/published/reference/us-gauging.json' with { type: 'json' };
import kept from '../../src/published/reference/maturing.json' with { type: 'json' };
import { always, apart, between, strengths, temperatures } from './draw.ts';

const POUND = 0.45359237; // kg, by definition
const GALLON = 3.785411784; // L, 231 cubic inches

test('81,000 lb of 190 proof on the scales are the gallons that 27 CFR 30.64 prints', () => {
  const printed = us.find(({ item }) => item === '81000 lb of 190 proof')!.value as { wine_gal: number; proof_gal: number };
  const proof190 = strength(bracketedRoot((s) => usProof(strength(s)) - 190, 90, 98));
  const { volume, volume20 } = weighSpirit(kilograms(81_000 * POUND), proof190, celsius(15.5556));
  expect(apart(volume / GALLON, printed.wine_gal)).toBeLessThan(1e-4); // the table rests on densities of 1913
  expect(apart((volume20 * proof190) / 100, alcoholFromUsProofGallons(printed.proof_gal))).toBeLessThan(1e-4);
}); // prettier-ignore

test('brass on the scales weighs what it is; lighter things weigh a little less than they are', () => {
  expect(massFromScales(kilograms(100), density(2000))).toBeCloseTo(100 * (1 - 1.2 / 8000) / (1 - 1.2 / 2000), 12);
  // 1,000 L of water of 998.2 kg/m³ are shown as 997.15 kg: 998.2 less 1.2 of air, the weights carried 0.15.
  expect(massFromScales(kilograms(997.15), density(998.2))).toBeCloseTo(998.2, 2);
}); // prettier-ignore

test('what is poured onto the scales comes back as litres', () => {
  always(fc.tuple(between(1, 700), strengths(10, 96), temperatures(-5, 35)), ([volume, s, t]) => {
    const rho = densityFromStrength(s, celsius(20));
    const lying = densityFromStrength(s, t);
    const mass = (volume * rho) / 1000;
    const shown = (mass * (1 - 1.2 / lying)) / (1 - 1.2 / 8000);
    const weighed = weighSpirit(kilograms(shown), s, t);
    expect(apart(weighed.volume20, volume)).toBeLessThan(1e-12);
    expect(apart(volumeAt20(weighed.volume, s, t), volume)).toBeLessThan(1e-12);
  });
}); // prettier-ignore

test('spirit in a cold store takes less room than at 20 °C, in a warm one more', () => {
  always(strengths(20, 96), (s) => {
    expect(volumeAt20(litres(100), s, celsius(5))).toBeGreaterThan(100);
    expect(volumeAt20(litres(100), s, celsius(30))).toBeLessThan(100);
  });
});

const store = { alcoholLoss: percent(2), humidity: percent(65), steadyHumidity: percent(65) };
const filled = { volume: litres20(200), strength: strength(63.5) };

test('with nothing drunk the expectation is the cask itself; what the wood drank is missing all along', () => {
  const plain = expectedNow({ filled, indrink: percent(0), store, years: years(10) });
  expect(plain).toEqual(ageCask({ ...filled, cask: { size: litres(200) }, store, years: years(10) }).at(-1));
  const drunk = expectedNow({ filled, indrink: percent(2), store, years: years(10) });
  expect(apart(drunk.alcohol, 0.98 * plain.alcohol)).toBeLessThan(1e-9);
  expect(plain.alcohol).toBeCloseTo(kept.sums.rows.find(({ id }) => id === 'T1')!.answer, 3);
});

test('a leak is what goes beyond the part allowed, on either side of it', () => {
  const call = (found: number) => compareRegauge(litresOfAlcohol(found), litresOfAlcohol(100), percent(3));
  expect(call(97.1).verdict).toBe('as expected');
  expect(call(102.9).verdict).toBe('as expected');
  expect(call(96.9)).toMatchObject({ verdict: 'too little' });
  expect(call(96.9).missing).toBeCloseTo(3.1, 9);
  expect(call(103.1).verdict).toBe('too much');
});
