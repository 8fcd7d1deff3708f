// The cask in other air, other warmth and other wood: directions, limits, and what is left alone.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ageCask, lossInStore, type CaskPlan } from '../../src/core/maturing/cask.ts';
import { fallsBelow, fallsEvenly } from '../../src/core/maturing/falls-below.ts';
import { vapourInTheStore } from '../../src/core/maturing/vapour-in-the-store.ts';
import { celsius, litres, litres20, percent, strength, years } from '../../src/core/quantity.ts';
import { ethanolPressure, waterPressure } from '../../src/core/vapour/equilibrium.ts';
import kept from '../../src/published/reference/maturing.json' with { type: 'json' };
import { always, apart, between, ordered } from './draw.ts';

interface Told {
  readonly humidity?: number;
  readonly loss?: number;
  readonly steady?: number;
  readonly temperature?: number;
  readonly measuredAt?: number;
  readonly size?: number;
  readonly measuredOn?: number;
  readonly filled?: number;
}
function plan({ humidity = 65, loss = 2, steady = 65, temperature = 10, measuredAt = 10, size = 200, measuredOn = 200, filled = 63.5 }: Told, span = 10): CaskPlan {
  return {
    volume: litres20(size),
    strength: strength(filled),
    cask: { size: litres(size), measuredOn: litres(measuredOn) },
    store: { alcoholLoss: percent(loss), humidity: percent(humidity), steadyHumidity: percent(steady), temperature: celsius(temperature), measuredAt: celsius(measuredAt) },
    years: years(span),
  };
} // prettier-ignore
const left = (told: Told, span = 10) => ageCask(plan(told, span)).at(-1)!;
const sum = (id: string) => kept.sums.rows.find((row) => row.id === id)!.answer;
const fact = (item: string) => kept.facts.find((row) => row.item === item)!.value as never;

test('the same warmth and the same wood as measured are no different from saying nothing, to the last digit', () => {
  always(fc.tuple(between(0, 15), between(20, 98), between(40, 80), between(0, 40), between(20, 700)), ([loss, humidity, steady, t, size]) => {
    const said = plan({ loss, humidity, steady, temperature: t, measuredAt: t, size, measuredOn: size }, 7);
    const { temperature: _, measuredAt: __, ...store } = said.store;
    expect(ageCask(said)).toEqual(ageCask({ ...said, cask: { size: said.cask.size }, store }));
  });
}); // prettier-ignore

test('one of the two temperatures alone changes nothing: there is nothing to compare it with', () => {
  const { measuredAt: _, ...store } = plan({ temperature: 30 }).store;
  expect(ageCask({ ...plan({}), store })).toEqual(ageCask(plan({})));
});

test('at the steady humidity the loss compounds, as in the worked sum', () => {
  expect(left({}).alcohol).toBeCloseTo(sum('T1'), 3);
});

test('damp air weakens and dry air strengthens, at any warmth and size (published direction)', () => {
  expect(fact('humidity rule')).toMatch(/high RH: strength falls; low RH: strength rises/);
  always(fc.tuple(between(5, 25), between(50, 500), between(8, 30)), ([temperature, size, off]) => {
    expect(left({ humidity: 65 + off, temperature, size }).strength).toBeLessThan(63.5);
    expect(left({ humidity: 65 - off, temperature, size }).strength).toBeGreaterThan(63.5);
  });
});

test('the warm dry top of a store loses more in all than its cool damp foot, which weakens (published direction)', () => {
  const [top, foot] = [left({ humidity: 55, temperature: 18 }), left({ humidity: 85, temperature: 8 })];
  expect(top.volume).toBeLessThan(foot.volume);
  expect(top.alcohol).toBeLessThan(foot.alcohol);
  expect(foot.strength).toBeLessThan(63.5);
});

test('how fast alcohol leaves at first does not depend on the humidity; how fast water does, does (published)', () => {
  const [dry, damp] = [left({ humidity: 30, loss: 0.001 }, 1), left({ humidity: 95, loss: 0.001 }, 1)];
  const alcohol = 127;
  expect(apart(alcohol - dry!.alcohol, alcohol - damp!.alcohol)).toBeLessThan(1e-4);
  expect(dry.volume).toBeLessThan(damp.volume);
});

test('warmth multiplies the pace by the vapour pressure of alcohol, and that of water almost alike', () => {
  const times = ethanolPressure(celsius(30)) / ethanolPressure(celsius(10));
  expect(lossInStore(plan({ temperature: 30 }))).toBeCloseTo(100 * (1 - 0.98 ** times), 9);
  const [slow, fast] = [left({ loss: 100 * (1 - 0.98 ** times) }, 6), left({ temperature: 30 }, 6)];
  expect(apart(slow.alcohol, fast.alcohol)).toBeLessThan(1e-3);
  expect(apart(slow.volume, fast.volume)).toBeLessThan(0.01); // water’s pressure grows 3 % more than alcohol’s
});

test('an eighth of the size is twice the wood to a litre: half the time does the same', () => {
  always(fc.tuple(between(20, 85), between(0.2, 4), between(30, 95)), ([size, loss, humidity]) => {
    const small = left({ size, measuredOn: 8 * size, loss, humidity }, 5);
    const large = left({ size: 8 * size, measuredOn: 8 * size, loss, humidity }, 10);
    expect(apart(8 * small.volume, large.volume)).toBeLessThan(1e-7);
    expect(Math.abs(small.strength - large.strength)).toBeLessThan(1e-5);
  });
});

test('warmer, drier and smaller lose more alcohol or more volume, never less', () => {
  always(fc.tuple(ordered(0, 40, 0.5), ordered(20, 98, 1), ordered(20, 700, 5)), ([[cool, warm], [dry, damp], [small, large]]) => {
    const loss = 0.5;
    expect(left({ temperature: warm, measuredAt: 20, loss }).alcohol).toBeLessThan(left({ temperature: cool, measuredAt: 20, loss }).alcohol);
    expect(left({ humidity: dry, loss }).volume).toBeLessThan(left({ humidity: damp, loss }).volume);
    expect(left({ size: small, loss }).volume / small).toBeLessThan(left({ size: large, loss }).volume / large);
  });
}); // prettier-ignore

test('a store that would take more than 30 % in a year is refused by its name', () => {
  expect(() => left({ loss: 15, temperature: 40, measuredAt: 0 })).toThrow(/alcohol lost in a year/);
});

test('half a year is half way to a year: the record ends there, and a whole number of years is untouched', () => {
  const [whole, part] = [ageCask(plan({ humidity: 80 }, 4)), ageCask(plan({ humidity: 80 }, 3.5))];
  expect(part.slice(0, 4)).toEqual(whole.slice(0, 4));
  expect(part.at(-1)!.year).toBe(3.5);
  expect(apart(part.at(-1)!.alcohol, Math.sqrt(whole[3]!.alcohol * whole[4]!.alcohol))).toBeLessThan(2e-5); // the loss shifts a hair with the strength
});

test('over pure liquids the pressures are those of steam tables and safety data, to 1.5 % (from memory)', () => {
  const recalled: { ethanol: number; water: number } = fact('vapour pressure at 20 °C, kPa');
  expect(
    apart(vapourInTheStore(strength(100), celsius(20), percent(0)).ethanol, recalled.ethanol),
  ).toBeLessThan(0.015);
  expect(apart(vapourInTheStore(strength(0), celsius(20), percent(0)).water, recalled.water)).toBeLessThan(
    0.015,
  );
});

test('no pressure over the wood is above that of the pure liquid, and the air holds its share of saturation', () => {
  always(fc.tuple(between(0, 100), between(-5, 40), between(0, 100)), ([s, t, humidity]) => {
    const vapour = vapourInTheStore(strength(s), celsius(t), percent(humidity));
    expect(vapour.ethanol).toBeLessThanOrEqual(ethanolPressure(celsius(t)) * (1 + 1e-12));
    expect(vapour.water).toBeLessThanOrEqual(waterPressure(celsius(t)) * (1 + 1e-12));
    expect(apart(vapour.waterInAir, (waterPressure(celsius(t)) * humidity) / 100)).toBeLessThan(1e-12);
  });
});

test('a cool damp store takes 0.2 to 0.6 % vol a year, as the trade remembers (memory)', () => {
  const [least, most] = fact('strength fall, cool damp country, % vol per year') as [number, number];
  const fall = (63.5 - left({ humidity: 80 }).strength) / 10;
  expect(fall).toBeGreaterThan(least);
  expect(fall).toBeLessThan(most);
});

test('falling evenly is the worked sum; a cask below the limit has no years', () => {
  expect(fallsEvenly(strength(63.5), strength(40), 0.4)).toBeCloseTo(sum('T7'), 9);
  expect(fallsEvenly(strength(39), strength(40), 0.4)).toBe(0);
});

test('at the year it passes the limit the cask stands at the limit, above before and below after', () => {
  always(fc.tuple(between(72, 95), between(1, 6), between(41, 60)), ([humidity, loss, limit]) => {
    const { years: _, ...whole } = plan({ humidity, loss });
    const { year, record } = fallsBelow(whole, strength(limit));
    if (year === undefined)
      return record.forEach((cask) => expect(cask.strength).toBeGreaterThanOrEqual(limit));
    const at = left({ humidity, loss }, year);
    expect(Math.abs(at.strength - limit)).toBeLessThan(0.01);
    expect(record[Math.ceil(year) + 1]?.strength ?? 0).toBeLessThan(limit);
    expect(record[Math.floor(year)]!.strength).toBeGreaterThanOrEqual(limit - 1e-9);
  });
});

test('in dry air the limit is never passed', () => {
  const { years: _, ...whole } = plan({ humidity: 50 });
  expect(fallsBelow(whole, strength(40)).year).toBeUndefined();
  expect(fallsBelow({ ...whole, strength: strength(39) }, strength(40)).year).toBe(0);
});
