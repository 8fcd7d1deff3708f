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
  prompt: (show, { moisture }) =>
    `The grist is at ${show.grist}, the first water is to be ${show.ratio} of grist, and the mash is wanted at ${show.wanted}. At ${show.moisture} moisture malt takes ${n(slaking(moisture).heat, 3)} of the heat that as much water takes, and wetting it warms the mash by ${n(slaking(moisture).rise, 2)} degrees. How hot must the first water be?`,
  slips: [
    {
      family: 'forgotten',
      gives: ({ ratio, wanted, grist, moisture }) => {
        const { heat } = slaking(moisture);
        return (wanted * (heat + ratio) - heat * grist) / ratio;
      },
      say: 'The warmth from wetting was left out, so the mash would stand too hot.',
    },
    {
      family: 'sign',
      gives: ({ ratio, wanted, grist, moisture }) => {
        const { heat, rise } = slaking(moisture);
        return ((wanted + rise) * (heat + ratio) - heat * grist) / ratio;
      },
      say: 'The warmth from wetting was added; it comes free, so take it off the mash wanted.',
    },
    {
      family: 'temperature',
      gives: ({ wanted }) => wanted,
      say: 'That is the mash wanted; cold grist cools the water, so it must go in hotter.',
    },
    {
      family: 'wrongConstant',
      gives: ({ ratio, wanted, grist, moisture }) =>
        ((wanted - slaking(moisture).rise) * (1 + ratio) - grist) / ratio,
      say: 'Malt was taken to need as much heat as water does; it needs only about 0.4 of that.',
    },
  ],
});
