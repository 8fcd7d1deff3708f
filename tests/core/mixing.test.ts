// Reducing and blending: masses and alcohol add, volumes do not.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { litres20, strength, type Spirit } from '../../src/core/quantity.ts';
import { amountsOf, portionOf } from '../../src/core/spirit/amounts.ts';
import { WATER_DENSITY } from '../../src/core/spirit/density.ts';
import { blend, reduce } from '../../src/core/spirit/mixing.ts';
import { always, apart, between, ordered, spirits } from './draw.ts';

const alcohol = ({ volume, strength }: Spirit) => (volume * strength) / 100;
const reductions = fc.tuple(between(0.1, 200_000).map(litres20), ordered(0.1, 100, 0.01));

test('an amount in kilomoles comes back as the same volume and strength', () => {
  always(spirits, (spirit) => {
    const back = portionOf(amountsOf(spirit));
    expect(apart(back.volume, spirit.volume)).toBeLessThan(1e-12);
    expect(Math.abs(back.strength - spirit.strength)).toBeLessThan(1e-9);
  });
});

test('reducing keeps the alcohol and reaches the strength', () => {
  always(reductions, ([volume, [to, from]]) => {
    const made = reduce({ volume, strength: strength(from) }, strength(to));
    expect(
      apart(alcohol({ volume: made.volume, strength: strength(to) }), (volume * from) / 100),
    ).toBeLessThan(1e-9);
  });
});

test('reducing with water is blending with water', () => {
  always(reductions, ([volume, [to, from]]) => {
    const spirit = { volume, strength: strength(from) };
    const { waterVolume, waterMass, volume: made } = reduce(spirit, strength(to));
    const blended = blend([spirit, { volume: waterVolume, strength: strength(0) }]);
    expect(apart(blended.volume, made)).toBeLessThan(1e-9);
    expect(Math.abs(blended.strength - to)).toBeLessThan(1e-8);
    expect(apart(waterMass, (waterVolume * WATER_DENSITY) / 1000)).toBeLessThan(1e-12);
  });
});

test('reducing to its own strength takes no water', () => {
  always(
    spirits.filter((spirit) => spirit.strength > 0),
    (spirit) => {
      const { waterVolume, contraction } = reduce(spirit, spirit.strength);
      expect(Math.abs(waterVolume)).toBeLessThan(1e-9 * spirit.volume);
      expect(Math.abs(contraction)).toBeLessThan(1e-9 * spirit.volume);
    },
  );
});

test('volume vanishes whenever spirit is let down to 30 % vol or more', () => {
  always(fc.tuple(between(0.1, 200_000), ordered(30, 100, 0.01)), ([volume, [to, from]]) => {
    const { contraction } = reduce({ volume: litres20(volume), strength: strength(from) }, strength(to));
    expect(contraction).toBeGreaterThan(0);
  });
});

test('pure alcohol and water vanish most near 55 % vol, by 3.4 to 4 parts in a hundred (memory)', () => {
  const vanished = (to: number) => {
    const { volume, contraction } = reduce({ volume: litres20(100), strength: strength(100) }, strength(to));
    return (100 * contraction) / (volume + contraction);
  };
  const all = Array.from({ length: 99 }, (_, i) => vanished(i + 1));
  const most = Math.max(...all);
  expect(most).toBeGreaterThan(3.4);
  expect(most).toBeLessThan(4);
  expect(Math.abs(all.indexOf(most) + 1 - 55)).toBeLessThanOrEqual(3);
});

test('blending asks for no order and no grouping', () => {
  always(fc.tuple(spirits, spirits, spirits), ([a, b, c]) => {
    const [one, other, grouped] = [blend([a, b, c]), blend([c, a, b]), blend([blend([a, b]), c])];
    for (const blended of [other, grouped]) {
      expect(apart(one.volume, blended.volume)).toBeLessThan(1e-9);
      expect(Math.abs(one.strength - blended.strength)).toBeLessThan(1e-8);
    }
  });
});

test('a blend holds the alcohol of its parts and lies between their strengths', () => {
  always(fc.array(spirits, { minLength: 1, maxLength: 6 }), (parts) => {
    const made = blend(parts);
    const poured = parts.reduce((sum, part) => sum + alcohol(part), 0);
    expect(Math.abs(made.alcohol - poured)).toBeLessThanOrEqual(1e-9 * Math.max(poured, 1));
    const all = parts.map((part) => part.strength);
    expect(made.strength).toBeGreaterThan(Math.min(...all) - 1e-9);
    expect(made.strength).toBeLessThan(Math.max(...all) + 1e-9);
  });
});
