// Hot water for a mash that stands too cold.
import mashRescue from '../../../calculators/mashing/mash-rescue.ts';
import { exercise } from '../../exercise.ts';

const kind = exercise(mashRescue, {
  level: 2,
  ask: 'add',
  within: 0.02,
  vary: {
    malt: [1000, 1500, 2000, 4000, 5000, 6000],
    ratio: [3.8, 4, 4.2],
    stands: [60, 60.5, 61, 61.5, 62],
    wanted: [63.5, 64, 64.5, 65],
    water: [85, 90, 95],
    moisture: [4],
  },
  prompt: (show) =>
    `A mash of ${show.malt} of grist with water at ${show.ratio} stands at ${show.stands}; it should stand at ${show.wanted}. Water of ${show.water} is to hand. Grist of this moisture takes 0.4 of the heat that as much water takes. How many litres must be added?`,
  slips: [
    {
      family: 'forgotten',
      gives: ({ malt, ratio, stands, wanted, water }) =>
        (malt * ratio * (wanted - stands)) / (water - wanted),
      say: 'The grist must be warmed too: it takes heat as 0.4 of its weight in water does.',
    },
    {
      family: 'temperature',
      gives: ({ water, wanted, stands }, { add }) => (add * (water - wanted)) / (water - stands),
      say: 'The water cools only to the mash wanted, not to the mash as it stood: its degrees are counted from there.',
    },
    {
      family: 'wrongConstant',
      gives: ({ malt, ratio, stands, wanted, water }) =>
        (malt * (ratio + 1) * (wanted - stands)) / (water - wanted),
      say: 'A kilogram of grist does not take as much heat as a kilogram of water: count 0.4 of it.',
    },
  ],
});

export default { ...kind, since: 4 };
