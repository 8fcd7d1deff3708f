// Vapour and liquid: limits, order, and the condition that activities must meet.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { celsius, kilopascals, moleFraction } from '../../src/core/quantity.ts';
import { activities, ethanolPressure, vapourOver, waterPressure } from '../../src/core/vapour/equilibrium.ts';
import { wilsonActivities } from '../../src/core/vapour/wilson.ts';
import published from '../../src/published/reference/vle-ethanol-water-101325.json' with { type: 'json' };
import { always, apart, between, ordered } from './draw.ts';
import { vapourModels } from '../../src/core/vapour/models.ts';
import { wilson } from '../../src/core/vapour/wilson.ts';

const pressures = between(20, 150).map(kilopascals);
const fractions = between(0, 1).map(moleFraction);

test('at the boiling point the two partial pressures make the whole', () => {
  always(fc.tuple(fractions, pressures), ([x, p]) => {
    const { temperature } = vapourOver(x, p);
    const { ethanol, water } = activities(x);
    expect(
      apart(ethanol * ethanolPressure(temperature) + water * waterPressure(temperature), p),
    ).toBeLessThan(1e-10);
  });
});

test('pure liquids give their own vapour and boil where their own pressure says', () => {
  always(pressures, (p) => {
    const [water, ethanol] = [vapourOver(moleFraction(0), p), vapourOver(moleFraction(1), p)];
    expect(water.vapour).toBe(0);
    expect(ethanol.vapour).toBeCloseTo(1, 12);
    expect(apart(waterPressure(water.temperature), p)).toBeLessThan(1e-10);
    expect(apart(ethanolPressure(ethanol.temperature), p)).toBeLessThan(1e-10);
  });
});

test('a richer liquid gives a richer vapour', () => {
  always(fc.tuple(ordered(0, 1, 1e-4), pressures), ([[lean, rich], p]) => {
    expect(vapourOver(moleFraction(rich), p).vapour).toBeGreaterThan(
      vapourOver(moleFraction(lean), p).vapour,
    );
  });
});

test('below 0.85 the vapour is richer than the liquid, and boils cooler the richer it is', () => {
  always(fc.tuple(ordered(1e-5, 0.85, 1e-4), pressures), ([[lean, rich], p]) => {
    const [a, b] = [vapourOver(moleFraction(lean), p), vapourOver(moleFraction(rich), p)];
    expect(a.vapour).toBeGreaterThan(lean);
    expect(b.vapour).toBeGreaterThan(rich);
    expect(b.temperature).toBeLessThan(a.temperature);
  });
});

test('under more pressure everything boils hotter', () => {
  always(fc.tuple(fractions, ordered(20, 150, 0.01)), ([x, [low, high]]) => {
    const boils = (p: number) => vapourOver(x, kilopascals(p)).temperature;
    expect(boils(high)).toBeGreaterThan(boils(low));
  });
});

test('the activities obey Gibbs and Duhem: x d ln γ₁ + (1 − x) d ln γ₂ = 0', () => {
  always(between(0.01, 0.99), (x) => {
    const h = 1e-5;
    const logs = (at: number) => {
      const { ethanol, water } = activities(moleFraction(at));
      return [Math.log(ethanol / at), Math.log(water / (1 - at))] as const;
    };
    const [[e1, w1], [e0, w0]] = [logs(x + h), logs(x - h)];
    expect(Math.abs((x * (e1 - e0) + (1 - x) * (w1 - w0)) / (2 * h))).toBeLessThan(1e-6);
  });
});

test('water boils within 0.05 K of 100 °C at one standard atmosphere, its old definition', () => {
  expect(Math.abs(vapourOver(moleFraction(0)).temperature - 100)).toBeLessThan(0.05);
  expect(apart(waterPressure(celsius(100)), 101.325)).toBeLessThan(0.002);
});

describe.each(vapourModels)('$name', (model) => {
  // Carey and Lewis 1932, as Perry's Handbook, Table 13-1, prints them.
  const rows = published.data.map(({ T_C, x, y }) => ({
    ...vapourOver(moleFraction(x), kilopascals(published.P_kPa), model),
    T_C,
    x,
    y,
  }));

  test('agrees with the published rows: 0.016 of vapour and 1 K at most, half of that as a rule', () => {
    for (const { x, y, T_C, vapour, temperature } of rows) {
      expect(Math.abs(vapour - y), `vapour over ${x}`).toBeLessThan(0.016);
      expect(Math.abs(temperature - T_C), `boiling point of ${x}`).toBeLessThan(1);
    }
    const spread = (off: (row: (typeof rows)[number]) => number) =>
      Math.sqrt(rows.reduce((sum, row) => sum + off(row) ** 2, 0) / rows.length);
    expect(spread(({ vapour, y }) => vapour - y)).toBeLessThan(0.008);
    expect(spread(({ temperature, T_C }) => temperature - T_C)).toBeLessThan(0.5);
  });

  test('its azeotrope is within 0.03 of the published 0.8943, below which vapour is richer', () => {
    const richer = (x: number) => vapourOver(moleFraction(x), kilopascals(101.325), model).vapour - x;
    expect(richer(0.86)).toBeGreaterThan(0);
    expect(richer(0.92)).toBeLessThan(0);
  });
});

test('Wilson’s activities obey Gibbs and Duhem at one temperature', () => {
  always(fc.tuple(between(0.01, 0.99), between(75, 100)), ([x, t]) => {
    const h = 1e-5;
    const logs = (at: number) => {
      const { ethanol, water } = wilsonActivities(moleFraction(at), t);
      return [Math.log(ethanol / at), Math.log(water / (1 - at))] as const;
    };
    const [[e1, w1], [e0, w0]] = [logs(x + h), logs(x - h)];
    expect(Math.abs((x * (e1 - e0) + (1 - x) * (w1 - w0)) / (2 * h))).toBeLessThan(1e-6);
  });
});

test('Wilson’s partial pressures make the whole at the boiling point found', () => {
  const pure = (a: number, b: number, c: number, t: number) => (101.325 / 760) * 10 ** (a - b / (c + t));
  always(fc.tuple(fractions, pressures), ([x, p]) => {
    const { temperature: t, vapour } = vapourOver(x, p, wilson);
    const { ethanol, water } = wilsonActivities(x, t);
    const [pe, pw] = [
      ethanol * pure(8.1122, 1592.864, 226.184, t),
      water * pure(8.07131, 1730.63, 233.426, t),
    ];
    expect(apart(pe + pw, p)).toBeLessThan(1e-8);
    expect(Math.abs(vapour - pe / p)).toBeLessThan(1e-8);
  });
});
