// Casks: which way the strength goes, how much leaves, and how many are filled.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ageCask, type Store } from '../../src/core/maturing/cask.ts';
import { bottlesFrom, CASK_SIZES, meanCask } from '../../src/core/maturing/filling.ts';
import { litres, litres20, percent, strength, years } from '../../src/core/quantity.ts';
import { always, apart, between, ordered, strengths } from './draw.ts';

interface Air {
  readonly humidity: number;
  readonly steady?: number;
  readonly loss?: number;
}
const store = ({ humidity, steady = 65, loss = 2 }: Air): Store => ({
  alcoholLoss: percent(loss),
  humidity: percent(humidity),
  steadyHumidity: percent(steady),
});
const age = (air: Air, span = 20, filled = 63.5, volume = 200) =>
  ageCask({
    volume: litres20(volume),
    strength: strength(filled),
    cask: { size: litres(volume) },
    store: store(air),
    years: years(span),
  });

test('at the steady humidity spirit of 63.5 % vol keeps its strength for good', () => {
  always(fc.tuple(between(40, 80), between(0.1, 15)), ([steady, loss]) => {
    for (const { strength: now } of age({ humidity: steady, steady, loss }))
      expect(Math.abs(now - 63.5)).toBeLessThan(1e-8);
  });
});

test('strength falls in a damper store and rises in a drier one', () => {
  always(fc.tuple(between(45, 75), between(1, 20)), ([steady, off]) => {
    for (const [humidity, sign] of [
      [steady + off, -1],
      [steady - off, 1],
    ] as const) {
      const record = age({ humidity, steady }, 8);
      for (let i = 1; i < record.length; i++)
        expect(sign * (record[i]!.strength - record[i - 1]!.strength)).toBeGreaterThan(0);
    }
  });
});

test('damper air: less volume lost, and a weaker cask', () => {
  always(ordered(30, 98, 0.5), ([dry, damp]) => {
    const [a, b] = [dry, damp].map((humidity) => age({ humidity }, 10).at(-1)!);
    expect(b!.volume).toBeGreaterThan(a!.volume);
    expect(b!.strength).toBeLessThan(a!.strength);
  });
});

test('a small stated loss is the loss of the first year, at any strength and in any air', () => {
  always(fc.tuple(strengths(20, 90), between(30, 98)), ([filled, humidity]) => {
    const [before, after] = age({ humidity, loss: 0.01 }, 1, filled);
    expect(apart(1 - after!.alcohol / before!.alcohol, 0.0001)).toBeLessThan(0.001);
  });
});

test('two per cent a year is within a twentieth of two per cent in the first year', () => {
  always(between(30, 98), (humidity) => {
    const [before, after] = age({ humidity }, 1);
    expect(apart(1 - after!.alcohol / before!.alcohol, 0.02)).toBeLessThan(0.05);
  });
});

test('alcohol only ever leaves, faster where more is said to leave, and nothing leaves at no loss', () => {
  always(fc.tuple(ordered(0.1, 15, 0.01), between(20, 98)), ([[little, much], humidity]) => {
    const [slow, fast] = [little, much].map((loss) => age({ humidity, loss }, 12));
    for (let i = 1; i < slow!.length; i++) {
      expect(slow![i]!.alcohol).toBeLessThan(slow![i - 1]!.alcohol);
      expect(fast![i]!.alcohol).toBeLessThan(slow![i]!.alcohol);
    }
  });
  expect(apart(age({ humidity: 80, loss: 0 }, 60).at(-1)!.volume, 200)).toBeLessThan(1e-12);
});

test('each year follows from the one before: 12 years begin as 6 years do, and years are numbered from the filling', () => {
  const [long, short] = [age({ humidity: 80 }, 12), age({ humidity: 80 }, 6)];
  expect(long.slice(0, 7)).toEqual(short);
  expect(long.map(({ year }) => year)).toEqual(Array.from({ length: 13 }, (_, i) => i));
});

test('a bigger cask of the same wood loses in the same proportion', () => {
  const [small, large] = [age({ humidity: 80 }, 10, 63.5, 200), age({ humidity: 80 }, 10, 63.5, 500)];
  expect(apart(2.5 * small.at(-1)!.volume, large.at(-1)!.volume)).toBeLessThan(1e-12);
});

test('a mix of casks has a size between its smallest and largest; more than a hundred are refused', () => {
  always(fc.tuple(between(0, 100), between(0, 1)), ([barrels, part]) => {
    const size = meanCask({ barrels: percent(barrels), hogsheads: percent((100 - barrels) * part) });
    expect(size).toBeGreaterThanOrEqual(CASK_SIZES.barrel - 1e-9);
    expect(size).toBeLessThanOrEqual(CASK_SIZES.butt);
  });
  expect(meanCask({ barrels: percent(60), hogsheads: percent(41) })).toHaveProperty('refused');
});

test('seventy centilitres, a thousand times, are seven hundred litres', () => {
  expect(bottlesFrom(litres20(700), 70)).toBe(1000);
});
