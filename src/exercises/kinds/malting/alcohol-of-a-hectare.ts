// The pure alcohol that a hectare of barley could give.
import barleyAndLand from '../../../calculators/malting/barley-and-land.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

export default exercise(barleyAndLand, {
  id: 'alcohol-of-a-hectare',
  title: 'Alcohol from a hectare',
  level: 3,
  ask: 'perHectare',
  vary: {
    known: ['land'],
    land: [1],
    screenings: [5, 6, 7, 8, 9],
    // Together the trade's rule: 0.83 t of malt from a tonne of barley.
    barleyMoisture: [12],
    maltMoisture: [5],
    loss: [10.4],
    harvest: [5.5, 5.7, 5.9, 6, 6.2, 6.4, 6.5],
    spiritYield: [400, 403, 406, 410, 412, 415],
  },
  prompt: (show) =>
    `A field gives ${show.harvest} of barley. The sieves throw out ${show.screenings} of it, a tonne of what is left makes 0.83 t of malt, and the malt gives ${show.spiritYield}. How many litres of pure alcohol come from a hectare?`,
  slips: [
    {
      family: 'forgotten',
      gives: ({ screenings, harvest, spiritYield }) => harvest * (1 - screenings / 100) * spiritYield,
      say: 'The barley was taken as malt; a tonne of it makes only 0.83 t.',
    },
    {
      family: 'wrongWhole',
      gives: ({ harvest, spiritYield }) => harvest * 0.83 * spiritYield,
      say: 'What the sieves throw out was malted along with the rest; take it off first.',
    },
    {
      family: 'upsideDown',
      gives: ({ screenings, harvest, spiritYield }) =>
        (harvest * (1 - screenings / 100) * spiritYield) / 0.83,
      say: 'It was divided by 0.83; there is less malt than barley, so multiply.',
    },
  ],
  working: (given, { steeped, maltMade, perHectare }) => [
    `Barley into the steep: ${given.harvest} × (100 − ${given.screenings}) ÷ 100 = ${n(steeped / 1000, 3)} t`,
    `Malt: ${n(steeped / 1000, 3)} × 0.83 = ${n(maltMade / 1000, 3)} t`,
    `Pure alcohol: ${n(maltMade / 1000, 3)} × ${given.spiritYield} = ${n(perHectare, 0)} L`,
  ],
});
