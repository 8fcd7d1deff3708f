// Energy for a year’s spirit, and the carbon dioxide of its fuel.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'fuel-and-its-gas',
  title: 'Fuel and its gas',
  topic: 'line',
  level: 2,
  sources: ['common-practice', 'derived'],
  of: 'mass',
  to: 0,
  vary: {
    alcohol: ['volume20', [80_000, 100_000, 150_000, 200_000, 250_000, 400_000, 500_000, 1_000_000]],
    energy: ['count', [6, 6.25, 6.5, 6.66, 6.75, 7, 7.5, 8]],
    factor: ['mass', [0.18, 0.2, 0.22, 0.24, 0.25, 0.27]],
  },
  answer: (v) => v.alcohol * v.energy * v.factor,
  prompt: (show) =>
    `A house makes ${show.alcohol} of pure alcohol a year and needs ${show.energy} kWh for each litre. Its supplier says that a kWh of the fuel brings ${show.factor} of carbon dioxide. How many kilograms of it does the fuel bring in a year?`,
  slips: [
    {
      family: 'thousand',
      gives: (_, answer) => answer / 1000,
      say: 'That is in tonnes. Kilograms were asked for.',
    },
    {
      family: 'forgotten',
      gives: (v) => v.alcohol * v.energy,
      say: 'That is the energy in kWh. Each kWh brings only a part of a kilogram.',
    },
    {
      family: 'forgotten',
      gives: (v) => v.alcohol * v.factor,
      say: 'The kWh for each litre were left out.',
    },
    {
      family: 'upsideDown',
      gives: (v) => (v.alcohol * v.energy) / v.factor,
      say: 'Divided where one multiplies: so many kilograms for each kWh.',
    },
  ],
  working: (v, answer) => [
    `Energy: ${n(v.alcohol, 0)} × ${v.energy} = ${n(v.alcohol * v.energy, 0)} kWh`,
    `Carbon dioxide: ${n(v.alcohol * v.energy, 0)} × ${v.factor} = ${n(answer, 0)} kg`,
  ],
});
