// How far a reading lies from the edge of what its label allows.
import labelTolerance from '../../../calculators/maturing/label-tolerance.ts';
import { exercise } from '../../exercise.ts';

const kind = exercise(labelTolerance, {
  level: 1,
  ask: 'room',
  to: 2,
  within: 0.02,
  vary: {
    label: [40, 43, 46, 48, 50],
    measured: [40.1, 40.15, 40.2, 43.1, 43.2, 42.9, 46.1, 45.85, 46.2, 47.9, 48.15, 50.2, 49.9],
    sure: [0.1],
    tolerance: [0.3],
    least: [40],
  },
  fits: (_, { room, off }) => room > 0.04 && Math.abs(Math.abs(off) - room) > 0.04,
  prompt: (show) =>
    `The label says ${show.label}. The bottling measures ${show.measured}. The law allows ${show.tolerance} either way. How far is the reading from the nearer edge, in % vol?`,
  slips: [
    {
      family: 'forgotten',
      gives: (_, { off }) => Math.abs(off),
      say: 'That is how far it is from the label. What is left to the edge is the tolerance less that.',
    },
    {
      family: 'sign',
      gives: ({ tolerance }, { off }) => tolerance + Math.abs(off),
      say: 'That reaches to the edge on the other side; the nearer one is meant.',
    },
    {
      family: 'percent',
      gives: ({ label, tolerance }, { off }) => (label * tolerance) / 100 - Math.abs(off),
      say: 'The tolerance is 0.3 % vol, not 0.3 % of the strength.',
    },
  ],
});

export default { ...kind, since: 5 };
