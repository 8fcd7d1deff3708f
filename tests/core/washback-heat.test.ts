// The warmth of a washback: heat in is warming, loss and cooling; against sums by hand and two other ways through time.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  heatOf,
  riseWithoutLoss,
  warmest,
  warmWashback,
  type WarmWashback,
} from '../../src/core/fermenting/heat.ts';
import washbackHeat from '../../src/calculators/fermenting/washback-heat.ts';
import { partReleased, releaseRate } from '../../src/core/fermenting/release.ts';
import { celsius, hours, kilograms, quantity } from '../../src/core/quantity.ts';
import reference from '../../src/published/reference/fermenting.json' with { type: 'json' };
import { publishedEntry } from '../../src/published/row.ts';
import { always, apart, between } from './draw.ts';

const pace = (half: number, steepness: number) => ({
  half: hours(half),
  steepness: quantity('perHour', steepness),
});
const paces = fc.tuple(between(4, 60), between(0.05, 1)).map(([half, steepness]) => pace(half, steepness));

interface Plain {
  readonly mass: number;
  readonly heat: number;
  readonly start: number;
  readonly span: number;
  readonly air: number;
  readonly loss: number;
  readonly power: number;
  readonly from: number;
}
const plain: Plain = { mass: 7400, heat: 570, start: 19, span: 72, air: 15, loss: 0, power: 0, from: 32 };
const washback = (own: Partial<Plain> = {}, at = pace(16, 0.2)): WarmWashback => {
  const { mass, heat, start, span, air, loss, power, from } = { ...plain, ...own };
  return {
    mass: kilograms(mass),
    heat: quantity('energy', heat),
    pace: at,
    start: celsius(start),
    hours: hours(span),
    air: celsius(air),
    loss: quantity('heatLoss', loss),
    cooling: { power: quantity('power', power), from: celsius(from) },
  };
};
const drawn = fc.record({
  mass: between(20, 300_000),
  heat: between(1, 20_000),
  start: between(10, 35),
  span: between(24, 200),
  air: between(-10, 40),
  loss: between(0, 5000),
  power: between(0, 1000),
  from: between(10, 40),
});

test('the rise if no heat left: 3,000 kg of extract at 586 kJ in 22,260 kg of wash', () => {
  const { given, answer } = publishedEntry(reference.sums, 'F5') as {
    given: { E: number; M: number; H: number };
    answer: number;
  };
  const heat = heatOf(kilograms(given.E), quantity('heatOfExtract', given.H));
  expect(apart(riseWithoutLoss(heat, kilograms(given.M)), answer)).toBeLessThan(5e-6);
});

test('100 kg of wash that lost 13 kg of extract rises by 19 K at 586 kJ a kilogram', () => {
  const heat = heatOf(kilograms(13), quantity('heatOfExtract', 586));
  expect(riseWithoutLoss(heat, kilograms(100))).toBeCloseTo(19.045, 9);
});

interface Heat {
  readonly value: number;
  readonly range: readonly [number, number];
}

test('heats of formation in water bear the working figure out; those of dry glucose are of another reaction', () => {
  // kJ/mol, from memory of the NBS tables (Wagman et al. 1982): in water glucose −1,262, ethanol −288.3; gas −393.5.
  const dissolved = -(2 * -288.3 + 2 * -393.5 - -1262);
  const glucose = (1000 * dissolved) / 180.16;
  const maltose = (1000 * (2 * dissolved + 4.5)) / 342.3; // 4.5 kJ/mol more as it takes up water; recalled
  const { value, range } = washbackHeat.inputs['perKilogram'] as unknown as Heat;
  expect(value).toBeGreaterThan(glucose);
  expect(value).toBeLessThan(maltose);
  expect(range[0]).toBeLessThan(glucose);
  expect(range[1]).toBeGreaterThan(maltose);
  // Dry glucose into pure ethanol: what dissolving takes and gives is not in it, so a washback cannot be reckoned with it.
  const dry = -(2 * -277.6 + 2 * -393.5 - -1273.3);
  expect(Math.round(dry)).toBe(Number(publishedEntry(reference.values, 'fer-119').value));
  expect(range[0]).toBeGreaterThan((1000 * dry) / 180.16);
  expect(140 * 4.186).toBeCloseTo(586, 0); // 140 kcal/kg, as recalled
  expect(publishedEntry(reference.values, 'fer-120').conditions).toContain('586');
});

test('heat given off is warming, loss and cooling together, at every hour', () => {
  always(fc.tuple(drawn, paces), ([own, at]) => {
    const given = washback(own, at);
    const open = warmWashback(given).map(({ temperature, released, lost, cooled }) => {
      const warming = (given.mass * 4.0 * (temperature - given.start)) / 1000;
      const moved = released + Math.abs(warming) + Math.abs(lost) + cooled;
      return Math.abs(released - warming - lost - cooled) / Math.max(1, moved);
    });
    expect(Math.max(...open)).toBeLessThan(1e-9);
  });
});

test('without loss and cooling the warmth follows the gas: the rise times the part given off', () => {
  always(fc.tuple(drawn, paces), ([own, at]) => {
    const given = washback({ ...own, loss: 0, power: 0 }, at);
    const rise = riseWithoutLoss(given.heat, given.mass);
    const off = warmWashback(given).map(({ hour, temperature }) =>
      Math.abs(temperature - given.start - rise * partReleased(at, hour)),
    );
    expect(Math.max(...off)).toBeLessThan(1e-9 * (1 + rise));
  });
});

test('with loss, small steps of Runge and Kutta come to the same temperatures', () => {
  always(fc.tuple(between(0, 500), between(-10, 40), paces), ([loss, air, at]) => {
    const given = washback({ loss, air }, at);
    const capacity = (given.mass * 4.0) / 1000;
    const slope = (t: number, temperature: number) =>
      (given.heat * releaseRate(at, t) - 0.0036 * loss * (temperature - air)) / capacity;
    let temperature = 19;
    const step = 72 / 720;
    let furthest = 0;
    for (const state of warmWashback(given)) {
      furthest = Math.max(furthest, Math.abs(state.temperature - temperature));
      const t = state.hour;
      const k1 = slope(t, temperature);
      const k2 = slope(t + step / 2, temperature + (step / 2) * k1);
      const k3 = slope(t + step / 2, temperature + (step / 2) * k2);
      const k4 = slope(t + step, temperature + step * k3);
      temperature += (step / 6) * (k1 + 2 * k2 + 2 * k3 + k4);
    }
    expect(furthest).toBeLessThan(2e-3);
  });
});

test('with cooling, fifty times smaller steps of another kind peak and end within a fiftieth of a degree', () => {
  always(fc.tuple(between(0, 40), between(20, 36)), ([power, from]) => {
    const states = warmWashback(washback({ loss: 60, power, from }));
    const capacity = (7400 * 4.0) / 1000;
    let [temperature, peak] = [19, 19];
    const step = 0.002;
    for (let i = 0; i < 72 / step; i++) {
      const warming = (570 * releaseRate(pace(16, 0.2), i * step) - 0.216 * (temperature - 15)) / capacity;
      temperature +=
        step * warming -
        (temperature > from ? Math.min((step * 3.6 * power) / capacity, temperature - from) : 0);
      peak = Math.max(peak, temperature);
    }
    expect(Math.abs(warmest(states).temperature - peak)).toBeLessThan(0.02);
    expect(Math.abs(states.at(-1)!.temperature - temperature)).toBeLessThan(0.02);
  });
});

test('cooling strong enough holds the wash where it comes on; more of it, or sooner, is never warmer', () => {
  always(fc.tuple(drawn, paces, between(0, 10)), ([own, at, less]) => {
    const held = warmest(warmWashback(washback({ ...own, power: 1e9 }, at))).temperature;
    expect(held).toBeLessThanOrEqual(Math.max(own.from, own.start) + 1e-9);
    const peak = (more: Partial<Plain>) =>
      warmest(warmWashback(washback({ ...own, ...more }, at))).temperature;
    expect(peak({})).toBeGreaterThanOrEqual(peak({ power: own.power + 10 * less }) - 1e-9);
    expect(peak({})).toBeGreaterThanOrEqual(peak({ from: own.from - less }) - 1e-9);
    expect(peak({})).toBeLessThanOrEqual(peak({ start: own.start + less }) + 1e-9);
    expect(peak({})).toBeLessThanOrEqual(peak({ heat: own.heat * (1 + less) }) + 1e-9);
  });
});

test('with no heat of its own a wash comes to the temperature of the air by Newton’s law, and never past it', () => {
  always(fc.tuple(between(1, 5000), between(-10, 40)), ([loss, air]) => {
    const off = warmWashback(washback({ heat: 0, loss, air })).map(({ hour, temperature }) => {
      const left = Math.exp((-0.0036 * loss * hour) / ((7400 * 4.0) / 1000));
      return Math.abs(temperature - (air + (19 - air) * left));
    });
    expect(Math.max(...off)).toBeLessThan(1e-9);
  });
});

test('what is given off begins at nothing, only grows, and its slope is the rate, greatest at half', () => {
  always(fc.tuple(paces, between(0.1, 150)), ([at, hour]) => {
    expect(partReleased(at, 0)).toBe(0);
    expect(partReleased(at, 1e6)).toBeCloseTo(1, 12);
    const slope = (partReleased(at, hour + 1e-4) - partReleased(at, hour - 1e-4)) / 2e-4;
    expect(Math.abs(slope - releaseRate(at, hour))).toBeLessThan(1e-6);
    expect(releaseRate(at, hour)).toBeLessThanOrEqual(releaseRate(at, at.half));
  });
});

test.each([
  ['mass', { mass: 0 }],
  ['hours', { span: 0 }],
  ['loss', { loss: -1 }],
  ['power', { power: -1 }],
  ['power that is no number', { power: NaN }],
] as const)('%s out of range stops at the door', (_, own) => {
  expect(() => warmWashback(washback(own))).toThrow(RangeError);
});
