// A season of rounds: nothing is lost, it leads to the balanced round, and a missed recycle begins it anew.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cutRun } from '../../src/core/distilling/cuts.ts';
import { settleRound, type RoundPlan } from '../../src/core/distilling/round.ts';
import { runStill } from '../../src/core/distilling/run.ts';
import { roundsToSettle, runSeason, type Season } from '../../src/core/distilling/season.ts';
import {
  kilopascals,
  litres20,
  litresOfAlcohol,
  share,
  strength,
  type Spirit,
} from '../../src/core/quantity.ts';
import { amountsOf, plus, type Amounts } from '../../src/core/spirit/amounts.ts';
import { always, answer, apart, between } from './draw.ts';

const pressure = kilopascals(101.325);
function plan(
  reflux: number,
  foreshots: RoundPlan['spiritStill']['foreshots'],
  diluteTo?: number,
): RoundPlan {
  return {
    wash: { volume: litres20(10_000), strength: strength(8) },
    washStill: { until: strength(1) },
    spiritStill: { reflux: share(reflux), foreshots, heart: strength(62.5), feints: strength(1) },
    pressure,
    ...(diluteTo === undefined ? {} : { diluteTo: strength(diluteTo) }),
  };
}
const settling = [
  plan(0, strength(74)),
  plan(0.1, { share: share(0.02) }),
  plan(0.1, strength(73), 30),
  plan(0.1, strength(72), 28),
  plan(0.2, strength(73.5), 27),
];
const house = plan(0.1, { share: share(0.02) }, 30);
const runaway = plan(0.1, strength(64));

const sum = (all: readonly Spirit[]): Amounts => all.map(amountsOf).reduce(plus, { ethanol: 0, water: 0 });
const water = (volume: number): Spirit => ({ volume: litres20(volume), strength: strength(0) });
const alcohol = (season: Season) => season.rounds.reduce((all, { heart }) => all + heart.alcohol, 0);

test.each(settling)('four hundred rounds come to the solved balance, plan %#', (settled) => {
  const solved = answer(settleRound(settled));
  const { rounds } = answer(runSeason(settled, 400));
  const last = rounds.at(-1)!;
  for (const part of ['charge', 'heart', 'residue'] as const) {
    expect(apart(last[part].volume, solved[part].volume)).toBeLessThan(1e-6);
    expect(apart(last[part].alcohol, solved[part].alcohol)).toBeLessThan(1e-6);
  }
  expect(Math.abs(last.dilution - solved.dilution)).toBeLessThan(1e-3);
});

test('over any season, what comes in has gone out, is kept out, or is left', () => {
  const seasons = fc.record({ which: fc.integer({ min: 0, max: settling.length - 1 }), rounds: fc.integer({ min: 1, max: 40 }), missed: fc.integer({ min: 0, max: 40 }) });
  always(seasons, ({ which, rounds, missed }) => {
    const season = answer(runSeason(settling[which]!, rounds, missed));
    const brought = season.rounds.flatMap(({ dilution }) => [season.lowWines, water(dilution)]);
    const gone = season.rounds.flatMap(({ heart, residue }) => [heart, residue]);
    const [inward, outward] = [sum(brought), sum([...gone, season.keptOut, season.left])];
    expect(apart(inward.ethanol, outward.ethanol)).toBeLessThan(1e-9);
    expect(apart(inward.water, outward.water)).toBeLessThan(1e-9);
  });
}); // prettier-ignore

test('the first round is a single run of low wines, cut', () => {
  const { lowWines, rounds } = answer(runSeason(house, 1));
  const run = answer(runStill({ charge: lowWines, reflux: share(0.1), pressure, until: strength(1) }));
  const { heart } = answer(cutRun(run, house.spiritStill));
  expect(apart(rounds[0]!.heart.alcohol, heart.alcohol)).toBeLessThan(1e-9);
  expect(rounds[0]!.charge.volume).toBeCloseTo(lowWines.volume, 6);
});

test('after a missed recycle the season is as at its beginning', () => {
  always(fc.integer({ min: 1, max: 10 }), (missed) => {
    const [whole, short] = [0, missed].map((out) => answer(runSeason(house, 20, out)).rounds);
    expect(short!.slice(0, missed)).toEqual(whole!.slice(0, missed));
    expect(short!.slice(missed)).toEqual(whole!.slice(0, 20 - missed));
  });
});

test('a missed recycle costs the hearts what was kept out, less what the lees and the receiver have not got', () => {
  const [whole, short] = [0, 5].map((missed) => answer(runSeason(house, 30, missed)));
  const lees = (season: Season) => season.rounds.reduce((all, { residue }) => all + residue.alcohol, 0);
  const missing = alcohol(whole!) - alcohol(short!);
  const elsewhere = lees(whole!) - lees(short!) + whole!.left.alcohol - short!.left.alcohol;
  expect(missing).toBeGreaterThan(0);
  expect(apart(missing + elsewhere, short!.keptOut.alcohol)).toBeLessThan(1e-8);
  expect(whole!.keptOut.alcohol).toBe(0);
});

test('hearts and charges grow from round to round up to the balance', () => {
  always(between(0.005, 0.04), (first) => {
    const { rounds } = answer(runSeason(plan(0.1, { share: share(first) }), 8));
    for (let i = 1; i < rounds.length; i++) {
      expect(rounds[i]!.heart.alcohol).toBeGreaterThan(rounds[i - 1]!.heart.alcohol);
      expect(rounds[i]!.charge.strength).toBeGreaterThan(rounds[i - 1]!.charge.strength);
    }
  });
});

test('a plan that never settles grows stronger until a round cannot be cut, or is never within reach of a balance', () => {
  expect(settleRound(runaway)).toHaveProperty('refused', expect.stringMatching(/never settles/));
  const { rounds } = answer(runSeason(runaway, 60));
  for (let i = 1; i < rounds.length; i++)
    expect(rounds[i]!.charge.strength).toBeGreaterThan(rounds[i - 1]!.charge.strength);
  expect(roundsToSettle(rounds, rounds[0]!.heart.alcohol)).toBeUndefined();
});

test('a round that cannot be cut is refused by its number', () => {
  const strong = { ...house, spiritStill: { ...house.spiritStill, heart: strength(80) } };
  expect(runSeason(strong, 5)).toHaveProperty('refused', expect.stringMatching(/^In round 1: .*\.$/));
});

test('the round of the balance is the first after the last that was off it', () => {
  const heart = (of: number) => ({ heart: { alcohol: litresOfAlcohol(of) } });
  const rounds = (hearts: readonly number[]) =>
    hearts.map(heart) as unknown as Parameters<typeof roundsToSettle>[0];
  const balanced = litresOfAlcohol(100);
  expect(roundsToSettle(rounds([50, 90, 99.95, 100]), balanced)).toBe(3);
  expect(roundsToSettle(rounds([100, 100.2, 100]), balanced)).toBe(3);
  expect(roundsToSettle(rounds([100]), balanced)).toBe(1);
  expect(roundsToSettle(rounds([100, 101]), balanced)).toBeUndefined();
});
