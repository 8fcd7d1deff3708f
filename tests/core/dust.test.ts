// Dust in a room and the class of a dust, against worked sums and published figures.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dustClass, dustCloud, dustForCloud, dustViolence } from '../../src/core/milling/dust.ts';
import { kilograms, litres, quantity } from '../../src/core/quantity.ts';
import reference from '../../src/published/reference/milling-and-mashing.json' with { type: 'json' };
import { always, apart, between, ordered } from './draw.ts';

const space = (n: number) => quantity('space', n);
const rise = (n: number) => quantity('pressureRise', n);
const violence = (n: number) => quantity('dustViolence', n);

test('L3: two kilograms over 30 m³', () => {
  const { answer } = reference.sums.rows.find(({ id }) => id === 'L3')!;
  expect(Math.abs(dustCloud(kilograms(2), space(30)) - answer)).toBeLessThan(5e-5);
});

test('the dust for a cloud makes that cloud, and twice the room halves it', () => {
  always(fc.tuple(between(0.1, 5000), between(1, 10_000)), ([cloud, room]) => {
    const dust = dustForCloud(quantity('dustCloud', cloud), space(room));
    expect(apart(dustCloud(dust, space(room)), cloud)).toBeLessThan(1e-12);
    expect(apart(dustCloud(dust, space(2 * room)), cloud / 2)).toBeLessThan(1e-12);
  });
});

test.each(reference.dust.rows)('$item is of class St $class, as published', ({ range, class: printed }) => {
  for (const kst of range) expect(dustClass(violence(kst))).toBe(printed);
});

test.each(reference.dustClasses.rows)(
  'St $class: above $above, to $to bar m/s, as recalled',
  ({ above, to, class: printed }) => {
    expect(dustClass(violence(above))).toBe(printed - 1);
    expect(dustClass(violence(above + 1e-9))).toBe(printed);
    expect(dustClass(violence(to ?? 10_000))).toBe(printed);
  },
);

test('the cube law: one dust has one Kst in every vessel, and a cubic metre reads it directly', () => {
  expect(dustViolence(rise(111), litres(1000))).toBe(111);
  expect(dustViolence(rise(1000), litres(27))).toBeCloseTo(300, 9); // cube root of 0.027 is 0.3
  always(fc.tuple(between(1, 5000), between(1, 8)), ([speed, wider]) => {
    // A vessel k³ times as large shows a rise k times as slow.
    const [small, large] = [
      dustViolence(rise(speed), litres(20)),
      dustViolence(rise(speed / wider), litres(20 * wider ** 3)),
    ];
    expect(apart(small, large)).toBeLessThan(1e-12);
  });
});

test('a fiercer dust is never of a lower class', () => {
  always(ordered(0, 1000, 0), ([mild, fierce]) => {
    expect(dustClass(violence(fierce))).toBeGreaterThanOrEqual(dustClass(violence(mild)));
  });
});

test('no room, no vessel below 20 L, nothing below nought', () => {
  expect(() => dustCloud(kilograms(1), space(0))).toThrow(RangeError);
  expect(() => dustCloud(kilograms(-1), space(1))).toThrow(RangeError);
  expect(() => dustViolence(rise(100), litres(19))).toThrow(RangeError);
  expect(() => dustClass(violence(NaN))).toThrow(RangeError);
});
