// How fast the gas comes when it comes fastest.
import carbonDioxide from '../../../calculators/fermenting/carbon-dioxide.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

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
  prompt: (show, { half, steepness }) =>
    `A washback gives off ${show.gas} of carbon dioxide in all. Its gravity falls along an S with a steepness of ${n(steepness, 2)} an hour and is half down after ${n(half, 0)} h; in that hour, when gas comes fastest, a quarter of the steepness is the part of the whole that comes. How many kilograms an hour is that?`,
  slips: [
    {
      family: 'forgotten',
      gives: ({ gas, steepness }) => gas * steepness,
      say: 'The quarter is missing: at half the fall, half is done and half is to come, and the one half times the other is a quarter.',
    },
    {
      family: 'compound',
      gives: ({ gas, half }) => gas / (2 * half),
      say: 'That spreads the gas evenly over the hours. It comes along an S, and at its height far faster than the mean.',
    },
    {
      family: 'upsideDown',
      gives: ({ gas, steepness }) => gas / steepness / 4,
      say: 'One multiplies by the steepness: a steeper fall gives more gas in its fastest hour.',
    },
  ],
  working: ({ gas, steepness }) => [
    'At its height = all the gas × steepness ÷ 4',
    `${n(gas, 0)} × ${n(steepness, 2)} ÷ 4 = ${n((gas * steepness) / 4, 1)} kg in an hour`,
    'It lies low and cannot be seen; only a meter tells where it is.',
  ],
});
