// The balance of a period, redone by hand with the numbers written out; and readings that cannot be.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { builtInHouse } from '../../src/house/figures.ts';
import { line as lineOf, type Line } from '../../src/core/line/line.ts';
import { gravity, kilograms, litres20, strength, type Spirit } from '../../src/core/quantity.ts';
import { balanceOf, whereLost, type Period, type PeriodBalance } from '../../src/core/week/period.ts';
import { always, between } from './draw.ts';

const line = lineOf(builtInHouse) as Line;
const spirit = (volume: number, percent: number): Spirit => ({
  volume: litres20(volume),
  strength: strength(percent),
});
const week: Period = {
  name: 'Week 12',
  opening: { wash: spirit(7450, 8), lowWines: spirit(2500, 24), spirit: spirit(800, 68) },
  closing: { wash: spirit(14_900, 8), lowWines: spirit(2000, 25), spirit: spirit(500, 68.5) },
  malt: kilograms(9000),
  wort: litres20(45_000),
  originalGravity: gravity(1.058),
  finalGravity: gravity(0.999),
  washCharged: spirit(36_500, 7.95),
  lowWinesMade: spirit(12_700, 22.6),
  spiritMade: spirit(4250, 68.8),
  spiritSent: spirit(4500, 68.6),
};
const balance = (period: Period) => balanceOf(period, line) as PeriodBalance;
const step = (of: PeriodBalance, name: string) => of.steps.find((each) => each.step === name)!;

test('the accounts, by hand', () => {
  const { accounts, came, left, loss, steps } = balance(week);
  const [wash, lowWines, made] = accounts;
  // Wash: 7,450 × 8 % stood there, 36,500 × 7.95 % was charged, 14,900 × 8 % stands there now.
  expect(wash!.opening).toBeCloseTo(596, 9);
  expect(wash!.goneOn).toBeCloseTo(2901.75, 9);
  expect(wash!.closing).toBeCloseTo(1192, 9);
  // Low wines and feints: 600 + 2,870.2 came; 4,250 × 68.8 % = 2,924 went on as spirit and 500 stand there: 46.2 L lost.
  expect(lowWines).toMatchObject({ opening: 600, closing: 500 });
  expect(lowWines!.made).toBeCloseTo(2870.2, 9);
  expect(lowWines!.goneOn).toBeCloseTo(2924, 9);
  expect(lowWines!.loss).toBeCloseTo(46.2, 9);
  // Spirit: 544 + 2,924 − 3,087 − 342.5 = 38.5 L lost, 1.11 % of what came.
  expect(made!.loss).toBeCloseTo(38.5, 9);
  expect(step(balance(week), 'receiver').percent).toBeCloseTo(1.1101, 3);
  // Wash still: 2,901.75 charged, 2,870.2 made.
  expect(step(balance(week), 'washStill').loss).toBeCloseTo(31.55, 9);
  for (const account of accounts)
    expect(account.opening + account.made - account.goneOn - account.loss).toBeCloseTo(account.closing, 9);
  expect(steps.reduce((sum, each) => sum + each.loss, 0)).toBeCloseTo(loss, 6);
  expect(came - left).toBeCloseTo(loss, 9);
});

test('the alcohol of the wort, by hand', () => {
  // 45,000 L × 1.058 × 0.9982 = 47,524 kg. °P = −616.868 + 1,111.14 s − 630.272 s² + 135.997 s³ (a fit to the sugar tables, from
  // memory): 14.27 at 1.058, −0.52 at 0.998, −0.26 at 0.999. Balling, from memory: real extract 0.1808 × 14.274 + 0.8192 × n,
  // alcohol by mass (14.274 − real) ÷ (2.0665 − 0.010665 × 14.274); wash = wort ÷ (1 + 1.0665 × that); 0.7892 kg to the litre.
  const byHand = (n: number) => {
    const real = 0.1808 * 14.274 + 0.8192 * n;
    const share = (14.274 - real) / (2.0665 - 0.010665 * 14.274) / 100;
    return ((47_524 / (1 + 1.0665 * share)) * share) / 0.7892;
  };
  const { came, left } = step(balance(week), 'washback');
  expect(came / byHand(-0.521)).toBeCloseTo(1, 2);
  expect(left / byHand(-0.264)).toBeCloseTo(1, 2);
  expect((came - left) / (byHand(-0.521) - byHand(-0.264))).toBeCloseTo(1, 1);
  // Malt: 9,000 kg × 77.5 % = 6,975 kg of extract; the wort has 47,524 × 14.274 % = 6,784 kg.
  const mash = step(balance(week), 'mash');
  expect(Math.abs(mash.percent - 100 * (1 - 6784 / 6975))).toBeLessThan(0.15); // the fit is 0.02 °P off the tables, a part of 0.0014
});

test('where most was lost is the step that lost most beyond the house’s own losses', () => {
  const bad = balance({ ...week, spiritMade: spirit(3900, 68.8) });
  expect(bad.worst!.step).toBe('spiritStill');
  // 350 L × 68.8 % less came: 46.2 + 240.8 = 287.0 L lost there.
  expect(whereLost(bad)).toMatch(/here: spirit still, 287\.0 L of pure alcohol, where/);
  // The house's stills leave so much of what they are charged with in pot ale and spent lees.
  expect(step(bad, 'washStill').usual).toBeCloseTo((2901.75 * line.potAle.alcohol) / line.wash.alcohol, 6);
});

test('where low wines are not measured the two stills are one step', () => {
  const joined = balance({ ...week, lowWinesMade: spirit(0, 0) });
  expect(joined.steps.map((each) => each.step)).toEqual(['mash', 'washback', 'wash', 'stills', 'receiver']);
  // 600 + 2,901.75 − 2,924 − 500.
  expect(step(joined, 'stills').loss).toBeCloseTo(77.75, 9);
  expect(joined.loss).toBeCloseTo(balance(week).loss, 9);
});

test('more than could be is told, a sentence for each step', () => {
  const closing = { ...week.closing, spirit: spirit(700, 68.5) };
  const { problems } = balance({ ...week, closing });
  // 3,087 + 479.5 against 544 + 2,924.
  expect(problems).toEqual(['Spirit sent on and spirit at the closing hold 3,566.5 L of pure alcohol, and only 3,468.0 L stood there or was made; 98.5 L too much.']); // prettier-ignore
  expect(balance({ ...week, lowWinesMade: spirit(12_700, 23) }).problems[0]).toContain('The low wines hold 2,921.0 L of pure alcohol, and the wash charged only 2,901.8 L'); // prettier-ignore
});

test('a reading that cannot be is refused in a sentence that names it', () => {
  const refused = (changed: object) =>
    (balanceOf({ ...week, ...changed }, line) as { refused?: string }).refused;
  expect(refused({ washCharged: spirit(-5, 8) })).toBe(
    'Wash charged: -5 L cannot stand in a vessel; give 0 or more.',
  );
  expect(refused({ spiritMade: spirit(5, 130) })).toContain('Spirit made: a strength of 130 % vol cannot be');
  expect(refused({ closing: { ...week.closing, wash: spirit(NaN, 8) } })).toContain('Wash at the closing');
  expect(refused({ malt: kilograms(-1) })).toContain('Malt mashed');
  expect(refused({ finalGravity: gravity(1.06) })).toContain('is not below the original gravity');
  expect(refused({})).toBeUndefined();
});

test('whatever the readings, the losses of the steps are what came less what left', () => {
  const some = fc.tuple(between(0, 50_000), between(0, 100)).map(([volume, percent]) => spirit(volume, percent));
  const standing = fc.record({ wash: some, lowWines: some, spirit: some });
  always(fc.tuple(standing, standing, some, some, some, some, between(0, 90_000), between(0, 90_000)), ([opening, closing, washCharged, lowWinesMade, spiritMade, spiritSent, malt, wort]) => {
    const period = { ...week, opening, closing, washCharged, lowWinesMade, spiritMade, spiritSent, malt: kilograms(malt), wort: litres20(wort) };
    const { steps, loss, accounts, came } = balance(period);
    const sum = steps.reduce((total, each) => total + each.loss, 0);
    // Without wort there is nothing by which malt could be counted.
    expect(Math.abs(sum - loss)).toBeLessThan(1e-9 * (came + 1e5));
    for (const { opening, made, goneOn, loss, closing } of accounts)
      expect(Math.abs(opening + made - goneOn - loss - closing)).toBeLessThan(1e-6);
  });
}); // prettier-ignore
