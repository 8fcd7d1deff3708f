// The reflux of a wash still between two runs on paper: a step of fitting it.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const PAPER = 0.1; // reflux of the second run on paper

export default {
  ...sum({
    id: 'reflux-by-proportion',
    title: 'The reflux of a still, by proportion',
    topic: 'distilling',
    level: 2,
    sources: ['derived'],
    of: 'share',
    to: 3,
    within: 0.02,
    vary: {
      bare: ['strength', [19.2, 19.8, 20.4]], // of a wash of 7.6, 8.0 and 8.4 % vol, run to 1 % vol
      paper: ['strength', [25.4, 26, 26.4]],
      own: ['strength', [21.5, 22, 22.5, 23.5, 24, 24.5]],
    },
    answer: (v) => (PAPER * (v.own - v.bare)) / (v.paper - v.bare),
    prompt: (show) =>
      `A wash still is run on paper. With no reflux its low wines would come at ${show.bare}, with a reflux of ${PAPER} at ${show.paper}. The house’s own come at ${show.own}. By straight proportion between the two, what reflux has its still?`,
    slips: [
      {
        family: 'wrongWhole',
        gives: (v) => (v.own - v.bare) / (v.paper - v.bare),
        say: `That is the part of the way between the two runs. The whole way is a reflux of ${PAPER}.`,
      },
      {
        family: 'otherFigure',
        gives: (v) => (PAPER * (v.paper - v.own)) / (v.paper - v.bare),
        say: 'That is counted from the run with reflux. Count from the one that has none.',
      },
      {
        family: 'forgotten',
        gives: (v) => (PAPER * v.own) / v.paper,
        say: 'With no reflux the low wines are not at nothing. Take that strength off both.',
      },
    ],
    working: (v, answer) => [
      `From no reflux to ${PAPER} the low wines gain ${n(v.paper, 1)} − ${n(v.bare, 1)} = ${n(v.paper - v.bare, 1)} % vol`,
      `The house’s gain ${n(v.own, 1)} − ${n(v.bare, 1)} = ${n(v.own - v.bare, 1)} % vol`,
      `${n(v.own - v.bare, 1)} ÷ ${n(v.paper - v.bare, 1)} × ${PAPER} = ${n(answer, 3)}`,
    ],
  }),
  since: 2,
};
