// Duty on a bottling, at the reader's rate.
import { formatNumber as n } from '../../core/format.ts';
import { dutyOn, dutyStrength } from '../../core/maturing/duty.ts';
import { count } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';

export default defineCalculator({
  id: 'duty',
  stage: 'maturing',
  title: 'Duty on the bottles',
  purpose: 'The pure alcohol in the bottles, times your own rate.',
  sources: ['uk-duty-manual', 'uk-technical-guide'],
  cautions: ['licence'],
  inputs: {
    rate: {
      kind: 'money',
      label: 'Duty on a litre of pure alcohol',
      range: [0, 10_000],
      step: 0.01,
      value: 0,
    },
    bottles: { kind: 'count', label: 'Bottles', range: [0, 10_000_000], step: 1, from: 'bottling.bottles' },
    bottle: { house: 'bottleSize' },
    strength: {
      kind: 'strength',
      label: 'Strength',
      range: [0.5, 97],
      step: 0.01,
      from: 'bottling.strength',
    },
    rounding: {
      label: 'Strength for duty',
      options: { down: 'cut to one decimal', none: 'as it is' },
      value: 'down',
    },
  },
  outputs: {
    duty: { kind: 'money', label: 'Duty' },
    perBottle: { kind: 'money', label: 'on one bottle' },
    alcohol: { kind: 'alcohol', label: 'Pure alcohol it is paid on', digits: 2 },
    reckoned: { kind: 'strength', label: 'Strength for duty', digits: 2 },
  },
  compute: ({ rate, bottles, bottle, strength, rounding }) => {
    const reckoned = dutyStrength(strength, rounding);
    return { ...dutyOn(count(Math.floor(bottles)), bottle, reckoned, rate), reckoned };
  },
  steps: (given, result) => [
    'Pure alcohol = bottles × litres in one × strength ÷ 100; duty = pure alcohol × rate',
    `${n(Math.floor(given.bottles), 0)} × ${n(given.bottle / 100, 2)} × ${n(result.reckoned, 2)} ÷ 100 = ${n(result.alcohol, 2)} L`,
    `${n(result.alcohol, 2)} × ${n(given.rate, 2)} = ${n(result.duty, 2)}`,
  ],
  remark: ({ rate }) =>
    rate === 0
      ? 'Type in today’s rate. Rates change, so the handbook keeps none.'
      : 'The rate is yours. Check it, the day it applies from, and the rounding with the authority that takes the duty.',
  examples: [
    {
      given: { rate: 19.56, bottles: 1200, bottle: 75, strength: 40, rounding: 'down' },
      gives: { alcohol: 360, duty: 7041.6 },
      within: 1e-9,
      source: 'uk-duty-manual',
      note: 'its worked case of 2002, no rate of today: a hundred cases of twelve bottles of 75 cL at 40 % vol, 360 L × 19.56',
    },
    {
      given: { rate: 30, bottles: 360, bottle: 70, strength: 46, rounding: 'none' },
      gives: { duty: 3477.6, perBottle: 9.66 },
      within: 1e-9,
      source: 'derived',
      note: '360 × 0.7 × 0.46 × 30, an invented rate',
    },
    {
      given: { rate: 1, bottles: 100, bottle: 100, strength: 7.59, rounding: 'down' },
      gives: { reckoned: 7.5, alcohol: 7.5 },
      within: 1e-9,
      source: 'uk-technical-guide',
      note: 'section 11: 7.59 % vol counts as 7.5',
    },
  ],
});
