// How fast the gas comes when it comes fastest.
import carbonDioxide from '../../../calculators/fermenting/carbon-dioxide.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { decimalsOfStep, exercise } from '../../exercise.ts';

export default exercise(carbonDioxide, {
  id: 'carbon-dioxide-at-its-height',
  title: 'The gas at its height',
  level: 1,
  ask: 'peak',
  vary: {
    gas: [300, 360, 440, 480, 600, 750, 900, 1200],
    half: [18, 19, 20, 21, 22, 24],
    steepness: [0.28, 0.3, 0.32, 0.35, 0.36, 0.4],
  },
  within: 0.02,
  redo: ({ gas, steepness }) => ({ peak: (gas * steepness) / 4 }),
  prompt: (show, { half, steepness }) =>
    `A washback gives off ${show.gas} of carbon dioxide in all. In its fastest hour, after ${n(half, 0)} h, ${n(25 * steepness, decimalsOfStep(25 * steepness))} % of the whole comes. How many kilograms is that in the hour?`,
  before: {
    prompt: (show, { half, steepness }) =>
      `A washback gives off ${show.gas} of carbon dioxide in all. Its gravity falls along an S with a steepness of ${n(steepness, 2)} an hour and is half down after ${n(half, 0)} h; in that hour, when gas comes fastest, a quarter of the steepness is the part of the whole that comes. How many kilograms an hour is that?`,
  },
  slips: [
    {
      family: 'percent',
      gives: ({ gas, steepness }) => 25 * gas * steepness,
      say: 'The per cent was taken for the part itself: divide by 100.',
    },
    {
      family: 'compound',
      gives: ({ gas, half }) => gas / (2 * half),
      say: 'That spreads the gas evenly over the hours. At its height it comes far faster than the mean.',
    },
    {
      family: 'otherFigure',
      gives: ({ gas, steepness }) => gas * steepness,
      say: 'That is four times too much: a quarter of an S’s steepness is the part that comes in its fastest hour.',
    },
  ],
  working: ({ gas, steepness }) => [
    `In its fastest hour comes ${n(25 * steepness, decimalsOfStep(25 * steepness))} % of the whole, a quarter of the steepness of its S`,
    `${n(gas, 0)} × ${n(25 * steepness, decimalsOfStep(25 * steepness))} ÷ 100 = ${n((gas * steepness) / 4, 1)} kg in an hour`,
    'It lies low and cannot be seen; only a meter tells where it is.',
  ],
});
