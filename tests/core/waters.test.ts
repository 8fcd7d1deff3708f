// Several waters, weak worts returned, draff and the account of a mash: balances, hand sums, and the long way round.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { draffOf } from '../../src/core/mashing/draff.ts';
import { massOfWater } from '../../src/core/mashing/hot-water.ts';
import { accountOfMash } from '../../src/core/mashing/mash-account.ts';
import { firstMashes, returnWeakWorts } from '../../src/core/mashing/returned-worts.ts';
import {
  asWort,
  draffMoistureOf,
  drainWaters,
  runoffsTogether,
  waterMasses,
  type Bed,
  type Water,
} from '../../src/core/mashing/waters.ts';
import { HYDROLYSIS_WATER, mashEfficiency, wortExtract } from '../../src/core/mashing/wort.ts';
import {
  celsius,
  gravity,
  kilograms,
  litres,
  litres20,
  litresPerKilogram,
  percent,
  share,
} from '../../src/core/quantity.ts';
import { isRefusal } from '../../src/core/refusal.ts';
import { WATER_DENSITY } from '../../src/core/spirit/density.ts';
import reference from '../../src/published/reference/milling-and-mashing.json' with { type: 'json' };
import density from '../../src/published/reference/water-density.json' with { type: 'json' };
import { always, answer, apart, between, ordered } from './draw.ts';

const sum = (id: string) => reference.sums.rows.find((row) => row.id === id)!.answer;
const added = (masses: readonly number[]) => masses.reduce((total, mass) => total + mass, 0);

const water = (ratio: number, temperature: number): Water => ({
  ratio: litresPerKilogram(ratio),
  temperature: celsius(temperature),
});
const beds: fc.Arbitrary<Bed> = fc.record({
  malt: between(10, 50_000).map(kilograms),
  moisture: between(1, 8).map(percent),
  extract: between(50, 90).map(percent),
  held: between(0.3, 1.5).map(litresPerKilogram),
  washing: between(0, 1).map(share),
});
const laterWaters = fc.array(
  fc.tuple(between(0.1, 8), between(5, 100)).map(([ratio, t]) => water(ratio, t)),
  { minLength: 1, maxLength: 5 },
);
const firstWaters = fc.tuple(between(2, 8), between(5, 100)).map(([ratio, t]) => water(ratio, t));
const allWaters = fc.tuple(firstWaters, laterWaters).map(([first, later]) => [first, ...later]);

/** Litres to a kilogram of grist that weigh so many kilograms at 20 °C. */
const weighing = (mass: number) => water((1000 * mass) / massOfWater(litres(1000), celsius(20)), 20);

test.each(density.rows.filter(({ t }) => t >= 5))(
  'a litre of water at $t °C agrees with the standard density of water',
  ({ t, IAPWS95 }) => {
    // 0.005 kg/m³: temperature scales of 1968 and 1990 and the age of the formula.
    expect(Math.abs(massOfWater(litres(1000), celsius(t)) - IAPWS95)).toBeLessThan(0.005);
  },
);

test.each(reference.hotWater.rows)(
  'hot water at $t °C: a kilogram fills $specificVolume L',
  ({ t, specificVolume }) => {
    expect(Math.abs(1 / massOfWater(litres(1), celsius(t)) - specificVolume)).toBeLessThan(0.0006); // four figures
  },
);

test('water and extract in are water and extract out, for any waters', () => {
  always(fc.tuple(beds, allWaters), ([bed, waters]) => {
    const { runoffs, left } = answer(drainWaters(bed, waters));
    // By hand: the malt's moisture comes in, and 0.04 kg goes into each kilogram of extract.
    const waterIn = added(waterMasses(bed, waters)) + (bed.malt * (bed.moisture - 0.04 * bed.extract)) / 100;
    expect(apart(waterIn, added(runoffs.map((runoff) => runoff.water)) + left.water)).toBeLessThan(1e-9);
    const extractIn = (bed.malt * bed.extract) / 100;
    expect(apart(extractIn, added(runoffs.map((runoff) => runoff.extract)) + left.extract)).toBeLessThan(
      1e-9,
    );
    for (const { extract } of [...runoffs, left]) expect(extract).toBeGreaterThanOrEqual(0);
    expect(left.water).toBeCloseTo(bed.malt * bed.held, 9);
  });
});

const strengths = (bed: Bed, waters: readonly Water[]) =>
  answer(drainWaters(bed, waters)).runoffs.map((runoff) => runoff.extract / runoff.water);

test('no runoff is stronger than the first, and equal waters run weaker and weaker', () => {
  always(fc.tuple(beds, allWaters), ([bed, waters]) => {
    const all = strengths(bed, waters);
    expect(Math.max(...all)).toBe(all[0]);
    const equal = strengths({ ...bed, washing: share(0.5) }, [
      waters[0]!,
      ...waters.slice(1).map(() => waters[1]!),
    ]);
    expect(equal.every((strength, i) => i === 0 || strength < equal[i - 1]!)).toBe(true);
  });
});

test('a better washed bed keeps less', () => {
  always(fc.tuple(beds, allWaters, ordered(0, 1, 1e-3)), ([bed, waters, [poor, good]]) => {
    const left = (washing: number) =>
      answer(drainWaters({ ...bed, washing: share(washing) }, waters)).left.extract;
    expect(left(good)).toBeLessThan(left(poor));
  });
});

// 1,000 kg of malt: 40 kg of moisture in, 0.04 × 770 = 30.8 kg taken up, so 3,990.8 kg make 4,000.
test('A6: three equal rinses that leave a quarter each leave a quarter to the third power', () => {
  const bed: Bed = {
    malt: kilograms(1000),
    moisture: percent(4),
    extract: percent(77),
    held: litresPerKilogram(1),
    washing: share(1),
  };
  const { left } = answer(drainWaters(bed, [weighing(3.9908), weighing(3), weighing(3)]));
  expect(left.extract / 770).toBeCloseTo(sum('A6'), 12);
});

test('A5: after one water the draff keeps its liquid at the strength of the wort', () => {
  // 9,000 kg of malt with 6,900 kg of extract and 3,200 kg of water kept; 69,000 kg of water in all is 0.1 kg/kg:
  // the malt brings 360 kg and its starch takes up 0.04 × 6,900 = 276.
  const bed: Bed = {
    malt: kilograms(9000),
    moisture: percent(4),
    extract: percent(69 / 0.9),
    held: litresPerKilogram(3200 / 9000),
    washing: share(0.5),
  };
  const { left } = answer(drainWaters(bed, [weighing((69_000 - 360 + 276) / 9000)]));
  expect(Math.abs(left.extract / 6900 - sum('A5'))).toBeLessThan(5e-8);
});

test('nothing washed, nothing drawn: the later waters run through as water', () => {
  always(fc.tuple(beds, firstWaters, laterWaters), ([bed, first, later]) => {
    const unwashed = { ...bed, washing: share(0) };
    const { runoffs, left } = answer(drainWaters(unwashed, [first, ...later]));
    expect(added(runoffs.slice(1).map(({ extract }) => extract))).toBe(0);
    expect(left.extract).toBe(answer(drainWaters(unwashed, [first])).left.extract);
  });
});

test('many small rinses beat one large one of the same water', () => {
  always(fc.tuple(beds, firstWaters, between(0.2, 5)), ([bed, first, ratio]) => {
    const washed = { ...bed, washing: share(1) };
    const left = (parts: number) =>
      answer(drainWaters(washed, [first, ...Array.from({ length: parts }, () => water(ratio / parts, 80))]))
        .left.extract;
    expect(left(2)).toBeLessThan(left(1));
    expect(left(4)).toBeLessThan(left(2));
  });
});

test('a wort made of water and extract weighs and holds what it should', () => {
  always(fc.tuple(between(1, 1e5), between(0, 0.5)), ([mass, part]) => {
    const liquid = { water: kilograms(mass), extract: kilograms(mass * part) };
    const wort = answer(asWort(liquid));
    expect(
      apart((wort.volume * wort.gravity * WATER_DENSITY) / 1000, liquid.water + liquid.extract),
    ).toBeLessThan(1e-12);
    expect(wortExtract(wort)).toBeCloseTo(liquid.extract, 6);
  });
  expect(asWort({ water: kilograms(60), extract: kilograms(40) })).toHaveProperty('refused');
});

test('draff of the moisture that the grains’ water makes weighs what they hold', () => {
  always(fc.tuple(beds, firstWaters), ([bed, first]) => {
    const { left, runoffs } = answer(drainWaters(bed, [first]));
    const moisture = draffMoistureOf(bed, left);
    const promised = (bed.malt * bed.extract) / 100;
    const efficiency = percent((100 * runoffsTogether(runoffs).extract) / promised);
    const draff = answer(
      draffOf({ mass: bed.malt, moisture: bed.moisture, extract: bed.extract }, efficiency, moisture),
    );
    expect(apart(draff.water, left.water)).toBeLessThan(1e-9);
    expect(apart(draff.lost, left.extract)).toBeLessThan(1e-6);
  });
});

test('a first water that the grains swallow whole is refused', () => {
  const bed: Bed = {
    malt: kilograms(100),
    moisture: percent(4),
    extract: percent(77),
    held: litresPerKilogram(3),
    washing: share(1),
  };
  expect(drainWaters(bed, [water(2, 65)])).toHaveProperty('refused');
  expect(() => drainWaters({ ...bed, washing: share(1.1) }, [water(4, 65)])).toThrow(RangeError);
  expect(() => massOfWater(litres(1), celsius(101))).toThrow(RangeError);
});

const house: Bed = {
  malt: kilograms(1500),
  moisture: percent(4.5),
  extract: percent(77.5),
  held: litresPerKilogram(0.7),
  washing: share(0.85),
};
const houseWaters = [water(4, 68), water(1.3, 75), water(2, 85)];

/** Mash after mash, each given the weak wort of the one before, the first none. */
function mashAfterMash(bed: Bed, waters: readonly Water[], collected: number, mashes: number) {
  let borrowed = kilograms(0);
  const worts: number[] = [];
  for (let i = 0; i < mashes; i++) {
    const { runoffs } = answer(drainWaters(bed, waters, borrowed));
    worts.push(runoffsTogether(runoffs.slice(0, collected)).extract);
    borrowed = runoffsTogether(runoffs.slice(collected)).extract;
  }
  return { worts, borrowed };
}

test('the balance of returned worts is where many mashes end, and the first mashes are on its way', () => {
  always(fc.tuple(beds, allWaters, fc.integer({ min: 1, max: 5 })), ([bed, waters, collected]) => {
    const found = returnWeakWorts(bed, waters, collected);
    if (isRefusal(found)) return;
    const { worts, borrowed } = mashAfterMash(bed, waters, collected, 400);
    expect(Math.abs(borrowed - found.weak.extract)).toBeLessThan(1e-9 * bed.malt);
    expect(apart(worts.at(-1)!, found.wort.extract)).toBeLessThan(1e-9);
    firstMashes(found, 6).forEach((extract, i) => expect(apart(extract, worts[i]!)).toBeLessThan(1e-9));
    expect(apart(worts[0]!, found.withoutReturn)).toBeLessThan(1e-9);
  });
});

test('in balance, wort and draff hold all the malt’s extract, and returning never loses any', () => {
  let answered = 0;
  always(fc.tuple(beds, allWaters, fc.integer({ min: 1, max: 5 })), ([bed, waters, collected]) => {
    const found = returnWeakWorts(bed, waters, collected);
    if (isRefusal(found)) return;
    answered++;
    expect(
      apart((bed.malt * bed.extract) / 100, found.wort.extract + found.drained.left.extract),
    ).toBeLessThan(1e-9);
    expect(found.wort.extract).toBeGreaterThanOrEqual(found.withoutReturn * (1 - 1e-12));
    const first = waterMasses(bed, waters)[0]!;
    expect(apart(first, found.fresh + found.weak.water)).toBeLessThan(1e-9);
  });
  expect(answered).toBeGreaterThan(10);
});

test('the built-in waters recover what the trade expects of a mash, 97 to 99 %', () => {
  const found = answer(returnWeakWorts(house, houseWaters, 2));
  const recovered = (100 * found.wort.extract) / 1162.5;
  expect(recovered).toBeGreaterThan(reference.recovery.range[0]!);
  expect(recovered).toBeLessThan(reference.recovery.range[1]!);
});

test('nothing to return, and more weak wort than the first water takes, are refused', () => {
  expect(returnWeakWorts(house, houseWaters, 3)).toHaveProperty('refused');
  expect(returnWeakWorts(house, [water(4, 68), water(3, 75), water(3, 85)], 1)).toHaveProperty('refused');
});

test('starch takes up what the sugars of a published all-malt wort say', () => {
  // Each molecule of sugar cut from starch has taken up one of water: 18.015 of 180.16, 342.3 and 504.4.
  const { extract, glucose, maltose, maltotriose } = reference.allMaltWort;
  const sugars = 18.015 * (glucose / 180.16 + maltose / 342.3 + maltotriose / 504.4);
  // Least: all the glucose was in the malt already. Most: all was cut, and the rest is dextrins of four units.
  const least = (sugars - (18.015 * glucose) / 180.16) / extract;
  const rest = extract - glucose - maltose - maltotriose;
  const most = (sugars + (18.015 * rest) / 666.6) / extract;
  expect(HYDROLYSIS_WATER).toBeGreaterThan(least);
  expect(HYDROLYSIS_WATER).toBeLessThan(most);
  expect(Math.abs(HYDROLYSIS_WATER - sugars / extract)).toBeLessThan(0.005);
});

test.each([77.5, 80])('wet draff of %d %% lies in the published range for dry grist', (moisture) => {
  // Malt of 4.5 % and 77.5 %, 98 % of its extract in the wort: the middles of what the trade expects.
  const [least, most] = reference.spentGrain.range as [number, number];
  const malt = { mass: kilograms(1000), moisture: percent(4.5), extract: percent(77.5) };
  const { wet } = answer(draffOf(malt, percent(98), percent(moisture)));
  expect((100 * wet) / 955).toBeGreaterThan(least);
  expect((100 * wet) / 955).toBeLessThan(most);
});

test('U3: a tonne of malt leaves 981 kg of wet draff', () => {
  const malt = { mass: kilograms(1000), moisture: percent(4.5), extract: percent(77) };
  expect(Math.abs(answer(draffOf(malt, percent(100), percent(78))).wet - sum('U3'))).toBeLessThan(5e-4);
});

test('dry malt and the water it takes up are wort and draff, wet draff is dry and water', () => {
  const malts = fc.record({
    mass: between(10, 50_000).map(kilograms),
    moisture: between(1, 8).map(percent),
    extract: between(50, 90).map(percent),
  });
  always(fc.tuple(malts, between(0, 100), between(50, 90)), ([malt, efficiency, moisture]) => {
    const draff = answer(draffOf(malt, percent(efficiency), percent(moisture)));
    const promised = (malt.mass * malt.extract) / 100;
    const dryIn = malt.mass * (1 - malt.moisture / 100) + 0.04 * promised;
    expect(apart(dryIn, promised - draff.lost + draff.dry)).toBeLessThan(1e-12);
    expect(apart(draff.wet, draff.dry + draff.water)).toBeLessThan(1e-12);
  });
  const malt = { mass: kilograms(1000), moisture: percent(4), extract: percent(77) };
  expect(draffOf(malt, percent(100.1), percent(78))).toHaveProperty('refused');
  expect(draffOf(malt, percent(NaN), percent(78))).toHaveProperty('refused');
});

test('a mash that passes on what it was given is as its wort says; a gift makes it look better', () => {
  const worts = fc.record({
    volume: between(20, 50_000).map(litres20),
    gravity: between(1.02, 1.12).map(gravity),
  });
  const weaks = fc.record({
    volume: between(0, 20_000).map(litres20),
    gravity: between(1.001, 1.06).map(gravity),
  });
  always(fc.tuple(worts, weaks, weaks, between(10, 50_000)), ([wort, given, passedOn, mass]) => {
    const malt = { mass: kilograms(mass), extract: percent(77) };
    const even = answer(accountOfMash(wort, malt, { given, passedOn: given }));
    expect(apart(even.efficiency, mashEfficiency(wort, malt))).toBeLessThan(1e-9);
    const account = accountOfMash(wort, malt, { given, passedOn });
    if (isRefusal(account)) {
      expect(wortExtract(wort) + wortExtract(passedOn)).toBeLessThanOrEqual(wortExtract(given));
      return;
    }
    expect(apart(account.own + account.borrowed, wortExtract(wort) + account.passedOn)).toBeLessThan(1e-9);
    expect(account.ofWortAlone > account.efficiency).toBe(account.borrowed > account.passedOn);
  });
});
