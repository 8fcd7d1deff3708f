// The whole house: alcohol kept at every stage, the ledger, and contradictions refused.
import { expect, test } from 'vitest';
import { cautions } from '../../src/core/line/cautions.ts';
import type { House } from '../../src/core/line/house.ts';
import { ledger, mashesIn, paces, type LedgerPace } from '../../src/core/line/ledger.ts';
import { line } from '../../src/core/line/line.ts';
import { strength, type Portion } from '../../src/core/quantity.ts';
import { amountsOf, plus } from '../../src/core/spirit/amounts.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { answer, apart } from './draw.ts';

type Change = { readonly [N in keyof House]?: number | string };
const changed = (change: Change) => line({ ...builtInHouse, ...change } as House);
const built = answer(line(builtInHouse));

const houses: readonly Change[] = [
  {},
  { spiritReflux: 0.2, foreshotsBy: 'strength', foreshotsStrength: 73 },
  { originalGravity: 1.08, chargeLimit: 24 },
  { storeHumidity: 40, yearsInWood: 30, bottlingStrength: 70 },
  { indrink: 5, caskResidue: 8, filterLoss: 12, barrels: 100, hogsheads: 0 },
  { indrink: 0, caskResidue: 0, filterLoss: 0 },
  { fillingStrength: 80, airPressure: 80, feintsEnd: 5 },
];
test.each(houses)('alcohol is kept from wash to bottle: %j', (change) => {
  const found = answer(changed(change));
  const together = (...parts: Portion[]) => parts.reduce((sum, { alcohol }) => sum + alcohol, 0);
  const { wash, lowWines, potAle, charge, foreshots, heart, feints, spentLees, filling, matured, bottling } =
    found;
  for (const [inward, outward] of [
    [wash.alcohol, together(lowWines, potAle)],
    [together(lowWines, foreshots, feints), charge.alcohol],
    [charge.alcohol, together(foreshots, heart, feints, spentLees)],
    [lowWines.alcohol, together(heart, spentLees)],
    [heart.alcohol, filling.alcohol],
    [filling.alcohol, matured.toWood + matured.alcoholLost + matured.inCasks + matured.alcohol],
    [matured.alcohol, bottling.inFilters + bottling.alcohol],
  ] as const) {
    expect(apart(inward, outward)).toBeLessThan(1e-9);
  }
  for (const part of [
    lowWines,
    potAle,
    charge,
    foreshots,
    heart,
    feints,
    spentLees,
    filling,
    matured,
    bottling,
  ]) {
    expect(apart(part.alcohol, (part.volume * part.strength) / 100)).toBeLessThan(1e-9);
  }
});

test.each(houses)('water and ethanol are kept round the spirit still: %j', (change) => {
  const { lowWines, round, heart, spentLees } = answer(changed(change));
  const water = amountsOf({ volume: round.dilution, strength: strength(0) });
  const [inward, outward] = [plus(amountsOf(lowWines), water), plus(amountsOf(heart), amountsOf(spentLees))];
  expect(apart(inward.ethanol, outward.ethanol)).toBeLessThan(1e-9);
  expect(apart(inward.water, outward.water)).toBeLessThan(1e-9);
});

test('a house whose emptied casks keep all that is left is refused', () => {
  // 15 % a year for sixty years leave less than a ten-thousandth.
  const dry = changed({ alcoholLoss: 15, yearsInWood: 60, caskResidue: 1 });
  expect(dry).toHaveProperty('refused', expect.stringContaining('nothing comes out'));
});

test('casks, bottles and paces multiply out', () => {
  const { casks, filling, bottling, pace } = built;
  expect(apart(casks.perMash * casks.meanSize, filling.volume)).toBeLessThan(1e-12);
  expect(apart((bottling.bottles * builtInHouse.bottleSize) / 100, bottling.volume)).toBeLessThan(1e-12);
  expect(apart(bottling.bottlesPerCask * casks.perMash, bottling.bottles)).toBeLessThan(1e-12);
  expect(
    apart(casks.perYear, (casks.perWeek / builtInHouse.mashesPerWeek) * pace.mashesPerYear),
  ).toBeLessThan(1e-12);
  expect(apart(casks.inStore, casks.perYear * builtInHouse.yearsInWood)).toBeLessThan(1e-12);
  expect(casks.record).toHaveLength(builtInHouse.yearsInWood + 1);
});

test.each(Object.keys(paces) as LedgerPace[])(
  'the ledger of %s is that of a mash times the mashes in it, and never gains on the way',
  (pace) => {
    const [one, all] = [ledger(built, 'mash'), ledger(built, pace)];
    for (const station of Object.keys(one) as (keyof typeof one)[]) {
      expect(apart(all[station], one[station] * mashesIn(pace, built))).toBeLessThan(1e-12);
    }
    const { wash, lowWines, heart, casks, bottles } = all;
    for (const [before, after] of [
      [wash, lowWines],
      [lowWines, heart],
      [heart, casks],
      [casks, bottles],
    ]) {
      expect(after).toBeLessThanOrEqual(before!);
    }
  },
);

test('a ledger of a tonne counts a tonne: malt gives its predicted yield', () => {
  expect(ledger(built, 'tonne').malt).toBeCloseTo(built.malt.spiritYield, 9);
});

test('more gravity makes more alcohol, and a lower end of the heart more and weaker heart', () => {
  const [thin, thick] = [1.05, 1.06].map((originalGravity) => answer(changed({ originalGravity })));
  expect(thick!.wash.alcohol).toBeGreaterThan(thin!.wash.alcohol);
  expect(thick!.heart.alcohol).toBeGreaterThan(thin!.heart.alcohol);
  const [high, low] = [63, 61].map((heartEnd) => answer(changed({ heartEnd })));
  expect(low!.heart.volume).toBeGreaterThan(high!.heart.volume);
  expect(low!.heart.strength).toBeLessThan(high!.heart.strength);
});

test.each<[Change, RegExp]>([
  [
    { originalGravity: 1.03, finalGravity: 1.035 },
    /final gravity 1.035 is not below the original gravity 1.03/,
  ],
  [{ originalGravity: 1.03, finalGravity: 1.03 }, /not below/],
  [{ husk: 60, flour: 41 }, /more than the whole grist/],
  [{ barrels: 60, hogsheads: 41 }, /more than a hundred casks/],
  [{ heartEnd: 85, spiritReflux: 0 }, /85 % vol is never reached/],
  [{ foreshotsBy: 'strength', foreshotsStrength: 61 }, /foreshots run until/],
  [{ heartEnd: 30, feintsEnd: 35 }, /feints must end below the heart/],
  [{ foreshotsBy: 'strength', foreshotsStrength: 64, dilution: 'never' }, /never settles/],
  [{ foreshotsBy: 'strength', foreshotsStrength: 63 }, /times the low wines/],
])('%j is refused with a sentence', (change, says) => {
  expect(changed(change)).toEqual({ refused: expect.stringMatching(says) });
  expect(changed(change)).toEqual({ refused: expect.stringMatching(/^[A-Z0-9].*[.]$/s) });
});

test('the built-in house raises no caution of the impossible, and a wort richer than its malt does', () => {
  expect(cautions(built).filter(({ weight }) => weight === 'impossible')).toEqual([]);
  expect(
    cautions(answer(changed({ wortVolume: 9000 }))).map(({ weight, stage }) => `${stage} ${weight}`),
  ).toContain('mashing impossible');
});
