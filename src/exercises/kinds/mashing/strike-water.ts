// How hot the first water must be.
import strikeWater from '../../../calculators/mashing/strike-water.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { slaking } from '../../../core/mashing/strike.ts';
import { exercise } from '../../exercise.ts';

export default exercise(strikeWater, {
  level: 2,
  ask: 'strike',
  vary: {
    malt: [1500],
    ratio: [3.8, 3.9, 4, 4.1, 4.2],
    wanted: [63.5, 64, 64.5, 65],
    grist: [5, 8, 10, 12, 15, 18, 20],
    moisture: [3, 4, 5, 6],
  },
  within: 0.004,
  quotes: {
    heat: [3, ({ moisture }) => slaking(moisture).heat],
    rise: [2, ({ moisture, ratio }) => slaking(moisture, ratio).rise],
  },
  redo: ({ ratio, wanted, grist }, { heat, rise }) => ({
    strike: ((wanted - rise) * (heat + ratio) - heat * grist) / ratio,
  }),
  prompt: (show, _, { heat, rise }) =>
    `The grist is at ${show.grist}, the first water is to be ${show.ratio} of grist, and the mash is wanted at ${show.wanted}. At ${show.moisture} moisture malt takes ${n(heat, 3)} of the heat that as much water takes, and wetting it warms the mash by ${n(rise, 2)} degrees in so much water. How hot must the first water be?`,
  slips: [
    {
      family: 'forgotten',
      gives: ({ ratio, wanted, grist }, { heat }) => (wanted * (heat + ratio) - heat * grist) / ratio,
      say: 'The warmth from wetting was left out, so the mash would stand too hot.',
    },
    {
      family: 'sign',
      gives: ({ ratio, wanted, grist }, { heat, rise }) =>
        ((wanted + rise) * (heat + ratio) - heat * grist) / ratio,
      say: 'The warmth from wetting was added; it comes free, so take it off the mash wanted.',
    },
    {
      family: 'temperature',
      gives: ({ wanted }) => wanted,
      say: 'That is the mash wanted; cold grist cools the water, so it must go in hotter.',
    },
    {
      family: 'wrongConstant',
      gives: ({ ratio, wanted, grist }, { rise }) => ((wanted - rise) * (1 + ratio) - grist) / ratio,
      say: 'Malt was taken to need as much heat as water does; it needs only about 0.4 of that.',
    },
  ],
  working: ({ ratio, wanted, grist }, { heat, rise, strike }) => [
    'First water = ((mash − R) × (S + r) − S × grist) ÷ r, with R the rise, S the malt’s part, and r the litres of water to a kilogram of grist',
    `((${wanted} − ${n(rise, 2)}) × (${n(heat, 3)} + ${ratio}) − ${n(heat, 3)} × ${grist}) ÷ ${ratio} = ${n(strike, 1)} °C`,
  ],
});
