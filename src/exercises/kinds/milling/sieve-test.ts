// The flour of a grist from a sieve test.
import sieveTest from '../../../calculators/milling/sieve-test.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

export default exercise(sieveTest, {
  level: 1,
  ask: 'flour',
  vary: {
    putOn: [125],
    husk: [20, 21, 22, 23, 24, 25, 26],
    grits: [80, 81, 82, 83, 84, 85],
    flour: [9, 10, 11, 12, 13, 14],
  },
  prompt: (show) =>
    `A sample of ${show.putOn} of grist was shaken through the sieves. You find ${show.husk} of husk, ${show.grits} of grits and ${show.flour} of flour. How much of the grist is flour, in per cent?`,
  slips: [
    {
      family: 'wrongWhole',
      gives: ({ putOn, flour }) => (100 * flour) / putOn,
      say: 'It was divided by what was put on; a little sticks to the sieves, so divide by what was found.',
    },
    {
      family: 'forgotten',
      gives: ({ husk, grits, flour }) => (100 * flour) / (husk + grits),
      say: 'It was divided by the other two parts; the flour belongs to the whole as well.',
    },
  ],
  working: ({ husk, grits, flour }, result) => [
    `Found: ${husk} + ${grits} + ${flour} = ${husk + grits + flour} g`,
    `${flour} ÷ ${husk + grits + flour} × 100 = ${n(result.flour, 1)} %`,
  ],
});
