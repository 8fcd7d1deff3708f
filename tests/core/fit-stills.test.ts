// The refluxes that measured runs give back: readings made by plain integration, ± by hand, and what is refused.
import { expect, test } from 'vitest';
import { fitSpiritStill, fitWashStill, type WashRunMeasured } from '../../src/core/distilling/fit-stills.ts';
import { distillateOver, strengthOfVapour } from '../../src/core/distilling/still.ts';
import { normalRandom } from '../../src/core/numerics/random.ts';
import {
  kilopascals,
  litres20,
  moleFraction,
  share,
  strength,
  type Spirit,
} from '../../src/core/quantity.ts';
import { amountsOf, minus, portionOf, type Amounts } from '../../src/core/spirit/amounts.ts';
import { answer } from './draw.ts';

const pressure = kilopascals(101.3);

/** A run in small steps of moles by the midpoint rule: what has come over, and what comes, until `done`. */
function run(charge: Spirit, reflux: number, done: (over: Amounts, strengthNow: number) => boolean) {
  const setting = { reflux: share(reflux), pressure };
  const vapour = (x: number) => distillateOver(moleFraction(x), setting).vapour;
  const whole = amountsOf(charge);
  let [ethanol, water] = [whole.ethanol, whole.water];
  const step = (ethanol + water) / 40_000;
  for (;;) {
    const now = vapour(ethanol / (ethanol + water));
    if (done(minus(whole, { ethanol, water }), strengthOfVapour(now))) break;
    const half = ethanol - (step / 2) * now;
    const y = vapour(half / (ethanol + water - step / 2));
    [ethanol, water] = [ethanol - step * y, water - step * (1 - y)];
  }
  const rest = { ethanol, water };
  const now = strengthOfVapour(vapour(ethanol / (ethanol + water)));
  return { distillate: portionOf(minus(whole, rest)), residue: portionOf(rest), now };
}

const wash = { volume: litres20(12_000), strength: strength(8) };
const washRun = run(wash, 0.06, (_, now) => now < 1);
const measured = (more: Partial<WashRunMeasured>): WashRunMeasured => ({
  wash,
  until: strength(1),
  pressure,
  strengthSure: 0.2,
  volumeSure: 0.01,
  ...more,
});
const low = { strength: washRun.distillate.strength, volume: washRun.distillate.volume };
const ale = share(washRun.residue.volume / wash.volume);

const charge = { volume: litres20(3600), strength: strength(26.4) };
const safe = [50, 300, 600, 900].map((litres) => {
  const { distillate, now } = run(charge, 0.12, (over) => portionOf(over).volume >= litres);
  return { volume: distillate.volume, strength: now };
});

test.each([
  ['their strength', { strength: low.strength }],
  ['their volume', { volume: low.volume }],
  ['the pot ale', { potAle: ale }],
  ['all three', { ...low, potAle: ale }],
])('low wines of a plainly integrated run give its reflux back: %s', (_, more) => {
  expect(Math.abs(answer(fitWashStill(measured(more))).reflux - 0.06)).toBeLessThan(2e-4);
});

test('the safe of a plainly integrated run gives its reflux back', () => {
  expect(Math.abs(answer(fitSpiritStill(charge, pressure, safe, 0.3)).reflux - 0.12)).toBeLessThan(2e-4);
});

test('± is that of the reading over its slope, found here by two runs', () => {
  const [lower, upper] = [0.05, 0.07].map(
    (reflux) => run(wash, reflux, (_, now) => now < 1).distillate.strength,
  );
  const slope = (upper! - lower!) / 0.02;
  const { sure } = answer(fitWashStill(measured({ strength: low.strength })));
  expect(sure / (0.2 / slope)).toBeCloseTo(1, 2);
});

test('readings that scatter give a ± that covers the truth about as often as a standard one should', () => {
  const normal = normalRandom(4);
  let covered = 0;
  for (let i = 0; i < 60; i++) {
    const noisy = safe.map((reading) => ({
      ...reading,
      strength: strength(reading.strength + 0.3 * normal()),
    }));
    const { reflux, sure } = answer(fitSpiritStill(charge, pressure, noisy, 0.3));
    if (Math.abs(reflux - 0.12) < sure) covered++;
  }
  expect(covered).toBeGreaterThan(60 * 0.55); // 68 % and more, for a ± is never less than the readings' own
  expect(covered).toBeLessThan(60 * 0.95);
});

test('readings that scatter more than their ± raise the ± of the reflux', () => {
  const bent = safe.map((reading, i) => ({
    ...reading,
    strength: strength(reading.strength + (i % 2 ? 0.9 : -0.9)),
  }));
  const [even, uneven] = [safe, bent].map(
    (readings) => answer(fitSpiritStill(charge, pressure, readings, 0.3)).sure,
  );
  expect(uneven).toBeGreaterThan(2 * even!);
});

test.each([
  ['low wines weaker than a bare pot gives', () => fitWashStill(measured({ strength: strength(17) })), /^No reflux gives.*without any reflux it would be low wines of 19\.8/],
  ['a strength and a volume that hold more than the wash', () => fitWashStill(measured({ strength: strength(25), volume: litres20(5200) })), /^No reflux gives/],
  ['nothing measured', () => fitWashStill(measured({})), /^Give the low wines/],
  ['a wash weaker than its end', () => fitWashStill(measured({ wash: { ...wash, strength: strength(0.01) }, strength: strength(5) })), /never reached/],
  ['one reading', () => fitSpiritStill(charge, pressure, safe.slice(1, 2), 0.3), /two readings/],
  ['a safe that rises', () => fitSpiritStill(charge, pressure, [{ volume: litres20(50), strength: strength(70) }, { volume: litres20(500), strength: strength(74) }], 0.3), /only grows weaker/],
  ['spirit stronger than a further stage gives', () => fitSpiritStill(charge, pressure, safe.map((each) => ({ ...each, strength: strength(93) })), 0.3), /with a whole further stage it would be/],
  ['more than was charged', () => fitSpiritStill(charge, pressure, [...safe, { volume: litres20(3590), strength: strength(1) }], 0.3), /earlier readings/],
] as const)('%s is refused with a sentence', (_, fit, says) => {
  const told = fit();
  expect(told).toHaveProperty('refused', expect.stringMatching(says));
  expect(told).toHaveProperty('refused', expect.stringMatching(/[.]$/));
}); // prettier-ignore
