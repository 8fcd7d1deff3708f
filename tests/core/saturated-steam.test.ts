// Saturated steam beside a second law: the vapour pressure of water by Antoine, where that holds.
import { expect, test } from 'vitest';
import { celsius, kilopascals } from '../../src/core/quantity.ts';
import { waterPressure } from '../../src/core/vapour/equilibrium.ts';
import { steamPressure, steamTemperature } from '../../src/core/vapour/saturated-steam.ts';

test.each([50, 65, 80, 95, 100, 115, 129])('at %f °C it is at the pressure of Antoine’s law', (at) => {
  const pressure = waterPressure(celsius(at));
  // Antoine’s constants hold within a few tenths of a degree up to 130 °C.
  expect(Math.abs(steamTemperature(pressure) - at)).toBeLessThan(0.4);
  expect(steamPressure(celsius(at)) / pressure).toBeCloseTo(1, 1);
});

test('there and back it is the same, between the rows as well', () => {
  for (const pressure of [12, 85, 180, 333, 555, 900, 1400])
    expect(steamPressure(steamTemperature(kilopascals(pressure)))).toBeCloseTo(pressure, 1);
});

test('it rises all the way, and ends are refused', () => {
  const all = Array.from({ length: 100 }, (_, i) => steamTemperature(kilopascals(11 + i * 14.8)));
  expect(all.every((each, i) => i === 0 || each > all[i - 1]!)).toBe(true);
  expect(() => steamTemperature(kilopascals(5))).toThrow(RangeError);
  expect(() => steamPressure(celsius(230))).toThrow(RangeError);
});
