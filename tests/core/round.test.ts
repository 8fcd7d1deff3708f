// The balanced round: what comes in goes out, and running it again and again leads to the same state.
import { expect, test } from 'vitest';
import { cutAmounts } from '../../src/core/distilling/cuts.ts';
import { settleRound, type RoundPlan } from '../../src/core/distilling/round.ts';
import { runStill } from '../../src/core/distilling/run.ts';
import { kilopascals, litres20, share, strength } from '../../src/core/quantity.ts';
import { amountsOf, plus, portionOf, type Amounts } from '../../src/core/spirit/amounts.ts';
import { plainRound } from '../bench/plain-round.ts';
import { answer, apart } from './draw.ts';

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
const runaway = plan(0.1, strength(64));

/** The spirit charges of round after round, beginning with an empty feints receiver. */
function charges({ wash, washStill, spiritStill, diluteTo }: RoundPlan, rounds: number): Amounts[] {
  const lowWines = amountsOf(answer(runStill({ ...washStill, charge: wash, pressure })).distillate);
  const wanted = diluteTo === undefined ? undefined : amountsOf({ volume: litres20(1), strength: diluteTo });
  const setting = { reflux: spiritStill.reflux!, pressure };
  const all: Amounts[] = [];
  let receiver: Amounts = { ethanol: 0, water: 0 };
  for (let i = 0; i < rounds; i++) {
    const { ethanol, water } = plus(lowWines, receiver);
    const charge = {
      ethanol,
      water: wanted ? Math.max(water, (ethanol * wanted.water) / wanted.ethanol) : water,
    };
    all.push(charge);
    const { foreshots, feints } = answer(cutAmounts(charge, setting, spiritStill));
    receiver = plus(foreshots, feints);
  }
  return all;
}

test.each(settling)('low wines and water in are heart and spent lees out, plan %#', (settled) => {
  const { lowWines, dilution, heart, residue } = answer(settleRound(settled));
  const [inward, outward] = [
    plus(amountsOf(lowWines), amountsOf({ volume: dilution, strength: strength(0) })),
    plus(amountsOf(heart), amountsOf(residue)),
  ];
  expect(apart(inward.ethanol, outward.ethanol)).toBeLessThan(1e-9);
  expect(apart(inward.water, outward.water)).toBeLessThan(1e-9);
});

test.each(settling)(
  'four hundred rounds from an empty receiver lead to the solved state, plan %#',
  (settled) => {
    const [solved, reached] = [amountsOf(answer(settleRound(settled)).charge), charges(settled, 400).at(-1)!];
    expect(apart(solved.ethanol, reached.ethanol)).toBeLessThan(1e-6);
    expect(apart(solved.water, reached.water)).toBeLessThan(1e-6);
  },
);

test('plain integration of every run, round after round, gives the same heart', () => {
  const settled = plan(0, strength(74));
  const still = { reflux: share(0), pressure };
  const cuts = { foreshots: strength(74), heart: strength(62.5), feints: strength(1) };
  const { heart } = plainRound(
    { ...cuts, wash: settled.wash, washEnd: strength(1), washStill: still, spiritStill: still },
    512,
  );
  expect(apart(amountsOf(answer(settleRound(settled)).heart).ethanol, heart)).toBeLessThan(1e-6);
});

test('a plan that never settles is refused with the remedy, and its charges do grow stronger every round', () => {
  expect(settleRound(runaway)).toHaveProperty(
    'refused',
    expect.stringMatching(/never settles.*lets the charge down with water/s),
  );
  const strengths = charges(runaway, 60).map(({ ethanol, water }) => ethanol / water);
  for (let i = 1; i < strengths.length; i++) expect(strengths[i]).toBeGreaterThan(strengths[i - 1]!);
});

test('let down, it would settle with a charge that no spirit still holds, and is refused', () => {
  const reached = charges({ ...runaway, diluteTo: strength(30) }, 400).at(-1)!;
  expect(portionOf(reached).volume).toBeGreaterThan(8 * runaway.wash.volume);
  expect(settleRound({ ...runaway, diluteTo: strength(30) })).toHaveProperty(
    'refused',
    expect.stringMatching(/^The spirit charge would be .* times the low wines\. .*[.]$/),
  );
});

test('a plan that runs away more slowly, let down to 30 % vol, settles at 30 % vol and takes water', () => {
  expect(settleRound(plan(0.1, strength(72)))).toHaveProperty(
    'refused',
    expect.stringMatching(/never settles/),
  );
  const settled = answer(settleRound(plan(0.1, strength(72), 30)));
  expect(settled.charge.strength).toBeCloseTo(30, 9);
  expect(settled.dilution).toBeGreaterThan(0);
});

test('letting down changes nothing where the charge is weak enough by itself', () => {
  const [free, limited] = [undefined, 45].map((limit) =>
    answer(settleRound(plan(0.1, { share: share(0.02) }, limit))),
  );
  expect(limited!.dilution).toBe(0);
  expect(apart(free!.charge.volume, limited!.charge.volume)).toBeLessThan(1e-9);
});

test('twice the wash is twice of everything', () => {
  const once = plan(0.1, { share: share(0.02) });
  const twice = { ...once, wash: { ...once.wash, volume: litres20(20_000) } };
  const [a, b] = [answer(settleRound(once)), answer(settleRound(twice))];
  for (const part of ['charge', 'heart', 'feints', 'residue'] as const) {
    expect(apart(2 * a[part].volume, b[part].volume)).toBeLessThan(1e-9);
    expect(apart(a[part].strength, b[part].strength)).toBeLessThan(1e-9);
  }
});
