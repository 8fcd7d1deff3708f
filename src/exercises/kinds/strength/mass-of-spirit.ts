// What a volume of spirit weighs, by the table's density.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';
import { tabled } from './tabled.ts';

export default sum({
  id: 'mass-of-spirit',
  title: 'Kilograms from litres',
  topic: 'strength',
  level: 1,
  sources: ['oiml-r22'],
  of: 'mass',
  to: 1,
  within: 0.004,
  vary: {
    volume: ['volume20', [25, 40, 60, 75, 120, 180, 250, 400, 640, 1000]],
    strength: ['strength', [55, 57.5, 60, 62.5, 63.5, 65, 68, 70]],
  },
  quotes: { density: [1, ({ strength }) => tabled(strength)] },
  answer: ({ volume, density }) => (volume * density) / 1000,
  prompt: (show, _, { density }) =>
    `${show.volume} of spirit at ${show.strength} and 20 °C go into a tank that stands on scales. The table gives ${n(density, 1)} kg/m³ for that strength. How many kilograms of spirit is that?`,
  working: ({ volume, density }, answer) => [
    'Mass = volume × density; a cubic metre is 1,000 L',
    `${n(volume, 0)} × ${n(density, 1)} ÷ 1,000 = ${n(answer, 1)} kg`,
  ],
  slips: [
    {
      family: 'massForVolume',
      gives: ({ volume }) => volume,
      say: 'A litre was taken for a kilogram. That is nearly so for water; spirit is lighter, and the table says by how much.',
    },
    {
      family: 'upsideDown',
      gives: ({ volume, density }) => (1000 * volume) / density,
      say: 'The litres were divided by the density. Spirit is lighter than water, so the kilograms must be fewer than the litres: multiply.',
    },
    {
      family: 'thousand',
      gives: ({ volume, density }) => volume * density,
      say: 'The density is for a cubic metre, and a cubic metre is 1,000 L. Divide by 1,000.',
    },
  ],
});
