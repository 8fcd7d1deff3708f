// Strength from a density weighed in air, with a table for a vacuum.
import { formatNumber as n } from '../../../core/format.ts';
import { density } from '../../../core/quantity.ts';
import { densityInAir } from '../../../core/spirit/density-in-air.ts';
import { sum } from '../../sum.ts';
import { tabled } from './tabled.ts';

const AIR = 1.05; // kg/m³ that spirit weighs more in a vacuum, as the prompt says
type Rows = Readonly<Record<'low' | 'heavy' | 'light', number>>;
/** Strength between the two rows, or near them. */
const strengthOf = ({ low, heavy, light }: Rows, density: number) =>
  low + (heavy - density) / (heavy - light);

export default sum({
  id: 'strength-from-density-in-air',
  title: 'Weighed in air, looked up for a vacuum',
  topic: 'strength',
  level: 3,
  sources: ['oiml-r22', 'oiml-d28', 'derived'],
  of: 'strength',
  to: 2,
  within: 0.0012,
  vary: {
    low: ['strength', [40, 41, 42, 43, 45, 46, 48, 50, 54, 57]],
    part: ['share', [0.2, 0.3, 0.4, 0.5, 0.7, 0.8]],
  },
  quotes: {
    heavy: [2, ({ low }) => tabled(low, 2)],
    light: [2, ({ low }) => tabled(low + 1, 2)],
    shown: [
      2,
      ({ low, part }) => densityInAir(density(tabled(low, 2) + (tabled(low + 1, 2) - tabled(low, 2)) * part)),
    ],
  },
  answer: (v) => strengthOf(v, v.shown + AIR),
  prompt: (_, __, { low, heavy, light, shown }) =>
    `Weighed in air at 20 °C a sample shows ${n(shown, 2)} kg/m³. Your table is for a vacuum, where spirit weighs 1.05 kg/m³ more, and gives ${n(heavy, 2)} kg/m³ for ${low} % vol and ${n(light, 2)} for ${low + 1}. How strong is the sample, to the hundredth?`,
  working: ({ low, heavy, light, shown }, answer) => [
    `In a vacuum it would weigh ${n(shown, 2)} + 1.05 = ${n(shown + AIR, 2)} kg/m³`,
    `(${n(heavy, 2)} − ${n(shown + AIR, 2)}) ÷ (${n(heavy, 2)} − ${n(light, 2)}) is the part of the way from ${low} to ${low + 1} % vol: ${n(answer, 2)} % vol`,
  ],
  slips: [
    {
      family: 'forgotten',
      gives: (v) => strengthOf(v, v.shown),
      say: 'The density in air was looked up in a table for a vacuum, which makes spirit seem stronger than it is. Add 1.05 first.',
    },
    {
      family: 'sign',
      gives: (v) => strengthOf(v, v.shown - AIR),
      say: 'The 1.05 was taken off. Air lifts the spirit, so in a vacuum it weighs more: add it.',
    },
  ],
});
