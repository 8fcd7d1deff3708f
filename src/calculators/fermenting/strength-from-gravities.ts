// How strong the wash is, from its two gravities.
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { fermentWort } from '../../core/fermenting/wash.ts';
import { exciseFactor, strengthByExciseFactor } from '../../core/wort/attenuation.ts';
import { platoFromGravity } from '../../core/wort/extract.ts';
import { defineCalculator } from '../define.ts';

export default defineCalculator({
  id: 'strength-from-gravities',
  stage: 'fermenting',
  title: 'Strength of the wash from its gravities',
  purpose: 'Finds the strength by Balling’s balance, and sets the excise table’s answer beside it.',
  sources: ['balling', 'excise-226', 'sugar-tables'],
  inputs: {
    original: { house: 'originalGravity' },
    final: { house: 'finalGravity' },
    volume: { label: 'Wort in the washback', house: 'wortVolume' },
  },
  outputs: {
    strength: { kind: 'strength', label: 'Strength, by Balling', digits: 2 },
    excise: { kind: 'strength', label: 'Strength, by the excise table', digits: 2 },
    alcohol: { kind: 'alcohol', label: 'Alcohol in the wash' },
    wash: { kind: 'volume20', label: 'Wash' },
    carbonDioxide: { kind: 'mass', label: 'Carbon dioxide given off' },
    used: { kind: 'percent', label: 'Extract used by the yeast' },
  },
  refuse: ({ original, final }) => {
    if (final >= original) {
      return `The final gravity ${final} is not below the original ${original}; it must be lower, for wort that ferments grows lighter.`;
    }
    const factor = exciseFactor(1000 * (original - final));
    return typeof factor === 'number' ? undefined : factor.refused;
  },
  compute: ({ original, final, volume }) => {
    const wash = fermentWort({ volume, gravity: original }, final);
    return {
      strength: wash.strength,
      excise: strengthByExciseFactor({ original, present: final }),
      alcohol: wash.alcohol,
      wash: wash.volume,
      carbonDioxide: wash.carbonDioxide,
      used: wash.attenuation.extractUsed,
    };
  },
  steps: (given, result) => {
    const { attenuation: a } = fermentWort({ volume: given.volume, gravity: given.original }, given.final);
    const fall = 1000 * (given.original - given.final);
    return [
      `The wort is ${w(a.originalExtract)} °P; the wash reads ${w(platoFromGravity(given.final))} °P, lightened by its alcohol`,
      `Real extract = 0.1808 × ${w(a.originalExtract)} + 0.8192 × (${w(platoFromGravity(given.final))}) = ${n(a.realExtract, 4)} °P`,
      `Alcohol by mass = (${w(a.originalExtract)} − ${n(a.realExtract, 4)}) ÷ (2.0665 − 0.010665 × ${w(a.originalExtract)}) = ${n(a.alcoholByMass, 4)} %`,
      `Strength = ${n(a.alcoholByMass, 4)} × ${given.final} × 998.2 ÷ 789.24 = ${n(result.strength, 2)} % vol`,
      `Excise table: the gravity fell ${n(fall, 1)} degrees, at ${n(result.excise / fall, 3)} % vol each: ${n(result.excise, 2)} % vol`,
    ];
  },
  examples: [
    {
      given: { original: 1.05914, final: 1.01129, volume: 1000 },
      gives: { strength: 6.395 },
      within: 0.001,
      source: 'balling',
      note: 'a recalled case: 14.556 °P leaves 5 °P real and 5 % alcohol by mass, which is 5 × 1.01129 × 998.2 ÷ 789.24',
    },
    {
      given: { original: 1.0571, final: 1, volume: 1000 },
      gives: { excise: 7.5 },
      within: 0.005,
      source: 'excise-226',
      note: 'the notice’s own column of strengths: a fall of 57.1 degrees is 7.5 % vol, to one decimal',
    },
  ],
});
