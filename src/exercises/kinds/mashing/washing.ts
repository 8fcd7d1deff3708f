// What several equal waters leave behind.
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'washing',
  title: 'What the waters leave behind',
  topic: 'mashing',
  level: 2,
  sources: ['derived'],
  of: 'mass',
  to: 1,
  within: 0.015,
  vary: {
    extract: ['mass', [900, 1000, 1150, 1200, 1400, 1550, 2000, 2300], 'wort.extract'],
    left: ['percent', [15, 20, 25, 30, 35]],
    waters: ['count', [2, 3, 4]],
  },
  answer: ({ extract, left, waters }) => extract * (left / 100) ** waters,
  prompt: (show) =>
    `A bed holds ${show.extract} of dissolved extract. Each water that is drained leaves ${show.left} of what was dissolved behind. How many kilograms are left after ${show.waters} waters?`,
  working: ({ extract, left, waters }, answer) => [
    `Each water leaves ${left / 100} of what the one before left: ${Array.from({ length: waters }, () => left / 100).join(' × ')} = ${w((left / 100) ** waters)}`,
    `${w(extract)} × ${w((left / 100) ** waters)} = ${n(answer, 1)} kg`,
  ],
  slips: [
    {
      family: 'forgotten',
      gives: ({ extract, left }) => (extract * left) / 100,
      say: 'Only the first water was counted; each further one takes its part of what is left.',
    },
    {
      family: 'compound',
      gives: ({ extract, left, waters }) => (extract * left) / 100 / waters,
      say: 'The part was divided by the number of waters; each leaves its part of what the one before left, so multiply the parts.',
    },
    {
      family: 'otherFigure',
      gives: ({ extract }, answer) => extract - answer,
      say: 'That is what the waters carried off; the question is for what they left.',
    },
  ],
});
