// What the first hearts of a season bring together, read from the curve of the rounds.
import seasonCalculator from '../../../calculators/distilling/season.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';
import { ofTwoDistillations } from '../../of-two-distillations.ts';

export default ofTwoDistillations(
  exercise(seasonCalculator, {
    title: 'The first hearts of a season',
    form: 'curve',
    level: 2,
    ask: 'total',
    to: 0,
    vary: {
      rounds: [3, 4, 5],
      missed: [0],
      washVolume: [6000, 6500, 7000, 7500, 8000, 9000, 10_000, 12_000],
      washStrength: [7.6, 7.8, 8, 8.2, 8.4],
    },
    within: 0.008,
    prompt: (show) =>
      `A season begins with an empty receiver, and each round boils ${show.washVolume} of wash at ${show.washStrength}. From the curve, how much pure alcohol do the hearts of the first ${show.rounds} rounds bring together?`,
    slips: [
      {
        family: 'compound',
        gives: ({ rounds }, { balanced }) => rounds * balanced,
        say: 'That counts every round as in balance. The first hearts are short, for there were no feints yet to add to their charges.',
      },
      {
        family: 'compound',
        gives: ({ rounds }, { first }) => rounds * first,
        say: 'That counts every round like the first. From the second on foreshots and feints come back, and the hearts grow.',
      },
      {
        family: 'otherFigure',
        gives: (_, { first }) => first,
        say: 'That is the heart of the first round only.',
      },
    ],
    working: (given, result) => {
      const { rounds } = given;
      const hearts = seasonCalculator.chart!(given, result).columns[1]!.values;
      return [
        'Read the heart of each round and add them',
        `${hearts.map((heart) => n(heart, 1)).join(' + ')} = ${n(result.total, 1)} L of pure alcohol`,
        `In balance they would be ${rounds} × ${n(result.balanced, 0)} = ${n(rounds * result.balanced, 0)} L; most of the difference stands in the receiver`,
      ];
    },
  }),
);
