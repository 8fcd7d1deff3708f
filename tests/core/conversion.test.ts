// Enzymes in the heat and starch that swells, against recalled half-lives and published temperatures.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  halfLife,
  restsUntil,
  enzymeSurvival,
  type Enzyme,
  type Rest,
} from '../../src/core/mashing/enzymes.ts';
import { maltsBegun } from '../../src/core/mashing/swelling.ts';
import { celsius, quantity } from '../../src/core/quantity.ts';
import reference from '../../src/published/reference/milling-and-mashing.json' with { type: 'json' };
import { always, apart, between, ordered } from './draw.ts';

const enzymes = ['alpha', 'beta'] as const satisfies readonly Enzyme[];
const minutes = (n: number) => quantity('minutes', n);
const rest = (length: number, temperature: number): Rest => ({
  minutes: minutes(length),
  temperature: celsius(temperature),
});
const rests = fc.array(
  fc.tuple(between(1, 60), between(40, 66)).map(([length, t]) => rest(length, t)),
  { minLength: 1, maxLength: 6 },
);

/** Half a unit of the last figure printed, and 1 %: a gas constant of four figures alone moves a half-life by 0.8 %. */
const slack = (printed: number) => (printed < 10 ? 0.05 : 0.5) + 0.01 * printed;
test.each(reference.halfLives.rows)(
  'half-lives at $t °C: beta $beta min, alpha $alpha min, as recalled',
  (row) => {
    for (const enzyme of enzymes) {
      expect(Math.abs(halfLife(enzyme, celsius(row.t)) - row[enzyme])).toBeLessThan(slack(row[enzyme]));
    }
  },
);

test('at 80 °C a half-hour leaves nothing of either, and at 70 °C alpha-amylase is on its way out: inactivated at 70 to 80, as published', () => {
  const [low, high] = reference.inactivated.range;
  for (const enzyme of enzymes) expect(enzymeSurvival(enzyme, [rest(30, high!)])).toBeLessThan(0.1);
  expect(enzymeSurvival('alpha', [rest(30, low!)])).toBeLessThan(50);
  expect(enzymeSurvival('alpha', [rest(30, low! - 10)])).toBeGreaterThan(50);
});

test('after its half-life half is left, and after twice that a quarter', () => {
  always(fc.tuple(fc.constantFrom(...enzymes), between(40, 80)), ([enzyme, t]) => {
    const half = halfLife(enzyme, celsius(t));
    expect(enzymeSurvival(enzyme, [rest(half, t)])).toBeCloseTo(50, 9);
    expect(enzymeSurvival(enzyme, [rest(half, t), rest(half, t)])).toBeCloseTo(25, 9);
  });
});

test('survival agrees with the loss taken in small steps', () => {
  const slow = (enzyme: Enzyme, path: readonly Rest[]) => {
    const STEPS = 4000;
    return path.reduce((left, { minutes: length, temperature }) => {
      const lost = ((Math.LN2 / halfLife(enzyme, temperature)) * length) / STEPS;
      return left * ((1 - lost / 2) / (1 + lost / 2)) ** STEPS;
    }, 100);
  };
  const path = [rest(30, 55), rest(20, 62), rest(10, 65)];
  for (const enzyme of enzymes)
    expect(apart(enzymeSurvival(enzyme, path), slow(enzyme, path))).toBeLessThan(1e-5);
});

test('the order of rests does not change what is left; longer and hotter leave less', () => {
  always(
    fc.tuple(fc.constantFrom(...enzymes), rests, ordered(40, 66, 0.01)),
    ([enzyme, path, [cool, warm]]) => {
      expect(apart(enzymeSurvival(enzyme, path), enzymeSurvival(enzyme, [...path].reverse()))).toBeLessThan(
        1e-9,
      );
      expect(enzymeSurvival(enzyme, [...path, rest(5, cool)])).toBeLessThan(enzymeSurvival(enzyme, path));
      expect(halfLife(enzyme, celsius(warm))).toBeLessThan(halfLife(enzyme, celsius(cool)));
    },
  );
});

test('beta-amylase dies before alpha-amylase where mashes are made', () => {
  always(between(60, 68), (t) =>
    expect(halfLife('beta', celsius(t))).toBeLessThan(halfLife('alpha', celsius(t))),
  );
});

test('a path cut off at a time is as long as that time, and at its end it is whole', () => {
  always(fc.tuple(rests, between(0, 1)), ([path, part]) => {
    const whole = path.reduce((sum, { minutes: length }) => sum + length, 0);
    const sofar = restsUntil(path, whole * part).reduce((sum, { minutes: length }) => sum + length, 0);
    expect(Math.abs(sofar - whole * part)).toBeLessThan(1e-9);
    expect(enzymeSurvival('alpha', restsUntil(path, whole))).toBeCloseTo(enzymeSurvival('alpha', path), 9);
  });
});

test.each(reference.swelling.rows)(
  '$laboratory: none have begun at the lowest onset, all at the highest',
  ({ laboratory, onset }) => {
    const begun = (t: number) => maltsBegun(laboratory as 'patindol-2012' | 'rittenauer-2021', celsius(t));
    expect(begun(onset[0]!)).toBe(0);
    expect(begun(onset[0]! - 5)).toBe(0);
    expect(begun((onset[0]! + onset[1]!) / 2)).toBeCloseTo(50, 9);
    expect(begun(onset[1]!)).toBe(100);
    expect(begun(onset[1]! + 5)).toBe(100);
  },
);

test('a rest outside 40–80 °C or of less than no time is stopped', () => {
  for (const t of [39.9, 80.1, NaN]) expect(() => enzymeSurvival('beta', [rest(10, t)])).toThrow(RangeError);
  expect(() => enzymeSurvival('beta', [rest(-1, 60)])).toThrow(RangeError);
});
