// Extract and gravity undo each other and rise together.
import { expect, test } from 'vitest';
import { gravity, plato } from '../../src/core/quantity.ts';
import { gravityFromPlato, platoFromGravity } from '../../src/core/wort/extract.ts';
import { always, between, ordered } from './draw.ts';

test('gravity to extract and back', () => {
  always(between(0.985, 1.148).map(gravity), (sg) => {
    expect(Math.abs(gravityFromPlato(platoFromGravity(sg)) - sg)).toBeLessThan(1e-9);
  });
});

test('extract to gravity and back, from −5 to 34 °P', () => {
  always(between(-5, 34).map(plato), (extract) => {
    expect(Math.abs(platoFromGravity(gravityFromPlato(extract)) - extract)).toBeLessThan(1e-9);
  });
});

test('heavier wort holds more extract', () => {
  always(ordered(0.98, 1.15, 1e-6), ([light, heavy]) => {
    expect(platoFromGravity(gravity(heavy))).toBeGreaterThan(platoFromGravity(gravity(light)));
  });
});

test('water holds no extract, to 0.005 °P, and lightened wash shows less than none', () => {
  expect(Math.abs(platoFromGravity(gravity(1)))).toBeLessThan(0.005);
  expect(platoFromGravity(gravity(0.995))).toBeLessThan(-1);
});
