// Traces in a spirit run: the law behind them, against ethanol's own run and a plain integration.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  congeners,
  ETHANOL_IN_WATER,
  followCongener,
  volatility,
  type Congener,
  type Trace,
} from '../../src/core/distilling/congeners.ts';
import { cutRun } from '../../src/core/distilling/cuts.ts';
import { runStill } from '../../src/core/distilling/run.ts';
import { distillateOver } from '../../src/core/distilling/still.ts';
import { kilopascals, litres20, moleFraction, share, strength } from '../../src/core/quantity.ts';
import { amountsOf } from '../../src/core/spirit/amounts.ts';
import rows from '../../src/published/reference/congeners.json' with { type: 'json' };
import { always, answer, apart, between, settings, strengths } from './draw.ts'; // prettier-ignore

const pressure = kilopascals(101.325);
const still = { reflux: share(0.1), pressure };
const charge = { volume: litres20(4000), strength: strength(25) };
const cuts = { foreshots: { share: share(0.03) }, heart: strength(62), feints: strength(1) };
const follow = (congener: Congener) => answer(followCongener(charge, still, cuts, congener));
const ethanol = { inWater: ETHANOL_IN_WATER, inAlcohol: 1 };

test('ethanol in water is as volatile as the reference says, within the two vapour pressures in use', () => {
  const { K_inf_in_water_100C } = rows.rows.find(({ name }) => name === 'ethanol')!;
  expect(apart(ETHANOL_IN_WATER, Number(K_inf_in_water_100C![0]))).toBeLessThan(0.005);
});

test('in nearly pure water every trace has the volatility of the table', () => {
  const printed = { methanol: 8.7, acetaldehyde: 50, ethylAcetate: 175, isoamylAlcohol: 25 }; // congeners.json; the middle of a range
  for (const [name, expected] of Object.entries(printed)) {
    const congener = congeners[name as keyof typeof congeners];
    expect(apart(volatility(congener, moleFraction(1e-6), pressure), expected)).toBeLessThan(1e-4);
  }
});

test('isoamyl alcohol is less volatile than its liquid is rich in it above about 60 to 70 % vol', () => {
  const at = (s: number) => {
    const { ethanol, water } = amountsOf({ volume: litres20(1), strength: strength(s) });
    return volatility(congeners.isoamylAlcohol, moleFraction(ethanol / (ethanol + water)), pressure);
  };
  expect(at(55)).toBeGreaterThan(1);
  expect(at(75)).toBeLessThan(1); // the row is recalled and says "about"
});

test('a trace that boils out as ethanol does is shared out as ethanol is', () => {
  const plans = fc.record({ setting: settings, s: strengths(15, 40), heart: strengths(40, 55), feints: strengths(0.5, 20), first: between(0.001, 0.05) });
  always(plans, ({ setting, s, heart, feints, first }) => {
    const whole = { volume: litres20(1000), strength: s };
    const own = { foreshots: { share: share(first) }, heart, feints };
    // Against ethanol's own volatility at ordinary pressure the relative one is 1 at any other.
    const { shares, points } = answer(followCongener(whole, setting, own, ethanol));
    const parts = answer(cutRun(answer(runStill({ charge: whole, ...setting, until: feints })), own));
    for (const part of ['foreshots', 'heart', 'feints', 'residue'] as const) {
      expect(Math.abs(shares[part] - parts[part].alcohol / (10 * s))).toBeLessThan(1e-7);
    }
    for (const { concentration } of points) expect(Math.abs(concentration - 1)).toBeLessThan(1e-6);
  });
}); // prettier-ignore

/** Part of a trace left when the pot is down to `end`, by fixed steps of Runge and Kutta in the moles boiled off. */
function plainLeft(congener: Congener, from: number, end: number): number {
  const reflux = { reflux: share(0), pressure };
  const slope = (x: number): [number, number] => {
    const y = distillateOver(moleFraction(x), reflux).vapour;
    return [x - y, -volatility(congener, moleFraction(x), pressure)];
  };
  let [x, log] = [from, 0];
  for (const h = 2e-4; ;) {
    const a = slope(x);
    const b = slope(x + (h / 2) * a[0]);
    const c = slope(x + (h / 2) * b[0]);
    const d = slope(x + h * c[0]);
    const step = [0, 1].map((i) => (h / 6) * (a[i]! + 2 * b[i]! + 2 * c[i]! + d[i]!)) as [number, number];
    if (x + step[0] <= end) return Math.exp(log + step[1] * ((x - end) / -step[0]));
    [x, log] = [x + step[0], log + step[1]];
  }
}

test.each(Object.entries(congeners))(
  '%s: plain integration leaves as much after the heart',
  (_, congener) => {
    const plain = { reflux: share(0), pressure };
    const { ethanol: e, water: w } = amountsOf(charge);
    const { shares } = answer(followCongener(charge, plain, { ...cuts, heart: strength(55) }, congener));
    const parts = answer(
      cutRun(answer(runStill({ charge, ...plain, until: strength(1) })), { ...cuts, heart: strength(55) }),
    );
    const pot = [parts.feints, parts.residue]
      .map(amountsOf)
      .reduce((a, b) => ({ ethanol: a.ethanol + b.ethanol, water: a.water + b.water }));
    const left = plainLeft(congener, e / (e + w), pot.ethanol / (pot.ethanol + pot.water));
    expect(Math.abs(shares.feints + shares.residue - left)).toBeLessThan(1e-5);
  },
);

test.each(Object.entries(congeners))(
  '%s: finer panels move no share by 1e-9, and the shares are the whole',
  (_, congener) => {
    const [coarse, fine] = [undefined, 0.1].map((panel) =>
      answer(followCongener(charge, still, cuts, congener, panel)),
    );
    const parts = Object.keys(coarse!.shares) as (keyof Trace['shares'])[];
    for (const part of parts) {
      expect(Math.abs(coarse!.shares[part] - fine!.shares[part])).toBeLessThan(1e-9);
      expect(coarse!.shares[part]).toBeGreaterThanOrEqual(0);
    }
    expect(parts.reduce((sum, part) => sum + coarse!.shares[part], 0)).toBeCloseTo(1, 12);
  },
);

test('the order recalled in the trade: acetaldehyde and ethyl acetate early, higher alcohols in the middle', () => {
  const { acetaldehyde, ethylAcetate, isoamylAlcohol } = congeners;
  const [early, earlier, middle, own] = [acetaldehyde, ethylAcetate, isoamylAlcohol, ethanol].map(
    (one) => follow(one).shares,
  );
  expect(early!.foreshots).toBeGreaterThan(2 * own!.foreshots);
  expect(earlier!.foreshots).toBeGreaterThan(2 * own!.foreshots);
  expect(early!.feints).toBeLessThan(0.1 * own!.feints);
  expect(middle!.heart).toBeGreaterThan(own!.heart);
  expect(middle!.heart).toBeGreaterThan(middle!.foreshots + middle!.feints);
});

test('what boils out more easily is further on its way at every cut', () => {
  always(fc.tuple(between(2, 100), between(0.2, 4), between(1.01, 3)), ([inWater, inAlcohol, more]) => {
    const [slow, fast] = [1, more].map(
      (times) => follow({ inWater: inWater * times, inAlcohol: inAlcohol * times }).shares,
    );
    expect(fast!.foreshots).toBeGreaterThan(slow!.foreshots);
    expect(fast!.residue).toBeLessThan(slow!.residue);
    expect(fast!.foreshots + fast!.heart).toBeGreaterThan(slow!.foreshots + slow!.heart);
  });
});

test('volatility falls as the liquid grows stronger, to about 80 % vol', () => {
  for (const congener of Object.values(congeners)) {
    always(fc.tuple(between(0.001, 0.4), between(0.001, 0.1)), ([x, more]) => {
      expect(volatility(congener, moleFraction(x + more), pressure)).toBeLessThan(
        volatility(congener, moleFraction(x), pressure),
      );
    });
  }
});
