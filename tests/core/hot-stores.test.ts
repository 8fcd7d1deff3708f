// What the chapter says of hot stores: by how much vapour pressure falls short there, and why swings do not make it up.
import { expect, test } from 'vitest';
import { lossInStore } from '../../src/core/maturing/cask.ts';
import { vapourInTheStore } from '../../src/core/maturing/vapour-in-the-store.ts';
import { celsius, litres, percent, strength } from '../../src/core/quantity.ts';

// Antoine constants of ethanol of another table than the core's, mmHg and °C, from memory: 8.20417, 1642.89, 230.3.
const pressing = (t: number) => 10 ** (8.20417 - 1642.89 / (t + 230.3));
const here = (t: number) =>
  lossInStore({
    cask: { size: litres(200) },
    store: {
      alcoholLoss: percent(2),
      humidity: percent(65),
      steadyHumidity: percent(65),
      temperature: celsius(t),
      measuredAt: celsius(10),
    },
  });

test.each([
  [25, 5.0],
  [30, 6.6],
])('2 %% at 10 °C are, at %d °C, the %d %% that the chapter prints', (t, printed) => {
  expect(here(t)).toBeCloseTo(printed, 1);
  const reckoned = 100 * (1 - 0.98 ** (pressing(t) / pressing(10)));
  expect(Math.abs(here(t) - reckoned)).toBeLessThan(0.15);
});

test('at 25 to 30 °C vapour pressure reaches at most the low end of the 6 to 12 % told of hot places', () => {
  expect(here(25)).toBeLessThan(6);
  expect(here(30)).toBeLessThan(12 / 1.8);
});

test('a swing of ten degrees either way adds about a fourteenth', () => {
  const steps = 1000;
  let sum = 0;
  for (let i = 0; i < steps; i++) sum += pressing(27 + 10 * Math.sin((2 * Math.PI * i) / steps));
  const more = sum / steps / pressing(27) - 1;
  expect(more).toBeGreaterThan(1 / 16);
  expect(more).toBeLessThan(1 / 13);
});

test.each([
  [30, 10, 40], // a young cask
  [30, 10, 100], // half empty
  [30, 4, 40], // the spirit swings less than the air
])(
  'a head space breathing daily at %d °C, %d K warmer, %d L, loses a few tenths of a per cent a year',
  (middle, swing, space) => {
    // The gas law: air that no longer fits as the head space warms and its vapours press more goes out, with its vapour.
    const moles = (t: number) => {
      const { ethanol, water } = vapourInTheStore(strength(63.5), celsius(t), percent(0));
      const air = ((101.325 - ethanol - water) * space) / (8.314462618 * (t + 273.15));
      return { air, ethanol: ethanol / (101.325 - ethanol - water) };
    };
    const [cool, warm] = [moles(middle - swing / 2), moles(middle + swing / 2)];
    const ethanol = (cool.air - warm.air) * Math.max(cool.ethanol, warm.ethanol);
    const lost = (365 * ethanol * 46.068) / 789.24; // L in a year
    expect((100 * lost) / 127).toBeLessThan(0.5);
    expect((100 * lost) / 127).toBeGreaterThan(0.01);
  },
);
