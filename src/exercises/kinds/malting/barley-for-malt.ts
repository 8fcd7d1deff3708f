// The barley that a mass of malt was.
import barleyForMalt from '../../../calculators/malting/barley-for-malt.ts';
import { exercise } from '../../exercise.ts';

export default exercise(barleyForMalt, {
  level: 2,
  ask: 'barley',
  vary: {
    malt: [800, 1000, 1200, 1500, 1800, 2000, 2500, 3000, 4000, 5000],
    barleyMoisture: [11, 11.5, 12, 12.5, 13, 14],
    maltMoisture: [4, 4.2, 4.5, 4.8, 5, 5.5],
    loss: [8, 9, 10, 11, 12],
  },
  within: 0.005,
  prompt: (show) =>
    `A mash wants ${show.malt} of malt at ${show.maltMoisture} moisture. The barley lies in store at ${show.barleyMoisture}, and malting loses ${show.loss} of its dry matter. How much barley must go into the steep?`,
  slips: [
    {
      family: 'wetForDry',
      gives: ({ malt, loss }) => malt / (1 - loss / 100),
      say: 'The loss was taken from the wet weight and both moistures were left out; follow the dry matter instead.',
    },
    {
      family: 'forgotten',
      gives: ({ malt, barleyMoisture, loss }) => malt / (1 - barleyMoisture / 100) / (1 - loss / 100),
      say: 'The malt was taken as bone dry; its own moisture must first be taken off.',
    },
    {
      family: 'upsideDown',
      gives: ({ malt, barleyMoisture, maltMoisture, loss }) =>
        (malt * (1 - barleyMoisture / 100) * (1 - loss / 100)) / (1 - maltMoisture / 100),
      say: 'That is the malt which so much barley makes; here the malt is known, and the barley must weigh more.',
    },
  ],
});
