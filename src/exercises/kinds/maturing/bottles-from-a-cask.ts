// About how many bottles an old cask makes.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'bottles-from-a-cask',
  title: 'About how many bottles?',
  topic: 'maturing',
  form: 'estimate',
  level: 1,
  sources: ['derived'],
  of: 'count',
  to: 0,
  within: 0.2,
  vary: {
    volume: ['volume20', [118, 152, 163, 171, 186, 208, 212, 237, 405, 431]],
    strength: ['strength', [57.4, 58.3, 59.6, 60.8, 61.7]],
    to: ['strength', [40, 43, 46], 'house.bottlingStrength'],
  },
  answer: ({ volume, strength, to }) => (volume * strength) / to / 0.7,
  prompt: (show) =>
    `A visitor points at an old cask: ${show.volume} are left in it, at ${show.strength}, and it will be let down to ${show.to}. Without a calculator, about how many bottles of 70 cL is that?`,
  working: ({ volume, strength, to }, answer) => [
    `${n(strength, 1)} over ${n(to, 0)} is about ${n(strength / to, 1)}, so about ${n(volume * Number((strength / to).toFixed(1)), 0)} L after letting down; a litre and a half of that is about two bottles`,
    `In full: ${n(volume, 0)} × ${n(strength, 1)} ÷ ${n(to, 0)} ÷ 0.7 = ${n(answer, 0)} bottles`,
  ],
  slips: [
    {
      family: 'bulkForAlcohol',
      gives: ({ volume, strength }) => (volume * strength) / 100 / 0.7,
      say: 'The pure alcohol alone was poured into bottles. A bottle holds water too.',
    },
    {
      family: 'thousand',
      gives: ({ volume, strength, to }) => (10 * volume * strength) / to / 0.7,
      say: 'A ten was lost on the way. One litre cannot fill ten bottles and more.',
    },
    {
      family: 'upsideDown',
      gives: ({ volume }) => 0.7 * volume,
      say: 'The litres were multiplied by 0.7, and the water left out. A bottle is less than a litre, so the bottles are more than the litres.',
    },
  ],
});
