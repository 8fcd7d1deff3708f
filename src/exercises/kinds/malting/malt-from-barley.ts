// The malt that a mass of barley makes.
import { formatNumber as n } from '../../../core/format.ts';
import { maltFromBarley } from '../../../core/malting/malt-balance.ts';
import { kilograms, percent } from '../../../core/quantity.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'malt-from-barley',
  title: 'Malt from a mass of barley',
  topic: 'malting',
  level: 2,
  sources: ['common-practice', 'derived'],
  of: 'mass',
  to: 0,
  within: 0.002,
  vary: {
    barley: ['mass', [1000, 1500, 2000, 2500, 3000, 4000, 5000, 6000, 8000, 10_000], 'barley.mass'],
    barleyMoisture: ['percent', [12, 12.5, 13, 13.5, 14], 'house.barleyMoisture'],
    maltMoisture: ['percent', [4, 4.5, 5, 5.5], 'house.maltMoisture'],
    loss: ['percent', [9, 10, 11, 12], 'house.maltingLoss'],
  },
  answer: ({ barley, barleyMoisture, maltMoisture, loss }) =>
    maltFromBarley(kilograms(barley), {
      barleyMoisture: percent(barleyMoisture),
      maltMoisture: percent(maltMoisture),
      dryLoss: percent(loss),
    }),
  prompt: (show) =>
    `${show.barley} of barley at ${show.barleyMoisture} moisture goes into the steep. Malting loses ${show.loss} of the dry matter, and the malt leaves the kiln at ${show.maltMoisture} moisture. How much malt comes out?`,
  working: ({ barley, barleyMoisture, maltMoisture, loss }, malt) => {
    const dry = barley * (1 - barleyMoisture / 100);
    const kept = dry * (1 - loss / 100);
    return [
      `Dry matter of the barley: ${n(barley, 0)} × (100 − ${barleyMoisture}) ÷ 100 = ${n(dry, 1)} kg`,
      `Malting keeps ${n(dry, 1)} × (100 − ${loss}) ÷ 100 = ${n(kept, 1)} kg of it`,
      `That is 100 − ${maltMoisture} parts in a hundred of the malt: ${n(kept, 1)} ÷ (100 − ${maltMoisture}) × 100 = ${n(malt, 0)} kg`,
    ];
  },
  slips: [
    {
      family: 'wetForDry',
      gives: ({ barley, loss }) => barley * (1 - loss / 100),
      say: 'The loss was taken from the wet weight; take off the barley’s water first, and add the malt’s own at the end.',
    },
    {
      family: 'forgotten',
      gives: ({ barley, barleyMoisture, loss }) => barley * (1 - barleyMoisture / 100) * (1 - loss / 100),
      say: 'That is the dry matter alone; malt keeps a little water, so it weighs more.',
    },
    {
      family: 'points',
      gives: ({ barley, barleyMoisture, maltMoisture, loss }) =>
        barley * (1 - (barleyMoisture - maltMoisture + loss) / 100),
      say: 'The percentages were taken off one after another as if all were parts of the same wet weight; each has a whole of its own.',
    },
  ],
});
