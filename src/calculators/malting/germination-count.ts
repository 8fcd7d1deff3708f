// What a germination count says, and how surely.
import { formatNumber as n } from '../../core/format.ts';
import { GERMINATION_WANTED, growth } from '../../core/malting/germination.ts';
import { defineCalculator } from '../define.ts';

export default defineCalculator({
  id: 'germination-count',
  stage: 'malting',
  title: 'Germination, and how sure',
  purpose: 'A count of corns that grew, with its limits.',
  sources: ['clopper-pearson-1934', 'montana-barley'],
  readings: ['counted', 'grown'],
  inputs: {
    counted: { kind: 'count', label: 'Corns counted', range: [10, 5000], step: 100, value: 400 },
    grown: { kind: 'count', label: 'Corns that grew', range: [0, 5000], step: 1, value: 388 },
  },
  outputs: {
    share: { kind: 'percent', label: 'Germination', digits: 1 },
    low: { kind: 'percent', label: 'The lot: at least', digits: 2 },
    high: { kind: 'percent', label: 'The lot: at most', digits: 2 },
    simple: { kind: 'percent', label: 'By the simple rule, ±', digits: 2 },
  },
  refuse: ({ counted, grown }) =>
    grown > counted
      ? `${n(grown, 0)} corns grew out of ${n(counted, 0)}; no more can grow than were counted.`
      : grown % 1 !== 0 || counted % 1 !== 0
        ? `Corns are counted whole; you gave ${String(grown)} of ${String(counted)}.`
        : undefined,
  compute: ({ counted, grown }) => growth(grown, counted),
  steps: (given, result) => [
    `Share = grown ÷ counted × 100 = ${n(given.grown, 0)} ÷ ${n(given.counted, 0)} × 100 = ${n(result.share, 2)} %`,
    `Lower limit: the share of a lot that gives ${n(given.grown, 0)} or more in only 2.5 counts of a hundred`,
    given.grown === 0
      ? 'None grew, so the lower limit is 0 %'
      : `The chances of ${n(given.grown, 0)} and of every higher number are summed for one share after another; they come to 0.025 at ${n(result.low, 2)} %`,
    `Upper limit: the share of a lot that gives ${n(given.grown, 0)} or fewer in only 2.5 counts of a hundred`,
    given.grown === given.counted
      ? 'All grew, so the upper limit is 100 %'
      : `In the same way, ${n(result.high, 2)} %`,
    `The simple rule, ± 1.96 × √(share × (100 − share) ÷ counted), would say ± ${n(result.simple, 2)}; near 0 and 100 % it is too narrow`,
  ],
  remark: (_, { low, high }) =>
    low >= GERMINATION_WANTED
      ? `Even the lower limit meets the ${GERMINATION_WANTED} % wanted.`
      : high < GERMINATION_WANTED
        ? `Even the upper limit falls short of the ${GERMINATION_WANTED} % wanted. Peroxide tells sleeping corns from dead ones.`
        : `The ${GERMINATION_WANTED} % wanted lies between the limits, so this count cannot settle it. Count more corns.`,
  examples: [
    {
      given: { counted: 100, grown: 95 },
      gives: { share: 95, low: 88.72, high: 98.36 },
      within: 1e-4,
      source: 'memory',
      note: 'tables of exact limits, to two decimals',
    },
    {
      given: { counted: 100, grown: 100 },
      gives: { share: 100, low: 96.3783298, high: 100, simple: 0 },
      within: 1e-6,
      source: 'derived',
      note: 'when all grew the lower limit is the hundredth root of 0.025: exp(−3.688879 ÷ 100), by hand',
    },
    {
      given: { counted: 400, grown: 392 },
      gives: { share: 98, simple: 1.372 },
      within: 5e-4,
      source: 'derived',
      note: 'a worked sum: 1.96 × √(0.98 × 0.02 ÷ 400), one standard error being 0.70',
    },
    {
      given: { counted: 25, grown: 5 },
      gives: { share: 20, low: 6.8, high: 40.7 },
      within: 0.005,
      source: 'conover-1999',
      note: '5 of 25 seedlings: 0.068 and 0.407, by tables and by formula, to three decimals',
    },
  ],
});
