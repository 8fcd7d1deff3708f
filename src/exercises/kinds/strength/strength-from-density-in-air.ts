// Strength from a density weighed in air, with a table for a vacuum.
import { formatNumber as n } from '../../../core/format.ts';
import { celsius, density } from '../../../core/quantity.ts';
import { densityInAir, densityInVacuo } from '../../../core/spirit/density-in-air.ts';
import { strengthFromDensity } from '../../../core/spirit/strength.ts';
import { sum } from '../../sum.ts';
import { tabled } from './tabled.ts';

/** What the balance shows for a sample that lies a part of the way between two rows. */
const shownFor = (low: number, part: number) =>
  Number(
    densityInAir(density(tabled(low, 2) + (tabled(low + 1, 2) - tabled(low, 2)) * part)).toFixed(2),
  ) as ReturnType<typeof densityInAir>;
const strengthOf = (kilograms: number) => strengthFromDensity(density(kilograms), celsius(20));

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
  answer: ({ low, part }) => strengthOf(densityInVacuo(shownFor(low, part))),
  prompt: (_, __, { low, part }) =>
    `Weighed in air at 20 °C a sample shows ${n(shownFor(low, part), 2)} kg/m³. Your table is for a vacuum, where spirit weighs 1.05 kg/m³ more, and gives ${n(tabled(low, 2), 2)} kg/m³ for ${low} % vol and ${n(tabled(low + 1, 2), 2)} for ${low + 1}. How strong is the sample, to the hundredth?`,
  working: ({ low, part }, answer) => [
    `In a vacuum it would weigh ${n(shownFor(low, part), 2)} + 1.05 = ${n(shownFor(low, part) + 1.05, 2)} kg/m³`,
    `(${n(tabled(low, 2), 2)} − ${n(shownFor(low, part) + 1.05, 2)}) ÷ (${n(tabled(low, 2), 2)} − ${n(tabled(low + 1, 2), 2)}) is the part of the way from ${low} to ${low + 1} % vol: ${n(answer, 2)} % vol`,
  ],
  slips: [
    {
      family: 'forgotten',
      gives: ({ low, part }) => strengthOf(shownFor(low, part)),
      say: 'The density in air was looked up in a table for a vacuum, which makes spirit seem stronger than it is. Add 1.05 first.',
    },
    {
      family: 'sign',
      gives: ({ low, part }) => strengthOf(shownFor(low, part) - 1.05),
      say: 'The 1.05 was taken off. Air lifts the spirit, so in a vacuum it weighs more: add it.',
    },
  ],
});
