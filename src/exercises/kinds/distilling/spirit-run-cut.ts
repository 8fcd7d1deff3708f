// How much has come over when the run is down to a strength, read from the curve.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';
import { chartOf, volumeAt } from './spirit-run.ts';

export default sum({
  id: 'spirit-run-cut',
  title: 'When is the cut?',
  topic: 'distilling',
  form: 'curve',
  level: 1,
  sources: ['de-nevers', 'oiml-r22'],
  of: 'volume20',
  to: 0,
  within: 0.05,
  vary: {
    volume: ['volume20', [3800, 4200, 4600, 5200, 6000], 'charge.volume'],
    charge: ['strength', [24, 25, 26, 27, 28], 'charge.strength'],
    reflux: ['share', [0, 0.1, 0.2]],
    cut: ['strength', [58, 60, 61, 62, 63, 64], 'house.heartEnd'],
  },
  answer: (v) => volumeAt(v, v.cut),
  prompt: (show) =>
    `A spirit still was charged with ${show.volume} at ${show.charge}, and the curve shows the strength at the safe as the run went on. The heart ends at ${show.cut}. How many litres had come over by then, foreshots and all?`,
  slips: [
    {
      family: 'compound',
      gives: (v) => {
        const [volumes, strengths] = chartOf(v).columns.map(({ values }) => values);
        return (volumes!.at(-1)! * (strengths![0]! - v.cut)) / (strengths![0]! - strengths!.at(-1)!);
      },
      say: 'That draws a straight line from the first strength to the last. The strength falls slowly at first and then faster, so read from the curve.',
    },
    {
      family: 'bulkForAlcohol',
      gives: (v, answer) => (answer * v.cut) / 100,
      say: 'The question asks for the litres that had come over, not the pure alcohol in them: read the foot of the curve.',
    },
  ],
  working: (v, answer) => [
    `Find ${n(v.cut, 0)} % vol at the side, go across to the curve, and down to the foot`,
    `There ${n(answer, 0)} L have come over`,
  ],
  curve: (v) => chartOf(v),
});
