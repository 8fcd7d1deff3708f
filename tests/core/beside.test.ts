// Figures beside the line, by hand, and what cannot be however few figures are quoted.
import { expect, test } from 'vitest';
import { numberAt } from '../../src/core/line/beside.ts';
import { brokenBounds } from '../../src/core/cross-check/bounds.ts';
import type { Line } from '../../src/core/line/line.ts';
import type { Measured, QuotableName } from '../../src/core/cross-check/quoted.ts';

const line = (barrels: number, hogsheads: number) =>
  ({
    heart: { alcohol: 600 },
    pace: { tonnesPerMash: 1.5, mashesPerYear: 276 },
    house: { barrels, hogsheads, mashesPerWeek: 6 },
  }) as unknown as Line;

test('600 L of pure alcohol from a mash of 1.5 t, six a week and 276 a year', () => {
  const at = (path: string) => numberAt(line(60, 30), path);
  expect(['beside.spiritYield', 'beside.alcoholPerWeek', 'beside.alcoholPerYear'].map(at)).toEqual([400, 3600, 165_600]);
  expect(['heart.alcohol', 'heart.colour', 'heart', 'nobody.volume', 'beside.nobody'].map(at)).toEqual([600, undefined, undefined, undefined, undefined]);
}); // prettier-ignore

test('a cask is told of where the house fills it: what is left of a hundred are butts', () => {
  const casks = (barrels: number, hogsheads: number) =>
    ['barrel', 'hogshead', 'butt'].map((cask) => numberAt(line(barrels, hogsheads), `beside.${cask}`));
  expect(casks(60, 30)).toEqual([200, 250, 500]);
  expect(casks(100, 0)).toEqual([200, undefined, undefined]);
  expect(casks(0, 100)).toEqual([undefined, 250, undefined]);
  expect(casks(0, 0)).toEqual([undefined, undefined, 500]);
  expect(casks(60, 40)).toEqual([200, 250, undefined]);
});

const said = (values: Partial<Record<QuotableName, number>>, spread = 1e-6) =>
  Object.entries(values).map(
    ([figure, value]) => ({ figure, value, spread: spread * value }) as unknown as Measured,
  );
const broken = (
  values: Partial<Record<QuotableName, number>>,
  spread?: number,
  scheme: 'twice' | 'thrice' = 'twice',
) => brokenBounds(said(values, spread), { scheme } as never);

// Nothing gains strength but in a still, and nothing gains volume in one.
const orders = [
  ['heartStrength', 'heartBegins', 65, 70], ['heartEnds', 'heartStrength', 65, 70], ['fillingStrength', 'heartStrength', 65, 70],
  ['fillingStrength', 'heartBegins', 65, 70], ['washStrength', 'lowWinesStrength', 8, 22], ['washStrength', 'chargeStrength', 8, 22],
  ['lowWinesStrength', 'heartStrength', 22, 70], ['chargeStrength', 'heartStrength', 28, 70], ['chargeStrength', 'heartBegins', 28, 70],
  ['lowWinesVolume', 'washVolume', 2000, 6000], ['lowWinesVolume', 'wortVolume', 2000, 6000], ['heartVolume', 'lowWinesVolume', 800, 2000],
  ['heartVolume', 'chargeVolume', 800, 3000], ['heartVolume', 'washVolume', 800, 6000],
] as const; // prettier-ignore
test.each(orders)('%s is never above %s', (less, more, low, high) => {
  const of = (a: number, b: number) => broken({ [less]: a, [more]: b }).filter(({ figures }) => figures.length === 2);
  expect(of(low, high)).toEqual([]);
  expect(of(high, high)).toEqual([]);
  const [found] = of(high, low);
  expect(found).toMatchObject({ less: high, more: low, assumed: 0 });
  expect(found!.limits.map(({ figure, most, value }) => [figure, most, Math.round(value)])).toEqual(
    expect.arrayContaining([[less, true, low]]) as unknown[],
  );
  expect(broken({ [less]: high }).every(({ figures }) => figures.length === 1)).toBe(true); // of one alone nothing is assumed
}); // prettier-ignore

test('a bound that is passed by less than three times what was meant is not broken', () => {
  // A spread of one per cent each is 1.41 % together; three times that is 4.2 %.
  expect(broken({ heartVolume: 2080, lowWinesVolume: 2000 }, 0.01)).toEqual([]);
  expect(broken({ heartVolume: 2100, lowWinesVolume: 2000 }, 0.01)).toHaveLength(1);
});

test('low wines are no more than the charge where all is distilled twice, and may be where it is not', () => {
  const values = { lowWinesVolume: 3000, chargeVolume: 2000 };
  expect(broken(values)).toHaveLength(1);
  expect(broken(values, undefined, 'thrice')).toEqual([]);
});

test('wort of 1.058 makes no 10 % vol, wherever it ends; and 8.5 % it may', () => {
  // From 1.058 to no less than 0.990 are 68 points; at about 0.13 % vol a point 8.9, and a twentieth is allowed.
  const found = broken({ originalGravity: 1.058, washStrength: 10 }).find(({ less }) => less === 10);
  expect(found).toMatchObject({ less: 10, assumed: 1 });
  expect(found!.more).toBeGreaterThan(8.6);
  expect(found!.more).toBeLessThan(9.2);
  expect(found!.says).toMatch(/^Wash strength is 10(\.0)? % vol, but wort of 1\.058 that ends at no less than 0\.990 makes no more than [89]\.\d % vol\.$/i);
  expect(broken({ originalGravity: 1.058, washStrength: 8.5 }).filter(({ less }) => less === 8.5)).toEqual([]);
}); // prettier-ignore
