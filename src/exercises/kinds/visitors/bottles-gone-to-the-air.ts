// How many bottles the air has had from one cask.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const gone = ({ filled, loss, years }: Record<'filled' | 'loss' | 'years', number>) =>
  filled * (1 - (1 - loss / 100) ** years);

const kind = sum({
  id: 'bottles-gone-to-the-air',
  title: 'Bottles gone to the air',
  topic: 'visitors',
  level: 2,
  sources: ['derived'],
  of: 'count',
  to: 0,
  within: 0.02,
  vary: {
    filled: ['alcohol', [124, 127, 130, 140, 155, 160]],
    loss: ['percent', [1.8, 2, 2.2, 2.5], 'house.alcoholLoss'],
    years: ['years', [8, 10, 12, 14, 16], 'house.yearsInWood'],
    strength: ['strength', [43, 45, 46, 48], 'house.bottlingStrength'],
  },
  answer: (v) => gone(v) / (0.7 * (v.strength / 100)),
  fits: ({ years }) => years > 4,
  prompt: (show, _, v) =>
    `“How many bottles of this one have the angels had?” a visitor asks beside a cask. It was filled ${show.years} ago with ${n(v.filled, 0)} L of pure alcohol and loses ${show.loss} of what is there each year. A bottle holds 0.7 L at ${show.strength}. About how many bottles would the loss fill?`,
  slips: [
    {
      family: 'bulkForAlcohol',
      gives: (v) => gone(v) / 0.7,
      say: 'Those are bottles of pure alcohol. A bottle holds only its strength’s part of that.',
    },
    {
      family: 'compound',
      gives: ({ filled, loss, years, strength }) => ((filled * loss * years) / 100 / 0.7 / strength) * 100,
      say: 'Each year’s loss was taken of the first filling. It is a part of what is still there.',
    },
    {
      family: 'otherFigure',
      gives: (v) => (v.filled - gone(v)) / (0.7 * (v.strength / 100)),
      say: 'Those are the bottles that are left in the cask.',
    },
    {
      family: 'forgotten',
      gives: ({ filled, loss, strength }) => (filled * loss) / 100 / (0.7 * (strength / 100)),
      say: 'That is the loss of one year.',
    },
  ],
  working: (v, answer) => [
    'Lost = filled − filled × (1 − loss ÷ 100), once for each year; bottles = lost ÷ (0.7 × strength ÷ 100)',
    `${n(v.filled, 0)} × (1 − ${n(v.loss, 1)} ÷ 100) to the power ${n(v.years, 0)} = ${n(v.filled - gone(v), 1)} L are left, and ${n(v.filled, 0)} − ${n(v.filled - gone(v), 1)} = ${n(gone(v), 1)} L are lost`,
    `${n(gone(v), 1)} ÷ (0.7 × ${n(v.strength, 1)} ÷ 100) = ${n(answer, 0)} bottles`,
  ],
});

export default { ...kind, since: 7 };
