// About how much carbon dioxide a wash has given off: three quarters of a kilogram to the litre of alcohol.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'carbon-dioxide-from-a-wash',
  title: 'The gas of a wash, by its size',
  topic: 'fermenting',
  form: 'estimate',
  level: 1,
  sources: ['derived'],
  of: 'mass',
  to: 0,
  vary: {
    volume: ['volume20', [3000, 5000, 6000, 8000, 10_000, 15_000, 20_000, 25_000, 30_000], 'wash.volume'],
    strength: ['strength', [7, 7.5, 8, 8.5, 9, 9.5], 'wash.strength'],
  },
  answer: (v) => (((v.volume * v.strength) / 100) * 0.78924 * 44.01) / 46.07,
  prompt: (show) =>
    `A washback stands full with ${show.volume} of finished wash at ${show.strength}. With each litre of pure alcohol comes about three quarters of a kilogram of carbon dioxide. About how many kilograms of it has the washback given off?`,
  renewed: 7,
  before: {
    prompt: (show) =>
      `A washback stands full with ${show.volume} of finished wash at ${show.strength}. About how many kilograms of carbon dioxide has it given off?`,
  },
  slips: [
    {
      family: 'percent',
      gives: (_, answer) => answer * 100,
      say: 'That is three quarters of a kilogram to each litre of wash and per cent: the strength was not divided by 100.',
    },
    {
      family: 'forgotten',
      gives: (v) => 0.754 * v.volume,
      say: 'That counts every litre of wash as alcohol. Only the pure alcohol brings three quarters of a kilogram each.',
    },
    {
      family: 'thousand',
      gives: (_, answer) => answer / 1000,
      say: 'That is in tonnes. A wash gives off gas by the hundred kilograms.',
    },
    {
      family: 'otherFigure',
      gives: (v) => ((v.volume * v.strength) / 100) * 413,
      say: 'That is the gas in litres, about 413 with a litre of alcohol. The question asks for its mass.',
    },
  ],
  working: (v, answer) => [
    'A litre of pure alcohol comes with about three quarters of a kilogram of carbon dioxide.',
    `Pure alcohol: ${n(v.volume, 0)} × ${n(v.strength, 1)} ÷ 100 = ${n((v.volume * v.strength) / 100, 0)} L`,
    `Gas: ${n((v.volume * v.strength) / 100, 0)} × 0.754 = ${n(answer, 0)} kg, or about ${n(((v.volume * v.strength) / 100) * 0.413, 0)} m³`,
  ],
});
