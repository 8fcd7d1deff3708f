// How much spirit a malt could give, from its analysis.
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import {
  fermentableExtract,
  predictedSpiritYield,
  SPIRIT_YIELD_FACTOR,
} from '../../core/malting/spirit-yield.ts';
import { litresOfAlcohol, percent } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';

export default defineCalculator({
  id: 'predicted-spirit-yield',
  stage: 'malting',
  title: 'Spirit a malt could give',
  purpose: 'Turns the maltster’s analysis into litres of pure alcohol, for a tonne and for a mash.',
  sources: ['bringhurst-1996'],
  inputs: {
    extract: { house: 'solubleExtract' },
    fermentability: { house: 'fermentability' },
    malt: { label: 'Malt', house: 'maltPerMash' },
  },
  outputs: {
    fermentable: { kind: 'percent', label: 'Fermentable extract' },
    yield: { kind: 'yield', label: 'Predicted spirit yield' },
    alcohol: { kind: 'alcohol', label: 'From this malt' },
  },
  compute: ({ extract, fermentability, malt }) => {
    const perTonne = predictedSpiritYield({ extract, fermentability });
    return {
      fermentable: percent(fermentableExtract(extract, fermentability)),
      yield: perTonne,
      alcohol: litresOfAlcohol((perTonne * malt) / 1000),
    };
  },
  steps: (given, result) => [
    'Fermentable extract = soluble extract × fermentability ÷ 100',
    `${given.extract} × ${given.fermentability} ÷ 100 = ${w(result.fermentable)} %`,
    `Litres of pure alcohol from a tonne = ${SPIRIT_YIELD_FACTOR} × fermentable extract`,
    `${SPIRIT_YIELD_FACTOR} × ${w(result.fermentable)} = ${w(result.yield, 7)} L`,
    `${w(result.yield, 7)} × ${w(given.malt / 1000)} t = ${n(result.alcohol, 1)} L`,
  ],
  examples: [
    {
      given: { extract: 77.5, fermentability: 87, malt: 1000 },
      gives: { fermentable: 67.425, yield: 408.595, alcohol: 408.595 },
      within: 1e-5,
      source: 'derived',
      note: 'by hand: 77.5 × 0.87 = 67.425, times 6.06, the factor of Bringhurst et al. 1996',
    },
  ],
});
