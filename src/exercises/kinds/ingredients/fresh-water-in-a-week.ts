// The water that a week's mashes draw fresh, where the last runnings come back.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const kind = sum({
  id: 'fresh-water-in-a-week',
  title: 'Fresh water for the first waters',
  topic: 'ingredients',
  level: 2,
  sources: ['derived'],
  of: 'volume',
  to: 0,
  vary: {
    malt: ['mass', [1200, 1400, 1500, 1600, 1800], 'house.maltPerMash'],
    ratio: ['liquorRatio', [3.8, 3.9, 4, 4.1, 4.2], 'house.liquorRatio'],
    back: ['percent', [25, 30, 35, 40]],
    mashes: ['count', [5, 6, 7, 8], 'house.mashesPerWeek'],
  },
  answer: ({ malt, ratio, back, mashes }) => (malt * ratio * mashes * (100 - back)) / 100,
  prompt: (show, _, v) =>
    `A house makes ${show.mashes} mashes a week of ${show.malt} of malt each. The first water is ${n(v.ratio, 1)} L for each kilogram of malt, and ${show.back} of it is the last runnings of the mash before. How much of the first waters of a week is drawn fresh?`,
  slips: [
    {
      family: 'forgotten',
      gives: ({ malt, ratio, mashes }) => malt * ratio * mashes,
      say: 'That is all of the first waters. What comes back from the mash before need not be drawn.',
    },
    {
      family: 'otherFigure',
      gives: ({ malt, ratio, back, mashes }) => (malt * ratio * mashes * back) / 100,
      say: 'That is what comes back. The question is for what is drawn fresh.',
    },
    {
      family: 'forgotten',
      gives: ({ malt, ratio, back }) => (malt * ratio * (100 - back)) / 100,
      say: 'That is for one mash. A week has several.',
    },
  ],
  working: ({ malt, ratio, back, mashes }, answer) => [
    'Fresh water = malt × litres to a kilogram × (100 − what comes back) ÷ 100, for each mash',
    `First water of a mash: ${n(malt, 0)} × ${n(ratio, 1)} = ${n(malt * ratio, 0)} L`,
    `Of a week: ${n(malt * ratio, 0)} × ${n(mashes, 0)} = ${n(malt * ratio * mashes, 0)} L; fresh, ${n(malt * ratio * mashes, 0)} × ${n(100 - back, 0)} ÷ 100 = ${n(answer, 0)} L`,
  ],
});

export default { ...kind, since: 7 };
