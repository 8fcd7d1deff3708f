// A meter that reads in per cent of the lower explosive limit.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'a-part-of-the-lower-limit',
  title: 'A part of the lower explosive limit',
  topic: 'safety',
  level: 1,
  sources: ['niosh-ethanol', 'common-practice', 'derived'],
  of: 'ppm',
  to: 0,
  within: 0.005,
  vary: {
    reading: [
      'percent',
      [2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 14, 15, 16, 18, 20, 22, 25, 28, 30, 35, 40, 45, 50, 55, 60],
    ],
    limit: ['percent', [3.1, 3.3]],
  },
  answer: (v) => (v.limit * 10_000 * v.reading) / 100,
  prompt: (show) =>
    `A meter for alcohol vapour shows ${show.reading} of the lower explosive limit, which its makers put at ${show.limit} of the air. How many ppm is that?`,
  slips: [
    {
      family: 'thousand',
      gives: (v) => (v.limit * v.reading) / 100,
      say: 'That is in per cent of the air. One per cent is 10,000 ppm.',
    },
    {
      family: 'thousand',
      gives: (_, answer) => answer * 10,
      say: 'A ten was lost: one per cent is 10,000 ppm, not 100,000.',
    },
    {
      family: 'wrongWhole',
      gives: (v) => v.reading * 10_000,
      say: 'The reading was taken as a part of the air. It is a part of the limit.',
    },
  ],
  working: (v, answer) => [
    `The limit is ${v.limit} % of the air, and one per cent is 10,000 ppm: ${n(v.limit * 10_000, 0)} ppm`,
    `${n(v.limit * 10_000, 0)} × ${v.reading} ÷ 100 = ${n(answer, 0)} ppm`,
    'Already 3,300 ppm, a tenth of 3.3 %, are listed as immediately dangerous. At which reading one leaves is laid down by the site.',
  ],
});
