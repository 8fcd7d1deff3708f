// How far a count of grown corns may lie from the lot, by the simple rule.
import { formatNumber as n } from '../../../core/format.ts';
import { growth } from '../../../core/malting/germination.ts';
import { count } from '../../../core/quantity.ts';
import { sum } from '../../sum.ts';

const DISH = 100; // corns

const points = (share: number, counted: number) => Math.sqrt((share * (100 - share)) / counted);
const shareOf = ({ counted, asleep }: { readonly counted: number; readonly asleep: number }) =>
  100 * (1 - asleep / counted);

export default sum({
  id: 'germination-count',
  title: 'How sure a count of corns is',
  topic: 'malting',
  level: 2,
  sources: ['derived'],
  of: 'points',
  to: 2,
  within: 0.02,
  vary: {
    counted: ['count', [200, 300, 400, 500, 600]],
    asleep: ['count', [16, 18, 22, 24, 27, 32, 36, 42, 45, 54, 60, 66, 75, 84]],
  },
  fits: ({ counted, asleep }) => asleep / counted >= 0.05 && asleep / counted <= 0.2,
  renewed: 7,
  before: {
    vary: {
      counted: ['count', [200, 300, 400, 500, 600]],
      asleep: ['count', [4, 5, 6, 7, 8, 9, 11, 12, 14, 15, 16, 18]],
    },
  },
  answer: ({ counted, asleep }) => growth(count(counted - asleep), count(counted)).simple,
  prompt: ({ counted, asleep }) =>
    `In dishes of ${DISH} corns, ${counted} corns of a lot were set to sprout, and ${asleep} of them did not grow. By the simple rule the lot lies within ± 1.96 × √(share × (100 − share) ÷ corns) points of the count, with the share that grew in per cent. How many points either way is that?`,
  working: (v, answer) => [
    `Share that grew: (${v.counted} − ${v.asleep}) ÷ ${v.counted} × 100 = ${n(shareOf(v), 2)} %`,
    `1.96 × √(${n(shareOf(v), 2)} × ${n(100 - shareOf(v), 2)} ÷ ${v.counted}) = ± ${n(answer, 2)} points`,
    `${shareOf(v) > 95 ? 'So near' : 'Nearer'} to 100 % the simple rule is too narrow; the handbook’s calculator gives the exact limits`,
  ],
  slips: [
    {
      family: 'forgotten',
      gives: (v) => points(shareOf(v), v.counted),
      say: 'That is one standard error; about 95 counts of a hundred lie within 1.96 of them.',
    },
    {
      family: 'wrongWhole',
      gives: (v) => 1.96 * points(shareOf(v), DISH),
      say: 'One dish was put in for the corns; all the corns that were counted belong there.',
    },
    {
      family: 'otherFigure',
      gives: (v) => 1.96 * points(shareOf(v), v.counted) ** 2,
      say: 'The square root was left out.',
    },
  ],
});
