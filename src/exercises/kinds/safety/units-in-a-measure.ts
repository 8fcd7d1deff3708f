// Units of alcohol in one measure.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'units-in-a-measure',
  title: 'Units in a measure',
  topic: 'safety',
  level: 1,
  sources: ['cmo-drink', 'derived'],
  of: 'count',
  to: 2,
  within: 0.015,
  vary: {
    measure: ['count', [10, 15, 20, 25, 30, 35, 40, 50]],
    strength: ['strength', [40, 43, 46, 48, 50, 55, 58, 60, 63.5]],
  },
  answer: (v) => (v.measure * v.strength) / 1000,
  prompt: (show) =>
    `A guest is poured ${show.measure} mL of spirit at ${show.strength}. How many British units is that, if a unit is 10 mL of pure alcohol?`,
  slips: [
    {
      family: 'massForVolume',
      gives: (v) => ((v.measure * v.strength) / 100) * 0.78924,
      say: 'That is the grams of pure alcohol. A unit is 10 mL, so the millilitres of pure alcohol are divided by ten.',
    },
    {
      family: 'forgotten',
      gives: (v) => v.measure / 10,
      say: 'The strength was left out: only a part of the measure is alcohol.',
    },
    {
      family: 'thousand',
      gives: (v) => (v.measure * v.strength) / 100,
      say: 'That is the millilitres of pure alcohol. Ten of them are a unit.',
    },
  ],
  working: (v, answer) => [
    'Pure alcohol = measure × strength ÷ 100; units = pure alcohol ÷ 10 mL',
    `${n(v.measure, 0)} × ${n(v.strength, 1)} ÷ 100 = ${n((v.measure * v.strength) / 100, 2)} mL`,
    `${n((v.measure * v.strength) / 100, 2)} ÷ 10 = ${n(answer, 2)} units`,
  ],
});
