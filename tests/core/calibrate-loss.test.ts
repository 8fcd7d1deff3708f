// A store's two figures from one regauge: there and back with the cask itself.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { calibrateLoss, lossAYear } from '../../src/core/maturing/calibrate.ts';
import { ageCask } from '../../src/core/maturing/cask.ts';
import { litres, litres20, percent, strength, years } from '../../src/core/quantity.ts';
import { always, answer, apart, between } from './draw.ts';

const aged = (filled: number, loss: number, steady: number, humidity: number, span: number) =>
  ageCask({
    volume: litres20(200),
    strength: strength(filled),
    cask: { size: litres(200) },
    store: { alcoholLoss: percent(loss), humidity: percent(humidity), steadyHumidity: percent(steady) },
    years: years(span),
  }).at(-1)!;
const calibrate = (
  filled: number,
  found: { volume: number; strength: number },
  humidity: number,
  span: number,
) =>
  calibrateLoss({
    filled: { volume: litres20(200), strength: strength(filled) },
    found: { volume: litres20(found.volume), strength: strength(found.strength) },
    years: years(span),
    humidity: percent(humidity),
  });

test('what a cask became gives back the store that made it so', () => {
  const stores = fc.tuple(between(55, 70), between(0.5, 5), between(50, 75), between(40, 90), fc.integer({ min: 2, max: 20 }));
  always(stores, ([filled, loss, steady, humidity, span]) => {
    const found = aged(filled, loss, steady, humidity, span);
    const result = calibrate(filled, found, humidity, span);
    if ('refused' in result) return expect(result.refused).toMatch(/more than one/); // two courses end alike: it must not choose
    expect(apart(result.alcoholLoss, loss)).toBeLessThan(1e-6);
    expect(Math.abs(result.steadyHumidity - steady)).toBeLessThan(1e-4);
  });
}); // prettier-ignore

test('two courses that end alike are rare among common stores', () => {
  let refused = 0;
  const all = [52, 58, 64, 70, 74].flatMap((steady) => [45, 60, 70, 80, 88].flatMap((humidity) => [3, 8, 15].map((span) => ({ steady, humidity, span }))));
  for (const { steady, humidity, span } of all) if ('refused' in calibrate(63.5, aged(63.5, 2, steady, humidity, span), humidity, span)) refused++;
  expect(refused).toBe(0);
}); // prettier-ignore

test('the store found leads from the first reading to the second, whatever they are', () => {
  always(fc.tuple(between(150, 190), between(57, 63), between(70, 90)), ([volume, found, humidity]) => {
    const result = calibrate(63.5, { volume, strength: found }, humidity, 10);
    if ('refused' in result) return expect(result.refused).toMatch(/[.]$/);
    const back = aged(63.5, result.alcoholLoss, result.steadyHumidity, humidity, 10);
    expect(apart(back.volume, volume)).toBeLessThan(1e-5);
    expect(Math.abs(back.strength - found)).toBeLessThan(1e-3);
  });
});

test('an unchanged strength at any humidity means that it is the steady one, and the loss compounds', () => {
  always(fc.tuple(between(45, 78), between(0.3, 8)), ([humidity, loss]) => {
    const result = answer(
      calibrate(63.5, { volume: 200 * (1 - loss / 100) ** 10, strength: 63.5 }, humidity, 10),
    );
    expect(Math.abs(result.steadyHumidity - humidity)).toBeLessThan(1e-4);
    expect(apart(result.alcoholLoss, loss)).toBeLessThan(1e-7);
  });
});

test('what cannot be is refused: nothing gone, alcohol gained, water from nowhere, a flood', () => {
  expect(calibrate(63.5, { volume: 200, strength: 63.5 }, 80, 10)).toHaveProperty('refused');
  expect(calibrate(63.5, { volume: 199, strength: 65 }, 80, 10)).toHaveProperty('refused');
  expect(calibrate(63.5, { volume: 199, strength: 50 }, 40, 10)).toHaveProperty('refused');
  expect(calibrate(63.5, { volume: 60, strength: 63.5 }, 65, 1)).toHaveProperty('refused');
});

test('the mean loss of 19 % over two years is 10 % a year', () => {
  expect(lossAYear(100, 81, 2)).toBeCloseTo(10, 12);
  expect(lossAYear(100, 100, 5)).toBe(0);
});
