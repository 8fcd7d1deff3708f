// About what the air takes from a whole store in a year.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'angels-share-of-a-store',
  title: 'The angels’ share of a store',
  topic: 'maturing',
  form: 'estimate',
  level: 1,
  sources: ['derived'],
  of: 'alcohol',
  to: 0,
  vary: {
    casks: ['count', [480, 950, 1950, 2900, 3900, 5200, 7800, 9700, 19_500]],
    size: ['volume', [185, 195, 205, 210]],
    strength: ['strength', [58.2, 60.7, 61.9]],
    loss: ['percent', [1.9, 2.1, 2.9], 'house.alcoholLoss'],
  },
  answer: ({ casks, size, strength, loss }) => (((casks * size * strength) / 100) * loss) / 100,
  prompt: (show) =>
    `A store holds ${show.casks} casks with ${show.size} in each on average, at ${show.strength}, and loses ${show.loss} of its alcohol a year. Without a calculator: about how much pure alcohol does the air take in the next year?`,
  working: ({ casks, size, strength, loss }, answer) => [
    `About ${n(Number(casks.toPrecision(1)), 0)} casks × ${n(Number(size.toPrecision(1)), 0)} L × 0.6 = about ${n(Number(casks.toPrecision(1)) * Number(size.toPrecision(1)) * 0.6, 0)} L of pure alcohol; ${n(Math.round(loss), 0)} % of it goes, say ${n((Number(casks.toPrecision(1)) * Number(size.toPrecision(1)) * 0.6 * Math.round(loss)) / 100, 0)} L`,
    `In full: ${n(casks, 0)} × ${n(size, 0)} × ${n(strength / 100, 3)} × ${n(loss / 100, 3)} = ${n(answer, 0)} L`,
  ],
  slips: [
    {
      family: 'bulkForAlcohol',
      gives: ({ casks, size, loss }) => (casks * size * loss) / 100,
      say: 'Those are litres of spirit. The loss was told of the alcohol, which is about six tenths of them.',
    },
    {
      family: 'thousand',
      gives: ({ casks, size, strength, loss }) => (casks * size * strength * loss) / 1000,
      say: 'A ten was lost on the way. Per cent are hundredths: try it once more with round numbers.',
    },
  ],
});
