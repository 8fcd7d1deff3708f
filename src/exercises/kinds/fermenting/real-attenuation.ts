// How much of the extract the yeast truly used, by the factor 81.4.
import { formatNumber as n } from '../../../core/format.ts';
import { retiredAfter } from '../../renewed.ts';
import { sum } from '../../sum.ts';

/** Asks what another kind asks too; older sheets go on drawing it. */
export default retiredAfter(
  2,
  sum({
    id: 'real-attenuation',
    title: 'Fermentability that two gravities show',
    topic: 'fermenting',
    level: 1,
    sources: ['bringhurst-1996', 'derived'],
    of: 'percent',
    to: 1,
    within: 0.003,
    vary: {
      original: ['gravity', [1.05, 1.052, 1.054, 1.055, 1.056, 1.058, 1.06, 1.062, 1.064, 1.066]],
      final: ['gravity', [0.995, 0.996, 0.997, 0.998, 0.999, 1.003, 1.005, 1.008]],
    },
    answer: (v) => (81.4 * (v.original - v.final)) / (v.original - 1),
    prompt: (show) =>
      `A washback fell from ${show.original} to ${show.final}. With the factor 81.4 for what alcohol hides, what fermentability do these gravities show, in per cent?`,
    slips: [
      {
        family: 'apparent',
        gives: (v) => (100 * (v.original - v.final)) / (v.original - 1),
        say: 'That is the apparent figure. Alcohol pulls the reading down and hides extract, which is why the factor is 81.4 and not 100.',
      },
      {
        family: 'wrongWhole',
        gives: (v) => (81.4 * (v.original - v.final)) / v.original,
        say: 'The fall was divided by the whole gravity. Divide by what the wort stood above 1.000.',
      },
      {
        family: 'forgotten',
        gives: () => 81.4,
        say: 'That is what a fall to 1.000 exactly would give. The fall goes to the final gravity that was read.',
      },
    ],
    working: (v, answer) => [
      'Fermentability = 81.4 × (original − final) ÷ (original − 1.000)',
      `81.4 × (${n(v.original, 3)} − ${n(v.final, 3)}) ÷ (${n(v.original, 3)} − 1.000) = ${n(answer, 1)} %`,
    ],
  }),
);
