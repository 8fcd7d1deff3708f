// The grits in a mash's grist.
import gristSplit from '../../../calculators/milling/grist-split.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

export default exercise(gristSplit, {
  level: 1,
  ask: 'grits',
  vary: {
    malt: [1000, 1200, 1500, 1800, 2000, 2400, 3000, 4500],
    husk: [17, 18, 19, 20, 21, 22, 23],
    flour: [8, 9, 10, 11, 12, 13],
  },
  prompt: (show) =>
    `A mash of ${show.malt} has been milled. The sieve test gives ${show.husk} husk and ${show.flour} flour, and the rest is grits. How many kilograms of grits are in the grist bin?`,
  slips: [
    {
      family: 'percent',
      gives: ({ malt }, { gritsPercent }) => malt * gritsPercent,
      say: 'The percentage was not divided by 100; there cannot be more grits than malt.',
    },
    {
      family: 'otherFigure',
      gives: (_, { husk, flour }) => husk + flour,
      say: 'That is husk and flour together; the grits are what is left.',
    },
    {
      family: 'forgotten',
      gives: ({ malt, husk }) => malt * (1 - husk / 100),
      say: 'Only the husk was taken off; the flour is not grits either.',
    },
  ],
  working: (given, { gritsPercent, grits }) => [
    `Grits: 100 − ${given.husk} − ${given.flour} = ${n(gritsPercent, 0)} %`,
    `${n(given.malt, 0)} × ${n(gritsPercent, 0)} ÷ 100 = ${n(grits, 0)} kg`,
  ],
});
