// What two spirits make together.
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { blend } from '../../core/spirit/mixing.ts';
import { defineCalculator } from '../define.ts';

export default defineCalculator({
  id: 'blend-two-spirits',
  stage: 'distilling',
  title: 'Two spirits together',
  purpose: 'Any two spirits: how much, and how strong.',
  sources: ['oiml-r22'],
  inputs: {
    volume: {
      kind: 'volume20',
      label: 'First spirit',
      range: [0, 300_000],
      step: 10,
      from: 'lowWines.volume',
    },
    strength: {
      kind: 'strength',
      label: 'Its strength',
      range: [0, 100],
      step: 0.1,
      from: 'lowWines.strength',
    },
    otherVolume: {
      kind: 'volume20',
      label: 'Second spirit',
      range: [0, 300_000],
      step: 10,
      from: 'feints.volume',
    },
    otherStrength: {
      kind: 'strength',
      label: 'Its strength',
      range: [0, 100],
      step: 0.1,
      from: 'feints.strength',
    },
  },
  outputs: {
    volume: { kind: 'volume20', label: 'Together', digits: 1 },
    strength: { kind: 'strength', label: 'Strength', digits: 2 },
    alcohol: { kind: 'alcohol', label: 'Pure alcohol' },
    contraction: { kind: 'volume20', label: 'Volume lost in mixing', digits: 1 },
  },
  compute: ({ volume, strength, otherVolume, otherStrength }) =>
    blend([
      { volume, strength },
      { volume: otherVolume, strength: otherStrength },
    ]),
  steps: (given, result) => [
    'Pure alcohol = volume × strength ÷ 100, for each, and added',
    `${w(given.volume)} × ${w(given.strength)} ÷ 100 + ${w(given.otherVolume)} × ${w(given.otherStrength)} ÷ 100 = ${w(result.alcohol)} L`,
    `The masses add too; the mixture’s own density makes ${w(result.volume)} L of them, ${n(result.contraction, 1)} L less than was poured`,
    'Strength = pure alcohol ÷ volume together × 100',
    `${w(result.alcohol)} ÷ ${w(result.volume)} × 100 = ${n(result.strength, 2)} % vol`,
  ],
  examples: [
    {
      given: { volume: 100, strength: 95, otherVolume: 95.9, otherStrength: 0 },
      gives: { strength: 50 },
      within: 0.005,
      source: 'dilution-table',
      note: '95.9 parts of water bring 100 parts of 95 % vol to 50 % vol, printed for 60 °F',
    },
  ],
});
