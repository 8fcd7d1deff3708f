// The loss of a smaller cask, from that of a larger one.
import caskInTheStore from '../../../calculators/maturing/cask-in-the-store.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

export default exercise(caskInTheStore, {
  title: 'What a small cask loses',
  level: 2,
  ask: 'lossHere',
  vary: {
    size: [30, 40, 50, 60, 75, 100, 125],
    measuredOn: [190, 200, 225, 250],
    loss: [1.6, 1.8, 2, 2.2, 2.5, 3],
    strength: [63.5],
    humidity: [65],
    steady: [65],
    temperature: [10],
    measuredAt: [10],
    years: [5],
  },
  within: 0.025,
  redo: ({ size, measuredOn, loss }) => ({ lossHere: loss * (measuredOn / size) ** (1 / 3) }),
  prompt: (show) =>
    `In this store casks of ${show.measuredOn} lose ${show.loss} of their alcohol in a year. A like cask of ${show.size} has more wood to each litre, as the cube root of the one size over the other, and loses that much faster. What does it lose in a year?`,
  slips: [
    {
      family: 'compound',
      gives: ({ size, measuredOn, loss }) => (loss * measuredOn) / size,
      say: 'The sizes themselves were compared. Wood to a litre goes with the cube root of them, which is much less.',
    },
    {
      family: 'wrongConstant',
      gives: ({ size, measuredOn, loss }) => loss * (measuredOn / size) ** (1 / 2),
      say: 'The square root was taken. Litres grow with the cube of a cask’s width, so it is the cube root.',
    },
    {
      family: 'upsideDown',
      gives: ({ size, measuredOn, loss }) => loss * (size / measuredOn) ** (1 / 3),
      say: 'The sizes changed places. The smaller cask has more wood to a litre and must lose more.',
    },
  ],
  working: ({ size, measuredOn, loss }, { lossHere }) => [
    `Wood to a litre: (${measuredOn} ÷ ${size}) to the power ⅓ = ${n((measuredOn / size) ** (1 / 3), 3)} times as much`,
    `${n(loss, 1)} × ${n((measuredOn / size) ** (1 / 3), 3)} = ${n(lossHere, 2)} %; compounded over the year it is a trifle less`,
  ],
});
