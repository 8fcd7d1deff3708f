// The still: Rayleigh's law by a second road, balances, and what reflux and pressure do.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { gaussPanel } from '../../src/core/numerics/gauss.ts';
import { potAmounts, runStill } from '../../src/core/distilling/run.ts';
import { distillateOver, POT_RANGE, stillCurve, type StillSetting } from '../../src/core/distilling/still.ts';
import { kilopascals, litres20, moleFraction, share, strength } from '../../src/core/quantity.ts';
import { amountsOf, type Amounts } from '../../src/core/spirit/amounts.ts';
import { vapourModels } from '../../src/core/vapour/models.ts';
import { always, answer, apart, between, settings, strengths } from './draw.ts';

const plain: StillSetting = { reflux: share(0), pressure: kilopascals(101.325) };
const vapour = (x: number, setting: StillSetting) => distillateOver(moleFraction(x), setting).vapour;

/** Ethanol left in the pot after `removed` kilomoles have come over: dE/dn = −y, in even Runge–Kutta steps of moles. */
function ethanolLeft(
  { ethanol, water }: Amounts,
  setting: StillSetting,
  removed: number,
  steps = 4000,
): number {
  const h = removed / steps;
  const slope = (e: number, gone: number) => -vapour(e / (ethanol + water - gone), setting);
  let e = ethanol;
  for (let i = 0; i < steps; i++) {
    const n = i * h;
    const a = slope(e, n);
    const b = slope(e + (h / 2) * a, n + h / 2);
    const c = slope(e + (h / 2) * b, n + h / 2);
    const d = slope(e + h * c, n + h);
    e += (h / 6) * (a + 2 * b + 2 * c + d);
  }
  return e;
}

const cases = [
  { charge: 8, reflux: 0, end: 0.002 },
  { charge: 25, reflux: 0.1, end: 0.01 },
  { charge: 25, reflux: 0.3, end: 0.2 / 100 },
  { charge: 60, reflux: 0, end: 0.05 },
  { charge: 40, reflux: 1, end: 0.02 },
];
test.each(cases)(
  '$charge % vol, reflux $reflux: the pot empties as plain integration in moles says',
  ({ charge, reflux, end }) => {
    const setting = { ...plain, reflux: share(reflux) };
    const before = amountsOf({ volume: litres20(1000), strength: strength(charge) });
    const left = potAmounts(before, setting, end);
    const removed = before.ethanol + before.water - left.ethanol - left.water;
    expect(Math.abs(ethanolLeft(before, setting, removed) - left.ethanol)).toBeLessThan(
      1e-6 * before.ethanol,
    );
  },
);

test.each(vapourModels)(
  'by $name the polynomials empty the pot as five hundred plain panels do, to 1e-11',
  (model) => {
    for (const reflux of [0, 0.1, 1])
      for (const pressure of [20, 101.325, 150]) {
        const setting = { reflux: share(reflux), pressure: kilopascals(pressure), model };
        const slope = (u: number) => {
          const x = 1 / (1 + Math.exp(-u));
          return (x * (1 - x)) / (vapour(x, setting) - x);
        };
        const [from, to, panels] = [Math.log(0.74 / 0.26), Math.log(1.1e-5), 500];
        const h = (to - from) / panels;
        let sum = 0;
        for (let i = 0; i < panels; i++) sum += gaussPanel(slope, from + i * h, from + (i + 1) * h);
        const x = 1 / (1 + Math.exp(-to));
        expect(apart(stillCurve(setting).left(0.74, x), Math.exp(sum))).toBeLessThan(1e-11);
      }
  },
);

test('the polynomials give the vapour and the boiling point that the equilibrium gives, all over the pot’s range', () => {
  always(
    fc.tuple(settings, between(Math.log(POT_RANGE.weakest), Math.log(POT_RANGE.strongest))),
    ([setting, log]) => {
      const x = Math.exp(log);
      const [followed, found] = [stillCurve(setting).over(x), distillateOver(moleFraction(x), setting)];
      expect(apart(followed.vapour, found.vapour)).toBeLessThan(1e-12);
      expect(Math.abs(followed.temperature - found.temperature)).toBeLessThan(1e-10);
    },
  );
});

test('a pot outside the range is not followed', () => {
  const { over, left } = stillCurve(plain);
  expect(over(POT_RANGE.weakest).vapour).toBeGreaterThan(POT_RANGE.weakest);
  expect(over(POT_RANGE.strongest).vapour).toBeGreaterThan(POT_RANGE.strongest);
  for (const x of [0, 0.9 * POT_RANGE.weakest, 1.1 * POT_RANGE.strongest, 1, NaN]) {
    expect(() => over(x)).toThrow(RangeError);
    expect(() => left(0.1, x)).toThrow(RangeError);
  }
});

test('emptying in two goes is emptying in one', () => {
  always(
    fc.tuple(settings, between(0.3, 0.7), between(0.02, 0.29), between(1e-4, 0.019)),
    ([setting, a, b, c]) => {
      const { left } = stillCurve(setting);
      expect(apart(left(a, b) * left(b, c), left(a, c))).toBeLessThan(1e-9);
    },
  );
});

test('the pot that gives a strength gives that strength', () => {
  always(fc.tuple(settings, strengths(1, 85)), ([setting, s]) => {
    const curve = stillCurve(setting);
    const x = curve.potAt(s);
    if (x === undefined) expect(curve.strengthOver(POT_RANGE.strongest)).toBeLessThan(s);
    else expect(Math.abs(curve.strengthOver(x) - s)).toBeLessThan(1e-8);
  });
});

test('reflux makes stronger spirit, and a whole stage is the vapour of the vapour', () => {
  always(fc.tuple(between(1e-4, 0.7), between(0.01, 1)), ([x, reflux]) => {
    expect(vapour(x, { ...plain, reflux: share(reflux) })).toBeGreaterThan(vapour(x, plain));
    expect(vapour(x, { ...plain, reflux: share(1) })).toBeCloseTo(vapour(vapour(x, plain), plain), 12);
  });
});

test('a run keeps its alcohol, grows weaker and hotter, and ends where it was told to', () => {
  const plans = fc.record({ charge: strengths(5, 60), until: strengths(0.5, 20), setting: settings });
  always(plans, ({ charge, until, setting }) => {
    const run = answer(runStill({ ...setting, charge: { volume: litres20(1000), strength: charge }, until }));
    expect(apart(run.distillate.alcohol + run.residue.alcohol, 10 * charge)).toBeLessThan(1e-9);
    const [first, last] = [run.curve[0]!, run.curve.at(-1)!];
    expect([first.volume, first.alcohol]).toEqual([0, 0]);
    expect(Math.abs(last.strength - until)).toBeLessThan(1e-8);
    expect(apart(last.volume, run.distillate.volume)).toBeLessThan(1e-9);
    for (let i = 1; i < run.curve.length; i++) {
      const [before, now] = [run.curve[i - 1]!, run.curve[i]!];
      expect(now.strength).toBeLessThan(before.strength);
      expect(now.temperature).toBeGreaterThan(before.temperature);
      expect(now.volume).toBeGreaterThan(before.volume);
      expect(now.alcohol).toBeGreaterThan(before.alcohol);
    }
  });
});
