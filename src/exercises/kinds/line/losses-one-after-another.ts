// The part of the malt’s alcohol that reaches the bottle.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'losses-one-after-another',
  title: 'Losses one after another',
  topic: 'line',
  level: 2,
  sources: ['derived', 'memory'],
  of: 'percent',
  to: 1,
  within: 0.004,
  vary: {
    mash: ['percent', [3, 4, 5, 6]],
    stills: ['percent', [1, 1.5, 2, 3]],
    wood: ['percent', [18, 20, 22, 25, 28]],
    bottling: ['percent', [0.5, 1, 1.5, 2]],
  },
  answer: (v) =>
    [v.mash, v.stills, v.wood, v.bottling].reduce((left, lost) => (left * (100 - lost)) / 100, 100),
  prompt: (show) =>
    `On its way a house loses ${show.mash} of what the malt could give in mash and washback, then ${show.stills} of the rest in the stills, ${show.wood} of that in the casks, and ${show.bottling} of what is left at bottling. What part of the alcohol that the malt could give is in the bottles?`,
  slips: [
    {
      family: 'compound',
      gives: (v) => 100 - v.mash - v.stills - v.wood - v.bottling,
      say: 'The losses were added. Each takes its part of what the one before has left, so what is left is multiplied.',
    },
    {
      family: 'otherFigure',
      gives: (_, answer) => 100 - answer,
      say: 'That is what is lost. What is left was asked for.',
    },
    {
      family: 'forgotten',
      gives: (v, answer) => (100 * answer) / (100 - v.wood),
      say: 'The loss in the casks, the largest of all, was left out.',
    },
  ],
  working: (v, answer) => [
    'What is left is multiplied, one part after another',
    `${(100 - v.mash) / 100} × ${(100 - v.stills) / 100} × ${(100 - v.wood) / 100} × ${(100 - v.bottling) / 100} × 100 = ${n(answer, 1)} %`,
  ],
});
