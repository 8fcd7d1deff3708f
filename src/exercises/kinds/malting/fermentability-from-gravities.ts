// The fermentability that a laboratory's small fermentation shows.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const ATTENUATION = 81.4; // Bringhurst et al. 1996

export default sum({
  id: 'fermentability-from-gravities',
  title: 'Fermentability from two gravities',
  topic: 'malting',
  level: 2,
  sources: ['bringhurst-1996'],
  of: 'percent',
  to: 1,
  within: 0.005,
  vary: {
    original: [
      'gravity',
      [1.052, 1.053, 1.054, 1.055, 1.056, 1.057, 1.058, 1.059, 1.06, 1.062, 1.064],
      'house.originalGravity',
    ],
    final: ['gravity', [0.995, 0.996, 0.997, 0.998, 0.999], 'house.finalGravity'],
  },
  answer: ({ original, final }) => (ATTENUATION * (original - final)) / (original - 1),
  prompt: (show) =>
    `The laboratory ferments a small wort of gravity ${show.original} down to ${show.final}. Fermentability is ${ATTENUATION} times the fall in gravity over what the wort had above water’s 1.000. What is it?`,
  working: ({ original, final }, answer) => [
    `Fall in gravity: ${n(original, 3)} − ${n(final, 3)} = ${n(original - final, 3)}`,
    `Above water: ${n(original, 3)} − 1.000 = ${n(original - 1, 3)}`,
    `${ATTENUATION} × ${n(original - final, 3)} ÷ ${n(original - 1, 3)} = ${n(answer, 1)} %`,
  ],
  slips: [
    {
      family: 'apparent',
      gives: ({ original, final }) => (100 * (original - final)) / (original - 1),
      say: `That is the apparent attenuation; alcohol makes the wort look further fermented than it is, which the ${ATTENUATION} corrects.`,
    },
    {
      family: 'wrongWhole',
      gives: ({ original, final }) => (ATTENUATION * (original - final)) / original,
      say: 'It was divided by the whole gravity; only what stands above 1.000 is extract.',
    },
  ],
});
