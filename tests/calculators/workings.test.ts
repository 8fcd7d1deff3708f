// Every sum printed in a working comes out by hand: the printed numbers make the printed result, to its last digit.
import { describe, expect, test } from 'vitest';
import {
  isChoice,
  isNumber,
  isRows,
  startOfInput,
  type AnyCalculator,
  type AnyGiven,
} from '../../src/calculators/define.ts';
import { calculators } from '../../src/calculators/index.ts';
import { asShown } from '../../src/core/format.ts';
import type { House } from '../../src/core/line/house.ts';
import { line } from '../../src/core/line/line.ts';
import { isRefusal } from '../../src/core/refusal.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { figureValue } from '../../src/house/prose.ts';
import { printedSums } from './printed-sums.ts';

/** A house of another size and habit, whose numbers round elsewhere. */
const large = {
  ...builtInHouse,
  maltPerMash: 12_000,
  wortVolume: 52_000,
  originalGravity: 1.068,
  finalGravity: 0.999,
  yeast: 210,
  mashesPerWeek: 14,
  weeksPerYear: 48,
  spiritReflux: 0.3,
  foreshotsBy: 'strength',
  foreshotsStrength: 75,
  heartEnd: 66,
  chargeLimit: 28,
  fillingStrength: 65,
  yearsInWood: 12,
  alcoholLoss: 3.5,
  storeHumidity: 45,
  bottlingStrength: 43,
  bottleSize: 75,
} as House;

/** What a calculator's fields show, and so what it reckons with, before the reader has touched one. */
function asItStands({ inputs }: AnyCalculator, house: House): AnyGiven {
  const now = line(house);
  if (isRefusal(now)) throw new Error(now.refused);
  return Object.fromEntries(
    Object.entries(inputs).map(([name, input]) => {
      if (isRows(input)) return [name, input.value];
      if ('house' in input) return [name, house[input.house]];
      if (isChoice(input)) return [name, input.value];
      return [
        name,
        'from' in input ? asShown(figureValue(now, input.from)) : startOfInput(input, house, builtInHouse)!,
      ];
    }),
  );
}

function wrongSums(calculator: AnyCalculator, given: AnyGiven): readonly string[] {
  if (calculator.refuse?.(given) !== undefined) return [];
  const result = calculator.compute(given);
  if (isRefusal(result)) return [];
  return calculator
    .steps(given, result)
    .flatMap(printedSums)
    .filter(({ makes, printed, half }) => Math.abs(makes - printed) > half * 1.0001 + 1e-9)
    .map(
      ({ text, makes }) =>
        `${text}, and makes ${makes}: what is reckoned on with is printed by formatWorking`,
    );
}

describe('the reader of printed sums', () => {
  test.each([
    ['1,500 × 77.5 ÷ 100 = 1,163 kg', true],
    ['1,500 × 77.5 ÷ 100 × 2.6 ÷ 100 = 30.7 kg', false],
    ['Alcohol = (100 − 12) ÷ 2 = 44, and more', true],
    ['1,142 casks × 225 L × 63.5 ÷ 100 = 163,199 L', false],
    ['5,000 ppm: ln((20 − 4) ÷ (20 − 12)) ÷ 2 × 60 = 20.8 min', true],
    ['127 × 0.98 to the power 10 = 103.8 L', true],
    ['0.1808 × 14.29 + 0.8192 × (−0.52) = 2.15 °P', false],
  ])('%s', (text, right) => {
    const [sum, ...more] = printedSums(text);
    expect(more).toEqual([]);
    expect(Math.abs(sum!.makes - sum!.printed) <= sum!.half).toBe(right);
  });
  test('finds no sum where there is none', () => {
    expect(printedSums('Wet draff = dry matter ÷ (1 − moisture of the draff ÷ 100)')).toEqual([]);
  });
});

describe.each(calculators.map((calculator) => [calculator.id, calculator] as const))(
  '%s',
  (_, calculator) => {
    test('for the built-in house', () => {
      expect(wrongSums(calculator, asItStands(calculator, builtInHouse))).toEqual([]);
    });
    test('for a large house', () => {
      expect(wrongSums(calculator, asItStands(calculator, large))).toEqual([]);
    });
    test('for its examples', () => {
      for (const { given } of calculator.examples) expect(wrongSums(calculator, given)).toEqual([]);
    });
    test('and every field of the line shows the number that is reckoned with', () => {
      const given = asItStands(calculator, builtInHouse);
      for (const [name, input] of Object.entries(calculator.inputs))
        if (isNumber(input) && 'from' in input)
          expect(String(given[name]).split('.')[1]?.length ?? 0, name).toBeLessThanOrEqual(4);
    });
  },
);

test('what stands in the fields gives the book’s printed figures again', () => {
  const now = line(builtInHouse);
  if (isRefusal(now)) throw new Error(now.refused);
  const result = (id: string) => {
    const calculator = calculators.find((one) => one.id === id)!;
    return calculator.compute(asItStands(calculator, builtInHouse)) as Record<string, number>;
  };
  const printed = (value: number) => value.toFixed(1);
  const { alcoholMore, alcohol } = result('what-if');
  expect(printed(alcohol! - alcoholMore!)).toBe(printed(now.heart.alcohol));
  expect(printed(result('season')['balanced']!)).toBe(printed(now.heart.alcohol));
  expect(printed(result('reduce-to-strength')['volume']!)).toBe(printed(now.filling.volume));
  expect(printed(result('blend-two-spirits')['alcohol']!)).toBe(
    printed(now.lowWines.alcohol + now.feints.alcohol),
  );
  expect(result('casks-and-bottles')['bottles']).toBe(Math.floor(now.bottling.bottles));
  expect(result('warehouse')['stock']!.toFixed(0)).toBe(now.casks.inStore.toFixed(0));
});

test('most workings hold sums that can be redone', () => {
  const having = calculators.filter((calculator) => {
    const given = asItStands(calculator, builtInHouse);
    const result = calculator.compute(given);
    return !isRefusal(result) && calculator.steps(given, result).some((step) => printedSums(step).length > 0);
  });
  expect(having.length).toBeGreaterThan(0.75 * calculators.length);
});
