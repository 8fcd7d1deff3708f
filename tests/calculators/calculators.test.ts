// Every calculator, from its declaration: examples from outside, corners, nonsense, agreement with the house's table.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { AnyCalculator } from '../../src/calculators/define.ts';
import { calculators } from '../../src/calculators/index.ts';
import { isRefusal } from '../../src/core/refusal.ts';
import { sources } from '../../src/core/sources.ts';
import { builtInLine } from '../../src/house/built-in.ts';
import { builtInHouse, numberFigures } from '../../src/house/figures.ts';
import { figureValue } from '../../src/house/prose.ts';

type Given = Parameters<AnyCalculator['compute']>[0];

test('ids are unique', () => {
  expect(new Set(calculators.map(({ id }) => id)).size).toBe(calculators.length);
});

describe.each(calculators.map((calculator) => [calculator.id, calculator] as const))(
  '%s',
  (_, calculator) => {
    /** Answers, or is refused with a sentence; never a number that is not one. */
    function check(given: Given): void {
      const refusal = calculator.refuse?.(given);
      if (refusal !== undefined) return expect(refusal).toMatch(/[.]$/);
      const result = calculator.compute(given);
      if (isRefusal(result)) return expect(result.refused).toMatch(/[.]$/);
      for (const name of Object.keys(calculator.outputs))
        expect(result[name], name).toSatisfy(Number.isFinite);
      for (const step of calculator.steps(given, result)) expect(step).not.toMatch(/NaN|undefined|Infinity/);
      for (const column of calculator.chart?.(given, result).columns ?? []) {
        expect(column.values.every(Number.isFinite)).toBe(true);
      }
    }

    test.each(
      calculator.examples.map(
        (example) => [`${sources[example.source].short}: ${example.note}`, example] as const,
      ),
    )('agrees with %s', (_, { given, gives, within }) => {
      const result = calculator.compute(given as Given) as Record<string, number>;
      expect(Object.keys(gives).length).toBeGreaterThan(0);
      for (const [name, printed] of Object.entries(gives)) {
        expect(Math.abs(result[name]! - printed!), name).toBeLessThanOrEqual(within * Math.abs(printed!));
      }
    });

    test('answers or refuses at every corner of its ranges', () => {
      const corners = Object.entries(calculator.inputs).reduce<Record<string, number>[]>(
        (sofar, [name, { range }]) =>
          sofar.flatMap((given) => range.map((end) => ({ ...given, [name]: end }))),
        [{}],
      );
      corners.forEach((given) => check(given as Given));
    });

    test('answers or refuses anywhere in its ranges', () => {
      const given = fc.record(
        Object.fromEntries(
          Object.entries(calculator.inputs).map(([name, { range, kind }]) => [
            name,
            kind === 'years'
              ? fc.integer({ min: range[0], max: range[1] })
              : fc.double({ min: range[0], max: range[1], noNaN: true }),
          ]),
        ),
      );
      fc.assert(
        fc.property(given, (numbers) => void check(numbers as Given)),
        { numRuns: 200 },
      );
    });

    test('takes the house’s figures as the house’s table has them', () => {
      for (const input of Object.values(calculator.inputs)) {
        if ('house' in input) {
          const { kind, range, step } = numberFigures[input.house];
          expect({ kind: input.kind, range: input.range, step: input.step }).toEqual({ kind, range, step });
        }
      }
    });

    test('has an answer for the built-in house', () => {
      const given = Object.fromEntries(
        Object.entries(calculator.inputs).map(([name, input]) => [
          name,
          'house' in input
            ? builtInHouse[input.house]
            : 'from' in input
              ? figureValue(builtInLine, input.from)
              : input.value,
        ]),
      ) as Given;
      expect(calculator.refuse?.(given)).toBeUndefined();
      expect(isRefusal(calculator.compute(given))).toBe(false);
      check(given);
    });
  },
);
