// Pure alcohol gone between filling and regauge.
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'alcohol-lost-by-regauge',
  title: 'What a cask has lost',
  topic: 'maturing',
  level: 2,
  sources: ['derived'],
  of: 'alcohol',
  to: 1,
  vary: {
    volume: ['volume20', [190, 195, 200, 205, 250]],
    strength: ['strength', [62.5, 63.5, 64, 65], 'house.fillingStrength'],
    found: ['volume20', [164, 166, 168, 170, 172, 174]],
    foundStrength: ['strength', [58.4, 59, 59.3, 60.3, 61, 61.5], 'house.fillingStrength'],
  },
  answer: ({ volume, strength, found, foundStrength }) => (volume * strength - found * foundStrength) / 100,
  prompt: (show) =>
    `A cask was filled with ${show.volume} at ${show.strength}. Today’s regauge finds ${show.found} at ${show.foundStrength}. How much pure alcohol has it lost?`,
  working: ({ volume, strength, found, foundStrength }, answer) => [
    'Pure alcohol lost = (litres filled × strength then − litres found × strength now) ÷ 100',
    `${w((volume * strength) / 100)} − ${w((found * foundStrength) / 100)} = ${n(answer, 1)} L`,
  ],
  slips: [
    {
      family: 'bulkForAlcohol',
      gives: ({ volume, found }) => volume - found,
      say: 'Those are bulk litres, of water and alcohol together. Find the pure alcohol then and now, and take the difference.',
    },
    {
      family: 'forgotten',
      gives: ({ volume, strength, found }) => ((volume - found) * strength) / 100,
      say: 'The litres gone were counted at the old strength. What stayed has grown weaker, and that is a loss too.',
    },
    {
      family: 'points',
      gives: ({ volume, strength, foundStrength }) => (volume * (strength - foundStrength)) / 100,
      say: 'Only the fall in strength was counted. The litres have grown fewer as well.',
    },
  ],
});
