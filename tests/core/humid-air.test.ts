// Moist air against steam tables, a chart, the gas law and the psychrometer.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { celsius, kilopascals, percent } from '../../src/core/quantity.ts';
import {
  airAt,
  enthalpyOf,
  humidityOf,
  moistened,
  volumeOf,
  warmed,
  wetBulbOf,
} from '../../src/core/vapour/humid-air.ts';
import reference from '../../src/published/reference/malting.json' with { type: 'json' };
import { always, answer, apart, between } from './draw.ts';

const outside = fc.tuple(
  between(-15, 40).map(celsius),
  between(1, 100).map(percent),
  between(60, 110).map(kilopascals),
);
const NORMAL = kilopascals(101.325);
const WATER_OVER_AIR = 18.015 / 28.966; // molar masses, kg/kmol; school chemistry
const vapourPressure = (ratio: number, pressure: number) => (pressure * ratio) / (WATER_OVER_AIR + ratio);

test.each(reference.steam.rows)(
  'saturated air at $temperature °C holds water at $kPa kPa',
  ({ temperature, kPa }) => {
    const { ratio } = airAt(celsius(temperature), percent(100), NORMAL);
    expect(apart(vapourPressure(ratio, NORMAL), kPa)).toBeLessThan(5e-4); // printed to four figures; two formulations
  },
);

test('air at 25 °C and 50 % stands where the chart has it', () => {
  const { temperature, humidity, ...chart } = reference.moistAir;
  const air = airAt(celsius(temperature), percent(humidity), NORMAL);
  expect(Math.abs(air.ratio - chart.ratio)).toBeLessThan(0.0001); // the chart's last figure
  expect(Math.abs(enthalpyOf(air) * 1000 - chart.enthalpy)).toBeLessThan(0.1);
  expect(Math.abs(volumeOf(air) - chart.volume)).toBeLessThan(0.001);
  expect(Math.abs(wetBulbOf(air) - chart.wetBulb)).toBeLessThan(0.1);
});

test('humidity comes back, and warming keeps the water and lowers the humidity', () => {
  always(outside, ([temperature, humidity, pressure]) => {
    const air = airAt(temperature, humidity, pressure);
    expect(apart(humidityOf(air), humidity)).toBeLessThan(1e-9);
    const warm = warmed(air, celsius(temperature + 20));
    expect(warm.ratio).toBe(air.ratio);
    expect(humidityOf(warm)).toBeLessThan(humidityOf(air));
  });
});

test('volume is that of the gas law for air and vapour together', () => {
  always(outside, ([temperature, humidity, pressure]) => {
    const air = airAt(temperature, humidity, pressure);
    const kilomoles = 1 / 28.966 + air.ratio / 18.015;
    expect(apart(volumeOf(air), (kilomoles * 8.314463 * (temperature + 273.15)) / pressure)).toBeLessThan(
      1e-3,
    );
  });
});

test('warming takes 1.006 kJ/(kg K) for air and 1.86 for vapour', () => {
  always(outside, ([temperature, humidity, pressure]) => {
    const air = airAt(temperature, humidity, pressure);
    const heat = 1000 * (enthalpyOf(warmed(air, celsius(temperature + 30))) - enthalpyOf(air));
    expect(apart(heat, 30 * (1.006 + 1.86 * air.ratio))).toBeLessThan(1e-9);
  });
});

const kilnAir = fc
  .tuple(outside, between(45, 90).map(celsius), between(70, 100).map(percent))
  .map(([[temperature, humidity, pressure], on, off]) => ({
    on: warmed(airAt(temperature, humidity, pressure), on),
    off,
  }))
  .filter(({ on, off }) => humidityOf(on) < off - 5);

test('air that takes up water keeps its enthalpy, cools and comes to the humidity asked', () => {
  always(kilnAir, ({ on, off }) => {
    const damp = answer(moistened(on, off));
    expect(apart(enthalpyOf(damp), enthalpyOf(on))).toBeLessThan(1e-9);
    expect(apart(humidityOf(damp), off)).toBeLessThan(1e-6);
    expect(damp.temperature).toBeLessThan(on.temperature);
    expect(damp.ratio).toBeGreaterThan(on.ratio);
  });
});

// Constant enthalpy leaves out the water's own warmth, c × ΔW × wet bulb; so the two lines part by little.
test('constant enthalpy and constant wet bulb lead to nearly the same air', () => {
  always(kilnAir, ({ on }) => {
    const full = answer(moistened(on, percent(100)));
    expect(full.temperature - wetBulbOf(on)).toBeLessThan(0.05);
    expect(full.temperature - wetBulbOf(on)).toBeGreaterThan(-1.2);
  });
});

// e = e(wet) − 6.62e-4 × pressure × (dry − wet): the ventilated psychrometer, from memory; kept to the weather it is made for.
test('the wet bulb agrees with the psychrometer', () => {
  const weather = fc.tuple(
    between(5, 35).map(celsius),
    between(20, 100).map(percent),
    between(90, 105).map(kilopascals),
  );
  always(weather, ([temperature, humidity, pressure]) => {
    const air = airAt(temperature, humidity, pressure);
    const wet = wetBulbOf(air);
    if (wet < 0.1) return; // ice has another constant
    const saturated = vapourPressure(airAt(wet, percent(100), pressure).ratio, pressure);
    const vapour = saturated - 6.62e-4 * pressure * (temperature - wet);
    expect(Math.abs(vapour - vapourPressure(air.ratio, pressure))).toBeLessThan(0.05);
  });
});

test('what cannot be is stopped', () => {
  const damp = airAt(celsius(30), percent(95), NORMAL);
  expect(moistened(damp, percent(90))).toHaveProperty('refused');
  expect(() => airAt(celsius(-21), percent(50), NORMAL)).toThrow(RangeError);
  expect(() => airAt(celsius(20), percent(101), NORMAL)).toThrow(RangeError);
  expect(() => airAt(celsius(20), percent(50), kilopascals(NaN))).toThrow(RangeError);
  expect(() => airAt(celsius(100), percent(100), NORMAL)).toThrow(RangeError);
  expect(() => warmed(damp, celsius(121))).toThrow(RangeError);
});
