// About how much vanishes when alcohol and water are put together.
import { formatNumber as n } from '../../../core/format.ts';
import { litres20, strength } from '../../../core/quantity.ts';
import { blend } from '../../../core/spirit/mixing.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'contraction-estimate',
  title: 'About how much vanishes',
  topic: 'strength',
  form: 'estimate',
  level: 1,
  sources: ['oiml-r22', 'derived'],
  of: 'volume20',
  to: 1,
  within: 0.2,
  vary: {
    each: ['volume20', Array.from({ length: 56 }, (_, i) => 20 + 10 * i).filter((each) => each !== 50)],
  },
  answer: ({ each }) =>
    blend([
      { volume: litres20(each), strength: strength(100) },
      { volume: litres20(each), strength: strength(0) },
    ]).contraction,
  prompt: (show) =>
    `Fifty litres of pure alcohol and fifty of water make only 96.5 L. Somebody pours ${show.each} of each together; about how many litres vanish?`,
  working: ({ each }, answer) => [
    'Of a hundred litres poured, half and half, about three and a half vanish',
    `${n(2 * each, 0)} L poured, so about ${n(2 * each, 0)} × 0.035 = ${n(0.07 * each, 1)} L; by masses, ${n(answer, 1)} L`,
  ],
  slips: [
    {
      family: 'wrongWhole',
      gives: ({ each }) => 0.035 * each,
      say: 'The three and a half in a hundred were taken of one part only. They are of all that is poured.',
    },
    {
      family: 'thousand',
      gives: ({ each }) => 0.7 * each,
      say: 'A ten was lost on the way: three and a half in a hundred is 0.035 of what is poured.',
    },
  ],
});
