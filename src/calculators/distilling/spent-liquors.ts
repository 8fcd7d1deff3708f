// Pot ale and spent lees: how much, and what alcohol leaves with them.
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { litres20, litresOfAlcohol, percent, quantity } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';

export default defineCalculator({
  id: 'spent-liquors',
  stage: 'distilling',
  title: 'Pot ale and spent lees',
  purpose: 'What both stills leave in a week and a year, and the alcohol lost in it.',
  sources: ['derived', 'common-practice'],
  cautions: ['hot-liquor'],
  inputs: {
    wash: { kind: 'volume20', label: 'Wash', range: [10, 300_000], step: 10, from: 'wash.volume' },
    potAle: {
      kind: 'volume20',
      label: 'Pot ale from it',
      range: [1, 300_000],
      step: 10,
      from: 'potAle.volume',
    },
    potAleStrength: {
      kind: 'strength',
      label: 'Strength of the pot ale',
      range: [0, 10],
      step: 0.01,
      from: 'potAle.strength',
    },
    lees: { kind: 'volume20', label: 'Spent lees', range: [0, 300_000], step: 10, from: 'spentLees.volume' },
    leesStrength: {
      kind: 'strength',
      label: 'Strength of the lees',
      range: [0, 20],
      step: 0.01,
      from: 'spentLees.strength',
    },
    heart: {
      kind: 'alcohol',
      label: 'Alcohol in the heart',
      range: [0.1, 60_000],
      step: 1,
      from: 'heart.alcohol',
    },
    mashesPerWeek: { house: 'mashesPerWeek' },
    weeksPerYear: { house: 'weeksPerYear' },
  },
  main: ['wash', 'potAle', 'lees', 'mashesPerWeek'],
  outputs: {
    ratio: { kind: 'percent', label: 'Pot ale, share of the wash' },
    potAlePerAlcohol: { kind: 'perAlcohol', label: 'Pot ale, for a litre in the heart' },
    leesPerAlcohol: { kind: 'perAlcohol', label: 'Spent lees, for a litre in the heart' },
    potAleWeek: { kind: 'volume20', label: 'Pot ale in a week' },
    leesWeek: { kind: 'volume20', label: 'Spent lees in a week' },
    potAleYear: { kind: 'volume20', label: 'Pot ale in a year' },
    leesYear: { kind: 'volume20', label: 'Spent lees in a year' },
    alcohol: { kind: 'alcohol', label: 'Alcohol in both, a mash' },
    alcoholYear: { kind: 'alcohol', label: 'Alcohol in both, a year' },
    lost: { kind: 'percent', label: 'Share of the alcohol lost there', digits: 2 },
  },
  refuse: ({ wash, potAle }) =>
    potAle > wash
      ? `${n(potAle, 0)} L of pot ale cannot come from ${n(wash, 0)} L of wash; low wines have left it.`
      : undefined,
  compute: ({ wash, potAle, potAleStrength, lees, leesStrength, heart, mashesPerWeek, weeksPerYear }) => {
    const alcohol = (potAle * potAleStrength + lees * leesStrength) / 100;
    const year = mashesPerWeek * weeksPerYear;
    return {
      ratio: percent((100 * potAle) / wash),
      potAlePerAlcohol: quantity('perAlcohol', potAle / heart),
      leesPerAlcohol: quantity('perAlcohol', lees / heart),
      potAleWeek: litres20(potAle * mashesPerWeek),
      leesWeek: litres20(lees * mashesPerWeek),
      potAleYear: litres20(potAle * year),
      leesYear: litres20(lees * year),
      alcohol: litresOfAlcohol(alcohol),
      alcoholYear: litresOfAlcohol(alcohol * year),
      lost: percent((100 * alcohol) / (heart + alcohol)),
    };
  },
  steps: (given, result) => [
    'Alcohol = volume × strength ÷ 100, for each, and added',
    `${w(given.potAle)} × ${w(given.potAleStrength)} ÷ 100 + ${w(given.lees)} × ${w(given.leesStrength)} ÷ 100 = ${w(result.alcohol)} L`,
    `Pot ale to a litre of pure alcohol in the heart = ${w(given.potAle)} ÷ ${w(given.heart)} = ${n(result.potAlePerAlcohol, 1)} L; lees ${w(given.lees)} ÷ ${w(given.heart)} = ${n(result.leesPerAlcohol, 1)} L`,
    `In a year, × ${given.mashesPerWeek} × ${given.weeksPerYear}: ${n(result.potAleYear, 0)} L and ${n(result.leesYear, 0)} L`,
    `Lost = ${w(result.alcohol)} ÷ (${w(given.heart)} + ${w(result.alcohol)}) × 100 = ${n(result.lost, 2)} %`,
  ],
  remark: (_, { lost, ratio, potAlePerAlcohol }) =>
    lost > 2
      ? `${n(lost, 1)} % of the alcohol is left behind; keeping 98–99.5 % is recalled as good. Run the stills down further, and weigh the heat of the last litres against it.`
      : `About two thirds of the wash is common practice for pot ale, and about 7.4 L to a litre of pure alcohol follow from a wash of 8.5 % vol and low wines of 23; here it is ${n(ratio, 1)} % and ${n(potAlePerAlcohol, 1)} L. Both leave hot and sour, pot ale rich in what uses up oxygen, the lees with copper: the site’s consents say where they may go.`,
  examples: [
    {
      given: {
        wash: 12_000,
        potAle: 8000,
        potAleStrength: 0.1,
        lees: 0,
        leesStrength: 0,
        heart: 1012,
        mashesPerWeek: 1,
        weeksPerYear: 1,
      },
      gives: { ratio: 66.667, potAlePerAlcohol: 7.75 },
      within: 0.035,
      source: 'derived',
      note: '12,000 L of wash leave 8,000 of pot ale; 7.5–8 L to a litre of pure alcohol for a wash of 8.5 % vol, here with 1,012 L in the heart',
    },
  ],
});
