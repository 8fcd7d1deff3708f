// How much barley a mass of malt was.
import { barleyForMalt } from '../../core/malting/malt-balance.ts';
import { formatNumber as n } from '../../core/format.ts';
import { kilograms } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';

export default defineCalculator({
  id: 'barley-for-malt',
  stage: 'malting',
  title: 'Barley behind the malt',
  purpose: 'Works back from malt to barley by the dry matter.',
  sources: ['common-practice', 'derived'],
  inputs: {
    malt: { label: 'Malt', house: 'maltPerMash' },
    barleyMoisture: { house: 'barleyMoisture' },
    maltMoisture: { house: 'maltMoisture' },
    loss: { label: 'Dry matter lost', house: 'maltingLoss' },
  },
  outputs: {
    barley: { kind: 'mass', label: 'Barley' },
    dryMalt: { kind: 'mass', label: 'Dry matter in the malt' },
    dryBarley: { kind: 'mass', label: 'Dry matter in the barley' },
    waterGone: { kind: 'mass', label: 'Water lost' },
  },
  compute: ({ malt, barleyMoisture, maltMoisture, loss }) => {
    const barley = barleyForMalt(malt, { barleyMoisture, maltMoisture, dryLoss: loss });
    return {
      barley,
      dryMalt: kilograms(malt * (1 - maltMoisture / 100)),
      dryBarley: kilograms(barley * (1 - barleyMoisture / 100)),
      waterGone: kilograms((barley * barleyMoisture - malt * maltMoisture) / 100),
    };
  },
  steps: (given, result) => [
    'Dry matter in the malt = malt × (100 − its moisture) ÷ 100',
    `${n(given.malt, 0)} × (100 − ${given.maltMoisture}) ÷ 100 = ${n(result.dryMalt, 1)} kg`,
    'Dry matter in the barley = that ÷ (100 − loss) × 100',
    `${n(result.dryMalt, 1)} ÷ (100 − ${given.loss}) × 100 = ${n(result.dryBarley, 1)} kg`,
    'Barley = its dry matter ÷ (100 − its moisture) × 100',
    `${n(result.dryBarley, 1)} ÷ (100 − ${given.barleyMoisture}) × 100 = ${n(result.barley, 1)} kg`,
  ],
  examples: [
    {
      given: { malt: 830, barleyMoisture: 12, maltMoisture: 5, loss: 10.4 },
      gives: { barley: 1000 },
      within: 0.001,
      source: 'common-practice',
      note: 'a tonne of barley at 12 % gives 830 kg of malt at 5 %; the loss of 10.4 % is what that implies',
    },
    {
      given: { malt: 9444, barleyMoisture: 15, maltMoisture: 10, loss: 0 },
      gives: { barley: 10_000 },
      within: 1e-4,
      source: 'ndsu-shrink',
      note: '100 lb of seed at 15 % leave 94.44 lb at 10 %, here a hundredfold in kilograms: the same sum where nothing but water is lost',
    },
  ],
});
