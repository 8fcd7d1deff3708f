// What the mill makes of the malt, and how long it takes.
import { formatNumber as n } from '../../core/format.ts';
import { millingTime, splitGrist } from '../../core/milling/grist.ts';
import { percent } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';
import { isRefusal } from '../../core/refusal.ts';

export default defineCalculator({
  id: 'grist-split',
  stage: 'milling',
  title: 'Husk, grits and flour',
  purpose: 'Turns sieve percentages into kilograms, and the rate of the mill into hours.',
  sources: ['memory'],
  inputs: {
    malt: { label: 'Malt', house: 'maltPerMash' },
    husk: { label: 'Husk', house: 'husk' },
    flour: { label: 'Flour', house: 'flour' },
    rate: { house: 'millRate' },
  },
  outputs: {
    husk: { kind: 'mass', label: 'Husk' },
    grits: { kind: 'mass', label: 'Grits' },
    flour: { kind: 'mass', label: 'Flour' },
    gritsPercent: { kind: 'percent', label: 'Grits, share of the grist' },
    time: { kind: 'hours', label: 'Milling takes', digits: 2 },
  },
  refuse: ({ husk, flour }) =>
    husk + flour > 100
      ? `Husk ${husk} % and flour ${flour} % are more than the whole grist; together they can be at most 100 %.`
      : undefined,
  compute: ({ malt, husk, flour, rate }) => {
    const grist = splitGrist(malt, { husk, flour });
    return isRefusal(grist)
      ? grist
      : { ...grist, gritsPercent: percent(100 - husk - flour), time: millingTime(malt, rate) };
  },
  steps: (given, result) => [
    'Grits = 100 − husk − flour',
    `100 − ${given.husk} − ${given.flour} = ${n(result.gritsPercent, 1)} %`,
    'Each part = malt × its percentage ÷ 100',
    `${n(given.malt, 0)} × ${n(result.gritsPercent, 1)} ÷ 100 = ${n(result.grits, 1)} kg of grits`,
    'Time = malt in tonnes ÷ rate',
    `${n(given.malt / 1000, 3)} ÷ ${given.rate} = ${n(result.time, 2)} h`,
  ],
  examples: [
    {
      given: { malt: 1000, husk: 20, flour: 10, rate: 2.5 },
      gives: { husk: 200, grits: 700, flour: 100, time: 0.4 },
      within: 1e-9,
      source: 'common-practice',
      note: 'the usual 20, 70 and 10 per cent',
    },
  ],
});
