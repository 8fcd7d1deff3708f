// The water that brings a spirit down to a strength.
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { litresOfAlcohol } from '../../core/quantity.ts';
import { reduce } from '../../core/spirit/mixing.ts';
import { defineCalculator } from '../define.ts';

export default defineCalculator({
  id: 'reduce-to-strength',
  stage: 'maturing',
  title: 'Let spirit down to a strength',
  purpose: 'The water to add, and the volume lost in mixing.',
  sources: ['oiml-r22'],
  inputs: {
    volume: { kind: 'volume20', label: 'Spirit', range: [0.1, 200_000], step: 10, from: 'heart.volume' },
    from: { kind: 'strength', label: 'Strength now', range: [1, 97], step: 0.1, from: 'heart.strength' },
    to: { kind: 'strength', label: 'Strength wanted', range: [1, 80], step: 0.1, from: 'filling.strength' },
  },
  outputs: {
    waterVolume: { kind: 'volume20', label: 'Water to add', digits: 1 },
    waterMass: { kind: 'mass', label: 'Water, by mass', digits: 1 },
    volume: { kind: 'volume20', label: 'Makes', digits: 1 },
    contraction: { kind: 'volume20', label: 'Volume lost in mixing', digits: 1 },
    alcohol: { kind: 'alcohol', label: 'Pure alcohol, before and after' },
  },
  refuse: ({ from, to }) =>
    to > from
      ? `Water cannot raise the strength: the spirit is at ${n(from, 1)} % vol, and ${n(to, 1)} was asked for.`
      : undefined,
  compute: ({ volume, from, to }) => ({
    ...reduce({ volume, strength: from }, to),
    alcohol: litresOfAlcohol((volume * from) / 100),
  }),
  steps: (given, result) => [
    'The pure alcohol stays the same: volume × strength ÷ 100',
    `${w(given.volume)} × ${w(given.from)} ÷ 100 = ${w(result.alcohol)} L`,
    'Volume made = pure alcohol ÷ strength wanted × 100',
    `${w(result.alcohol)} ÷ ${given.to} × 100 = ${n(result.volume, 1)} L`,
    'Water is found by mass: what the volume made weighs, less what the spirit weighs',
    `${n(result.waterMass, 1)} kg, or ${n(result.waterVolume, 1)} L of water; ${w(given.volume)} + ${n(result.waterVolume, 2)} − ${n(result.volume, 2)} = ${n(result.contraction, 1)} L are lost in mixing`,
  ],
  examples: [
    {
      given: { volume: 100, from: 95, to: 40 },
      gives: { waterVolume: 144 },
      within: 0.005,
      source: 'dilution-table',
      note: 'printed for 60 °F, three figures',
    },
    {
      given: { volume: 100, from: 65, to: 60 },
      gives: { waterVolume: 8.76 },
      within: 0.005,
      source: 'dilution-table',
      note: 'printed for 60 °F, three figures',
    },
  ],
});
