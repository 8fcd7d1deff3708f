// What is missing between the wash and what came out of the wash still.
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'alcohol-not-accounted-for',
  title: 'Alcohol not accounted for',
  topic: 'line',
  level: 3,
  sources: ['derived'],
  of: 'alcohol',
  to: 1,
  within: 0.01,
  vary: {
    wash: ['volume20', [12_000, 12_100, 12_200]],
    strength: ['strength', [8, 8.1, 8.2]],
    lowWines: ['volume20', [4000, 4100, 4150]],
    lowWinesStrength: ['strength', [22.5, 22.8, 23]],
    potAleStrength: ['strength', [0.1, 0.2]],
  },
  answer: (v) => {
    const missing = (v.wash * v.strength - v.lowWines * v.lowWinesStrength - 8000 * v.potAleStrength) / 100;
    return missing > 5 ? missing : NaN;
  },
  prompt: (show) =>
    `The wash still was charged with ${show.wash} at ${show.strength}. It gave ${show.lowWines} of low wines at ${show.lowWinesStrength}, and 8,000 L of pot ale at ${show.potAleStrength}. How much pure alcohol is not accounted for?`,
  slips: [
    {
      family: 'forgotten',
      gives: (v) => (v.wash * v.strength - v.lowWines * v.lowWinesStrength) / 100,
      say: 'The alcohol in the pot ale was left out. It is not missing: it is there, if lost to the house.',
    },
    {
      family: 'bulkForAlcohol',
      gives: (v) => v.wash - v.lowWines - 8000,
      say: 'Bulk litres were subtracted. They do not tell where the alcohol is.',
    },
    {
      family: 'percent',
      gives: (_, answer) => 100 * answer,
      say: 'The strengths in per cent were not divided by 100.',
    },
  ],
  working: (v, answer) => [
    `In the wash: ${w(v.wash)} × ${v.strength} ÷ 100 = ${w((v.wash * v.strength) / 100)} L`,
    `In the low wines: ${w(v.lowWines)} × ${v.lowWinesStrength} ÷ 100 = ${w((v.lowWines * v.lowWinesStrength) / 100)} L; in the pot ale: 8,000 × ${v.potAleStrength} ÷ 100 = ${w(80 * v.potAleStrength)} L`,
    `${w((v.wash * v.strength) / 100)} − ${w((v.lowWines * v.lowWinesStrength) / 100)} − ${w(80 * v.potAleStrength)} = ${n(answer, 1)} L. Look first for a reading without its temperature.`,
  ],
});
