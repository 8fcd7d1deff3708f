// Degrees Plato of a gravity between two rows of a printed table.
import { formatNumber as n } from '../../../core/format.ts';
import { gravity } from '../../../core/quantity.ts';
import { platoFromGravity } from '../../../core/wort/extract.ts';
import { sum } from '../../sum.ts';

const ROWS = 4; // points of gravity between two rows of this table
const plato = (sg: number) => platoFromGravity(gravity(sg));

export default sum({
  id: 'plato-from-table',
  title: 'Between two rows of the sugar table',
  topic: 'strength',
  level: 2,
  sources: ['sugar-tables'],
  of: 'plato',
  to: 2,
  within: 0.0025,
  vary: {
    row: ['count', [1040, 1044, 1048, 1052, 1056, 1060, 1064, 1068, 1072, 1076]],
    over: ['count', [0.5, 1, 1.5, 2.5, 3, 3.5]],
  },
  quotes: {
    low: [2, ({ row }) => plato(row / 1000)],
    high: [2, ({ row }) => plato((row + ROWS) / 1000)],
  },
  answer: ({ low, high, over }) => low + ((high - low) * over) / ROWS,
  prompt: (_, __, { row, low, high, over }) =>
    `A piece of a printed table gives ${n(low, 2)} °P for a gravity of ${n(row / 1000, 3)} and ${n(high, 2)} °P for ${n((row + ROWS) / 1000, 3)}. The wort reads ${n((row + over) / 1000, over % 1 ? 4 : 3)}. How many degrees Plato is that?`,
  working: ({ low, high, over }, answer) => [
    'Between two rows, take the same part of the step in degrees Plato as of the step in gravity',
    `The reading lies ${n(over, over % 1 ? 1 : 0)} of ${ROWS} points above the lower row: ${n(low, 2)} + (${n(high, 2)} − ${n(low, 2)}) × ${n(over, over % 1 ? 1 : 0)} ÷ ${ROWS} = ${n(answer, 2)} °P`,
  ],
  slips: [
    {
      family: 'sign',
      gives: ({ low, high, over }) => high - ((high - low) * over) / ROWS,
      say: 'The part of the step was taken off the upper row. The reading lies that far above the lower row: add it there.',
    },
    {
      family: 'forgotten',
      gives: ({ low }) => low,
      say: 'That is the lower row as printed. Go on by the part of the step that the reading lies above it.',
    },
    {
      family: 'wrongConstant',
      gives: ({ low, over }) => low + over,
      say: 'Points of gravity were added as if each were a degree Plato. Take that part of the step between the two rows in place of it.',
    },
  ],
});
