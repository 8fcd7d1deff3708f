// Strength from a density between two rows of a printed table.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';
import { tabled } from './tabled.ts';

const found = (low: number, part: number) =>
  Number((tabled(low, 2) + (tabled(low + 1, 2) - tabled(low, 2)) * part).toFixed(2));
const between = (low: number, part: number) =>
  (tabled(low, 2) - found(low, part)) / (tabled(low, 2) - tabled(low + 1, 2));

export default sum({
  id: 'strength-from-density',
  title: 'Strength from a density and a piece of table',
  topic: 'strength',
  level: 2,
  sources: ['oiml-r22'],
  of: 'strength',
  to: 2,
  within: 0.0008,
  vary: {
    low: ['strength', [41, 43, 46, 48, 52, 54, 56, 58, 59, 61, 62, 64, 66]],
    part: ['share', [0.2, 0.25, 0.3, 0.7, 0.75, 0.8]],
  },
  answer: ({ low, part }) => low + between(low, part),
  prompt: (_, __, { low, part }) =>
    `A sample weighs ${n(found(low, part), 2)} kg/m³ at 20 °C. The table for that temperature gives ${n(tabled(low, 2), 2)} kg/m³ for ${low} % vol and ${n(tabled(low + 1, 2), 2)} for ${low + 1}. How strong is the sample, to the hundredth?`,
  working: ({ low, part }, answer) => [
    'Between two rows, take the same part of the step in strength as of the step in density; lighter is stronger',
    `(${n(tabled(low, 2), 2)} − ${n(found(low, part), 2)}) ÷ (${n(tabled(low, 2), 2)} − ${n(tabled(low + 1, 2), 2)}) = ${n(between(low, part), 2)}`,
    `${low} + ${n(between(low, part), 2)} = ${n(answer, 2)} % vol`,
  ],
  slips: [
    {
      family: 'sign',
      gives: ({ low, part }) => low + 1 - between(low, part),
      say: 'The part was counted from the wrong row. Density falls as strength rises: measure from the weaker, heavier row.',
    },
    {
      family: 'forgotten',
      gives: ({ low, part }) => (part < 0.5 ? low : low + 1),
      say: 'That is the nearest row of the table. Go between the rows for the hundredths.',
    },
    {
      family: 'wrongConstant',
      gives: ({ low, part }) => low + tabled(low, 2) - found(low, part),
      say: 'Kilograms in the cubic metre were taken as % vol. Divide them by the step in density between the rows first.',
    },
  ],
});
