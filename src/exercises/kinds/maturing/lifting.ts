// What a full cask weighs, before anyone is asked to help.
import lifting from '../../../calculators/maturing/lifting.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';
import { tabled } from '../strength/tabled.ts';

/** Kilograms that the wood of a cask of so many litres weighs empty; common practice. */
const WOOD: Readonly<Record<number, readonly number[]>> = {
  100: [30, 35],
  125: [35, 40],
  180: [40, 50],
  190: [50, 55],
  200: [50, 55],
  225: [50, 55, 60],
  250: [55, 60],
  500: [110, 120, 125],
};

export default exercise(lifting, {
  topic: 'safety',
  level: 1,
  ask: 'total',
  vary: {
    cask: ['other'],
    size: [100, 125, 180, 190, 200, 225, 250, 500],
    wood: [30, 35, 40, 50, 55, 60, 110, 120, 125],
    strength: [58, 60, 62.5, 63.5, 65],
    temperature: [20],
  },
  fits: ({ size, wood }) => WOOD[size]?.includes(wood) ?? false,
  before: {
    vary: {
      cask: ['other'],
      size: [100, 125, 180, 190, 200, 225, 250, 500],
      wood: [28, 35, 45, 50, 55, 60, 70],
      strength: [58, 60, 62.5, 63.5, 65],
      temperature: [20],
    },
  },
  quotes: { litre: [3, ({ strength }) => tabled(strength) / 1000] },
  redo: ({ size, wood }, { litre }) => ({ total: size * litre + wood }),
  prompt: (show, _, { litre }) =>
    `A cask holds ${show.size} of spirit at ${show.strength}, which weighs ${n(litre, 3)} kg to the litre, and its wood weighs about ${show.wood}. What does it weigh full, before you send for gear and help?`,
  slips: [
    {
      family: 'massForVolume',
      gives: ({ size, wood }) => size + wood,
      say: 'A litre was counted as a kilogram, as for water. Spirit is lighter, by its density.',
    },
    {
      family: 'forgotten',
      gives: ({ size }, { litre }) => size * litre,
      say: 'The wood was left out. It has to be moved as well.',
    },
    {
      family: 'upsideDown',
      gives: ({ size, wood }, { litre }) => size / litre + wood,
      say: 'The litres were divided by the density. Kilograms of spirit are fewer than its litres: multiply.',
    },
  ],
  working: ({ size, wood }, { total, litre }) => [
    'Full cask = litres × kilograms to the litre + wood',
    `${n(size, 0)} × ${n(litre, 3)} + ${n(wood, 0)} = ${n(total, 0)} kg`,
    'Wood that has drunk is heavier. What may be moved, and how, is for your site’s procedures and local code to say',
  ],
});
