// What the mill still has before it.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const START = 6; // o'clock

const clock = (minutes: number) =>
  `${String(START + Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;

export default sum({
  id: 'malt-left-to-mill',
  title: 'What is still to mill',
  topic: 'milling',
  level: 2,
  sources: ['derived'],
  of: 'mass',
  to: 0,
  vary: {
    malt: ['mass', [6000, 6500, 7000, 7500, 8000, 9000]],
    rate: ['milling', [1.5, 2, 2.4, 2.5, 3]],
    minutes: ['minutes', [45, 50, 70, 75, 80, 85, 95, 100, 105, 110]],
  },
  answer: ({ malt, rate, minutes }) => malt - (1000 * rate * minutes) / 60,
  prompt: (show, _, { minutes }) =>
    `The mill has run without a stop since ${clock(0)}, at ${show.rate}. The mash is ${show.malt}, and it is now ${clock(minutes)}. How many kilograms are still to be milled?`,
  working: ({ malt, rate, minutes }, answer) => [
    `Milled: ${rate} t/h × ${minutes} ÷ 60 h = ${n((rate * minutes) / 60, 3)} t, ${n((1000 * rate * minutes) / 60, 0)} kg`,
    `Left: ${n(malt, 0)} − ${n((1000 * rate * minutes) / 60, 0)} = ${n(answer, 0)} kg`,
  ],
  slips: [
    {
      family: 'otherFigure',
      gives: ({ rate, minutes }) => (1000 * rate * minutes) / 60,
      say: 'That is what has gone through the mill; the question is for what has not.',
    },
    {
      family: 'thousand',
      gives: ({ malt, rate, minutes }) =>
        malt - 1000 * rate * (Math.floor(minutes / 60) + (minutes % 60) / 100),
      say: 'The minutes were taken as hundredths of an hour; an hour has 60.',
    },
  ],
});
