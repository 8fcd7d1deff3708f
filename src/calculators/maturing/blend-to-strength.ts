// Two spirits to one strength, and the way back from an overshoot.
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { celsius } from '../../core/quantity.ts';
import { isRefusal } from '../../core/refusal.ts';
import { blendTo } from '../../core/spirit/blend-to.ts';
import { densityFromStrength } from '../../core/spirit/strength.ts';
import { defineCalculator } from '../define.ts';

export default defineCalculator({
  id: 'blend-to-strength',
  stage: 'maturing',
  title: 'Blend to a strength',
  purpose: 'How much to add, also after too much water.',
  sources: ['oiml-r22'],
  cautions: ['ethanol-vapour'],
  inputs: {
    volume: { kind: 'volume20', label: 'In the vat', range: [0.1, 200_000], step: 10, value: 1000 },
    strength: { kind: 'strength', label: 'Its strength', range: [1, 97], step: 0.1, value: 45.2 },
    wanted: { kind: 'strength', label: 'Strength wanted', range: [1, 96], step: 0.1, value: 46 },
    second: { kind: 'strength', label: 'Strength of what is added', range: [0, 97], step: 0.1, value: 60 },
  },
  outputs: {
    add: { kind: 'volume20', label: 'To add', digits: 1 },
    volume: { kind: 'volume20', label: 'Makes', digits: 1 },
    alcohol: { kind: 'alcohol', label: 'Pure alcohol in it' },
    contraction: { kind: 'volume20', label: 'Volume lost in mixing', digits: 2 },
  },
  compute: ({ volume, strength, wanted, second }) => {
    const found = blendTo({ volume, strength }, second, wanted);
    if (isRefusal(found)) return found;
    const { volume: makes, alcohol, contraction } = found.made;
    return { add: found.second, volume: makes, alcohol, contraction };
  },
  steps: ({ volume, strength, wanted, second }, result) => {
    const [vat, added, aim] = [strength, second, wanted].map((each) =>
      densityFromStrength(each, celsius(20)),
    );
    return [
      `A litre weighs ${n(vat! / 1000, 5)} kg in the vat, ${n(added! / 1000, 5)} of what is added, ${n(aim! / 1000, 5)} as wanted; alcohol adds, and mass adds`,
      'To add = volume × (wanted × weight in the vat ÷ weight wanted − strength in the vat) ÷ (strength added − wanted × weight added ÷ weight wanted)',
      `${w(volume)} × (${w(wanted)} × ${n(vat! / 1000, 5)} ÷ ${n(aim! / 1000, 5)} − ${w(strength)}) ÷ (${w(second)} − ${w(wanted)} × ${n(added! / 1000, 5)} ÷ ${n(aim! / 1000, 5)}) = ${n(result.add, 1)} L`,
      `Makes ${n(result.volume, 1)} L; volumes alone would say ${n(volume + result.add, 1)}`,
    ];
  },
  remark: ({ strength, wanted, second }) =>
    second > strength && wanted > strength
      ? 'After too much water, more spirit is the only way back. What it does to the age and to what the label says, look up first.'
      : undefined,
  examples: [
    {
      given: { volume: 100, strength: 95, wanted: 50, second: 0 },
      gives: { add: 95.9 },
      within: 0.005,
      source: 'dilution-table',
      note: '95.9 parts of water bring 100 parts of 95 % vol to 50 % vol, printed for 60 °F',
    },
    {
      given: { volume: 100, strength: 65, wanted: 60, second: 0 },
      gives: { add: 8.76 },
      within: 0.005,
      source: 'dilution-table',
      note: 'printed for 60 °F, three figures',
    },
  ],
});
