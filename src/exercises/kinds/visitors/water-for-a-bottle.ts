// The water drawn for a bottle, from what a trade draws for a litre of pure alcohol.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const kind = sum({
  id: 'water-for-a-bottle',
  title: 'Water for a bottle',
  topic: 'visitors',
  level: 1,
  sources: ['common-practice', 'derived'],
  of: 'volume',
  to: 0,
  within: 0.015,
  vary: {
    bottle: ['bottle', [20, 35, 50, 70]],
    strength: ['strength', [42, 43, 44, 46, 48, 50], 'house.bottlingStrength'],
    each: ['perAlcohol', [150, 160, 170, 180, 190]],
  },
  answer: ({ bottle, strength, each }) => (bottle / 100) * (strength / 100) * each,
  prompt: (show, _, v) =>
    `“How much water does one bottle take?” a visitor asks. It holds ${show.bottle} at ${show.strength}. Say that the house draws ${n(v.each, 0)} L of water for each litre of pure alcohol, most of which only cools. Leave out what the casks lose. How much water is it?`,
  slips: [
    {
      family: 'bulkForAlcohol',
      gives: ({ bottle, each }) => (bottle / 100) * each,
      say: 'The figure is for a litre of pure alcohol, and a bottle is not all alcohol.',
    },
    {
      family: 'thousand',
      gives: ({ bottle, strength, each }) => (bottle / 10) * (strength / 100) * each,
      say: 'A hundred centilitres are a litre, not ten.',
    },
    {
      family: 'forgotten',
      gives: ({ strength, each }) => (strength / 100) * each,
      say: 'That is for a litre of it. A bottle holds another amount.',
    },
  ],
  working: ({ bottle, strength, each }, answer) => [
    'Water = litres of pure alcohol in the bottle × litres of water to each',
    `${n(bottle, 0)} ÷ 100 × ${n(strength, 1)} ÷ 100 = ${n((bottle * strength) / 1e4, 4)} L of pure alcohol`,
    `${n((bottle * strength) / 1e4, 4)} × ${n(each, 0)} = ${n(answer, 0)} L. Say that most of it goes back as warm water.`,
  ],
});

export default { ...kind, since: 7 };
