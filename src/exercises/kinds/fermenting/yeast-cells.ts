// How many cells the yeast is in all, from the count in a millilitre.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'yeast-cells',
  title: 'Cells in a washback',
  topic: 'fermenting',
  level: 1,
  sources: ['derived'],
  of: 'count',
  to: 0,
  vary: {
    cells: ['cells', [10, 12, 14, 15, 16, 18, 20]],
    volume: ['volume20', [5000, 6000, 7500, 9000, 12_000, 15_000, 18_000, 21_000], 'wort.volume'],
  },
  answer: (v) => (v.cells * v.volume) / 1000,
  fits: (_, answer) => answer >= 50 || Math.abs(Math.round(answer) - answer) < 0.4, // the whole number that is printed is right
  prompt: (show, _, v) =>
    `A sample of freshly yeasted wort is counted at ${v.cells} million cells in a millilitre. How many cells are in the whole washback of ${show.volume}, in millions of millions?`,
  slips: [
    {
      family: 'thousand',
      gives: (_, answer) => answer / 1000,
      say: 'Litres were taken as millilitres. Each litre has a thousand of them.',
    },
    {
      family: 'thousand',
      gives: (_, answer) => answer * 1000,
      say: 'That is in thousands of millions. A million of millions is a thousand times as much.',
    },
    {
      family: 'upsideDown',
      gives: (v) => v.volume / v.cells,
      say: 'The volume was divided by the count. Each millilitre has its cells, so multiply.',
    },
  ],
  working: (v, answer) => [
    `The wash is ${n(v.volume, 0)} × 1,000 = ${n(1000 * v.volume, 0)} mL`,
    `Cells = count in a millilitre × millilitres: ${v.cells} million × ${n(1000 * v.volume, 0)} = ${n(v.cells * v.volume * 1000, 0)} million`,
    `In millions of millions: ${n(v.cells * v.volume * 1000, 0)} ÷ 1,000,000 = ${n(answer, 0)}`,
  ],
});
