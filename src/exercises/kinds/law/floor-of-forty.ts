// The most that may be made of a vat and still be sold as whisky.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const FLOOR = 40; // % vol, European Union and others

export default sum({
  id: 'floor-of-forty',
  title: 'As weak as the law allows',
  topic: 'law',
  level: 1,
  sources: ['eu-2019-787', 'swr-2009', 'cfr-27-5'],
  of: 'volume20',
  to: 0,
  within: 0.004,
  vary: {
    volume: ['volume20', [320, 410, 460, 540, 680, 750, 820, 940]],
    strength: ['strength', [52.4, 54, 55.5, 57.2, 58.6, 60, 61.3]],
  },
  answer: ({ volume, strength }) => (volume * strength) / FLOOR,
  prompt: (show) =>
    `An old vat holds ${show.volume} at ${show.strength}. In the European Union whisky must have ${FLOOR} % vol at least. How many litres of whisky can be made of the vat at most?`,
  working: ({ volume, strength }, answer) => [
    'The pure alcohol stays the same: volume × strength = volume made × strength made',
    `${n(volume, 0)} × ${n(strength, 1)} ÷ ${FLOOR} = ${n(answer, 0)} L; a hair more water, and it is whisky no longer`,
  ],
  slips: [
    {
      family: 'points',
      gives: ({ volume, strength }) => volume * (1 + (strength - FLOOR) / 100),
      say: 'The difference of the strengths was taken as per cent of the litres. Keep the pure alcohol the same in its place.',
    },
    {
      family: 'upsideDown',
      gives: ({ volume, strength }) => (volume * FLOOR) / strength,
      say: 'The strengths changed places. Let down, the spirit must take more room than before.',
    },
    {
      family: 'wrongWhole',
      gives: ({ volume, strength }) => volume * (1 + (strength - FLOOR) / strength),
      say: 'The fall was taken as a part of the old strength. Divide the alcohol by the new one.',
    },
    {
      family: 'bulkForAlcohol',
      gives: ({ volume, strength }) => (volume * strength) / 100,
      say: 'That is the pure alcohol. Divide it by the strength of the whisky to find the litres.',
    },
  ],
});
