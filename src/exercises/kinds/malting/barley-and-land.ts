// The land behind a year's malt.
import barleyAndLand from '../../../calculators/malting/barley-and-land.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

export default exercise(barleyAndLand, {
  title: 'Land for an order of malt',
  level: 2,
  ask: 'area',
  vary: {
    known: ['malt'],
    malt: [200_000, 250_000, 300_000, 400_000, 500_000, 600_000, 800_000],
    screenings: [5, 6, 7, 8, 9],
    // Together the trade's rule: 0.83 t of malt from a tonne of barley.
    barleyMoisture: [12],
    maltMoisture: [5],
    loss: [10.4],
    harvest: [5.5, 5.8, 6.1, 6.2, 6.5],
  },
  prompt: (show, { malt }) =>
    `A house orders ${n(malt / 1000, 0)} t of malt. A tonne of barley in the steep makes 0.83 t of malt; before that, the sieves throw out ${show.screenings} of the barley bought. The harvest is ${show.harvest}. How many hectares stand behind the order?`,
  slips: [
    {
      family: 'forgotten',
      gives: ({ malt, screenings, harvest }) => malt / 1000 / (1 - screenings / 100) / harvest,
      say: 'The malt was taken as barley; it takes about 1.2 t of barley to make a tonne of malt.',
    },
    {
      family: 'wrongWhole',
      gives: (given, { steeped }) => steeped / 1000 / given.harvest,
      say: 'What the sieves throw out was grown too, so more barley must be bought than goes into the steep.',
    },
    {
      family: 'upsideDown',
      gives: ({ malt, screenings, harvest }) => ((malt / 1000) * 0.83) / (1 - screenings / 100) / harvest,
      say: 'The malt was multiplied by 0.83; there must be more barley than malt, so divide.',
    },
  ],
  working: (given, { steeped, bought, area }) => [
    `Barley into the steep: ${n(given.malt / 1000, 0)} ÷ 0.83 = ${n(steeped / 1000, 1)} t`,
    `Barley bought: ${n(steeped / 1000, 1)} ÷ (100 − ${given.screenings}) × 100 = ${n(bought / 1000, 1)} t`,
    `Land: ${n(bought / 1000, 1)} ÷ ${given.harvest} = ${n(area, 1)} ha`,
  ],
});
