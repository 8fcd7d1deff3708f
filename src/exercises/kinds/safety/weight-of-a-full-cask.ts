// What a full cask weighs, from litres, density and wood.
import { formatNumber as n } from '../../../core/format.ts';
import { celsius, strength } from '../../../core/quantity.ts';
import { densityFromStrength } from '../../../core/spirit/strength.ts';
import { retiredAfter } from '../../renewed.ts';
import { sum } from '../../sum.ts';

/** Kilograms a litre at 20 °C. */
const kilogram = (percent: number) => densityFromStrength(strength(percent), celsius(20)) / 1000;

/** Asks what another kind asks too; older sheets go on drawing it. */
export default retiredAfter(
  2,
  sum({
    id: 'weight-of-a-full-cask',
    title: 'Before anyone lifts it',
    topic: 'safety',
    level: 1,
    sources: ['oiml-r22', 'derived'],
    of: 'mass',
    to: 0,
    within: 0.01,
    vary: {
      litres: ['volume20', [50, 125, 190, 200, 225, 250, 300, 480, 500]],
      strength: ['strength', [55, 58, 60, 62, 63.5, 65, 68]],
      wood: ['mass', [40, 50, 55, 60, 80, 125]],
    },
    quotes: { litre: [3, (v) => kilogram(v.strength)] },
    answer: (v) => v.litres * v.litre + v.wood,
    prompt: (show, _, v) =>
      `A cask has to be moved. It holds ${show.litres} of spirit at ${show.strength}, of which a litre weighs ${n(v.litre, 3)} kg, and its wood weighs ${show.wood}. For what weight must the gear be fit at least?`,
    slips: [
      {
        family: 'massForVolume',
        gives: (v) => v.litres + v.wood,
        say: 'A litre of spirit was taken as a kilogram; it weighs about a tenth less.',
      },
      {
        family: 'forgotten',
        gives: (v) => v.litres * v.litre,
        say: 'The wood was forgotten.',
      },
      {
        family: 'upsideDown',
        gives: (v) => v.litres / v.litre + v.wood,
        say: 'The litres were divided by the density. Litres times kilograms a litre are kilograms.',
      },
    ],
    working: (v, answer) => [
      'Full cask = litres × density + wood',
      `${n(v.litres, 0)} × ${n(v.litre, 3)} + ${n(v.wood, 0)} = ${n(answer, 0)} kg`,
      'Whether gear, ramp and people are fit for it is said by the site’s procedures and the local code.',
    ],
  }),
);
