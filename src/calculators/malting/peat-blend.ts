// Plain and peated malt for a level of smoke.
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { blendPeat } from '../../core/malting/peat.ts';
import { percent, quantity } from '../../core/quantity.ts';
import { isRefusal } from '../../core/refusal.ts';
import { defineCalculator } from '../define.ts';

const [LIGHT, HEAVY] = [15, 35]; // ppm; half-way between the usage of the trade: light about 10, medium 25, heavy 40–50 and more

export default defineCalculator({
  id: 'peat-blend',
  stage: 'malting',
  title: 'Plain and peated malt',
  purpose: 'Finds how much peated malt to mix with plain for the phenols wanted.',
  sources: ['common-practice', 'memory', 'derived'],
  cautions: ['dust', 'lifting'],
  inputs: {
    malt: { label: 'Malt', house: 'maltPerMash' },
    plain: { kind: 'ppm', label: 'Phenols of the plain malt', range: [0, 20], step: 0.5, value: 0.5 },
    peated: { kind: 'ppm', label: 'Phenols of the peated malt', range: [1, 400], step: 1, value: 50 },
    wanted: { kind: 'ppm', label: 'Phenols wanted', range: [0, 400], step: 1, value: 25 },
  },
  outputs: {
    peatedMass: { kind: 'mass', label: 'Peated malt', digits: 1 },
    plainMass: { kind: 'mass', label: 'Plain malt', digits: 1 },
    share: { kind: 'percent', label: 'Peated malt, share of the mash' },
    phenols: { kind: 'grams', label: 'Phenols in the mash' },
  },
  compute: ({ malt, ...phenols }) => {
    const blend = blendPeat(malt, phenols);
    if (isRefusal(blend)) return blend;
    return {
      peatedMass: blend.peated,
      plainMass: blend.plain,
      share: percent((100 * blend.peated) / malt),
      phenols: quantity('grams', (malt * phenols.wanted) / 1000),
    };
  },
  steps: (given, result) => [
    'Part of peated malt = (wanted − plain) ÷ (peated − plain)',
    `(${given.wanted} − ${given.plain}) ÷ (${given.peated} − ${given.plain}) = ${w(result.share / 100)}`,
    `${w(given.malt)} × ${w(result.share / 100)} = ${n(result.peatedMass, 1)} kg peated; the rest, ${n(result.plainMass, 1)} kg, plain`,
    `A part in a million is a milligram to a kilogram: ${w(result.peatedMass, 8)} × ${given.peated} + ${w(result.plainMass, 8)} × ${given.plain} = ${n(1000 * result.phenols, 0)} mg, ${n(result.phenols, 1)} g`,
  ],
  remark: ({ wanted }) =>
    `On malt, the trade calls ${n(wanted, 1)} ppm ${
      wanted < LIGHT ? 'light or less' : wanted < HEAVY ? 'medium' : 'heavy'
    } peating. Work from the maltster’s figures for your own lots, not from the name of a level. A quarter to two fifths is said to reach the new spirit, from memory; where the heart ends decides how much.`,
  examples: [
    {
      given: { malt: 1000, plain: 0, peated: 40, wanted: 10 },
      gives: { peatedMass: 250, plainMass: 750, share: 25, phenols: 10 },
      within: 1e-12,
      source: 'derived',
      note: 'by hand: a quarter of 40 is 10, and 250 kg with 40 mg each hold 10 g',
    },
    {
      given: { malt: 1500, plain: 2, peated: 52, wanted: 25 },
      gives: { peatedMass: 690, plainMass: 810 },
      within: 1e-12,
      source: 'derived',
      note: 'by hand: 23 of 50; 690 × 52 + 810 × 2 = 37,500 = 1,500 × 25',
    },
    {
      given: { malt: 100, plain: 10.8, peated: 12.25, wanted: 11 },
      gives: { peatedMass: 13.8, plainMass: 86.2 },
      within: 0.001,
      source: 'montana-pearson',
      note: 'two feeds of 12.25 and 10.8 % protein for one of 11 %: 13.8 and 86.2 parts in a hundred, to one decimal',
    },
  ],
});
