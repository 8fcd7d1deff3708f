// When a cask passes below a strength, read off the curve.
import belowForty from '../../../calculators/maturing/below-forty.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

export default exercise(belowForty, {
  id: 'year-of-a-strength',
  title: 'When does it pass below?',
  form: 'curve',
  level: 1,
  ask: 'year',
  vary: {
    by: ['store'],
    size: [200],
    strength: [60, 61, 62, 62.5, 63.5, 64, 65],
    limit: [45, 46, 47.5, 48, 50, 51, 52, 52.5, 54, 55],
    loss: [2, 2.5, 3, 3.5],
    humidity: [75, 80, 85, 90],
    steady: [65],
    yearly: [0.4],
  },
  within: 0.05,
  curveTo: (_, { year }) => 5 * Math.ceil((year + 3) / 5),
  prompt: (show) =>
    `The curve follows a cask filled at ${show.strength}, year by year in its damp store. After how many years does it pass below ${show.limit}, to a tenth of a year?`,
  slips: [],
  working: ({ limit }, { year }) => [
    `Find ${n(limit, 1)} % vol on the upright axis, go across to the curve, and down: about ${n(year, 1)} years`,
    `In the table the strength is still above ${n(limit, 1)} after ${n(Math.floor(year), 0)} years and below it after ${n(Math.floor(year) + 1, 0)}`,
  ],
});
