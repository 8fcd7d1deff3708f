// Pressed yeast that brings the wort to a count of cells.
import yeastDose from '../../../calculators/fermenting/yeast-dose.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

export default exercise(yeastDose, {
  id: 'pressed-yeast-for-cells',
  title: 'Pressed yeast for a count of cells',
  level: 2,
  ask: 'mass',
  vary: {
    given: ['cells'],
    wort: [5000, 6000, 7500, 8000, 10_000, 15_000, 21_000],
    cells: [10, 12, 14, 15, 16, 18, 20],
    perGram: [8, 9, 10, 11, 12],
  },
  prompt: (show, { perGram, cells }) =>
    `The laboratory asks for ${n(cells, 0)} million cells in each millilitre of ${show.wort} of wort. A gram of the pressed yeast holds ${n(perGram, 0)} billion cells, a billion being a thousand million. How much pressed yeast is that?`,
  slips: [
    {
      family: 'thousand',
      gives: (_, { mass }) => mass / 1000,
      say: 'A litre was counted as a millilitre. There are a thousand millilitres in a litre.',
    },
    {
      family: 'thousand',
      gives: (_, { mass }) => mass * 1000,
      say: 'That is in grams, or a billion was taken for a million. A thousand grams are a kilogram.',
    },
    {
      family: 'upsideDown',
      gives: ({ wort, cells, perGram }) => (wort * perGram) / cells / 1000,
      say: 'Cells wanted and cells in a gram changed places: richer yeast means less of it.',
    },
  ],
  working: ({ wort, cells, perGram }, { mass }) => [
    `Cells wanted: ${n(cells, 0)} million × ${n(1000 * wort, 0)} mL = ${n(cells * wort, 0)} thousand million`,
    `Grams = cells wanted ÷ cells in a gram: ${n(cells * wort, 0)} ÷ ${n(perGram, 0)} = ${n((cells * wort) / perGram, 0)} g`,
    `That is ${n(mass, 1)} kg; count too how much of the yeast lives`,
  ],
});
