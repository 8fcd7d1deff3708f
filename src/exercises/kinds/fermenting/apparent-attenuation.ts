// How far the gravity fell, as a part of the wort's degrees above water.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'apparent-attenuation',
  title: 'Apparent attenuation',
  topic: 'fermenting',
  level: 1,
  sources: ['derived'],
  of: 'percent',
  to: 1,
  within: 0.003,
  vary: {
    original: [
      'gravity',
      [1.05, 1.052, 1.054, 1.055, 1.056, 1.058, 1.06, 1.062, 1.064, 1.066],
      'house.originalGravity',
    ],
    final: ['gravity', [0.995, 0.996, 0.997, 0.998, 0.999, 1.003, 1.005, 1.008], 'house.finalGravity'],
  },
  answer: (v) => (100 * (v.original - v.final)) / (v.original - 1),
  prompt: (show) =>
    `The gravity of a washback fell from ${show.original} to ${show.final}. What part of the wort’s degrees above 1.000 is that, in per cent: its apparent attenuation?`,
  slips: [
    {
      family: 'wrongWhole',
      gives: (v) => (100 * (v.original - v.final)) / v.original,
      say: 'The fall was divided by the whole gravity. Only what stands above 1.000 counts, for water alone reads 1.000.',
    },
    {
      family: 'apparent',
      gives: (v) => (81.4 * (v.original - v.final)) / (v.original - 1),
      say: 'That is multiplied by 81.4 and so is the real figure. Apparent is the fall as it is read, and it may pass 100 %.',
    },
    {
      family: 'upsideDown',
      gives: (v) => (100 * (v.original - 1)) / (v.original - v.final),
      say: 'The division is upside down: the fall goes over the degrees that the wort had.',
    },
  ],
  working: (v, answer) => [
    'Apparent attenuation = (original − final) ÷ (original − 1.000) × 100',
    `(${n(v.original, 3)} − ${n(v.final, 3)}) ÷ (${n(v.original, 3)} − 1.000) × 100 = ${n(answer, 1)} %`,
    ...(answer > 100 ? ['It passes 100 % because alcohol makes the wash lighter than water.'] : []),
  ],
});
