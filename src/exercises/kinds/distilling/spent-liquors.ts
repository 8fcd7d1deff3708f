// The alcohol lost in pot ale and spent lees, as a part of all that left.
import spentLiquors from '../../../calculators/distilling/spent-liquors.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

export default exercise(spentLiquors, {
  title: 'Alcohol lost with pot ale and lees',
  level: 2,
  ask: 'lost',
  vary: {
    wash: [9000],
    potAle: [4800, 5000, 5200, 5400, 5600, 6000],
    potAleStrength: [0.08, 0.1, 0.12, 0.15],
    lees: [1500, 1600, 1700, 1800, 1900, 2000],
    leesStrength: [0.08, 0.1, 0.12, 0.15],
    heart: [540, 560, 580, 600, 620, 640],
  },
  renewed: 7,
  before: {
    vary: {
      wash: [9000],
      potAle: [4800, 5000, 5200, 5400, 5600, 6000],
      potAleStrength: [0.08, 0.1, 0.12, 0.15],
      lees: [2400, 2600, 2800, 3000, 3200],
      leesStrength: [0.08, 0.1, 0.12, 0.15],
      heart: [540, 560, 580, 600, 620, 640],
    },
  },
  within: 0.006,
  prompt: (show, { heart }) =>
    `One mash left ${show.potAle} of pot ale at ${show.potAleStrength} and ${show.lees} of spent lees at ${show.leesStrength}, and the heart took ${n(heart, 0)} L of pure alcohol. Of all the alcohol that left the stills, how many per cent were lost with pot ale and lees?`,
  slips: [
    {
      family: 'wrongWhole',
      gives: (_, { alcohol }) => alcohol,
      say: 'Those are the litres of pure alcohol lost. Divide them by all that left, heart and losses, and multiply by 100.',
    },
    {
      family: 'wrongWhole',
      gives: ({ heart }, { alcohol }) => (100 * alcohol) / heart,
      say: 'That is the loss as a part of the heart alone. All that left is the heart and the loss together.',
    },
    {
      family: 'forgotten',
      gives: ({ potAle, potAleStrength, heart }) => {
        const lost = (potAle * potAleStrength) / 100;
        return (100 * lost) / (heart + lost);
      },
      say: 'The spent lees were forgotten. Both stills leave something behind.',
    },
    {
      family: 'percent',
      gives: ({ heart }, { alcohol }) => (100 * (100 * alcohol)) / (heart + 100 * alcohol),
      say: 'The strengths in per cent were not divided by 100.',
    },
    {
      family: 'percent',
      gives: (_, { lost }) => lost / 100,
      say: 'That is the part as a fraction. The question asks for per cent.',
    },
  ],
  working: (given, { alcohol, lost }) => [
    'Alcohol = volume × strength ÷ 100, for each, and added',
    `${n(given.potAle, 0)} × ${n(given.potAleStrength, 2)} ÷ 100 + ${n(given.lees, 0)} × ${n(given.leesStrength, 2)} ÷ 100 = ${n(alcohol, 2)} L`,
    `Lost = ${n(alcohol, 2)} ÷ (${n(given.heart, 0)} + ${n(alcohol, 2)}) × 100 = ${n(lost, 2)} %`,
  ],
});
