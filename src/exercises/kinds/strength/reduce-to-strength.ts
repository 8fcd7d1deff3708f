// The water to add to spirit for the strength wanted.
import reduceToStrength from '../../../calculators/maturing/reduce-to-strength.ts';
import { exercise } from '../../exercise.ts';

export default exercise(reduceToStrength, {
  topic: 'strength',
  level: 2,
  ask: 'waterVolume',
  vary: {
    volume: [250, 400, 500, 600, 800, 1000, 1200, 1500, 2000],
    from: [68, 68.5, 69, 69.5, 70, 70.5, 71, 72],
    to: [63.5, 62, 60, 58, 55],
  },
  within: 0.015,
  prompt: (show) =>
    `The receiver holds ${show.volume} of spirit at ${show.from}, all at 20 °C. How much water brings it to ${show.to}?`,
  slips: [
    {
      family: 'contraction',
      gives: ({ volume, from, to }) => (volume * from) / to - volume,
      say: 'That is the new volume less the old one: it forgets that spirit and water shrink when they mix, so the spirit would stay too strong.',
    },
    {
      family: 'wrongWhole',
      gives: ({ volume, from, to }) => (volume * (from - to)) / from,
      say: 'The fall in strength was taken as a part of the old strength; the new volume is found from the new strength.',
    },
  ],
});
