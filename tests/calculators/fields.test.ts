// How a field begins and when it counts: sizes that follow the house, choices that leave a field without effect.
import { expect, test } from 'vitest';
import { isIdle, isChoice, isNumber, startOfInput, type Input } from '../../src/calculators/define.ts';
import { calculators } from '../../src/calculators/index.ts';
import { builtInHouse } from '../../src/house/figures.ts';

const cooling = {
  kind: 'power',
  label: 'Cooling',
  range: [0, 1000],
  step: 1,
  value: 10,
  sized: { by: 'wortVolume' },
} as const;
const house = (wortVolume: number) => ({ ...builtInHouse, wortVolume }) as typeof builtInHouse;

test('a value grows with the house to two figures, and stays in its range', () => {
  const at = (times: number) => startOfInput(cooling, house(times * builtInHouse.wortVolume), builtInHouse);
  expect([1, 2, 0.5, 7, 6.936, 500].map(at)).toEqual([10, 20, 5, 70, 69, 1000]);
});

test('a surface grows by two thirds of the power: eight times the volume, four times the loss', () => {
  const loss = {
    ...cooling,
    range: [0, 5000],
    value: 60,
    sized: { by: 'wortVolume', power: 2 / 3 },
  } as const;
  expect(startOfInput(loss, house(8 * builtInHouse.wortVolume), builtInHouse)).toBe(240);
});

test('a field is idle while its choice is another', () => {
  const strength: Input = {
    ...cooling,
    kind: 'strength',
    usedWhen: { choice: 'foreshotsBy', is: ['strength'] },
  };
  expect(isIdle(strength, { foreshotsBy: 'share' })).toBe(true);
  expect(isIdle(strength, { foreshotsBy: 'strength' })).toBe(false);
  expect(isIdle(cooling, {})).toBe(false);
});

test.each(calculators.map((calculator) => [calculator.id, calculator] as const))(
  '%s: an idle field changes no result, and readings name inputs',
  (_, calculator) => {
    const { given } = calculator.examples[0];
    for (const [name, input] of Object.entries(calculator.inputs)) {
      if (!isNumber(input) || !input.usedWhen) continue;
      const choice = calculator.inputs[input.usedWhen.choice]!;
      expect(isChoice(choice) && input.usedWhen.is.every((option) => option in choice.options)).toBe(true);
      if (!isIdle(input, given)) continue;
      const moved = { ...given, [name]: (input.range[0] + input.range[1]) / 2 };
      expect(calculator.compute(moved), name).toEqual(calculator.compute(given));
    }
    for (const name of calculator.readings ?? []) expect(Object.keys(calculator.inputs)).toContain(name);
  },
);
