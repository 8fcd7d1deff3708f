// How many corns to count for limits of a given width, by the simple rule.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'corns-to-count',
  title: 'Corns to count for closer limits',
  topic: 'malting',
  level: 2,
  sources: ['derived'],
  of: 'count',
  to: 0,
  vary: {
    share: ['percent', [92, 93, 94, 95, 96, 96.5, 97, 97.5, 98]],
    points: ['percent', [0.8, 1.2, 1.5, 1.6, 1.8, 2, 2.5, 3]],
  },
  within: 0.015,
  answer: ({ share, points }) => share * (100 - share) * (1.96 / points) ** 2,
  prompt: (show, _, { points }) =>
    `A lot is thought to grow ${show.share} of its corns. By the simple rule a count leaves ± 1.96 × √(share × (100 − share) ÷ corns) points, with the share in per cent. About how many corns must be counted for ± ${points} points, before rounding up to whole dishes?`,
  working: ({ share, points }, answer) => [
    'Turned round: corns = share × (100 − share) × (1.96 ÷ points)²',
    `${share} × ${n(100 - share, 1)} × (1.96 ÷ ${points})² = ${n(answer, 0)}, in whole dishes the next hundred above`,
  ],
  slips: [
    {
      family: 'forgotten',
      gives: ({ share, points }) => (share * (100 - share)) / points ** 2,
      say: 'The 1.96 was left out; without it one count in three would lie outside.',
    },
    {
      family: 'compound',
      gives: ({ share, points }) => (share * (100 - share) * 1.96) / points,
      say: '1.96 ÷ points was not squared; for limits half as wide one must count four times as many corns.',
    },
  ],
});
