// About how much malt a year takes.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'malt-for-a-year',
  title: 'Malt for a year',
  topic: 'milling',
  form: 'estimate',
  level: 1,
  sources: ['derived'],
  of: 'mass',
  to: 0,
  vary: {
    malt: ['mass', [800, 1000, 1200, 1500, 2000, 4500, 9000], 'house.maltPerMash'],
    mashes: ['count', [4, 5, 6, 8, 10, 12, 18], 'house.mashesPerWeek'],
    weeks: ['count', [44, 46, 48, 50], 'house.weeksPerYear'],
  },
  answer: ({ malt, mashes, weeks }) => malt * mashes * weeks,
  prompt: (show) =>
    `A house mills ${show.malt} of malt for a mash, ${show.mashes} mashes a week, ${show.weeks} weeks a year. About how much malt is that in a year?`,
  working: ({ malt, mashes, weeks }, answer) => [
    `In a week: ${n(malt, 0)} × ${mashes} = ${n(malt * mashes, 0)} kg`,
    `In a year: × ${weeks}, about ${n(answer, 0)} kg, or ${n(answer / 1000, 0)} t`,
  ],
  slips: [
    {
      family: 'otherFigure',
      gives: ({ malt, mashes }) => malt * mashes,
      say: 'That is a week’s malt; a year has all its working weeks.',
    },
    {
      family: 'forgotten',
      gives: ({ malt, weeks }) => malt * weeks,
      say: 'One mash a week was counted.',
    },
  ],
});
