// The heat that the first water of a mash takes.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const kind = sum({
  id: 'heat-for-mash-water',
  title: 'Heat for the first water',
  topic: 'heat',
  level: 1,
  sources: ['perry-heat', 'derived'],
  of: 'energy',
  to: 0,
  vary: {
    water: ['volume', [5000, 5500, 6000, 6500, 7000], 'mash.firstWater'],
    from: ['temperature', [8, 10, 12, 14, 16]],
    to: ['temperature', [66, 67, 68, 69, 70, 71]],
  },
  answer: ({ water, from, to }) => (water * 4.2 * (to - from)) / 1000,
  prompt: (show) =>
    `The first water of a mash, ${show.water}, comes in at ${show.from} and must be ${show.to}. A litre takes 4.2 kJ for each degree. How much heat does it take, with nothing lost?`,
  slips: [
    {
      family: 'temperature',
      gives: ({ water, to }) => (water * 4.2 * to) / 1000,
      say: 'It was warmed from 0 °C. What counts is the rise from where it comes in.',
    },
    {
      family: 'forgotten',
      gives: ({ water, from, to }) => (water * (to - from)) / 1000,
      say: 'The 4.2 kJ for a litre and a degree were left out.',
    },
    {
      family: 'thousand',
      gives: ({ water, from, to }) => water * 4.2 * (to - from),
      say: 'Those are kilojoules. A megajoule is a thousand of them.',
    },
  ],
  working: ({ water, from, to }, answer) => [
    'Heat = litres × 4.2 × rise, in kilojoules',
    `Rise: ${n(to, 0)} − ${n(from, 0)} = ${n(to - from, 0)} degrees`,
    `${n(water, 0)} × 4.2 × ${n(to - from, 0)} ÷ 1,000 = ${n(answer, 0)} MJ`,
  ],
});

export default { ...kind, since: 7 };
