// Every calculator, from its declaration: examples from outside, corners, nonsense, agreement with the house's table.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isChoice, isNumber, isRows, type AnyGiven } from '../../src/calculators/define.ts';
import { calculators } from '../../src/calculators/index.ts';
import { isRefusal } from '../../src/core/refusal.ts';
import { sources } from '../../src/core/sources.ts';
import { builtInLine } from '../../src/house/line-of.ts';
import { builtInHouse, choiceFigures, numberFigures } from '../../src/house/figures.ts';
import { figureValue } from '../../src/house/prose.ts';
import { anyGiven, corners } from './any-given.ts';

test('ids are unique', () => {
  expect(new Set(calculators.map(({ id }) => id)).size).toBe(calculators.length);
});

describe.each(calculators.map((calculator) => [calculator.id, calculator] as const))(
  '%s',
  (_, calculator) => {
    /** Answers, or is refused with a sentence; never a number that is not one. */
    function check(given: AnyGiven): void {
      const refusal = calculator.refuse?.(given);
      if (refusal !== undefined) return void expect(refusal).toMatch(/[.]$/);
      const result = calculator.compute(given);
      if (isRefusal(result)) return void expect(result.refused).toMatch(/[.]$/);
      for (const name of Object.keys(calculator.outputs)) {
        expect(result[name], `${name} of ${JSON.stringify(given)}`).toSatisfy(Number.isFinite);
      }
      const said = [...calculator.steps(given, result), calculator.remark?.(given, result) ?? ''];
      for (const sentence of said) expect(sentence).not.toMatch(/NaN|undefined|Infinity/);
      for (const column of calculator.chart?.(given, result).columns ?? []) {
        expect(column.values.every(Number.isFinite), column.label).toBe(true);
      }
    }

    test('has an example from outside', () => {
      expect(calculator.examples.length, `${calculator.id} has no example`).toBeGreaterThan(0);
    });

    test.each(
      calculator.examples.map(
        (example) => [`${sources[example.source].short}: ${example.note}`, example] as const,
      ),
    )('agrees with %s', (_, { given, gives, within }) => {
      expect(calculator.refuse?.(given)).toBeUndefined();
      const result = calculator.compute(given) as Record<string, number>;
      expect(Object.keys(gives).length).toBeGreaterThan(0);
      for (const [name, printed] of Object.entries(gives)) {
        expect(Math.abs(result[name]! - printed), name).toBeLessThanOrEqual(within * Math.abs(printed));
      }
    });

    test('answers or refuses at every corner of its ranges', () => corners(calculator).forEach(check));

    test('answers or refuses anywhere in its ranges', () => {
      fc.assert(fc.property(anyGiven(calculator), check), { numRuns: 200, endOnFailure: true });
    });

    test('takes the house’s figures as the table of figures has them, or within narrower limits', () => {
      for (const [name, input] of Object.entries(calculator.inputs)) {
        if (isChoice(input) && 'house' in input) {
          expect(input.options).toEqual(choiceFigures[input.house].options);
        }
        if (isNumber(input) && 'house' in input) {
          const { kind, range, step } = numberFigures[input.house];
          expect({ kind: input.kind, step: input.step }).toEqual({ kind, step });
          expect(input.range[0]).toBeGreaterThanOrEqual(range[0]);
          expect(input.range[1]).toBeLessThanOrEqual(range[1]);
          if (input.range[0] > range[0]) {
            const given = { ...calculator.examples[0].given, [name]: range[0] };
            expect(calculator.refuse?.(given)).toContain(`${input.label}: “${range[0]}” was given`);
          }
        }
      }
    });

    test('has an answer as it stands for the built-in house', () => {
      const given: AnyGiven = Object.fromEntries(
        Object.entries(calculator.inputs).map(([name, input]) => {
          if (isRows(input)) return [name, input.value];
          if (isChoice(input)) return [name, 'house' in input ? builtInHouse[input.house] : input.value];
          return [
            name,
            'house' in input
              ? builtInHouse[input.house]
              : 'from' in input
                ? figureValue(builtInLine(), input.from)
                : input.value,
          ];
        }),
      );
      expect(calculator.refuse?.(given)).toBeUndefined();
      expect(isRefusal(calculator.compute(given))).toBe(false);
      check(given);
    });
  },
);
