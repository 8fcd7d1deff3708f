// A grist of several malts by mass balance, worked by hand; and a year of peated and plain weeks.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { meanMalt, yearOfMalts, type Malt } from '../../src/core/malting/grist.ts';
import { blendPeat } from '../../src/core/malting/peat.ts';
import { count, kilograms, percent, quantity } from '../../src/core/quantity.ts';
import { isRefusal } from '../../src/core/refusal.ts';
import { always, apart, between } from './draw.ts';

const malt = (mass: number, moisture: number, extract: number, fermentability: number, phenols: number): Malt => ({ mass: kilograms(mass), moisture: percent(moisture), extract: percent(extract), fermentability: percent(fermentability), phenols: quantity('ppm', phenols) }); // prettier-ignore
function mean(malts: readonly Malt[], basis: 'as-is' | 'dry' = 'as-is') {
  const found = meanMalt(malts, basis);
  if (isRefusal(found)) throw new Error(found.refused);
  return found;
}
const some = fc.array(fc.tuple(between(1, 5000), between(2, 8), between(60, 85), between(70, 92), between(0, 120)).map((row) => malt(...row)), { minLength: 1, maxLength: 6 }); // prettier-ignore

describe('a grist', () => {
  test('of two malts as they are, by hand', () => {
    // 1,000 kg at 78 % and 500 kg at 75 %: 780 + 375 = 1,155 kg of extract in 1,500 kg, 77.0 %.
    // Of it fermentable 780 × 0.88 + 375 × 0.84 = 686.4 + 315 = 1,001.4 kg: 86.7013 %.
    // Water 40 + 30 = 70 kg: 4.6667 %; dry matter 1,430 kg, so the extract is 80.7692 % of the dry malt.
    // Phenols 1,000 × 1 + 500 × 55 = 28,500 mg: 19 ppm as it is, 28,500 ÷ 1,430 = 19.9301 ppm of the dry.
    // Spirit 6.06 × 77.0 × 0.867013 = 404.57 L a tonne (factor: Bringhurst et al. 1996).
    const found = mean([malt(1000, 4, 78, 88, 1), malt(500, 6, 75, 84, 55)]);
    expect(found.mass).toBe(1500);
    expect(found.extract).toBeCloseTo(77, 9);
    expect(found.extractDry).toBeCloseTo(80.7692, 4);
    expect(found.fermentability).toBeCloseTo(86.7013, 4);
    expect(found.moisture).toBeCloseTo(4.6667, 4);
    expect(found.phenols).toBeCloseTo(19, 9);
    expect(found.phenolsDry).toBeCloseTo(19.9301, 4);
    expect(found.spiritYield).toBeCloseTo(404.57, 2);
  });

  test('given on dry malt, by hand', () => {
    // 80 % of the dry matter at 5 % moisture is 76 % as it is; 20 ppm of the dry is 19 ppm.
    const found = mean([malt(1000, 5, 80, 87, 20)], 'dry');
    expect([found.extract, found.phenols, found.extractDry, found.phenolsDry].map((each) => Number(each.toFixed(9)))).toEqual([76, 19, 80, 20]); // prettier-ignore
  });

  test('the blend for a level of smoke has that level', () => {
    always(fc.tuple(between(0, 5), between(20, 120), between(0.1, 0.9)), ([plain, peated, share]) => {
      const wanted = plain + share * (peated - plain);
      const blend = blendPeat(kilograms(1500), { plain: quantity('ppm', plain), peated: quantity('ppm', peated), wanted: quantity('ppm', wanted) }); // prettier-ignore
      if (isRefusal(blend)) throw new Error(blend.refused);
      expect(apart(mean([malt(blend.plain, 4.5, 77, 87, plain), malt(blend.peated, 4.5, 77, 87, peated)]).phenols, wanted)).toBeLessThan(1e-9); // prettier-ignore
    });
  });

  test('a mean lies between its malts, does not hang on their order, and is the same when all are halved', () => {
    always(some, (malts) => {
      const found = mean(malts);
      for (const name of ['moisture', 'extract', 'fermentability', 'phenols'] as const) {
        expect(found[name]).toBeGreaterThanOrEqual(Math.min(...malts.map((each) => each[name])) - 1e-9);
        expect(found[name]).toBeLessThanOrEqual(Math.max(...malts.map((each) => each[name])) + 1e-9);
        expect(apart(mean([...malts].reverse())[name], found[name])).toBeLessThan(1e-12);
        expect(apart(mean(malts.map((each) => ({ ...each, mass: kilograms(each.mass / 2) })))[name], found[name])).toBeLessThan(1e-12); // prettier-ignore
      }
    });
  });

  test('the two bases say the same of the same malt', () => {
    always(some, (malts) => {
      const dry = malts.map((each) => malt(each.mass, each.moisture, each.extract / (1 - each.moisture / 100), each.fermentability, each.phenols / (1 - each.moisture / 100))); // prettier-ignore
      for (const [name, value] of Object.entries(mean(malts)))
        expect(apart(mean(dry, 'dry')[name as 'extract'], value)).toBeLessThan(1e-12);
    });
  });

  test('no malt is no grist, and more extract than dry matter is none', () => {
    expect(meanMalt([], 'as-is')).toHaveProperty('refused');
    expect(meanMalt([malt(0, 4, 77, 87, 0)], 'as-is')).toHaveProperty('refused');
    expect(() => meanMalt([malt(100, 10, 95, 87, 0)], 'as-is')).toThrow(/extract/);
    expect(() => meanMalt([malt(-1, 4, 77, 87, 0)], 'as-is')).toThrow(/malt, kg/);
  });
});

describe('a year', () => {
  test('of plain and peated weeks, by hand', () => {
    // 30 plain weeks and 10 peated, 6 mashes a week of 1,500 kg: 270 t and 90 t, 360 t in 240 mashes.
    // Phenols (270 × 1 + 90 × 41) ÷ 360 = 11 ppm; extract (270 × 78 + 90 × 76) ÷ 360 = 77.5 %.
    // Fermentability 86 % of all: 6.06 × 77.5 × 0.86 = 403.899 L a tonne, 145,403.6 L in the year.
    const found = yearOfMalts([{ weeks: 30, malts: [malt(1500, 4.5, 78, 86, 1)] }, { weeks: 10, malts: [malt(1500, 4.5, 76, 86, 41)] }], 'as-is', count(6)); // prettier-ignore
    if (isRefusal(found)) throw new Error(found.refused);
    expect(found).toMatchObject({ weeks: 40, mashes: 240 });
    expect(found.mean.mass).toBe(360_000);
    expect(found.mean.phenols).toBeCloseTo(11, 9);
    expect(found.mean.extract).toBeCloseTo(77.5, 9);
    expect(found.alcohol).toBeCloseTo(145_403.6, 1);
  });

  test('without a mash there is no year', () => {
    expect(yearOfMalts([], 'as-is', count(6))).toHaveProperty('refused');
    expect(yearOfMalts([{ weeks: 0, malts: [malt(1500, 4.5, 78, 86, 1)] }], 'as-is', count(6))).toHaveProperty('refused'); // prettier-ignore
  });
});
