// Strength from a density between two rows of a printed table.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';
import { tabled } from './tabled.ts';

type Rows = Readonly<Record<'heavy' | 'light' | 'found', number>>;
const between = ({ heavy, light, found }: Rows) => (heavy - found) / (heavy - light);

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
  quotes: {
    heavy: [2, ({ low }) => tabled(low, 2)],
    light: [2, ({ low }) => tabled(low + 1, 2)],
    found: [
      2,
      ({ low, part }) => Number((tabled(low, 2) + (tabled(low + 1, 2) - tabled(low, 2)) * part).toFixed(2)),
    ],
  },
  answer: (v) => v.low + between(v),
  prompt: (_, __, { low, heavy, light, found }) =>
    `A sample weighs ${n(found, 2)} kg/m³ at 20 °C. The table for that temperature gives ${n(heavy, 2)} kg/m³ for ${low} % vol and ${n(light, 2)} for ${low + 1}. How strong is the sample, to the hundredth?`,
  working: ({ low, heavy, light, found }, answer) => [
    'Between two rows, take the same part of the step in strength as of the step in density; lighter is stronger',
    `(${n(heavy, 2)} − ${n(found, 2)}) ÷ (${n(heavy, 2)} − ${n(light, 2)}) = ${n(between({ heavy, light, found }), 2)}`,
    `${low} + ${n(between({ heavy, light, found }), 2)} = ${n(answer, 2)} % vol`,
  ],
  slips: [
    {
      family: 'sign',
      gives: (v) => v.low + 1 - between(v),
      say: 'The part was counted from the wrong row. Density falls as strength rises: measure from the weaker, heavier row.',
    },
    {
      family: 'forgotten',
      gives: ({ low, part }) => (part < 0.5 ? low : low + 1),
      say: 'That is the nearest row of the table. Go between the rows for the hundredths.',
    },
    {
      family: 'wrongConstant',
      gives: ({ low, heavy, found }) => low + heavy - found,
      say: 'Kilograms in the cubic metre were taken as % vol. Divide them by the step in density between the rows first.',
    },
  ],
});
