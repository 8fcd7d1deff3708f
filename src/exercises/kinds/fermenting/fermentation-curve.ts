// When the fall is as good as done, read from a curve through a washback's readings.
import fermentationCurve from '../../../calculators/fermenting/fermentation-curve.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';
import { invented } from './readings.ts';

const first = (readings: readonly { readonly gravity: number }[]) => n(readings[0]!.gravity, 3);
const last = (readings: readonly { readonly gravity: number }[]) => n(readings.at(-1)!.gravity, 3);

export default exercise(fermentationCurve, {
  title: 'When is the fall done?',
  form: 'curve',
  level: 2,
  ask: 'done',
  vary: invented,
  within: 0.06,
  prompt: (_, { readings }) =>
    `A washback at Harrowmere read ${first(readings)} at the start, ${n(readings[3]!.gravity, 3)} after ${n(readings[3]!.hour, 0)} h and ${last(readings)} after ${n(readings.at(-1)!.hour, 0)} h; the curve runs through all its readings. After how many hours was 95 % of the fall in extract done?`,
  slips: [
    {
      family: 'otherFigure',
      gives: (_, { half }) => half,
      say: 'That is where half the fall is done. Go on along the curve to where only a twentieth of the fall is left.',
    },
    {
      family: 'otherFigure',
      gives: ({ readings }) => readings.at(-1)!.hour,
      say: 'That is the last reading. All but a twentieth of the fall was done long before it.',
    },
    {
      family: 'compound',
      gives: ({ readings }) => 0.95 * readings.at(-1)!.hour,
      say: 'That is 95 % of the hours. The extract falls along an S and not evenly: find 95 % of the fall at the side of the curve, then read the hour below.',
    },
  ],
  working: (_, { initialExtract, finalExtract, done }) => {
    const left = finalExtract + 0.05 * (initialExtract - finalExtract);
    return [
      `The curve falls from ${n(initialExtract, 2)} to ${n(finalExtract, 2)} °P`,
      `With a twentieth left it stands at ${n(finalExtract, 2)} + 0.05 × ${n(initialExtract - finalExtract, 2)} = ${n(left, 2)} °P`,
      `The curve is at ${n(left, 2)} °P after ${n(done, 1)} h`,
    ];
  },
});
