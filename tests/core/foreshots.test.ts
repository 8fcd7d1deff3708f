// Foreshots by share, volume, minutes and strength: each settled round against round after round of plain integration.
import { expect, test } from 'vitest';
import type { ForeshotsEnd } from '../../src/core/distilling/cuts.ts';
import { settleRound, type RoundPlan } from '../../src/core/distilling/round.ts';
import { distillateOver } from '../../src/core/distilling/still.ts';
import { kilopascals, litres20, moleFraction, share, strength } from '../../src/core/quantity.ts';
import { amountsOf, minus, plus, portionOf, type Amounts } from '../../src/core/spirit/amounts.ts';
import { answer, apart } from './draw.ts';

const pressure = kilopascals(101.325);
const plan = (foreshots: ForeshotsEnd, diluteTo?: number): RoundPlan => ({
  wash: { volume: litres20(10_000), strength: strength(8) },
  washStill: { reflux: share(0.05), until: strength(1) },
  spiritStill: { reflux: share(0.1), foreshots, heart: strength(62), feints: strength(1) },
  pressure,
  ...(diluteTo === undefined ? {} : { diluteTo: strength(diluteTo) }),
});

const fraction = ({ ethanol, water }: Amounts) => ethanol / (ethanol + water);
const volumeOf = (amounts: Amounts) => portionOf(amounts).volume;

/** Boils a pot down in small steps of logit(x), by the midpoint rule, until `done` of what is left; the last step is halved into place. */
function boilDown(
  charge: Amounts,
  reflux: number,
  done: (left: Amounts, vapour: number) => boolean,
): Amounts {
  const setting = { reflux: share(reflux), pressure };
  const vapour = (x: number) => distillateOver(moleFraction(x), setting).vapour as number;
  let [moles, u, step] = [charge.ethanol + charge.water, Math.log(charge.ethanol / charge.water), 1 / 400];
  const at = (logit: number) => 1 / (1 + Math.exp(-logit));
  const pot = (n: number, logit: number) => ({ ethanol: n * at(logit), water: n * (1 - at(logit)) });
  for (let i = 0; i < 20_000 && step > 1e-13; i++) {
    const x = at(u - step / 2);
    const next = moles * Math.exp((-step * x * (1 - x)) / (vapour(x) - x));
    if (done(pot(next, u - step), vapour(at(u - step)))) step /= 2;
    else [moles, u] = [next, u - step];
  }
  return pot(moles, u);
}
const below = (limit: number) => {
  const x = fraction(amountsOf({ volume: litres20(1), strength: strength(limit) }));
  return (_: Amounts, vapour: number) => vapour < x;
};

/** Round after round from an empty receiver: the heart, the foreshots and the charge once they repeat themselves. */
function plainRounds({ wash, washStill, spiritStill, diluteTo }: RoundPlan, rounds: number) {
  const fed = amountsOf(wash);
  const lowWines = minus(fed, boilDown(fed, washStill.reflux!, below(washStill.until)));
  const limit = diluteTo && amountsOf({ volume: litres20(1), strength: diluteTo });
  const end = spiritStill.foreshots;
  let receiver: Amounts = { ethanol: 0, water: 0 };
  let last = { charge: receiver, foreshots: receiver, heart: receiver };
  for (let i = 0; i < rounds; i++) {
    const { ethanol, water } = plus(lowWines, receiver);
    const charge = {
      ethanol,
      water: limit ? Math.max(water, (ethanol * limit.water) / limit.ethanol) : water,
    };
    const begun = boilDown(charge, 0.1, (left, vapour) => {
      if (typeof end === 'number') return below(end)(left, vapour);
      if ('strength' in end) return below(end.strength)(left, vapour);
      if ('share' in end) return left.ethanol < (1 - end.share) * charge.ethanol;
      return volumeOf(minus(charge, left)) > end.volume;
    });
    const ended = boilDown(begun, 0.1, below(spiritStill.heart));
    const lees = boilDown(ended, 0.1, below(spiritStill.feints));
    const foreshots = minus(charge, begun);
    receiver = plus(foreshots, minus(ended, lees));
    last = { charge, foreshots, heart: minus(begun, ended) };
  }
  return last;
}

const kinds: [string, RoundPlan][] = [
  ['3 % of the alcohol', plan({ share: share(0.03) })],
  ['60 L', plan({ volume: litres20(60) })],
  ['60 L, let down to 24 % vol', plan({ volume: litres20(60) }, 24)],
  ['down to 73.5 % vol, let down to 25 % vol', plan(strength(73.5), 25)],
];

test.each(kinds)(
  'foreshots of %s: the settled round is that of plain integration, round after round',
  (_, settled) => {
    const solved = answer(settleRound(settled));
    const plain = plainRounds(settled, 45);
    expect(apart(amountsOf(solved.charge).ethanol, plain.charge.ethanol)).toBeLessThan(2e-5);
    expect(apart(amountsOf(solved.charge).water, plain.charge.water)).toBeLessThan(2e-5);
    expect(apart(amountsOf(solved.heart).ethanol, plain.heart.ethanol)).toBeLessThan(2e-5);
    expect(apart(solved.foreshots.volume, volumeOf(plain.foreshots))).toBeLessThan(1e-4);
  },
);

test.each(kinds)('foreshots of %s: what comes in goes out, to 1e-9', (_, settled) => {
  const { lowWines, dilution, heart, residue, foreshots, feints, charge } = answer(settleRound(settled));
  const sum = (...all: { volume: typeof dilution; strength: ReturnType<typeof strength> }[]) =>
    all.map(amountsOf).reduce(plus);
  const poured = { volume: dilution, strength: strength(0) };
  const balances = [
    [sum(lowWines, poured), sum(heart, residue)],
    [sum(lowWines, poured, foreshots, feints), amountsOf(charge)],
    [sum(foreshots, heart, feints, residue), amountsOf(charge)],
  ] as const;
  for (const [one, other] of balances) {
    expect(apart(one.ethanol, other.ethanol)).toBeLessThan(1e-9);
    expect(apart(one.water, other.water)).toBeLessThan(1e-9);
  }
});

test('foreshots by volume are that volume, to 1e-9, and no foreshots are none', () => {
  for (const limit of [undefined, 24])
    expect(
      apart(answer(settleRound(plan({ volume: litres20(60) }, limit))).foreshots.volume, 60),
    ).toBeLessThan(1e-9);
  const none = answer(settleRound(plan({ volume: litres20(0) })));
  expect(none.foreshots.volume).toBe(0);
  expect(none.begins.heart).toBe(none.begins.run);
});

test('more foreshots than the still can give never settle, or are refused', () => {
  expect(settleRound(plan({ volume: litres20(50_000) }))).toHaveProperty(
    'refused',
    expect.stringMatching(/[.]$/),
  );
  expect(settleRound(plan({ volume: litres20(50_000) }, 25))).toHaveProperty(
    'refused',
    expect.stringMatching(/[.]$/),
  );
});
