// The cloud that dust makes when it is raised in a room.
import dustCloud from '../../../calculators/milling/dust-cloud.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

export default exercise(dustCloud, {
  topic: 'safety',
  level: 1,
  ask: 'cloud',
  vary: {
    dust: [0.6, 0.8, 1, 1.2, 1.5, 2, 2.5, 3, 4],
    space: [18, 24, 28, 30, 36, 40, 45, 50, 60],
  },
  prompt: (show) =>
    `To teach how little it takes: ${show.dust} of dust is shaken from a beam and hangs evenly in a room of ${show.space}. How many grams are in a cubic metre?`,
  slips: [
    {
      family: 'thousand',
      gives: ({ dust, space }) => dust / space,
      say: 'Those are kilograms in a cubic metre; a kilogram is a thousand grams.',
    },
    {
      family: 'upsideDown',
      gives: ({ dust, space }) => space / dust,
      say: 'The room was divided by the dust; it is grams over cubic metres.',
    },
  ],
  working: ({ dust, space }, { cloud }) => [
    `${n(1000 * dust, 0)} g ÷ ${space} m³ = ${n(cloud, 0)} g/m³`,
    'No cloud is even, and no such sum tells that a room is safe: the site’s own assessment and procedures do',
  ],
});
