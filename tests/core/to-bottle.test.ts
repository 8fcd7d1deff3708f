// A cask from filling to bottle: its four parts make the filling, against a sum by hand and the long way round.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ageCask, type Store } from '../../src/core/maturing/cask.ts';
import { expectedNow } from '../../src/core/maturing/regauge.ts';
import { afterFiltering, throughWood } from '../../src/core/maturing/to-bottle.ts';
import { litres, litres20, litresOfAlcohol, percent, strength, years } from '../../src/core/quantity.ts';
import { always, apart, between } from './draw.ts';

const store = (humidity = 65, loss = 2): Store => ({
  alcoholLoss: percent(loss),
  humidity: percent(humidity),
  steadyHumidity: percent(65),
});
const barrel = (own: { indrink?: number; residue?: number; humidity?: number; loss?: number } = {}) =>
  throughWood({
    volume: litres20(200),
    strength: strength(63.5),
    cask: { size: litres(200) },
    store: store(own.humidity, own.loss),
    years: years(10),
    indrink: percent(own.indrink ?? 0),
    caskResidue: litres20(own.residue ?? 0),
  });

test('a barrel by hand: 2 % drunk, 2 % a year for ten years, a litre left, half a per cent in filters', () => {
  // 127 L of alcohol. The wood has 2.54; 124.46 × 0.98 to the tenth (0.8170728) leave 101.6929 in 160.1463 L, at 63.5 % vol
  // still, as the air is the steady one. A litre with 0.635 stays: 101.0579 come out, and 0.5 % of it are 0.5053.
  const { toWood, toAir, inCask, emptied } = barrel({ indrink: 2, residue: 1 });
  expect(toWood.alcohol).toBeCloseTo(2.54, 9);
  expect(toAir).toBeCloseTo(124.46 - 101.69288, 4);
  expect(inCask.alcohol).toBeCloseTo(0.635, 6);
  expect(emptied.alcohol).toBeCloseTo(101.05788, 4);
  expect(emptied.volume).toBeCloseTo(159.1463, 3);
  const bottled = afterFiltering(emptied, percent(0.5));
  expect(bottled.inFilters).toBeCloseTo(0.50529, 4);
  expect(bottled.alcohol).toBeCloseTo(100.55259, 4);
});

test('wood, air, cask, filters and bottle together hold what was filled, in any store', () => {
  const draws = fc.tuple(between(0, 6), between(0, 10), between(20, 98), between(0, 15), between(0, 10));
  always(draws, ([indrink, residue, humidity, loss, filterLoss]) => {
    const out = barrel({ indrink, residue, humidity, loss });
    const bottled = afterFiltering(out.emptied, percent(filterLoss));
    const whole = out.toWood.alcohol + out.toAir + out.inCask.alcohol + bottled.inFilters + bottled.alcohol;
    expect(apart(whole, 127)).toBeLessThan(1e-12);
    expect(apart(bottled.alcohol, (bottled.volume * bottled.strength) / 100)).toBeLessThan(1e-12);
  });
});

test('with none of the three losses the cask is the one that only the air has', () => {
  const [whole, aged] = [
    barrel({ humidity: 80 }),
    ageCask({
      volume: litres20(200),
      strength: strength(63.5),
      cask: { size: litres(200) },
      store: store(80),
      years: years(10),
    }),
  ];
  expect(whole.record).toEqual(aged);
  expect(whole.emptied).toMatchObject({ volume: aged.at(-1)!.volume, strength: aged.at(-1)!.strength });
});

test('a regauge expects what the line has in the cask before it is emptied', () => {
  const { emptied, inCask } = barrel({ indrink: 2, residue: 1, humidity: 80 });
  const regauged = expectedNow({
    filled: { volume: litres20(200), strength: strength(63.5) },
    indrink: percent(2),
    store: store(80),
    years: years(10),
  });
  expect(apart(regauged.alcohol, emptied.alcohol + inCask.alcohol)).toBeLessThan(1e-12);
  expect(apart(regauged.volume, emptied.volume + inCask.volume)).toBeLessThan(1e-12);
});

test('what a cask does not hold cannot come out of it, and parts beyond all bounds are refused', () => {
  const empty = throughWood({
    volume: litres20(1),
    strength: strength(63.5),
    cask: { size: litres(1) },
    store: store(),
    years: years(10),
    indrink: percent(2),
    caskResidue: litres20(5),
  });
  expect(empty.emptied).toMatchObject({ volume: 0, alcohol: 0 });
  expect(() => barrel({ indrink: 21 })).toThrow(RangeError);
  expect(() => barrel({ residue: -1 })).toThrow(RangeError);
  const spirit = { volume: litres20(1), strength: strength(60), alcohol: litresOfAlcohol(0.6) };
  expect(() => afterFiltering(spirit, percent(101))).toThrow(RangeError);
  expect(() => afterFiltering(spirit, percent(NaN))).toThrow(RangeError);
});
