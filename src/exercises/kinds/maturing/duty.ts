// Duty on a bottling, at a rate that the question brings.
import duty from '../../../calculators/maturing/duty.ts';
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

export default exercise(duty, {
  topic: 'law',
  level: 2,
  ask: 'duty',
  vary: {
    rate: [12, 15, 18, 20, 25, 28, 30, 32],
    bottles: [240, 300, 360, 420, 480, 600, 900],
    bottle: [50, 70],
    strength: [40, 43, 46, 48, 50, 57.1],
    rounding: ['down'],
  },
  within: 0.004,
  prompt: (show, { rate }) =>
    `${show.bottles} bottles of ${show.bottle} at ${show.strength} leave the bond. Your trainer sets a rate of ${rate}, in your own money, on each litre of pure alcohol. What is the duty?`,
  slips: [
    {
      family: 'bulkForAlcohol',
      gives: ({ rate, bottles, bottle }) => (rate * bottles * bottle) / 100,
      say: 'The rate was put on bulk litres. It is for pure alcohol: multiply by the strength.',
    },
    {
      family: 'percent',
      gives: ({ rate, bottles, bottle, strength }) => (rate * bottles * bottle * strength) / 100,
      say: 'The strength was not divided by 100. Only so many hundredths of a litre are alcohol.',
    },
    {
      family: 'forgotten',
      gives: ({ rate, bottles, strength }) => (rate * bottles * strength) / 100,
      say: 'Each bottle was counted as a whole litre. Multiply by what it holds.',
    },
  ],
  working: ({ rate, bottles, bottle, strength }, { alcohol, duty }) => [
    'Pure alcohol = bottles × litres in one × strength ÷ 100; duty = pure alcohol × rate',
    `${w(bottles)} × ${w(bottle / 100)} × ${n(strength, 1)} ÷ 100 = ${w(alcohol)} L`,
    `${w(alcohol)} × ${w(rate)} = ${n(duty, 2)}`,
  ],
});
