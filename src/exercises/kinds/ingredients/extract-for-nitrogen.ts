// What a lot with more nitrogen costs in extract.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const kind = sum({
  id: 'extract-for-nitrogen',
  title: 'What nitrogen costs in extract',
  topic: 'ingredients',
  level: 2,
  sources: ['bishop-1930', 'crude-protein'],
  of: 'points',
  to: 2,
  vary: {
    low: ['nitrogen', [1.4, 1.45, 1.48, 1.5, 1.52]],
    high: ['nitrogen', [1.6, 1.65, 1.68, 1.7, 1.75, 1.8]],
  },
  answer: ({ low, high }) => (high - low) * 6.25 * 0.85,
  prompt: (show) =>
    `A maltster offers two lots. One has ${show.low} of nitrogen, dry, the other ${show.high}. Protein is 6.25 times the nitrogen, and each per cent more of it costs 0.85 points of extract. How many points of extract does the second lot lack beside the first?`,
  slips: [
    {
      family: 'forgotten',
      gives: ({ low, high }) => (high - low) * 6.25,
      say: 'Those are the points of protein. Each of them costs 0.85 of extract.',
    },
    {
      family: 'forgotten',
      gives: ({ low, high }) => (high - low) * 0.85,
      say: 'Nitrogen was taken for protein. Protein is 6.25 times as much.',
    },
    {
      family: 'upsideDown',
      gives: ({ low, high }) => ((high - low) * 6.25) / 0.85,
      say: 'Divided by 0.85: each point of protein costs less than a point of extract, not more.',
    },
    {
      family: 'wrongConstant',
      gives: ({ low, high }) => (high - low) * 5.8 * 0.85,
      say: 'With 5.8, which others take for cereals as food. This rule goes with 6.25.',
    },
  ],
  working: ({ low, high }, answer) => [
    'Points of extract = difference in nitrogen × 6.25 × 0.85',
    `${n(high, 2)} − ${n(low, 2)} = ${n(high - low, 2)} % of nitrogen; ${n(high - low, 2)} × 6.25 × 0.85 = ${n(answer, 2)} points`,
  ],
});

export default { ...kind, since: 7 };
