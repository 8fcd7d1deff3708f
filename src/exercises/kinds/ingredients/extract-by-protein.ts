// The extract that an old rule promises from protein and the weight of the corns.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const kind = sum({
  id: 'extract-by-protein',
  title: 'Extract by protein and weight of corns',
  topic: 'ingredients',
  level: 2,
  sources: ['bishop-1930', 'bishop-tested-2007'],
  of: 'percent',
  to: 2,
  within: 0.002,
  vary: {
    constant: ['percent', [84, 84.5, 85]],
    protein: ['percent', [8.8, 9.2, 9.6, 10, 10.4, 10.8, 11.2]],
    corns: ['grams', [36, 38, 40, 42, 44]],
  },
  answer: ({ constant, protein, corns }) => constant - 0.85 * protein + 0.15 * corns,
  prompt: (show) =>
    `A lot of two-row barley has ${show.protein} protein, dry, and a thousand of its dry grains weigh ${show.corns}. An old rule begins with ${show.constant} of extract, takes off 0.85 for each per cent of protein and puts on 0.15 for each gram of a thousand grains. What extract does it promise, in per cent of the dry matter?`,
  slips: [
    {
      family: 'sign',
      gives: ({ constant, protein, corns }) => constant + 0.85 * protein + 0.15 * corns,
      say: 'Protein was put on. It takes the room of starch, so it has to be taken off.',
    },
    {
      family: 'forgotten',
      gives: ({ constant, protein }) => constant - 0.85 * protein,
      say: 'The weight of the grains was left out: heavy grains have more starch to their husk.',
    },
    {
      family: 'otherFigure',
      gives: ({ constant, protein, corns }) => constant - 0.15 * protein + 0.85 * corns,
      say: 'The two factors were exchanged: 0.85 goes with the protein, 0.15 with the grams.',
    },
  ],
  working: ({ constant, protein, corns }, answer) => [
    'Extract = where the rule begins − 0.85 × protein + 0.15 × grams of a thousand grains',
    `0.85 × ${n(protein, 1)} = ${n(0.85 * protein, 2)} and 0.15 × ${n(corns, 0)} = ${n(0.15 * corns, 2)}`,
    `${n(constant, 1)} − ${n(0.85 * protein, 2)} + ${n(0.15 * corns, 2)} = ${n(answer, 2)} %`,
  ],
});

export default { ...kind, since: 7 };
