// How strong a taste is with a little water in it.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const kind = sum({
  id: 'water-in-the-glass',
  title: 'A little water in the glass',
  topic: 'visitors',
  level: 1,
  sources: ['derived'],
  of: 'strength',
  to: 0,
  within: 0.02,
  vary: {
    taste: ['millilitres', [12, 15, 18, 20, 24, 25]],
    strength: ['strength', [43, 46, 48, 50, 54], 'house.bottlingStrength'],
    water: ['millilitres', [5, 8, 10, 12]],
  },
  answer: ({ taste, strength, water }) => (taste * strength) / (taste + water),
  fits: ({ taste, water }) => water < taste,
  prompt: (show) =>
    `“What does the water do to it?” a visitor asks, and pours ${show.water} into a taste of ${show.taste} at ${show.strength}. Leave out the little that vanishes in mixing. How strong is it then?`,
  slips: [
    {
      family: 'wrongWhole',
      gives: ({ taste, strength, water }) => strength * (1 - water / taste),
      say: 'The water was set against the taste. The whole is what is in the glass now.',
    },
    {
      family: 'averaged',
      gives: ({ strength }) => strength / 2,
      say: 'Spirit and water were taken as equal amounts.',
    },
    {
      family: 'otherFigure',
      gives: ({ taste, strength, water }) => (water * strength) / (taste + water),
      say: 'The water was taken for the spirit: the alcohol is in the taste.',
    },
  ],
  working: ({ taste, strength, water }, answer) => [
    'Strength now = millilitres of taste × strength ÷ millilitres in the glass',
    `In the glass: ${n(taste, 0)} + ${n(water, 0)} = ${n(taste + water, 0)} mL`,
    `${n(taste, 0)} × ${n(strength, 1)} ÷ ${n(taste + water, 0)} = ${n(answer, 0)} % vol. The alcohol is no less than before.`,
  ],
});

export default { ...kind, since: 7 };
