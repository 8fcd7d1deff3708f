// Land, steep, germination, kiln, peat and analysis: worked sums, balances, round trips and limits.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { estimatedExtract, extractAsIs, proteinFromNitrogen } from '../../src/core/malting/analysis.ts';
import { growth, planCount } from '../../src/core/malting/germination.ts';
import { heatToWarmAir, passAir, type KilnAir } from '../../src/core/malting/kiln-air.ts';
import { BREAK_MOISTURE, dryingCurve, dryLoad, waterBetween } from '../../src/core/malting/kiln-drying.ts';
import {
  alcoholFromMalt,
  harvestForMalt,
  harvestFromBarley,
  harvestFromLand,
} from '../../src/core/malting/land.ts';
import { moistureOf, waterInDry } from '../../src/core/malting/moisture.ts';
import { blendPeat } from '../../src/core/malting/peat.ts';
import { fitSteep, moistureOfSample } from '../../src/core/malting/steep-fit.ts';
import {
  hourOfWet,
  HYDRATION_ENERGY,
  k1At,
  moistureAfter,
  moistureInTheEnd,
  steepCurve,
  wetHoursTo,
} from '../../src/core/malting/steep.ts';
import { celsius, count, hours, kilograms, percent, quantity } from '../../src/core/quantity.ts';
import reference from '../../src/published/reference/malting.json' with { type: 'json' };
import { publishedEntry } from '../../src/published/row.ts';
import { always, answer, apart, between, ordered } from './draw.ts';

const sum = (id: string) => publishedEntry(reference.sums.rows, id).answer;
const value = (id: string) => publishedEntry(reference.values, id);
const grams = (mass: number) => quantity('grams', mass);
const nitrogen = (share: number) => quantity('nitrogen', share);

describe('moisture', () => {
  test('46 % of the whole is the worked sum’s part of the dry matter, and back', () => {
    expect(apart(waterInDry(percent(46)) / 100, sum('M3'))).toBeLessThan(1e-6);
    always(between(0, 98).map(percent), (moisture) =>
      expect(moistureOf(waterInDry(moisture))).toBeCloseTo(moisture, 9),
    );
  });
  test('a tonne of barley takes up the worked sum’s water from 12 to 46 %', () => {
    expect(apart(-waterBetween(kilograms(880), percent(12), percent(46)), sum('M2'))).toBeLessThan(1e-5);
  });
  test('830 kg of malt at 5 % lost the worked sum’s water from 45 %', () => {
    expect(apart(waterBetween(kilograms(830 * 0.95), percent(45), percent(5)), sum('M6'))).toBeLessThan(1e-6);
  });
});

describe('land', () => {
  const growing = fc.record({
    barleyMoisture: between(8, 20).map(percent),
    maltMoisture: between(1, 8).map(percent),
    dryLoss: between(2, 25).map(percent),
    screenings: between(0, 40).map(percent),
    harvest: between(0.5, 15).map((t) => quantity('harvest', t)),
  });
  const trade = {
    barleyMoisture: percent(12),
    maltMoisture: percent(5),
    dryLoss: percent(10.4),
    screenings: percent(0),
    harvest: quantity('harvest', 6),
  };

  test('malt, barley and land lead back to each other', () => {
    always(fc.tuple(between(10, 1e8).map(kilograms), growing), ([malt, of]) => {
      const there = harvestForMalt(malt, of);
      for (const back of [harvestFromBarley(there.bought, of), harvestFromLand(there.land, of)]) {
        for (const name of ['malt', 'steeped', 'bought', 'land'] as const)
          expect(apart(back[name], there[name])).toBeLessThan(1e-12);
      }
    });
  });
  test('what is thrown out and what is steeped are what was bought', () => {
    always(fc.tuple(between(10, 1e8).map(kilograms), growing), ([barley, of]) => {
      const { steeped, bought } = harvestFromBarley(barley, of);
      expect(apart(steeped + (bought * of.screenings) / 100, barley)).toBeLessThan(1e-12);
    });
  });
  test('a million litres of pure alcohol stand on the worked sum’s hectares', () => {
    const { land, malt } = harvestForMalt(kilograms((1000 * 1e6) / 410), trade);
    expect(apart(land, sum('U1'))).toBeLessThan(3e-5); // 0.83 stands there for 0.829979
    expect(apart(alcoholFromMalt(malt, quantity('yield', 410)), 1e6)).toBeLessThan(1e-12);
  });
  test('a hectare gives about two thousand litres', () => {
    const { malt } = harvestFromLand(quantity('land', 1), trade);
    expect(apart(alcoholFromMalt(malt, quantity('yield', 410)), value('sus-203').value!)).toBeLessThan(0.025); // “about 2,000” for 2,042
  });
  test('impossible fields are stopped', () => {
    expect(() => harvestFromLand(quantity('land', 1), { ...trade, harvest: quantity('harvest', 0) })).toThrow(
      RangeError,
    );
    expect(() => harvestForMalt(kilograms(1), { ...trade, screenings: percent(100) })).toThrow(RangeError);
  });
});

describe('steep', () => {
  const lots = fc.record({
    startMoisture: between(8, 20).map(percent),
    k1: between(0.01, 1).map((k) => quantity('hoursPerPercent', k)),
    k2: between(0.003, 0.03).map((k) => quantity('perPercent', k)),
  });
  const water = (moisture: ReturnType<typeof percent>) => waterInDry(moisture);

  test('the law of temperature carries a published k1 from 20 to 50 °C', () => {
    const { k1, temperature, energy } = value('mal-014');
    const carried = k1At(
      quantity('hoursPerPercent', k1![0]!),
      celsius(temperature![0]!),
      celsius(temperature![1]!),
      quantity('molarEnergy', energy!),
    );
    expect(apart(carried, k1![1]!)).toBeLessThan(0.04); // the energy was fitted to the temperatures between as well
    expect(HYDRATION_ENERGY).toBe(value('mal-012').value);
  });
  test('warmer water makes k1 smaller, and going back restores it', () => {
    always(fc.tuple(ordered(5, 40, 0.1), between(1, 100)), ([[cool, warm], energy]) => {
      const k1 = quantity('hoursPerPercent', 0.1);
      const warmer = k1At(k1, celsius(cool), celsius(warm), quantity('molarEnergy', energy));
      expect(warmer).toBeLessThan(k1);
      expect(
        apart(k1At(warmer, celsius(warm), celsius(cool), quantity('molarEnergy', energy)), k1),
      ).toBeLessThan(1e-12);
    });
  });
  test('the first minutes go at one over k1, half is in after k1 over k2, and the end is never passed', () => {
    always(lots, (lot) => {
      const [start, end] = [water(lot.startMoisture), water(moistureInTheEnd(lot))];
      const soon = 1e-5 * lot.k1;
      expect(apart((water(moistureAfter(lot, hours(soon))) - start) / soon, 1 / lot.k1)).toBeLessThan(1e-4);
      const half = hours(lot.k1 / lot.k2);
      expect(apart(water(moistureAfter(lot, half)) - start, (end - start) / 2)).toBeLessThan(1e-9);
      expect(moistureAfter(lot, hours(1000))).toBeLessThan(moistureInTheEnd(lot));
    });
  });
  test('moisture rises with time, and the hours to a moisture bring that moisture', () => {
    always(fc.tuple(lots, ordered(0.1, 100, 0.1)), ([lot, [early, later]]) => {
      const moisture = moistureAfter(lot, hours(early));
      expect(moistureAfter(lot, hours(later))).toBeGreaterThan(moisture);
      const found = wetHoursTo(lot, moisture);
      if (typeof found === 'number') expect(apart(found, early)).toBeLessThan(1e-8);
      else expect(moisture).toBeGreaterThan(0.99 * moistureInTheEnd(lot));
    });
  });
  test('a moisture that is passed or beyond reach is refused', () => {
    const lot = {
      startMoisture: percent(12),
      k1: quantity('hoursPerPercent', 0.1),
      k2: quantity('perPercent', 0.02),
    };
    expect(wetHoursTo(lot, percent(10))).toHaveProperty('refused');
    expect(wetHoursTo(lot, percent(45))).toHaveProperty('refused'); // 13.6 + 50 % of the dry matter is 38.9 % of the whole
  });

  const plans = fc.array(fc.record({ wet: between(0, 24).map(hours), rest: between(0, 24).map(hours) }), {
    minLength: 1,
    maxLength: 6,
  });
  test('the curve ends at plan’s end with the moisture of its wet hours, rising in water and level in air', () => {
    always(fc.tuple(lots, plans), ([lot, plan]) => {
      const curve = steepCurve(lot, plan);
      const [wet, all] = plan.reduce(([w, a], each) => [w + each.wet, a + each.wet + each.rest], [0, 0]);
      expect(curve.at(-1)!.hour).toBeCloseTo(all, 9);
      expect(curve.at(-1)!.moisture).toBeCloseTo(moistureAfter(lot, hours(wet)), 9);
      for (let i = 1; i < curve.length; i++) {
        expect(curve[i]!.hour).toBeGreaterThanOrEqual(curve[i - 1]!.hour);
        expect(curve[i]!.moisture).toBeGreaterThanOrEqual(curve[i - 1]!.moisture);
      }
    });
  });
  test('a wet hour is found on the clock: 4 wet, 6 dry, 6 wet', () => {
    const plan = [{ wet: hours(4), rest: hours(6) }, { wet: hours(6), rest: hours(2) }];
    expect([0, 4, 5, 10, 11].map((wet) => hourOfWet(plan, hours(wet)))).toEqual([0, 4, 11, 16, 19]);
  }); // prettier-ignore
});

describe('a lot’s own curve', () => {
  const sample = { mass: grams(500), moisture: percent(12) };
  const massAfter = (k1: number, k2: number, t: number) => 500 + (440 * t) / (k1 + k2 * t) / 100;
  const times = fc
    .uniqueArray(fc.integer({ min: 1, max: 40 }), { minLength: 3, maxLength: 6 })
    .filter((all) => Math.max(...all) > 2 * Math.min(...all));
  const known = fc.tuple(between(0.02, 0.5), between(0.005, 0.02), times);

  test('weighings made from known constants bring them back', () => {
    always(known, ([k1, k2, all]) => {
      const fit = answer(fitSteep(sample, all.map((t) => ({ hours: hours(t), mass: grams(massAfter(k1, k2, t)) }))));
      expect(apart(fit.k1, k1)).toBeLessThan(1e-7);
      expect(apart(fit.k2, k2)).toBeLessThan(1e-7);
      expect(fit.scatter).toBeLessThan(1e-6);
    });
  }); // prettier-ignore
  test('with weighings that are a little off, no neighbouring constants lie nearer', () => {
    always(fc.tuple(known, fc.array(between(-1, 1), { minLength: 6, maxLength: 6 })), ([[k1, k2, all], off]) => {
      const weighings = all.map((t, i) => ({ hours: hours(t), mass: grams(massAfter(k1, k2, t) + off[i]!) }));
      const fit = fitSteep(sample, weighings);
      if ('refused' in fit) return;
      const squares = (a: number, b: number) => weighings.reduce((s, w) => s + (massAfter(a, b, w.hours) - w.mass) ** 2, 0);
      expect(fit.scatter).toBeCloseTo(Math.sqrt(squares(fit.k1, fit.k2) / (all.length - 2)), 6);
      for (const [a, b] of [[1.001, 1], [0.999, 1], [1, 1.001], [1, 0.999]] as const) {
        expect(squares(a * fit.k1, b * fit.k2)).toBeGreaterThan(squares(fit.k1, fit.k2) * (1 - 1e-9));
      }
    });
  }); // prettier-ignore
  test('a sample keeps its dry matter: 440 g of it in 800 g is 45 %', () => {
    expect(moistureOfSample(sample, grams(800))).toBeCloseTo(45, 9);
  });
  const at = (rows: readonly (readonly [number, number])[]) =>
    fitSteep(
      sample,
      rows.map(([t, mass]) => ({ hours: hours(t), mass: grams(mass) })),
    );
  test.each([
    ['no uptake', [[2, 500], [6, 600], [12, 650]]],
    ['weighings at nearly one time', [[10, 600], [10.5, 610], [11, 615]]],
    ['uptake that grows ever faster', [[2, 510], [6, 560], [12, 700]]],
    ['grain that was full at once', [[2, 700], [6, 700], [12, 699]]],
  ] as const)('%s is refused', (_, rows) => expect(at(rows)).toHaveProperty('refused')); // prettier-ignore
});

describe('germination', () => {
  test('the simple rule is the worked sum’s, and its standard error the derived one', () => {
    const { simple } = growth(count(392), count(400));
    expect(apart(simple, sum('M5'))).toBeLessThan(1e-6);
    expect(Math.abs(simple / 1.96 - value('mal-043').value!)).toBeLessThan(0.005); // printed to two decimals
  });
  test('the limits are not symmetric near the top, and wider than the simple rule below', () => {
    always(fc.integer({ min: 85, max: 99 }), (grown) => {
      const { share, low, high, simple } = growth(count(grown), count(100));
      expect(share - low).toBeGreaterThan(high - share);
      expect(share - low).toBeGreaterThan(simple);
    });
  });
  const asked = fc.tuple(between(90, 99.5), between(2, 15), fc.integer({ min: 10, max: 200 }));
  test('the plan shows what it should; one grown corn fewer, or one dish fewer, does not', () => {
    always(asked, ([expected, below, dish]) => {
      const lowest = expected - below;
      const plan = planCount(percent(expected), percent(lowest), count(dish));
      const likely = (dishes: number) => count(Math.floor((dishes * dish * expected) / 100 + 1e-9));
      if ('refused' in plan)
        return void expect(growth(likely(100), count(100 * dish)).low).toBeLessThan(lowest + 1e-7);
      expect(plan.counted).toBe(plan.dishes * dish);
      expect(growth(likely(plan.dishes), plan.counted).low).toBeGreaterThanOrEqual(lowest - 1e-7);
      expect(growth(plan.fewest, plan.counted).low).toBeGreaterThanOrEqual(lowest - 1e-7);
      expect(growth(count(plan.fewest - 1), plan.counted).low).toBeLessThan(lowest + 1e-7);
      if (plan.dishes > 1)
        expect(growth(likely(plan.dishes - 1), count(plan.counted - dish)).low).toBeLessThan(lowest + 1e-7);
      expect(plan.chance).toBeGreaterThan(40);
    });
  });
  test('limits that cannot be shown are refused', () => {
    expect(planCount(percent(95), percent(95), count(100))).toHaveProperty('refused');
    expect(planCount(percent(95), percent(94.9), count(100))).toHaveProperty('refused');
  });
});

describe('kiln', () => {
  const kilns: fc.Arbitrary<KilnAir> = fc.record({
    outside: between(-15, 30).map(celsius),
    humidity: between(20, 100).map(percent),
    pressure: between(90, 105).map((p) => quantity('pressure', p)),
    airOn: between(50, 85).map(celsius),
    airOff: between(80, 100).map(percent),
  });
  test('air carries off more when it meets the malt hotter, and when it leaves damper', () => {
    always(kilns, (kiln) => {
      const { water, heat } = answer(passAir(kiln));
      const hotter = answer(passAir({ ...kiln, airOn: celsius(kiln.airOn + 3) }));
      expect(hotter.water).toBeGreaterThan(water);
      expect(hotter.heat).toBeGreaterThan(heat);
      expect(water).toBeGreaterThan(answer(passAir({ ...kiln, airOff: percent(kiln.airOff - 5) })).water);
    });
  });
  test('where the air leaves no cooler than it came, water costs its latent heat at least', () => {
    always(kilns, (kiln) => {
      const { water, heat, off } = answer(passAir(kiln));
      if (off.temperature >= kiln.outside) expect(heat / water).toBeGreaterThan(2.43); // MJ/kg at 30 °C; steam tables, from memory
    });
  });
  test('wet grain sits far below the air on, and a little below the air that leaves', () => {
    always(kilns, (kiln) => {
      const { grain, off } = answer(passAir(kiln));
      expect(grain).toBeLessThan(kiln.airOn - 15);
      expect(grain).toBeLessThan(off.temperature + 1.2);
    });
  });
  test('air that is not warmed is refused', () => {
    expect(
      passAir({
        outside: celsius(40),
        humidity: percent(50),
        pressure: quantity('pressure', 101),
        airOn: celsius(40),
        airOff: percent(95),
      }),
    ).toHaveProperty('refused');
  });

  const paths = fc.record({
    green: between(35, 50).map(percent),
    breakAt: between(9, 30).map(percent),
    finished: between(2, 8).map(percent),
    end: between(0, 1.8).map(percent),
  });
  const rates = between(1, 1000).map((r) => quantity('massFlow', r));
  test('water before and after the break is all the water, and the curve runs down to the finished malt', () => {
    always(fc.tuple(paths, rates), ([path, rate]) => {
      const dry = kilograms(1000);
      const drying = answer(dryLoad(dry, path, rate));
      expect(
        apart(drying.freeWater + drying.lateWater, waterBetween(dry, path.green, path.finished)),
      ).toBeLessThan(1e-12);
      expect(apart(drying.freeHours * rate, drying.freeWater)).toBeLessThan(1e-12);
      const curve = dryingCurve(path, drying);
      expect(curve[0]!.moisture).toBeCloseTo(path.green, 9);
      expect(curve.at(-1)!.moisture).toBeCloseTo(path.finished, 9);
      expect(curve.at(-1)!.hour).toBeCloseTo(drying.freeHours + drying.lateHours, 9);
      for (let i = 1; i < curve.length; i++) expect(curve[i]!.moisture).toBeLessThan(curve[i - 1]!.moisture);
    });
  });
  test('after the break the hours are those of a rate that falls with the water above the end, step by step', () => {
    always(fc.tuple(paths, rates), ([path, rate]) => {
      const dry = 1000;
      const { lateHours } = answer(dryLoad(kilograms(dry), path, rate));
      const [top, goal, end] = [path.breakAt, path.finished, path.end].map(
        (m) => (dry * waterInDry(m)) / 100,
      );
      const STEPS = 4000;
      let time = 0;
      for (let i = 0; i < STEPS; i++) {
        const held = top! + ((goal! - top!) * (i + 0.5)) / STEPS;
        time += (top! - goal!) / STEPS / ((rate * (held - end!)) / (top! - end!));
      }
      expect(apart(lateHours, time)).toBeLessThan(1e-4);
    });
  });
  test('a finished malt damper than the break dries freely all the way', () => {
    const drying = answer(
      dryLoad(
        kilograms(100),
        { green: percent(45), breakAt: percent(8), finished: percent(9), end: percent(2) },
        quantity('massFlow', 10),
      ),
    );
    expect([drying.lateWater, drying.lateHours]).toEqual([0, 0]);
  });
  test('moistures in the wrong order are refused', () => {
    const path = { green: percent(45), breakAt: percent(12), finished: percent(5), end: percent(2) };
    const rate = quantity('massFlow', 10);
    expect(dryLoad(kilograms(100), { ...path, green: percent(12) }, rate)).toHaveProperty('refused');
    expect(dryLoad(kilograms(100), { ...path, end: percent(5) }, rate)).toHaveProperty('refused');
  });
  test('free drying ends where the published kiln goes over to its second step', () => {
    expect(BREAK_MOISTURE).toBe(value('mal-029').value);
  });
  // 10 °C and 80 % outside, 60 then 72 °C on, nothing won back. A modern kiln's 750 kWh are what is left when 30 to 40 %
  // is won back (recalled), so this one should take from 750 ÷ 0.7 to 750 ÷ 0.6.
  test('without heat won back a tonne of malt takes what a modern kiln would without it', () => {
    const pass = (airOn: number) =>
      answer(
        passAir({
          outside: celsius(10),
          humidity: percent(80),
          pressure: quantity('pressure', 101.325),
          airOn: celsius(airOn),
          airOff: percent(95),
        }),
      );
    const [air, late] = [pass(60), pass(72)];
    const path = {
      green: percent(45),
      breakAt: percent(BREAK_MOISTURE),
      finished: percent(5),
      end: percent(1.5),
    };
    const dryAir = 1000;
    const rate = (kiln: typeof air) => quantity('massFlow', dryAir * kiln.water);
    const { freeHours, lateHours } = answer(dryLoad(kilograms(950), path, rate(air), rate(late)));
    const used =
      (dryAir * (freeHours * air.heat + lateHours * heatToWarmAir(air.outside, celsius(72)))) / 3.6;
    expect(used).toBeGreaterThan(value('mal-026').value! / 0.7);
    expect(used).toBeLessThan(value('mal-026').value! / 0.6);
  });
});

describe('peat', () => {
  const levels = fc
    .tuple(between(0, 20), between(1, 300), between(0, 1))
    .map(([plain, more, part]) => ({ plain, peated: plain + more, wanted: plain + more * part }));
  const ppm = (level: number) => quantity('ppm', level);
  test('mass and phenols are kept', () => {
    always(fc.tuple(between(10, 50_000).map(kilograms), levels), ([mass, { plain, peated, wanted }]) => {
      const blend = answer(
        blendPeat(mass, { plain: ppm(plain), peated: ppm(peated), wanted: ppm(Math.min(wanted, peated)) }),
      );
      expect(apart(blend.plain + blend.peated, mass)).toBeLessThan(1e-12);
      expect(apart(blend.plain * plain + blend.peated * peated, mass * wanted)).toBeLessThan(1e-9);
      expect(Math.min(blend.plain, blend.peated)).toBeGreaterThan(-1e-9);
    });
  });
  test('a level outside the two malts, or malts the wrong way round, is refused', () => {
    const blend = (plain: number, peated: number, wanted: number) =>
      blendPeat(kilograms(100), { plain: ppm(plain), peated: ppm(peated), wanted: ppm(wanted) });
    expect(blend(2, 40, 1)).toHaveProperty('refused');
    expect(blend(2, 40, 41)).toHaveProperty('refused');
    expect(blend(10, 10, 10)).toHaveProperty('refused');
    expect(blend(10, 5, 7)).toHaveProperty('refused');
  });
});

describe('analysis', () => {
  test('protein is the worked sum’s', () => {
    expect(proteinFromNitrogen(nitrogen(1.55))).toBeCloseTo(sum('M4'), 10);
  });
  test('a tenth of nitrogen costs half a point of extract, and larger corns give more', () => {
    always(fc.tuple(between(1, 2), between(25, 55)), ([share, corns]) => {
      const extract = (n: number, g: number) =>
        estimatedExtract({ nitrogen: nitrogen(n), thousandCorns: grams(g), constant: percent(84.5) });
      expect(extract(share, corns) - extract(share + 0.1, corns)).toBeCloseTo(0.53125, 9); // 0.85 × 6.25 × 0.1
      expect(extract(share, corns + 1) - extract(share, corns)).toBeCloseTo(0.15, 9);
    });
  });
  test('80 % of the dry matter is 76 % of a malt at 5 %', () => {
    expect(extractAsIs(percent(80), percent(5))).toBeCloseTo(76, 12);
  });
  test('figures outside their ranges are stopped', () => {
    expect(() => proteinFromNitrogen(nitrogen(NaN))).toThrow(RangeError);
    expect(() => extractAsIs(percent(101), percent(5))).toThrow(RangeError);
    expect(() =>
      estimatedExtract({ nitrogen: nitrogen(1.5), thousandCorns: grams(5), constant: percent(84.5) }),
    ).toThrow(RangeError);
  });
});
