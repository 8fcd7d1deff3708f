// How many corns to count before a count can show what is asked.
import { formatNumber as n } from '../../core/format.ts';
import { growth, planCount } from '../../core/malting/germination.ts';
import { count } from '../../core/quantity.ts';
import { isRefusal } from '../../core/refusal.ts';
import { defineCalculator } from '../define.ts';

export default defineCalculator({
  id: 'germination-plan',
  stage: 'malting',
  title: 'How many corns to count',
  purpose: 'How many dishes show that a lot is good enough.',
  sources: ['clopper-pearson-1934', 'derived'],
  inputs: {
    expected: { kind: 'percent', label: 'Germination expected', range: [50, 99.9], step: 0.1, value: 98 },
    lowest: { kind: 'percent', label: 'To show at least', range: [30, 99.5], step: 0.5, value: 95 },
    dish: { kind: 'count', label: 'Corns in a dish', range: [10, 500], step: 10, value: 100 },
  },
  outputs: {
    dishes: { kind: 'count', label: 'Dishes' },
    counted: { kind: 'count', label: 'Corns to count' },
    fewest: { kind: 'count', label: 'Fewest that must grow' },
    chance: { kind: 'percent', label: 'Chance that such a lot passes', digits: 0 },
    low: { kind: 'percent', label: 'If as expected: at least', digits: 2 },
    high: { kind: 'percent', label: 'If as expected: at most', digits: 2 },
  },
  refuse: ({ dish }) =>
    dish % 1 === 0 ? undefined : `A dish holds a whole number of corns; you gave ${String(dish)}.`,
  compute: ({ expected, lowest, dish }) => {
    const plan = planCount(expected, lowest, dish);
    if (isRefusal(plan)) return plan;
    const likely = count(Math.floor((plan.counted * expected) / 100 + 1e-9));
    const { low, high } = growth(likely, plan.counted);
    return { ...plan, low, high };
  },
  steps: (given, result) => [
    `Of the corns counted, ${given.expected} % are expected to grow, rounded down; dishes are added until a lot of ${given.lowest} % would reach that number in at most 2.5 counts of a hundred`,
    `${n(result.dishes, 0)} × ${n(given.dish, 0)} = ${n(result.counted, 0)} corns are the first to do it; the exact limits would then be ${n(result.low, 2)} and ${n(result.high, 2)} %`,
    `With ${n(result.counted, 0)} corns, ${n(result.fewest, 0)} grown are the fewest that still show it; with one fewer the lower limit is below ${given.lowest} %`,
    `A lot of ${given.expected} % gives ${n(result.fewest, 0)} or more in ${n(result.chance, 1)} of a hundred counts: the sum of the chances of each such number`,
  ],
  remark: (_, { chance, low, high }) => {
    const width = `Half the gap between the limits is ${n((high - low) / 2, 1)} points.`;
    return chance < 80
      ? `${width} Good as the lot is, ${n(100 - chance, 0)} counts in a hundred would fail to show it. Count more dishes if that is too many.`
      : width;
  },
  examples: [
    {
      given: { expected: 99.9, lowest: 96, dish: 10 },
      gives: { counted: 140 },
      within: 1e-9,
      source: 'derived',
      note: 'by hand, with one corn failing: 0.96^140 + 140 × 0.04 × 0.96^139 = 0.0225 is below 0.025, and the same for 130 corns, 0.0319, is not',
    },
  ],
});
