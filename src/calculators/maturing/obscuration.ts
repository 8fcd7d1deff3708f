// Strength shown and true strength, with solids dissolved in the spirit.
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { HIDDEN_BY_A_GRAM, obscuration, trueStrength } from '../../core/spirit/obscuration.ts';
import { quantity } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';

export default defineCalculator({
  id: 'obscuration',
  stage: 'maturing',
  title: 'Obscuration',
  purpose: 'True strength, where dissolved solids hide some of it.',
  sources: ['cfr-27-30', 'obscuration-2022'],
  readings: ['apparent', 'residue'],
  inputs: {
    apparent: { kind: 'strength', label: 'Strength shown at 20 °C', range: [0, 85], step: 0.1, value: 45.2 },
    residue: { kind: 'grams', label: 'Dry residue of the sample', range: [0, 10], step: 0.001, value: 0.06 },
    sample: { kind: 'millilitres', label: 'Sample dried', range: [10, 500], step: 5, value: 25 },
  },
  outputs: {
    solids: { kind: 'gramsPerLitre', label: 'Dissolved solids' },
    hidden: { kind: 'strengthDifference', label: 'Obscuration' },
    strength: { kind: 'strength', label: 'True strength, about', digits: 2 },
  },
  refuse: ({ residue, sample }) =>
    (1000 * residue) / sample > 60
      ? `${n((1000 * residue) / sample, 0)} g of solids in a litre is a liqueur; this rule ends at 60.`
      : undefined,
  compute: ({ apparent, residue, sample }) => {
    const solids = quantity('gramsPerLitre', (1000 * residue) / sample);
    return { solids, hidden: obscuration(solids), strength: trueStrength(apparent, solids) };
  },
  steps: ({ apparent, residue, sample }, { solids, hidden, strength }) => [
    `Solids = residue ÷ sample × 1,000 = ${w(residue)} ÷ ${w(sample)} × 1,000 = ${n(solids, 2)} g/L`,
    `A gram in a litre hides ${HIDDEN_BY_A_GRAM} % vol: ${w(solids)} × ${HIDDEN_BY_A_GRAM} = ${n(hidden, 2)} % vol`,
    `True strength = ${w(apparent)} + ${w(hidden)} = ${n(strength, 2)} % vol`,
  ],
  remark: ({ apparent }, { solids }) =>
    apparent < 40 || apparent > 50 || solids > 6
      ? 'The rule was found for 40 to 50 % vol and the United States take it for 4 to 6 g in a litre: beyond that, distil a sample and measure what comes over.'
      : 'A rule of experience: to set a label, or for duty on spirit without one, distil a sample, bring it back to its volume, and measure that.',
  examples: [
    {
      given: { apparent: 43, residue: 0.125, sample: 25 },
      gives: { solids: 5, hidden: 1, strength: 44 },
      within: 1e-9,
      source: 'cfr-27-30',
      note: '30.32(b): 0.125 g from 25 mL are 0.50 g in 100 mL and hide two degrees of proof, which is 1 % vol',
    },
  ],
});
