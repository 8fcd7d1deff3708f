// How little spirit, turned to vapour, could burn in a room.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const MOLE = 24.06; // L of vapour at 20 °C and one atmosphere; the gas law
const MOLAR_MASS = 46.07; // g of ethanol
const DENSITY = 789; // g in a litre of ethanol

export default sum({
  id: 'vapour-from-a-spill',
  title: 'How little makes a cloud that burns',
  topic: 'safety',
  level: 3,
  sources: ['niosh-ethanol', 'derived'],
  of: 'alcohol',
  to: 2,
  within: 0.015,
  vary: {
    room: ['space', [15, 20, 25, 30, 40, 50, 60, 80]],
    limit: ['percent', [3.1, 3.3]],
    part: ['percent', [10, 20, 25, 50, 100]],
  },
  answer: (v) => ((v.room * 1000 * v.limit * v.part) / 1e4 / MOLE) * (MOLAR_MASS / DENSITY),
  prompt: (show) =>
    `Alcohol vapour burns in air from ${show.limit}. How much pure alcohol, all turned to vapour and evenly mixed, would bring a pump room of ${show.room} at 20 °C to ${show.part} of that limit? 46.07 g of vapour fill 24.06 L, and a litre of the liquid weighs 789 g.`,
  slips: [
    {
      family: 'massForVolume',
      gives: (_, answer) => (answer * DENSITY) / 1000,
      say: 'That is its mass in kilograms. Litres are the mass divided by 0.789 kg.',
    },
    {
      family: 'massForVolume',
      gives: (v) => (v.room * 1000 * v.limit * v.part) / 1e4,
      say: 'That is the litres of vapour. A litre of liquid makes over 400 of them.',
    },
    {
      family: 'percent',
      gives: (_, answer) => answer * 100,
      say: 'A per cent was not divided by 100.',
    },
  ],
  working: (v, answer) => {
    const vapour = (v.room * 1000 * v.limit * v.part) / 1e4;
    return [
      `Vapour: ${n(1000 * v.room, 0)} L × ${v.limit} ÷ 100 × ${v.part} ÷ 100 = ${n(vapour, 1)} L`,
      `Its mass: ${n(vapour, 1)} ÷ 24.06 × 46.07 = ${n((vapour / MOLE) * MOLAR_MASS, 1)} g`,
      `As liquid: ${n((vapour / MOLE) * MOLAR_MASS, 1)} ÷ 789 = ${n(answer, 2)} L`,
      'Vapour is never even: close to the spill it is far thicker, so less can burn there. No sum makes a room safe.',
    ];
  },
});
