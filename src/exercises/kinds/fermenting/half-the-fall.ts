// The hour at which half the fall is done, read from the curve.
import fermentationCurve from '../../../calculators/fermenting/fermentation-curve.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';
import { invented } from './readings.ts';

export default exercise(fermentationCurve, {
  id: 'half-the-fall',
  title: 'Half the fall',
  form: 'curve',
  level: 1,
  ask: 'half',
  vary: invented,
  within: 0.06,
  prompt: (_, { readings }) =>
    `A washback at Harrowmere was filled at ${n(readings[0]!.gravity, 3)} and stood at ${n(readings.at(-1)!.gravity, 3)} after ${n(readings.at(-1)!.hour, 0)} h; its reading after ${n(readings[2]!.hour, 0)} h was ${n(readings[2]!.gravity, 3)}. By the curve, after how many hours had the extract done half of its fall, when gas and heat come fastest?`,
  slips: [
    {
      family: 'compound',
      gives: ({ readings }) => readings.at(-1)!.hour / 2,
      say: 'That is half of the hours. Find half of the fall at the side of the curve, and read the hour below.',
    },
    {
      family: 'otherFigure',
      gives: (_, { done }) => done,
      say: 'That is where the fall is as good as done. Half of it lies where the curve is steepest.',
    },
  ],
  working: (_, { initialExtract, finalExtract, half }) => {
    const middle = (initialExtract + finalExtract) / 2;
    return [
      `The curve falls from ${n(initialExtract, 2)} to ${n(finalExtract, 2)} °P`,
      `Half-way is (${n(initialExtract, 2)} + (${n(finalExtract, 2)})) ÷ 2 = ${n(middle, 2)} °P`,
      `The curve is there after ${n(half, 1)} h`,
    ];
  },
});
