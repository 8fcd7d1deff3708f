// Carbon dioxide as gas, and in a room of mixed air.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  FRESH_AIR,
  gasVolume,
  hoursBefore,
  levelAfter,
  steadyLevel,
  type GasRoom,
} from '../../src/core/fermenting/gas.ts';
import { calculators } from '../../src/calculators/index.ts';
import { celsius, hours, quantity } from '../../src/core/quantity.ts';
import { publishedEntry } from '../../src/published/row.ts';
import reference from '../../src/published/reference/fermenting.json' with { type: 'json' };
import { always, apart, between, ordered } from './draw.ts';

const ppm = (n: number) => quantity('ppm', n);
const room = (volume: number, gas: number, freshAir: number): GasRoom => ({
  volume: quantity('space', volume),
  gas: quantity('flow', gas),
  freshAir: quantity('flow', freshAir),
});
const rooms = fc
  .tuple(between(5, 100_000), between(0.001, 2000), between(0, 500_000))
  .map(([volume, gas, freshAir]) => room(volume, gas, freshAir));

test('1,281.71 kg are 700.56 m³ at 20 °C', () => {
  const { mass_kg, answer } = publishedEntry(reference.sums, 'F4') as { mass_kg: number; answer: number };
  expect(apart(gasVolume(mass_kg, celsius(20)), answer)).toBeLessThan(5e-5);
});

test('0.754 kg with a litre of pure alcohol are 413 L', () => {
  const { mass_kg, gas_L } = publishedEntry(reference.values, 'fer-118') as {
    mass_kg: number;
    gas_L: number;
  };
  expect(apart(1000 * gasVolume(mass_kg, celsius(20)), gas_L)).toBeLessThan(2.5e-3); // the row rounds up what its own formula makes 412.1 L
});

test('gas grows with mass and with absolute temperature', () => {
  always(fc.tuple(between(0.1, 5000), ordered(0, 40, 1)), ([mass, [cool, warm]]) => {
    const ratio = gasVolume(2 * mass, celsius(warm)) / gasVolume(mass, celsius(cool));
    expect(apart(ratio, (2 * (273.15 + warm)) / (273.15 + cool))).toBeLessThan(1e-12);
  });
});

test('5,000 g let into a closed room of 300 m³ raise its air by 9,110 ppm, less the little that is pushed out', () => {
  const { given, answer } = publishedEntry(reference.sums, 'S2') as {
    given: { g: number; V: number };
    answer: number;
  };
  const gas = gasVolume(given.g / 1000, celsius(20));
  const rise = levelAfter(room(given.V, gas, 0), 1) - FRESH_AIR;
  expect(rise).toBeLessThan(answer);
  expect(apart(rise, answer)).toBeLessThan(0.006); // half of 0.9 % goes out with the air pushed out, and the air had some already
});

test('gas in is gas kept and gas gone: the level obeys its balance', () => {
  always(fc.tuple(rooms, between(0.01, 24)), ([one, hour]) => {
    const level = levelAfter(one, hour) / 1e6;
    const came = one.gas + (one.freshAir * FRESH_AIR) / 1e6 - (one.gas + one.freshAir) * level;
    const [before, after] = [levelAfter(one, hour * (1 - 1e-5)), levelAfter(one, hour * (1 + 1e-5))];
    const kept = (one.volume * (after - before)) / 1e6 / (2e-5 * hour);
    expect(Math.abs(kept - came)).toBeLessThan(1e-4 * (one.gas + one.freshAir));
  });
});

test('a hundred small steps, gas in and mixed air out, come to the same level', () => {
  const one = room(600, 12.5, 600);
  let held = (600 * FRESH_AIR) / 1e6;
  const step = 1 / 100_000;
  for (let i = 0; i < 100_000; i++) held += step * (12.5 + (600 * FRESH_AIR) / 1e6 - (612.5 * held) / 600);
  expect(apart((1e6 * held) / 600, levelAfter(one, 1))).toBeLessThan(1e-5);
});

test('the level starts as fresh air, only rises, settles where it is said to, and is never more than all gas', () => {
  always(fc.tuple(rooms, ordered(0, 24, 0.01)), ([one, [sooner, later]]) => {
    expect(levelAfter(one, 0)).toBe(FRESH_AIR);
    expect(levelAfter(one, later)).toBeGreaterThanOrEqual(levelAfter(one, sooner));
    expect(levelAfter(one, later)).toBeLessThanOrEqual(steadyLevel(one) + 1e-6);
    expect(apart(levelAfter(one, 1e12), steadyLevel(one))).toBeLessThan(1e-12);
    expect(steadyLevel(one)).toBeLessThanOrEqual(1e6 * (1 + 1e-12)); // room for the last digit of a double
  });
});

test('a closed room ends as gas alone; in ninety-nine parts of fresh air the gas is one in a hundred above it', () => {
  expect(steadyLevel(room(300, 5, 0))).toBe(1e6);
  expect(steadyLevel(room(300, 5, 495))).toBeCloseTo(10_000 + 0.99 * FRESH_AIR, 9);
});

test('at the hour told the level is the limit; where no hour is told the level is below it to the end', () => {
  always(fc.tuple(rooms, between(1000, 40_000), between(0.5, 24)), ([one, limit, watched]) => {
    const told = hoursBefore(ppm(limit), one, hours(watched));
    if (told < watched) expect(apart(levelAfter(one, told), limit)).toBeLessThan(1e-8);
    else expect(levelAfter(one, watched)).toBeLessThanOrEqual(limit * (1 + 1e-9));
  });
});

test('more gas, a smaller room or less fresh air never leaves more time', () => {
  always(fc.tuple(rooms, between(1, 3)), ([one, more]) => {
    const time = ({ volume, gas, freshAir }: GasRoom) =>
      hoursBefore(ppm(5000), room(volume, gas, freshAir), hours(24));
    const now = time(one) + 1e-9;
    expect(time(room(one.volume, one.gas * more, one.freshAir))).toBeLessThanOrEqual(now);
    expect(time(room(one.volume / more, one.gas, one.freshAir))).toBeLessThanOrEqual(now);
    expect(time(room(one.volume, one.gas, one.freshAir / more))).toBeLessThanOrEqual(now);
  });
});

test('the calculator uses the three limits of the table, warns, and never calls a room safe', () => {
  const inARoom = calculators.find(({ id }) => id === 'carbon-dioxide-in-a-room')!;
  for (const id of ['saf-169', 'saf-170', 'saf-171'] as const) {
    const { value } = publishedEntry(reference.values, id);
    const label = Object.values(inARoom.outputs).map((output) => output.label.replace(',', ''));
    expect(label.some((text) => text.includes(`${value} ppm`))).toBe(true);
  }
  expect(inARoom.cautions).toContain('carbon-dioxide');
  const wide = {
    gas: 1,
    half: 60,
    steepness: 0.05,
    temperature: 20,
    escapes: 1,
    room: 100_000,
    freshAir: 500_000,
    watched: 24,
  };
  const result = inARoom.compute(wide) as Record<string, number>;
  const said = [inARoom.purpose, ...inARoom.steps(wide, result), inARoom.remark!(wide, result)!].join(' ');
  expect(said).toMatch(/no safety measure/);
  expect(said).not.toMatch(/\b(is|are|stays?) safe\b/);
});

test('figures outside their range stop at the door', () => {
  const one = room(300, 5, 100);
  for (const n of [-1, NaN]) {
    expect(() => gasVolume(n, celsius(20))).toThrow(RangeError);
    expect(() => levelAfter(one, n)).toThrow(RangeError);
    expect(() => steadyLevel(room(300, 5, n))).toThrow(RangeError);
    expect(() => steadyLevel(room(300, n, 5))).toThrow(RangeError);
    expect(() => levelAfter(room(n, 5, 5), 1)).toThrow(RangeError);
    expect(() => hoursBefore(ppm(n), one, hours(1))).toThrow(RangeError);
  }
  expect(() => gasVolume(1, celsius(-60))).toThrow(RangeError);
});
