// Malting, milling and mashing: dry matter, the whole grist, and heat.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { barleyForMalt, maltFromBarley } from '../../src/core/malting/malt-balance.ts';
import {
  BALLING_CEILING,
  predictedSpiritYield,
  SPIRIT_YIELD_FACTOR,
} from '../../src/core/malting/spirit-yield.ts';
import { mashTemperature, slaking, strikeTemperature } from '../../src/core/mashing/strike.ts';
import { draffMass, mashEfficiency, wortExtract, wortMass } from '../../src/core/mashing/wort.ts';
import { millingTime, splitGrist } from '../../src/core/milling/grist.ts';
import {
  celsius,
  gravity,
  kilograms,
  litres20,
  litresPerKilogram,
  percent,
  quantity,
} from '../../src/core/quantity.ts';
import { always, answer, apart, between, ordered } from './draw.ts';

const masses = between(10, 50_000).map(kilograms);
const maltings = fc.record({
  barleyMoisture: between(8, 20).map(percent),
  maltMoisture: between(1, 8).map(percent),
  dryLoss: between(2, 25).map(percent),
});

test('dry matter in, less the loss, is dry matter out, and barley for malt undoes malt from barley', () => {
  always(fc.tuple(masses, maltings), ([barley, malting]) => {
    const malt = maltFromBarley(barley, malting);
    const [dryIn, dryOut] = [
      barley * (1 - malting.barleyMoisture / 100),
      malt * (1 - malting.maltMoisture / 100),
    ];
    expect(apart(dryIn * (1 - malting.dryLoss / 100), dryOut)).toBeLessThan(1e-12);
    expect(apart(barleyForMalt(malt, malting), barley)).toBeLessThan(1e-12);
  });
});

test('predicted yield grows with extract and with fermentability, and stays below Balling’s ceiling', () => {
  always(fc.tuple(ordered(50, 90, 0.01), ordered(50, 100, 0.01)), ([[e0, e1], [f0, f1]]) => {
    const found = (extract: number, fermentability: number) =>
      predictedSpiritYield({ extract: percent(extract), fermentability: percent(fermentability) });
    expect(found(e1, f0)).toBeGreaterThan(found(e0, f0));
    expect(found(e0, f1)).toBeGreaterThan(found(e0, f0));
    expect(found(e1, f1)).toBeLessThan((BALLING_CEILING * e1 * f1) / 100);
  });
  expect(SPIRIT_YIELD_FACTOR).toBeLessThan(BALLING_CEILING);
});

test('husk, grits and flour are the whole malt', () => {
  always(fc.tuple(masses, between(0, 100), between(0, 1)), ([malt, husk, part]) => {
    const {
      husk: coarse,
      grits,
      flour,
    } = answer(splitGrist(malt, { husk: percent(husk), flour: percent((100 - husk) * part) }));
    expect(apart(coarse + grits + flour, malt)).toBeLessThan(1e-12);
    expect(Math.min(coarse, grits, flour)).toBeGreaterThan(-1e-9);
  });
  expect(splitGrist(kilograms(100), { husk: percent(60), flour: percent(41) })).toHaveProperty('refused');
});

test('twice the rate mills in half the time', () => {
  always(fc.tuple(masses, between(0.05, 50)), ([malt, rate]) => {
    const time = (tonnes: number) => millingTime(malt, quantity('milling', tonnes));
    expect(apart(time(rate), 2 * time(2 * rate))).toBeLessThan(1e-12);
  });
});

const mashes = fc.record({
  ratio: between(2, 8).map(litresPerKilogram),
  gristTemperature: between(-5, 35).map(celsius),
  maltMoisture: between(0, 8).map(percent),
});
test('strike water makes the mash that was wanted, and wetting spares no more than its own rise', () => {
  always(fc.tuple(between(45, 80).map(celsius), mashes), ([wanted, mash]) => {
    const strike = strikeTemperature(wanted, mash);
    expect(Math.abs(mashTemperature(strike, mash) - wanted)).toBeLessThan(1e-9);
    expect(strike).toBeGreaterThan(wanted - slaking(mash.maltMoisture, mash.ratio).rise);
  });
});

test('wetting gives a kilogram of grist the same heat however much water there is', () => {
  // The first law for a kilogram of grist: mash × (S + r) = S × grist + r × water + heat of wetting, with no r in the last.
  always(fc.tuple(between(40, 80).map(celsius), mashes, between(2, 8)), ([water, mash, other]) => {
    const heatOf = (ratio: number) => {
      const { heat } = slaking(mash.maltMoisture);
      const mashed = mashTemperature(water, { ...mash, ratio: litresPerKilogram(ratio) });
      return mashed * (heat + ratio) - heat * mash.gristTemperature - ratio * water;
    };
    expect(Math.abs(heatOf(mash.ratio) - heatOf(other))).toBeLessThan(1e-9);
  });
});

test('drier malt takes less heat and gives more on wetting', () => {
  always(ordered(0, 8, 1e-3), ([dry, damp]) => {
    const [a, b] = [dry, damp].map((moisture) => slaking(percent(moisture)));
    expect(a!.heat).toBeLessThanOrEqual(b!.heat + 1e-12);
    expect(a!.rise).toBeGreaterThan(b!.rise);
  });
});

test('what the wort does not hold is in the draff, and all of it in the wort is 100 %', () => {
  const worts = fc.record({
    volume: between(20, 50_000).map(litres20),
    gravity: between(1.02, 1.12).map(gravity),
  });
  always(worts, (wort) => {
    const extract = wortExtract(wort);
    expect(extract).toBeLessThan(wortMass(wort) / 3);
    expect(mashEfficiency(wort, { mass: kilograms(extract / 0.775), extract: percent(77.5) })).toBeCloseTo(
      100,
      9,
    );
    const malt = { mass: kilograms(2 * extract), moisture: percent(4.5), extract: percent(60) };
    const draff = draffMass(malt, extract, percent(78));
    expect(apart(0.22 * draff + extract, malt.mass * (0.955 + 0.04 * 0.6))).toBeLessThan(1e-12);
  });
});
