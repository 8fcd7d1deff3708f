// What a volume of wort weighs.
import { formatNumber as n } from '../../../core/format.ts';
import { wortMass } from '../../../core/mashing/wort.ts';
import { gravity, litres20 } from '../../../core/quantity.ts';
import { sum } from '../../sum.ts';

const WATER = 0.9982; // kg to a litre at 20 °C, as the handbook prints it

export default sum({
  id: 'wort-mass',
  title: 'What the wort weighs',
  topic: 'mashing',
  level: 1,
  sources: ['oiml-r22'],
  of: 'mass',
  to: 0,
  within: 0.0005,
  vary: {
    volume: ['volume20', [5000, 6000, 7000, 7200, 7500, 8000, 10_000, 12_000, 21_000], 'wort.volume'],
    gravity: ['gravity', [1.052, 1.054, 1.055, 1.056, 1.058, 1.06, 1.062, 1.064], 'house.originalGravity'],
  },
  answer: (v) => wortMass({ volume: litres20(v.volume), gravity: gravity(v.gravity) }),
  prompt: (show) =>
    `The washback holds ${show.volume} of wort of gravity ${show.gravity}, both at 20 °C, where a litre of water weighs ${WATER} kg. What does the wort weigh, to the kilogram?`,
  working: (v, answer) => [
    'Mass = volume × gravity × what a litre of water weighs',
    `${n(v.volume, 0)} × ${n(v.gravity, 3)} × ${WATER} = ${n(answer, 0)} kg`,
  ],
  slips: [
    {
      family: 'massForVolume',
      gives: (v) => v.volume,
      say: 'Litres were taken as kilograms; sugar makes wort heavier than water.',
    },
    {
      family: 'upsideDown',
      gives: (v) => (v.volume / v.gravity) * WATER,
      say: 'It was divided by the gravity; wort is heavier than water, so multiply.',
    },
    {
      family: 'forgotten',
      gives: (v) => v.volume * v.gravity,
      say: `A litre of water was taken as a kilogram; at 20 °C it weighs ${WATER} kg.`,
    },
  ],
});
