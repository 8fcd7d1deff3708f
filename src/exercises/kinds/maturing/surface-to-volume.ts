// How much more wood a litre meets in a smaller cask.
import surfaceToVolume from '../../../calculators/maturing/surface-to-volume.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

export default exercise(surfaceToVolume, {
  level: 1,
  ask: 'times',
  to: 2,
  vary: {
    size: [20, 30, 40, 50, 60, 70, 80, 100, 125],
    beside: [180, 190, 200, 225, 250, 300, 500],
  },
  within: 0.012,
  prompt: (show) =>
    `You are offered casks of ${show.size} in place of your ${show.beside}, of the same shape. Wood to a litre goes as the cube root of the larger size over the smaller. How many times as much wood would a litre meet?`,
  slips: [
    {
      family: 'compound',
      gives: ({ size, beside }) => beside / size,
      say: 'The sizes themselves were compared. A cask twice as wide holds eight times as much but has only four times the wood: take the cube root.',
    },
    {
      family: 'wrongConstant',
      gives: ({ size, beside }) => Math.sqrt(beside / size),
      say: 'The square root was taken. Litres grow with the cube of the width, so it is the cube root.',
    },
    {
      family: 'upsideDown',
      gives: ({ size, beside }) => (size / beside) ** (1 / 3),
      say: 'The sizes changed places. In the smaller cask a litre meets more wood, not less.',
    },
  ],
  working: ({ size, beside }, { times }) => [
    'Lengths grow as the cube root of the litres, wood as their square, so wood to a litre falls as the cube root',
    `${n(beside, 0)} ÷ ${n(size, 0)} = ${n(beside / size, 2)}; its cube root is ${n(times, 2)}`,
  ],
});
