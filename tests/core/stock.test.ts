// The register of casks: days, sizes, what casks hold, stock by age, counted beside computed, and casks put together.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ageCask, caskAfter, type CaskPlan } from '../../src/core/maturing/cask.ts';
import {
  count,
  litres,
  litres20,
  litresOfAlcohol,
  percent,
  quantity,
  strength,
  years,
} from '../../src/core/quantity.ts';
import { expectedNow } from '../../src/core/maturing/regauge.ts';
import { buildStock } from '../../src/core/maturing/warehouse.ts';
import { isRefusal } from '../../src/core/refusal.ts';
import { countedMeetsComputed, type Fillings } from '../../src/core/stock/counted.ts';
import { firstDay, isDay, lastDay, yearsBetween } from '../../src/core/stock/days.ts';
import {
  barredBy,
  bottlesFromOne,
  dumpCasks,
  type BottlingFigures,
  type Dumped,
} from '../../src/core/stock/dump.ts';
import type { CaskGroup } from '../../src/core/stock/group.ts';
import {
  heldOn,
  lossByRegauge,
  lossByRegauges,
  type HeldCask,
  type StoreFigures,
} from '../../src/core/stock/held.ts';
import { readGroup } from '../../src/core/stock/read-group.ts';
import { casksOf, namedSizes } from '../../src/core/stock/sizes.ts';
import { stockOn } from '../../src/core/stock/totals.ts';
import gallons from '../../src/published/reference/stock.json' with { type: 'json' };
import kept from '../../src/published/reference/maturing.json' with { type: 'json' };
import { builtInHouse } from '../../src/house/figures.ts';
import { line } from '../../src/core/line/line.ts';
import { bottlesFromCaskOf, bottlesFromCasks } from '../../src/core/stock/one-cask.ts';
import { always, answer, apart, between } from './draw.ts';

const DAY = '2026-05-14';
/** A store at the steady humidity, where alcohol and water leave together and the loss compounds; barrels alone. */
const steady: StoreFigures = {
  alcoholLoss: percent(2),
  storeHumidity: percent(65),
  steadyHumidity: percent(65),
  indrink: percent(0),
  barrels: percent(100),
  hogsheads: percent(0),
};
const barrels = (filled: string, casks = 1, more: Partial<CaskGroup> = {}): CaskGroup => ({
  casks,
  size: 200,
  filled,
  filledVolume: 200,
  filledStrength: 63.5,
  ...more,
});
const held = (group: CaskGroup, house = steady, day = DAY): HeldCask => {
  const one = heldOn(group, house, day);
  if (isRefusal(one)) throw new Error(one.refused);
  return one;
};
const sum = (id: string) => kept.sums.rows.find((row) => row.id === id)!;

describe('days', () => {
  test('a year in wood is over on the day on which it began, and not the day before', () => {
    expect(Math.floor(yearsBetween('2013-05-14', '2023-05-13'))).toBe(9);
    expect(yearsBetween('2013-05-14', '2023-05-14')).toBe(10);
    // 29 February comes back on 1 March where there is none: the year is not over on the 28th.
    expect(Math.floor(yearsBetween('2016-02-29', '2017-02-28'))).toBe(0);
    expect(yearsBetween('2016-02-29', '2017-03-01')).toBe(1);
    expect(yearsBetween('2030-01-01', DAY)).toBe(0);
  });

  test('of a year or a month alone the last day counts for the age', () => {
    expect([firstDay('2016'), lastDay('2016'), firstDay('2016-02'), lastDay('2016-02')]).toEqual([
      '2016-01-01',
      '2016-12-31',
      '2016-02-01',
      '2016-02-29',
    ]);
    expect(Math.floor(held(barrels('2016'), steady, '2026-12-30').age)).toBe(9);
    expect(Math.floor(held(barrels('2016'), steady, '2026-12-31').age)).toBe(10);
  });

  test('a day is one of the calendar, as the machine’s own calendar has it', () => {
    for (const wrong of [
      '2015-02-29',
      '1900-02-29',
      '2016-13-01',
      '2016-00-10',
      '2016-1-1',
      '2016-04-31',
      '',
      '16',
      '2016-04-00',
    ])
      expect(isDay(wrong), wrong).toBe(false);
    for (const right of ['2016-02-29', '2000-02-29', '2016', '2016-02'])
      expect(isDay(right), right).toBe(true);
    always(
      fc.date({ min: new Date('1850-01-01'), max: new Date('2200-01-01'), noInvalidDate: true }),
      (date) => {
        expect(isDay(date.toISOString().slice(0, 10))).toBe(true);
      },
    );
  });

  test('years between two days are the days between them over 365.25, to a day', () => {
    const days = fc.date({ min: new Date('1901-01-01'), max: new Date('2099-01-01'), noInvalidDate: true });
    always(fc.tuple(days, days), ([a, b]) => {
      const [from, to] = [a, b]
        .sort((x, y) => x.getTime() - y.getTime())
        .map((each) => each.toISOString().slice(0, 10)) as [string, string];
      const byClock = (Date.parse(to) - Date.parse(from)) / 86_400_000 / 365.25;
      expect(Math.abs(yearsBetween(from, to) - byClock)).toBeLessThan(2.1 / 365);
    });
  });
});

describe('sizes', () => {
  test('named casks hold what the trade says of them', () => {
    for (const { name, from, to } of gallons.sizes.rows) {
      expect(namedSizes[name], name).toBeGreaterThanOrEqual(from);
      expect(namedSizes[name], name).toBeLessThanOrEqual(to);
    }
    for (const { name, gallons: each } of gallons.gallons.rows)
      expect(apart(namedSizes[name]!, each * gallons.gallons.litres), name).toBeLessThan(0.01);
    expect([casksOf(1, 125), casksOf(40, 500), casksOf(2, 180)]).toEqual([
      '1 quarter cask',
      '40 butts',
      '2 casks of 180 L',
    ]);
  });

  test('a cask is of any size from 10 to 1,000 L, and no other', () => {
    for (const size of [10, 30, 125, 190.5, 1000])
      expect(readGroup({ ...barrels('2016', 1, { size, filledVolume: size }) })).toHaveProperty('group');
    for (const size of [0, 9.9, 1000.1, 9000, -200, NaN, '200'])
      expect(readGroup({ ...barrels('2016'), size })).toHaveProperty('faults');
  });
});

describe('a cask in the store', () => {
  test('ten years at 2 % leave what the worked sum has', () => {
    const one = held(barrels('2016-05-14'));
    expect(one.alcohol).toBeCloseTo(sum('T1').answer, 3); // 127 × 0.98^10
    expect(one.strength).toBeCloseTo(63.5, 6);
    expect(one).toMatchObject({ age: 10, loss: 2, byRegauge: false });
  });

  test('what the wood drank is gone at once, at the strength of the filling', () => {
    expect(held(barrels(DAY), { ...steady, indrink: percent(2) })).toMatchObject({
      volume: 196,
      strength: 63.5,
      age: 0,
    });
  });

  test('a quarter cask loses faster than the barrel on which the loss was found, as the cube root of the sizes', () => {
    const quarter = held(barrels('2025-05-14', 1, { size: 125, filledVolume: 125 }));
    // 1 − 0.98^((200 ÷ 125)^(1/3)) = 1 − 0.98^1.1696 = 2.335 %
    expect(quarter.loss).toBeCloseTo(2.335, 3);
    expect(quarter.alcohol).toBeCloseTo(125 * 0.635 * (1 - 0.02335), 3);
  });

  test('from a regauge on it goes on from what was found, at the loss that the two show', () => {
    const { given } = sum('T8') as { given: Record<string, number> };
    // 127.000 L filled and 172 × 60.3 % = 103.716 L found after 5 years: (103.716 ÷ 127)^(1/5) = 0.960301, 3.970 % a year.
    const group = barrels('2016-05-14', 1, {
      filledVolume: given['V']!,
      filledStrength: given['q0']!,
      regauged: '2021-05-14',
      regaugedVolume: given['V1']!,
      regaugedStrength: given['q1']!,
    });
    expect(held(group, steady, '2021-05-14').alcohol).toBeCloseTo(127 - sum('T8').answer, 9);
    expect(held(group).loss).toBeCloseTo(3.97, 2);
    // Another five years at the same part, for what was found: 103.716 × 0.81666 = 84.701; its strength is not 63.5, so water and alcohol part a little.
    expect(apart(held(group).alcohol, 84.701)).toBeLessThan(0.003);
    expect(held(group, steady, '2020-05-14').byRegauge).toBe(false);
    expect(held(group, steady, '2020-05-14').alcohol).toBeCloseTo(127 * 0.98 ** 4, 3);
  });

  test('a regauge within the first year, or one that shows no loss, tells no loss', () => {
    const found = { regaugedVolume: 198, regaugedStrength: 63.5 };
    expect(
      lossByRegauge(barrels('2016-05-14', 1, { regauged: '2017-05-13', ...found }), percent(0), DAY),
    ).toBeUndefined();
    expect(
      lossByRegauge(barrels('2016-05-14', 1, { regauged: '2017-05-14', ...found }), percent(0), DAY),
    ).toBeCloseTo(1, 9);
    expect(
      lossByRegauge(barrels('2016-05-14', 1, { regauged: '2017-05-14', ...found }), percent(2), DAY),
    ).toBeUndefined();
    expect(
      held(barrels('2016-05-14', 1, { regauged: '2026-05-14', regaugedVolume: 0, regaugedStrength: 60 }))
        .alcohol,
    ).toBe(0);
  });

  test('all regauges together count by the alcohol that was filled', () => {
    const at = (casks: number, volume: number) =>
      barrels('2016-05-14', casks, {
        regauged: '2017-05-14',
        regaugedVolume: volume,
        regaugedStrength: 63.5,
      });
    // 30 casks lost 1 % and 10 casks 3 %: (30 × 1 + 10 × 3) ÷ 40 = 1.5.
    expect(lossByRegauges([at(30, 198), at(10, 194), barrels('2016')], percent(0), DAY)).toMatchObject({
      groups: 2,
      loss: expect.closeTo(1.5, 9) as number,
    });
    expect(lossByRegauges([barrels('2016')], percent(0), DAY)).toBeUndefined();
  });

  test('a cask too old or too small to be followed is refused by the reason', () => {
    expect(heldOn(barrels('1900'), steady, DAY)).toMatchObject({
      refused: expect.stringContaining('125 years') as string,
    });
    expect(
      heldOn(
        barrels('2020', 1, { size: 10, filledVolume: 10 }),
        { ...steady, alcoholLoss: percent(15) },
        DAY,
      ),
    ).toMatchObject({ refused: expect.stringContaining('in a year') as string });
  });

  test('in fewer steps the end is that of the whole record, to a ten-thousandth of the filling', () => {
    always(
      fc.tuple(between(10, 500), between(40, 80), between(0.5, 15), between(20, 99), between(0, 40)),
      ([size, s, loss, humidity, span]) => {
        const plan: CaskPlan = {
          volume: litres20(size),
          strength: strength(s),
          cask: { size: litres(size), measuredOn: litres(Math.max(size, 150)) },
          store: { alcoholLoss: percent(loss), humidity: percent(humidity), steadyHumidity: percent(65) },
          years: years(span),
        };
        let whole;
        try {
          whole = ageCask(plan).at(-1)!;
        } catch {
          return expect(() => caskAfter(plan)).toThrow(RangeError);
        }
        expect(Math.abs(caskAfter(plan).volume - whole.volume) / size).toBeLessThan(1e-4);
        expect(Math.abs(caskAfter(plan).alcohol - whole.alcohol) / size).toBeLessThan(1e-4);
      },
    );
  });
});

describe('the whole register', () => {
  test('stock by age, by hand', () => {
    // 127 L of pure alcohol in a full barrel; a fiftieth goes each year:
    //   10 years: 127 × 0.817073 = 103.768, ten casks 1,037.68
    //    5 years: 127 × 0.903921 = 114.798, four casks 459.19
    //    0 years: 127, two casks 254.00; together 16 casks and 1,750.87.
    const stock = stockOn(
      [barrels('2016-05-14', 10), barrels('2021-05-14', 4), barrels(DAY, 2)],
      steady,
      DAY,
    );
    expect(stock.all.casks).toBe(16);
    expect(stock.all.alcohol).toBeCloseTo(1750.87, 2);
    const found = stock.byAge
      .filter(({ casks }) => casks > 0)
      .map(({ age, casks, alcohol }) => [age, casks, Number(alcohol.toFixed(2))]);
    expect(found).toEqual([
      [0, 2, 254],
      [5, 4, 459.19],
      [10, 10, 1037.68],
    ]);
    expect(stock.byAge).toHaveLength(11);
    expect(stock.yearsLoss).toBeCloseTo(35.02, 2); // a fiftieth of the whole
  });

  test('old stock is gathered by five years, and nothing is lost in the gathering', () => {
    const groups = ['1985-01-01', '1990-06-01', '2004-02-01', '2006-05-14', '2026-01-01'].map((filled) =>
      barrels(filled, 3),
    );
    const { byAge, all } = stockOn(groups, steady, DAY);
    expect(byAge.map(({ age, to, casks }) => `${age}–${to}: ${casks}`)).toEqual([
      '0–4: 3',
      '5–9: 0',
      '10–14: 0',
      '15–19: 0',
      '20–24: 6',
      '25–29: 0',
      '30–34: 0',
      '35–39: 3',
      '40–44: 3',
    ]);
    expect(byAge.reduce((sum, { alcohol }) => sum + alcohol, 0)).toBeCloseTo(all.alcohol, 9);
  });

  test('casks laid elsewhere and casks sold are of the whole, and a group that cannot be followed counts nowhere', () => {
    const stock = stockOn(
      [
        barrels('2020', 5),
        barrels('2020', 7, { laid: 'elsewhere' }),
        barrels('2020', 3, { owner: 'sold' }),
        barrels('1900', 90),
      ],
      steady,
      DAY,
    );
    expect([stock.all, stock.elsewhere, stock.sold].map(({ casks }) => casks)).toEqual([15, 7, 3]);
    expect(stock.held[3]).toHaveProperty('refused');
  });

  test('60,000 casks in 300 groups, each of its own day, strength and regauge, take less than 20 ms', () => {
    const groups = Array.from({ length: 300 }, (_, i) =>
      barrels(`${2000 + (i % 25)}-0${1 + (i % 9)}-14`, 200, {
        filledStrength: 60 + i / 100,
        size: [125, 200, 250, 500][i % 4]!,
        filledVolume: [120, 195, 245, 490][i % 4]!,
        ...(i % 3 === 0 ? { regauged: '2025-11-01', regaugedVolume: 100, regaugedStrength: 58 } : {}),
      }),
    );
    const house = { ...steady, storeHumidity: percent(80), indrink: percent(2) };
    const times = Array.from({ length: 7 }, () => {
      const start = performance.now();
      expect(stockOn(groups, house, DAY).all.casks).toBe(60_000);
      return performance.now() - start;
    });
    expect(Math.min(...times)).toBeLessThan(20); // the least, as other work shares the machine
  });
});

test('a register that was filled alike every year is the store that is filled every year', () => {
  const span = 12;
  const groups = Array.from({ length: span }, (_, i) => barrels(`${2026 - i}-05-14`, 300));
  const store = buildStock({ filled: count(300), alcohol: litresOfAlcohol(127), years: years(span), loss: percent(2) }, span + 3).at(-1)!;
  const { all, yearsLoss } = stockOn(groups, steady, DAY);
  expect(all.casks).toBe(store.casks);
  expect(apart(all.alcohol, store.alcohol)).toBeLessThan(1e-6);
  expect(apart(yearsLoss, store.lost)).toBeLessThan(1e-6);
}); // prettier-ignore

test('one cask of a group holds what a regauge of it would expect', () => {
  const damp = { ...steady, storeHumidity: percent(85), indrink: percent(2) };
  const expected = expectedNow({ filled: { volume: litres20(200), strength: strength(63.5) }, indrink: percent(2), store: { alcoholLoss: percent(2), humidity: percent(85), steadyHumidity: percent(65) }, years: years(10) });
  const one = held(barrels('2016-05-14'), damp);
  expect(apart(one.volume, expected.volume)).toBeLessThan(1e-4);
  expect(apart(one.strength, expected.strength)).toBeLessThan(1e-4);
}); // prettier-ignore

describe('counted beside computed', () => {
  const fillings: Fillings = {
    casksPerYear: count(1000),
    meanSize: litres(200),
    fillingStrength: strength(63.5),
    yearsInWood: years(12),
    barrels: percent(75),
    hogsheads: percent(20),
  };

  test('by hand: eight years of 1,000 casks, some elsewhere, some sold as new spirit', () => {
    // 1 January 2018 to 1 January 2026 is 8 years: 8,000 casks. 4,500 are counted; 2,000 lie elsewhere;
    // 127,000 L of pure alcohol were sold unfilled, which is 127,000 ÷ (200 × 0.635) = 1,000 casks. 500 are left over.
    const groups = [barrels('2020', 4000), barrels('2021', 500, { size: 250 })];
    const meets = countedMeetsComputed(
      groups,
      fillings,
      { laidElsewhere: 2000, soldUnfilled: 127_000 },
      2018,
      '2026-01-01',
    );
    expect(meets).toMatchObject({
      open: 8,
      filled: 8000,
      emptied: 0,
      computed: 8000,
      counted: 4500,
      difference: 3500,
      laidElsewhere: 2000,
      soldUnfilled: 1000,
    });
    expect(meets.unexplained).toBeCloseTo(500, 9);
    expect(meets.bySize).toEqual([
      { size: 200, counted: 4000, computed: 6000 },
      { size: 250, counted: 500, computed: 1600 },
      { size: 500, counted: 0, computed: 400 },
    ]);
  });

  test('by hand: four fillings in five go elsewhere, where no count of them is given', () => {
    const share = (unlisted: object) =>
      countedMeetsComputed([], fillings, unlisted, 2018, '2026-01-01').laidElsewhere;
    expect(share({ elsewhereShare: 80 })).toBeCloseTo(6400, 9); // 80 % of 8,000
    expect(share({ elsewhereShare: 80, laidElsewhere: 2000 })).toBe(2000);
  });

  test('casks whose years are up are taken as emptied, unless those emptied were counted', () => {
    const of = (unlisted = {}) => countedMeetsComputed([], fillings, unlisted, 2000, '2026-01-01');
    expect(of()).toMatchObject({ filled: 26_000, emptied: 14_000, computed: 12_000 });
    expect(of({ emptied: 9000 })).toMatchObject({ emptied: 9000, computed: 17_000 });
  });

  test('the house’s own count holds where the register has fewer', () => {
    const of = (casks: number) => countedMeetsComputed([barrels('2020', casks)], fillings, { inHouse: 11_000 }, 2000, '2026-01-01'); // of 12,000 reckoned
    expect(of(1)).toMatchObject({ counted: 1, difference: 1000, unexplained: 1000 });
    expect(of(11_500)).toMatchObject({ counted: 11_500, difference: 500 });
  }); // prettier-ignore

  test('three sizes and 55,000 counted casks, most fillings laid elsewhere', () => {
    // 20 years of 9,000 casks are 180,000; 55,000 counted, 118,000 elsewhere, 7,000 emptied leave nothing over.
    const groups = [
      barrels('2012', 40_000),
      barrels('2010', 12_000, { size: 250 }),
      barrels('2008', 3000, { size: 500 }),
    ];
    const meets = countedMeetsComputed(
      groups,
      { ...fillings, casksPerYear: count(9000) },
      { laidElsewhere: 118_000, emptied: 7000 },
      2006,
      '2026-01-01',
    );
    expect(meets).toMatchObject({ counted: 55_000, difference: 118_000, unexplained: 0 });
  });
});

describe('casks put together', () => {
  const figures: BottlingFigures = {
    bottlingStrength: strength(46),
    filterLoss: percent(0),
    bottleSize: quantity('bottle', 70),
    caskResidue: litres20(0),
  };
  const full = (volume: number, s: number, age: number): HeldCask => ({
    volume: litres20(volume),
    strength: strength(s),
    alcohol: litresOfAlcohol((volume * s) / 100),
    age: years(age),
    loss: percent(2),
    byRegauge: false,
  });
  const part = (casks: number, age: number, more: Partial<CaskGroup> = {}, volume = 100, s = 60): Dumped => ({
    group: barrels('2010', casks, more),
    held: full(volume, s, age),
    casks,
  });

  test('the label may state the whole years of the youngest cask, however few there are of it', () => {
    const { given, answer } = sum('X1') as { given: Record<string, number>; answer: number };
    const made = dumpCasks(
      [part(50, given['a']! + 0.4), part(10, given['b']! + 0.9), part(40, given['c']!)],
      figures,
    );
    expect(made).toMatchObject({ vatting: { age: answer } });
    expect(dumpCasks([part(100, 30), part(1, 2.99)], figures)).toMatchObject({ vatting: { age: 2 } });
    expect(dumpCasks([part(100, 30), { ...part(1, 2.99), casks: 0 }], figures)).toMatchObject({
      vatting: { age: 30 },
    });
  });

  test('bottles of the worked sum', () => {
    const { given, answer } = sum('T6') as { given: Record<string, number>; answer: number };
    const made = dumpCasks([part(1, 10, {}, given['A']! / 0.6, 60)], {
      ...figures,
      bottleSize: quantity('bottle', 100 * given['v']!),
    });
    expect(made).toMatchObject({ run: { bottles: Math.floor(answer) } });
  });

  test('water for the vat as the gauging manual works it; it measures at 60 °F and cuts its quotients', () => {
    for (const { fromProof, toProof, water, within } of gallons.reductions.rows) {
      const made = dumpCasks([part(3, 12, {}, 200, fromProof / 2), part(2, 10, {}, 200, fromProof / 2)], {
        ...figures,
        bottlingStrength: strength(toProof / 2),
      });
      if (isRefusal(made)) throw new Error(made.refused);
      expect(made.vatting.volume).toBeCloseTo(1000, 6);
      expect(Math.abs(made.run.reduction.waterVolume / 10 - water)).toBeLessThan(within);
    }
  });

  test('one barrel, one hogshead and one butt give their own bottles, and the mean cask is none of them', () => {
    const [barrel, hogshead, butt] = [200, 250, 500].map((volume) =>
      bottlesFromOne(full(volume, 60, 10), figures),
    );
    // 200 L at 60 % hold 120 L of alcohol; a bottle of 70 cL at 46 % holds 0.322 L: 372.67, so 372 whole bottles.
    expect([barrel, hogshead, butt]).toEqual([372, 465, 931]);
    expect(bottlesFromOne(full(200, 60, 10), { ...figures, caskResidue: litres20(1) })).toBe(370); // 119.4 ÷ 0.322 = 370.8
  });

  test('a vat or a cask below the bottling strength is refused in a sentence, and so are casks of which nothing comes', () => {
    expect(bottlesFromOne(full(150, 44, 30), figures)).toMatchObject({
      refused: expect.stringContaining('below the bottling strength') as string,
    });
    expect(dumpCasks([part(2, 30, {}, 150, 44)], figures)).toHaveProperty('refused');
    expect(dumpCasks([], figures)).toMatchObject({ refused: expect.stringContaining('No cask') as string });
    expect(dumpCasks([part(1, 10, {}, 0.5)], { ...figures, caskResidue: litres20(1) })).toHaveProperty(
      'refused',
    );
  });

  test('what comes out of the casks is in the vat, and its alcohol in bottles or told as lost', () => {
    const parts = fc.array(
      fc.record({
        casks: fc.integer({ min: 1, max: 40 }),
        age: between(0, 40),
        volume: between(5, 480),
        s: between(47, 75),
      }),
      { minLength: 1, maxLength: 6 },
    );
    always(parts, (all) => {
      const made = dumpCasks(
        all.map(({ casks, age, volume, s }) => part(casks, age, {}, volume, s)),
        { ...figures, caskResidue: litres20(2), filterLoss: percent(1) },
      );
      if (isRefusal(made)) throw new Error(made.refused);
      const out = all.reduce((sum, { casks, volume, s }) => sum + (casks * (volume - 2) * s) / 100, 0);
      expect(apart(made.vatting.alcohol, out)).toBeLessThan(1e-9);
      expect(apart(made.run.alcohol + made.run.alcoholLost, out)).toBeLessThan(1e-9);
      expect(made.vatting.age).toBe(Math.floor(Math.min(...all.map(({ age }) => age))));
    });
  });

  test('the law bars a name by age, size, wood or strength, each told once with the names it bars', () => {
    const barred = (parts: readonly Dumped[], at = 46) => {
      const made = dumpCasks(parts, figures);
      if (isRefusal(made)) throw new Error(made.refused);
      return barredBy(parts, made.vatting, strength(at));
    };
    expect(barred([part(2, 12)])).toEqual([]);
    const young = barred([part(2, 12), part(1, 2.9)]);
    expect(young.map(({ asks }) => asks).join()).toMatch(/at least three years/);
    expect(young.flatMap(({ names }) => names)).toContain('Scotch whisky');
    expect(young.flatMap(({ names }) => names)).not.toContain('Whisky in the United States');
    expect(
      barred([part(2, 12, { size: 750 })])
        .map(({ asks }) => asks)
        .join(),
    ).toMatch(/700 litres/);
    expect(
      barred([part(2, 12, { wood: 'other' })])
        .map(({ asks }) => asks)
        .join(),
    ).toMatch(/oak/);
    expect(
      barred([part(2, 12)], 39)
        .map(({ asks }) => asks)
        .join(),
    ).toMatch(/40 % vol/);
  });
});

describe('one cask of a house', () => {
  // Nothing lost: 200 L of 63.5 % hold 127 L of alcohol, 276.09 L at 46 %, 394 bottles of 70 cL; 500 L make 690.2 L, 986 bottles.
  const lossless = { ...builtInHouse, alcoholLoss: percent(0), indrink: percent(0), caskResidue: litres20(0), filterLoss: percent(0), yearsInWood: years(0), bottlingStrength: strength(46), bottleSize: quantity('bottle', 70), fillingStrength: strength(63.5) };
  test('gives what it was filled with where nothing is lost', () => {
    const of = bottlesFromCasks(answer(line(lossless)));
    expect(of.map(([name, size]) => [name, size])).toEqual([['barrel', 200], ['hogshead', 250], ['butt', 500]]);
    expect([of[0]![2], of[2]![2]]).toEqual([394, 986]);
  });
  test('where all casks are barrels, a barrel gives what the line has of each', () => {
    const barrels = answer(line({ ...builtInHouse, barrels: percent(100), hogsheads: percent(0) }));
    expect(bottlesFromCaskOf(barrels, litres(200))).toBe(Math.floor(barrels.bottling.bottlesPerCask));
    expect(bottlesFromCaskOf(barrels, litres(500))).toBeGreaterThan(2.5 * Math.floor(barrels.bottling.bottlesPerCask)); // less wood to a litre
  });
}); // prettier-ignore
