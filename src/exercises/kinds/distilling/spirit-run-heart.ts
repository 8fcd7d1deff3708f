// The heart between two strengths, read from the curve of the run.
import { formatNumber as n } from '../../../core/format.ts';
import { decimalsOfStep } from '../../exercise.ts';
import { sum } from '../../sum.ts';
import { chartOf, volumeAt } from './spirit-run.ts';

const MOST_FORESHOTS = 0.25; // of the heart: fewer than an eighth could not be told from none on the curve

export default sum({
  id: 'spirit-run-heart',
  title: 'The heart between two strengths',
  topic: 'distilling',
  form: 'curve',
  level: 2,
  sources: ['de-nevers', 'oiml-r22'],
  of: 'volume20',
  to: 0,
  within: 0.06,
  vary: {
    volume: ['volume20', [3800, 4200, 4600, 5200, 6000], 'charge.volume'],
    charge: ['strength', [26, 27, 28], 'charge.strength'],
    reflux: ['share', [0.1, 0.2]],
    begins: ['strength', [73.5, 74, 74.5, 75, 75.5, 76, 76.5], 'heart.begins'],
    ends: ['strength', [58, 59, 60, 61, 62, 63], 'house.heartEnd'],
  },
  fits: (v, heart) => volumeAt(v, v.begins) <= MOST_FORESHOTS * heart,
  renewed: 7,
  before: {
    vary: {
      volume: ['volume20', [3800, 4200, 4600, 5200, 6000]],
      charge: ['strength', [26, 27, 28]],
      reflux: ['share', [0.1, 0.2]],
      begins: ['strength', [73, 74, 75]],
      ends: ['strength', [58, 59, 60, 61, 62, 63]],
    },
  },
  answer: (v) => volumeAt(v, v.ends) - volumeAt(v, v.begins),
  prompt: (show) =>
    `A spirit still was charged with ${show.volume} at ${show.charge}, and the curve shows the strength at the safe. The heart was taken from ${show.begins} falling to ${show.ends}. How many litres of heart were there?`,
  slips: [
    {
      family: 'forgotten',
      gives: (v) => volumeAt(v, v.ends),
      say: 'That is all that had come over when the heart ended. The foreshots before it must come off.',
    },
    {
      family: 'otherFigure',
      gives: (v) => volumeAt(v, v.begins),
      say: 'Those are the foreshots. The heart is what comes from there to its own end.',
    },
    {
      family: 'sign',
      gives: (v) => volumeAt(v, v.ends) + volumeAt(v, v.begins),
      say: 'The foreshots were added. They came over before the heart and are no part of it.',
    },
  ],
  working: (v, answer) => [
    `At ${n(v.ends, 0)} % vol the curve stands at ${n(volumeAt(v, v.ends), 0)} L, at ${n(v.begins, decimalsOfStep(v.begins))} % vol at ${n(volumeAt(v, v.begins), 0)} L`,
    `Heart = ${n(volumeAt(v, v.ends), 0)} − ${n(volumeAt(v, v.begins), 0)} = ${n(answer, 0)} L`,
  ],
  curve: (v) => chartOf(v),
});
