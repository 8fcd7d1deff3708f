// Heat, steam, cooling water and hours of a run.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  boilingPoint,
  coolingWater,
  heatOfRun,
  heatSupplied,
  heatToCondense,
  hoursOfHeat,
  steamFor,
} from '../../src/core/distilling/run-heat.ts';
import { settleRound } from '../../src/core/distilling/round.ts';
import { runStill } from '../../src/core/distilling/run.ts';
import { bracketedRoot } from '../../src/core/numerics/root.ts';
import {
  celsius,
  kelvins,
  kilopascals,
  litres20,
  percent,
  quantity,
  share,
  strength,
} from '../../src/core/quantity.ts';
import { amountsOf, plus } from '../../src/core/spirit/amounts.ts';
import { heatToBoilOff, heatToWarm } from '../../src/core/vapour/latent-heat.ts';
import thermal from '../../src/published/reference/thermal.json' with { type: 'json' };
import measured from '../../src/published/reference/vle-ethanol-water-101325.json' with { type: 'json' };
import rows from '../../src/published/reference/distilling.json' with { type: 'json' };
import { always, answer, apart, between, settings, spirits, strengths } from './draw.ts'; // prettier-ignore

const pressure = kilopascals(101.325);
const printed = (id: string) => Number(rows.find((row) => row.id === id)!.value);
const spirit = (volume: number, s: number) => ({ volume: litres20(volume), strength: strength(s) });
const boilOff = (volume: number, s: number) => heatToBoilOff(amountsOf(spirit(volume, s)));

test('a litre of pure alcohol as low wines of 23 % vol takes the 8.4 MJ of the row, and of the worked sum', () => {
  // The row's own latent heats are 838 and 2,257 kJ/kg, ours 855 and 2,260: 2 % of an eighth of it.
  expect(apart(boilOff(1 / 0.23, 23), 8.4)).toBeLessThan(0.005);
  expect(apart(1000 * boilOff(1 / 0.23, 23), printed('D6'))).toBeLessThan(0.005);
});

test('condensing that takes about 50 L of water warmed by 40 K', () => {
  expect(Math.abs(coolingWater(boilOff(1 / 0.23, 23), kelvins(40)) - 50)).toBeLessThan(0.5);
});

test('the latent heat of the azeotrope is within 0.5 % of the row, which takes water’s at 78 °C', () => {
  const row = thermal.find(({ item }) => item.startsWith('azeotrope latent heat'))!;
  const water = (0.0437 / 0.9563) * (46.069 / 18.0153);
  const amounts = { ethanol: 1, water };
  const mass = 46.069 + water * 18.0153;
  expect(apart((1000 * heatToBoilOff(amounts)) / mass, Number(row.value))).toBeLessThan(0.005);
});

test('a hundred litres of water take 33.4 MJ from 20 to 100 °C, by hand', () => {
  const heat = heatToWarm(amountsOf(spirit(100, 0)), celsius(20), celsius(100));
  expect(Math.abs(heat - (99.82 * 4.184 * 80) / 1000)).toBeLessThan(0.001);
});

test('a charge boils where the published set says its liquid does', () => {
  const { x, T_C } = measured.data.find((row) => row.x === 0.0966)!;
  const unit = { ethanol: x, water: 1 - x };
  const of = (s: number) => {
    const { ethanol, water } = amountsOf(spirit(1, s));
    return ethanol / (ethanol + water) - unit.ethanol;
  };
  expect(Math.abs(boilingPoint(spirit(1, bracketedRoot(of, 0, 100)), pressure) - T_C)).toBeLessThan(0.28);
});

const run = answer(runStill({ charge: spirit(12_000, 8), pressure, until: strength(1) }));

test('pot ale of a wash of 8.5 % vol and low wines of 23 is 7.5 to 8 L to a litre of pure alcohol', () => {
  const washRun = (until: number) =>
    answer(runStill({ charge: spirit(12_000, 8.5), pressure, until: strength(until) }));
  const end = bracketedRoot((until) => washRun(until).distillate.strength - 23, 0.5, 10);
  const { residue, distillate } = washRun(end);
  expect(residue.volume / distillate.alcohol).toBeGreaterThan(7.5);
  expect(residue.volume / distillate.alcohol).toBeLessThan(8);
});

test('both stills of a balanced round, filled hot and without losses, take less than the 6.66 kWh quoted for a whole trade, and more than half', () => {
  const round = answer(
    settleRound({
      wash: spirit(12_000, 8),
      washStill: { until: strength(1) },
      spiritStill: {
        reflux: share(0.1),
        foreshots: { share: share(0.03) },
        heart: strength(62),
        feints: strength(1),
      },
      pressure,
    }),
  );
  const heats = [round.washRun, round.spiritRun].map((one) => answer(heatOfRun(one, celsius(70))));
  const kilowattHours = heats.reduce((sum, { heatUp, boilOff }) => sum + heatUp + boilOff, 0) / 3.6;
  expect(kilowattHours / round.heart.alcohol).toBeLessThan(6.66);
  expect(kilowattHours / round.heart.alcohol).toBeGreaterThan(3.33);
});

test('a charge filled warmer saves the heat that it brings, and nothing else', () => {
  always(fc.tuple(between(5, 90), between(5, 90)), ([cool, warm]) => {
    const [a, b] = [cool, warm].map((at) => answer(heatOfRun(run, celsius(at))));
    const brought = heatToWarm(amountsOf(run.charge), celsius(cool), celsius(warm));
    expect(Math.abs(a!.heatUp - b!.heatUp - brought)).toBeLessThan(1e-6);
    expect(a!.boilOff).toBe(b!.boilOff);
  });
});

test('warming and boiling off add up over any two lots', () => {
  always(fc.tuple(spirits, spirits), ([a, b]) => {
    const together = plus(amountsOf(a), amountsOf(b));
    const parts = [a, b].map((one) => heatToBoilOff(amountsOf(one)));
    expect(apart(heatToBoilOff(together), parts[0]! + parts[1]!)).toBeLessThan(1e-12);
  });
});

test('the energy of a run closes: charge warmed, and boiled off, is what distillate and residue carry away', () => {
  // Heat held above 0 °C, by mass; the distillate leaves as vapour of the pot it came from, so its warmth is bounded by the pot's.
  const held = (one: { volume: number; strength: number }, t: number) =>
    heatToWarm(amountsOf(spirit(one.volume, one.strength)), celsius(0), celsius(t));
  always(fc.tuple(settings, strengths(5, 30), strengths(1, 3)), ([setting, s, until]) => {
    const one = answer(runStill({ charge: spirit(1000, s), ...setting, until }));
    const { boilsAt, endsAt, heatUp, boilOff } = answer(heatOfRun(one, celsius(20)));
    const put = held(one.charge, 20) + heatUp + boilOff;
    const least = held(one.residue, endsAt) + held(one.distillate, boilsAt) + boilOff;
    expect(apart(put, least)).toBeLessThan(1e-9);
    expect(endsAt).toBeGreaterThanOrEqual(boilsAt);
  });
});

test('half the efficiency is twice the heat, twice the rate half the hours, twice the rise half the water', () => {
  const heat = answer(heatOfRun(run, celsius(30)));
  const [whole, half] = [100, 50].map((part) => heatSupplied(heat, percent(part)));
  expect(apart(half!, 2 * whole!)).toBeLessThan(1e-12);
  expect(
    apart(hoursOfHeat(whole!, quantity('power', 200)), 2 * hoursOfHeat(whole!, quantity('power', 400))),
  ).toBeLessThan(1e-12);
  expect(apart(coolingWater(whole!, kelvins(20)), 2 * coolingWater(whole!, kelvins(40)))).toBeLessThan(1e-12);
  expect(hoursOfHeat(quantity('energy', 3.6), quantity('power', 1))).toBeCloseTo(1, 12); // a kilowatt-hour
  expect(steamFor(quantity('energy', 2108))).toBeCloseTo(1000, 9);
});

test('cooling the spirit further takes more water, down from its boiling point', () => {
  always(fc.tuple(spirits, between(5, 40), between(1, 20)), ([one, at, more]) => {
    const [warm, cold] = [at + more, at].map((t) => heatToCondense(one, { pressure, leavesAt: celsius(t) }));
    expect(cold).toBeGreaterThan(warm!);
    expect(warm).toBeGreaterThan(heatToBoilOff(amountsOf(one)));
  });
});

test('a charge above its boiling point is refused with both temperatures', () => {
  const strong = answer(
    runStill({ charge: spirit(100, 25), reflux: share(0.1), pressure, until: strength(1) }),
  );
  expect(heatOfRun(strong, celsius(95))).toHaveProperty(
    'refused',
    expect.stringMatching(/95 °C.*boiling point of 8\d\.\d °C/),
  );
});
