// About how many barrels lie in a store.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'size-of-a-store',
  title: 'About how many barrels?',
  topic: 'line',
  form: 'estimate',
  level: 2,
  sources: ['common-practice', 'derived'],
  of: 'count',
  to: 0,
  within: 0.25,
  vary: {
    alcohol: ['volume20', [50_000, 80_000, 100_000, 200_000, 300_000, 500_000, 1_000_000, 2_000_000]],
    years: ['years', [5, 8, 10, 12, 15, 20], 'house.yearsInWood'],
  },
  answer: (v) => (v.alcohol / (200 * 0.635)) * v.years,
  prompt: (show) =>
    `Without paper: a house makes ${show.alcohol} of pure alcohol a year, fills it all into barrels of 200 L at 63.5 % vol, and keeps each for ${show.years}. About how many barrels lie in its store, once as many leave as come?`,
  slips: [
    {
      family: 'forgotten',
      gives: (v) => v.alcohol / (200 * 0.635),
      say: 'That is what is filled in one year. The store holds all the years.',
    },
    {
      family: 'thousand',
      gives: (_, answer) => answer / 10,
      say: 'A ten was lost.',
    },
    {
      family: 'thousand',
      gives: (_, answer) => answer * 10,
      say: 'There is a ten too much in it.',
    },
  ],
  working: (v, answer) => [
    'A barrel takes 200 × 63.5 ÷ 100 = 127 L of pure alcohol, say 125: eight barrels to a thousand litres',
    `${n(v.alcohol, 0)} ÷ 127 = ${n(v.alcohol / 127, 0)} barrels a year, × ${v.years} years = about ${n(answer, 0)}`,
  ],
});
