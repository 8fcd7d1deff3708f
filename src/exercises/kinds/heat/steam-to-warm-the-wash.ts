// The steam that brings a charge of wash to the boil.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const kind = sum({
  id: 'steam-to-warm-the-wash',
  title: 'Steam to warm the wash',
  topic: 'heat',
  level: 2,
  sources: ['perry-heat', 'derived'],
  of: 'mass',
  to: 0,
  vary: {
    wash: ['volume', [6500, 7000, 7200, 7500, 8000], 'wash.volume'],
    from: ['temperature', [25, 28, 30, 32, 35]],
    to: ['temperature', [91, 92, 93, 94]],
  },
  answer: ({ wash, from, to }) => (wash * 4.2 * (to - from)) / 2260,
  prompt: (show) =>
    `${show.wash} of wash go into the still at ${show.from} and must reach ${show.to} before they boil. Take wash for water: a litre takes 4.2 kJ for each degree. A kilogram of steam gives 2,260 kJ as it turns to water in the coil. How much steam does the warming take, with nothing lost?`,
  slips: [
    {
      family: 'temperature',
      gives: ({ wash, to }) => (wash * 4.2 * to) / 2260,
      say: 'It was warmed from 0 °C. What counts is the rise from where it is filled.',
    },
    {
      family: 'forgotten',
      gives: ({ wash, from, to }) => (wash * (to - from)) / 2260,
      say: 'The 4.2 kJ for a litre and a degree were left out.',
    },
    {
      family: 'wrongConstant',
      gives: ({ wash, from, to }) => (wash * 4.2 * (to - from)) / 855,
      say: '855 kJ are what a kilogram of alcohol takes. Steam gives 2,260.',
    },
  ],
  working: ({ wash, from, to }, answer) => [
    'Steam = litres × 4.2 × rise ÷ 2,260',
    `Heat: ${n(wash, 0)} × 4.2 × ${n(to - from, 0)} = ${n(wash * 4.2 * (to - from), 0)} kJ`,
    `${n(wash * 4.2 * (to - from), 0)} ÷ 2,260 = ${n(answer, 0)} kg`,
  ],
});

export default { ...kind, since: 7 };
