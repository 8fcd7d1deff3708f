// Charts: axes that hold still, whole marks where things are counted, bars for what is counted off, limits in reach.
import { expect, test } from 'vitest';
import { calculators } from '../../src/calculators/index.ts';
import { axisMarks, steadyEnds } from '../../src/islands/plot-axis.ts';

test('an axis has round ends', () => {
  expect(steadyEnds([0.3, 9.4], 5)).toEqual([0, 10]);
  expect(steadyEnds([59.3, 63.5], 5)).toEqual([59, 64]);
  const [low, high] = steadyEnds([7, 7], 5);
  expect(low).toBeLessThan(7);
  expect(high).toBeGreaterThan(7);
});

test('an axis stays while the values lie within it and fill half of it, and moves when they do not', () => {
  const before = steadyEnds([0, 9.4], 5);
  expect(steadyEnds([0, 6], 5, before)).toBe(before);
  expect(steadyEnds([0, 10.1], 5, before)).toEqual([0, 15]); // a fifth of 10.1 is 2.02, and the next round step is 5
  expect(steadyEnds([0, 4], 5, before)).toEqual([0, 4]);
});

test('counts have whole marks only', () => {
  expect(axisMarks([1, 3], 8, true)).toEqual([1, 2, 3]);
  expect(axisMarks([1, 3], 8, false).length).toBeGreaterThan(3);
});

for (const calculator of calculators.filter(({ chart }) => chart)) {
  const { given } = calculator.examples[0];
  const result = calculator.compute(given) as Readonly<Record<string, number>>;
  const chart = calculator.chart!(given, result);
  test(`${calculator.id}: columns drawn are there, and as long as the first`, () => {
    for (const at of [0, 1, ...(chart.below === undefined ? [] : [chart.below])])
      expect(chart.columns[at]!.values.length).toBe(chart.columns[0]!.values.length);
    for (const { label } of chart.limits ?? []) expect(label).not.toBe('');
  });
}

test('the limits that the sums speak of are drawn', () => {
  const limitsOf = (id: string) => {
    const calculator = calculators.find((each) => each.id === id)!;
    const { given } = calculator.examples[0];
    const result = calculator.compute(given) as Readonly<Record<string, number>>;
    return calculator.chart!(given, result).limits!.map(({ value }) => value);
  };
  expect(limitsOf('carbon-dioxide-in-a-room')).toEqual([5000, 15_000]); // over 8 hours and 15 minutes: common practice
  expect(limitsOf('washback-heat')).toEqual([34]); // °C: common practice
});
