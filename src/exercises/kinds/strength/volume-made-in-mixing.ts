// The volume that alcohol and water make together, by mass and density.
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { litres20, strength } from '../../../core/quantity.ts';
import { blend } from '../../../core/spirit/mixing.ts';
import { sum } from '../../sum.ts';

const together = (alcohol: number, water: number) =>
  blend([
    { volume: litres20(alcohol), strength: strength(100) },
    { volume: litres20(water), strength: strength(0) },
  ]);
const mass = (alcohol: number, water: number) => alcohol * 0.7892 + water * 0.9982;

export default sum({
  id: 'volume-made-in-mixing',
  title: 'Fifty and fifty',
  topic: 'strength',
  level: 2,
  sources: ['oiml-r22', 'derived'],
  of: 'volume20',
  to: 1,
  within: 0.004,
  vary: {
    alcohol: ['volume20', [40, 45, 50, 55, 60, 65, 70, 80]],
    water: ['volume20', [40, 45, 50, 55, 60, 65, 70, 80]],
  },
  quotes: {
    density: [1, ({ alcohol, water }) => (1000 * mass(alcohol, water)) / together(alcohol, water).volume],
  },
  answer: ({ alcohol, water, density }) => (1000 * mass(alcohol, water)) / density,
  prompt: (show, _, { density }) =>
    `${show.alcohol} of pure alcohol and ${show.water} of water are poured together, all at 20 °C. They weigh 0.7892 and 0.9982 kg to the litre, and the mixture has a density of ${n(density, 1)} kg/m³. How much room does it take?`,
  working: ({ alcohol, water, density }, answer) => [
    'Masses add up; volumes do not',
    `${w(alcohol)} × 0.7892 + ${w(water)} × 0.9982 = ${w(mass(alcohol, water))} kg`,
    `${w(mass(alcohol, water))} ÷ ${w(density)} × 1,000 = ${n(answer, 1)} L; ${w(alcohol + water - answer)} L have vanished, and nothing has leaked`,
  ],
  slips: [
    {
      family: 'contraction',
      gives: ({ alcohol, water }) => alcohol + water,
      say: 'The volumes were added. Alcohol and water draw together as they mix; only masses add up.',
    },
    {
      family: 'massForVolume',
      gives: ({ alcohol, water }) => mass(alcohol, water),
      say: 'That is the mass in kilograms. Divide it by the density for the litres.',
    },
    {
      family: 'wrongConstant',
      gives: ({ alcohol, water }) => mass(alcohol, water) / 0.9982,
      say: 'The mass was divided by the density of water. Take the density of the mixture.',
    },
  ],
});
