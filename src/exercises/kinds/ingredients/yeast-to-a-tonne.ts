// A dose of yeast in grams a litre, told for a tonne of malt.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const kind = sum({
  id: 'yeast-to-a-tonne',
  title: 'Yeast to a tonne of malt',
  topic: 'ingredients',
  level: 2,
  sources: ['derived'],
  of: 'perTonne',
  to: 1,
  vary: {
    dose: ['gramsPerLitre', [3.3, 3.6, 4, 4.2, 4.5, 4.8]],
    wort: ['volume', [7000, 7200, 7400, 7500, 7600], 'house.wortVolume'],
    malt: ['mass', [1400, 1450, 1500, 1550, 1600], 'house.maltPerMash'],
  },
  answer: ({ dose, wort, malt }) => (dose * wort) / malt,
  prompt: (show, _, v) =>
    `A mash of ${show.malt} of malt makes ${show.wort} of wort, and the washback gets ${n(v.dose, 1)} g of pressed yeast for each litre. A supplier asks how much yeast goes to a tonne of malt. How much is it?`,
  slips: [
    {
      family: 'otherFigure',
      gives: ({ dose, wort }) => (dose * wort) / 1000,
      say: 'Those are the kilograms of yeast in the washback. They have to be divided by its tonnes of malt.',
    },
    {
      family: 'upsideDown',
      gives: ({ dose, wort, malt }) => (dose * malt) / wort,
      say: 'Upside down: a tonne of malt makes several thousand litres, and each gets its dose.',
    },
    {
      family: 'thousand',
      gives: ({ dose, wort, malt }) => (1000 * dose * wort) / malt,
      say: 'Those are grams to a tonne. A kilogram is a thousand of them.',
    },
    {
      family: 'otherFigure',
      gives: ({ dose, malt }) => (dose * malt) / 1000,
      say: 'The dose was taken for a kilogram of malt. It is for a litre of wort.',
    },
  ],
  working: ({ dose, wort, malt }, answer) => [
    'Yeast in the washback = dose × litres of wort ÷ 1,000, in kilograms',
    `${n(dose, 1)} × ${n(wort, 0)} ÷ 1,000 = ${n((dose * wort) / 1000, 2)} kg`,
    `To a tonne: ${n((dose * wort) / 1000, 2)} ÷ ${n(malt, 0)} × 1,000 = ${n(answer, 1)} kg/t`,
  ],
});

export default { ...kind, since: 7 };
