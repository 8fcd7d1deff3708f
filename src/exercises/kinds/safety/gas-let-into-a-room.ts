// Carbon dioxide let into a room, as parts in a million, if it were mixed.
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const MOLE = 24.06; // L of gas at 20 °C and one atmosphere; the gas law
const MOLAR_MASS = 44.01; // g of carbon dioxide

export default sum({
  id: 'gas-let-into-a-room',
  title: 'Gas let into a room',
  topic: 'safety',
  level: 2,
  sources: ['derived'],
  of: 'ppm',
  to: 0,
  within: 0.015,
  vary: {
    mass: ['grams', [500, 800, 1000, 1500, 2000, 2500, 3000, 4000, 5000]],
    room: ['space', [60, 80, 120, 150, 200, 250, 300, 400]],
  },
  answer: (v) => ((v.mass / MOLAR_MASS) * MOLE * 1000) / v.room,
  prompt: (show) =>
    `From a hose ${show.mass} of carbon dioxide have come into a room of ${show.room} at 20 °C, with the door shut. By how many ppm would that raise the level if the gas were evenly mixed, which it is not? 44.01 g fill 24.06 L.`,
  slips: [
    {
      family: 'massForVolume',
      gives: (v) => ((v.mass / 1000 / v.room) * 1e6) / 1.2,
      say: 'That is mass over mass of air. Parts in a million of gas are counted by volume.',
    },
    {
      family: 'thousand',
      gives: (_, answer) => answer / 1000,
      say: 'A thousand was lost between litres and cubic metres.',
    },
    {
      family: 'forgotten',
      gives: (v) => (v.mass * MOLE * 1000) / v.room,
      say: 'The grams were not divided by 44.01: 24.06 L belong to 44.01 g and not to one.',
    },
  ],
  working: (v, answer) => {
    const litres = (v.mass / MOLAR_MASS) * MOLE;
    return [
      `Gas: ${w(v.mass)} ÷ 44.01 × 24.06 = ${w(litres)} L`,
      'Parts in a million: litres of gas ÷ litres of room × 1,000,000; a cubic metre is 1,000 L',
      `${w(litres)} ÷ ${w(1000 * v.room)} × 1,000,000 = ${n(answer, 0)} ppm`,
      'The gas lies low and is far thicker there. The sum clears no room: only measurement and the site’s procedures do.',
    ];
  },
});
