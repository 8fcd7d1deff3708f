// The water that a kiln drives off.
import kiln from '../../../calculators/malting/kiln.ts';
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

export default exercise(kiln, {
  title: 'Water that the kiln drives off',
  level: 2,
  ask: 'water',
  vary: {
    basis: ['finished'],
    load: [830, 900, 1000, 1200, 1500, 2000, 2500, 3000, 5000],
    green: [42, 43, 44, 45, 46, 47],
    finished: [4, 4.5, 5, 5.5],
    pressure: [101.3],
  },
  prompt: (show) =>
    `The kiln is to leave ${show.load} of malt at ${show.finished} moisture. The green malt goes on at ${show.green}. How much water must be driven off?`,
  slips: [
    {
      family: 'points',
      gives: ({ load, green, finished }) => (load * (green - finished)) / 100,
      say: 'The points between the two moistures were taken of the finished malt; the first moisture is a part of the much heavier green malt.',
    },
    {
      family: 'forgotten',
      gives: ({ load, green }) => load / (1 - green / 100) - load,
      say: 'The finished malt was taken as bone dry; take off its own moisture to find the dry matter.',
    },
    {
      family: 'otherFigure',
      gives: ({ load, green, finished }) => (load * (1 - finished / 100)) / (1 - green / 100),
      say: 'That is what the green malt weighs; take off the finished malt, and the rest is water.',
    },
  ],
  working: ({ load, green, finished }, { water }) => {
    const dry = load * (1 - finished / 100);
    const wet = dry / (1 - green / 100);
    return [
      `Dry matter, which stays: ${w(load)} × (100 − ${finished}) ÷ 100 = ${w(dry)} kg`,
      `Green malt: ${w(dry)} ÷ (100 − ${green}) × 100 = ${w(wet)} kg`,
      `Water: ${w(wet)} − ${w(load)} = ${n(water, 0)} kg`,
    ];
  },
});
