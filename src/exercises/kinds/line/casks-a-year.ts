// Casks filled in a year, from the mashes of a week.
import { format, formatNumber as n } from '../../../core/format.ts';
import { wholeNumberOf } from '../../question.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'casks-a-year',
  title: 'Casks in a year',
  topic: 'line',
  level: 2,
  sources: ['derived'],
  of: 'count',
  to: 0,
  whole: 'up',
  vary: {
    mashes: ['count', [4, 5, 6, 8, 10, 12, 14], 'house.mashesPerWeek'],
    weeks: ['count', [40, 42, 44, 45, 46, 48], 'house.weeksPerYear'],
    size: ['volume', [190, 200, 225, 230, 250]],
  },
  quotes: { mash: [0, (_, { filling }) => filling.volume] },
  answer: (v) => (v.mash * v.mashes * v.weeks) / v.size,
  prompt: (show, _, v) =>
    `Each mash ends as ${format(v.mash, 'volume20', 0)} of spirit at filling strength. The house will mash ${show.mashes} times a week for ${show.weeks} weeks and fill casks of ${show.size}. How many casks are needed for the year?`,
  slips: [
    {
      family: 'forgotten',
      gives: (v, answer) => answer / v.weeks,
      say: 'That is a week’s casks. The year has as many times that as it has working weeks.',
    },
    {
      family: 'forgotten',
      gives: (v, answer) => answer / v.mashes,
      say: 'One mash a week was reckoned with.',
    },
    {
      family: 'upsideDown',
      gives: (v) => (v.mash * v.size) / (v.mashes * v.weeks),
      say: 'Multiplied where one divides: litres divided by the litres of a cask are casks.',
    },
  ],
  working: (v, answer) => {
    return [
      `Mashes a year: ${v.mashes} × ${v.weeks} = ${n(v.mashes * v.weeks, 0)}`,
      `Spirit a year: ${n(v.mashes * v.weeks, 0)} × ${v.mash} = ${n(v.mash * v.mashes * v.weeks, 0)} L`,
      `Casks: ${n(v.mash * v.mashes * v.weeks, 0)} ÷ ${v.size} = ${n(answer, 1)}, so ${n(wholeNumberOf(answer, 'up'), 0)}, for the part over wants a cask too`,
    ];
  },
});
