// What a sieve test lost.
import sieveTest from '../../../calculators/milling/sieve-test.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

export default exercise(sieveTest, {
  id: 'sieve-loss',
  title: 'What the sieves kept back',
  level: 1,
  ask: 'lost',
  vary: {
    putOn: [125],
    husk: [22, 23, 24, 25, 26],
    grits: [81, 82, 83, 84, 85],
    flour: [10, 11, 12, 13],
  },
  prompt: (show) =>
    `Of ${show.putOn} of grist put on the sieves you find ${show.husk} of husk, ${show.grits} of grits and ${show.flour} of flour. What part of the sample was lost, in per cent?`,
  slips: [
    {
      family: 'wrongWhole',
      gives: ({ putOn, husk, grits, flour }) => (100 * putOn) / (husk + grits + flour) - 100,
      say: 'The loss was set against what was found; it is a part of what was put on.',
    },
    {
      family: 'otherFigure',
      gives: (_, { lost }) => 100 - lost,
      say: 'That is the part found again; the question is for what is missing.',
    },
    {
      family: 'percent',
      gives: ({ putOn, husk, grits, flour }) => putOn - husk - grits - flour,
      say: 'Those are the grams missing; set them against the sample.',
    },
  ],
  working: ({ putOn, husk, grits, flour }, { lost }) => [
    `Found: ${husk} + ${grits} + ${flour} = ${husk + grits + flour} g; missing: ${putOn} − ${husk + grits + flour} = ${putOn - husk - grits - flour} g`,
    `${putOn - husk - grits - flour} ÷ ${putOn} × 100 = ${n(lost, 1)} %`,
  ],
});
