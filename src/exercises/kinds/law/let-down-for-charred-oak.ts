// New spirit let down to the limit for new charred oak in the United States.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const LIMIT = 62.5; // % vol, 125 proof; 27 CFR 5.143

export default sum({
  id: 'let-down-for-charred-oak',
  title: 'A limit told in proof',
  topic: 'law',
  level: 2,
  sources: ['cfr-27-5', 'derived'],
  of: 'volume20',
  to: 0,
  within: 0.005,
  vary: {
    volume: ['volume20', [600, 750, 800, 900, 1000, 1200, 1500, 1800]],
    strength: ['strength', [67.5, 68, 69, 70, 70.5, 71, 72], 'heart.strength'],
  },
  answer: ({ volume, strength }) => (volume * strength) / LIMIT,
  prompt: (show) =>
    `For malt whisky in the United States, where proof is twice the % vol, spirit goes into new charred oak at 125 proof at most. A receiver holds ${show.volume} at ${show.strength}. How many litres must it become, at least, before the casks are filled?`,
  working: ({ volume, strength }, answer) => [
    '125 proof ÷ 2 = 62.5 % vol',
    `The pure alcohol stays the same: ${n(volume, 0)} × ${n(strength, 1)} ÷ 62.5 = ${n(answer, 0)} L`,
  ],
  slips: [
    {
      family: 'wrongConstant',
      gives: ({ volume, strength }) => (volume * strength) / 63.5,
      say: 'That is the customary filling of 63.5 % vol. This rule wants 62.5 at most.',
    },
    {
      family: 'otherCountry',
      gives: ({ volume, strength }) => (volume * strength) / (125 / 1.7553),
      say: 'The degrees were taken as former British proof. Where the rule comes from, proof is twice the % vol.',
    },
    {
      family: 'upsideDown',
      gives: ({ volume, strength }) => (volume * LIMIT) / strength,
      say: 'The strengths changed places. With water added the litres must be more.',
    },
  ],
});
