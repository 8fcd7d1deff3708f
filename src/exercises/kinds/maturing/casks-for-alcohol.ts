// Casks that an amount of pure alcohol fills.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'casks-for-alcohol',
  title: 'Casks for a month’s spirit',
  topic: 'maturing',
  level: 2,
  sources: ['derived'],
  of: 'count',
  to: 1,
  within: 0.006,
  vary: {
    alcohol: ['alcohol', [2000, 2400, 3000, 3600, 4000, 4500, 5000, 6000, 7500, 9000], 'heart.alcohol'],
    strength: ['strength', [58, 60, 62.5, 63.5, 65, 68], 'house.fillingStrength'],
    size: ['volume', [190, 200, 225, 250, 500]],
  },
  answer: ({ alcohol, strength, size }) => alcohol / (strength / 100) / size,
  prompt: (show, _, { alcohol }) =>
    `This month ${n(alcohol, 0)} L of pure alcohol go into wood at ${show.strength}, in casks of ${show.size}. How many casks does that fill, to a tenth of a cask?`,
  working: ({ alcohol, strength, size }, answer) => [
    'Litres of spirit = pure alcohol ÷ strength × 100; casks = litres of spirit ÷ litres in one',
    `${n(alcohol, 0)} ÷ ${strength} × 100 = ${n((100 * alcohol) / strength, 0)} L`,
    `${n((100 * alcohol) / strength, 0)} ÷ ${size} = ${n(answer, 1)} casks; order ${n(Math.ceil(answer), 0)}, for the part over wants a cask too`,
  ],
  slips: [
    {
      family: 'bulkForAlcohol',
      gives: ({ alcohol, size }) => alcohol / size,
      say: 'The pure alcohol was divided by the size of a cask. A cask holds spirit, of which only a part is alcohol: find the litres of spirit first.',
    },
    {
      family: 'upsideDown',
      gives: ({ alcohol, strength, size }) => (alcohol * strength) / 100 / size,
      say: 'The alcohol was multiplied by the strength. It is already pure; divide by the strength to find the litres of spirit that hold it.',
    },
    {
      family: 'percent',
      gives: ({ alcohol, strength, size }) => alcohol / strength / size,
      say: 'The strength was not taken as hundredths. Divide it by 100 before you divide by it.',
    },
  ],
});
