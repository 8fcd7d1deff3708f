// The water that barley takes up to reach a moisture.
import { formatNumber as n } from '../../../core/format.ts';
import { waterInDry } from '../../../core/malting/moisture.ts';
import { percent } from '../../../core/quantity.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'steep-water',
  title: 'Water that the steep puts into the grain',
  topic: 'malting',
  level: 2,
  sources: ['derived'],
  of: 'mass',
  to: 0,
  vary: {
    barley: ['mass', [500, 800, 1000, 1200, 1500, 2000, 2500, 3000, 5000], 'barley.mass'],
    from: ['percent', [11, 11.5, 12, 12.5, 13, 13.5, 14], 'house.barleyMoisture'],
    to: ['percent', [43, 44, 45, 46, 47, 48]],
  },
  answer: ({ barley, from, to }) =>
    (barley * (1 - from / 100) * (waterInDry(percent(to)) - waterInDry(percent(from)))) / 100,
  prompt: (show) =>
    `${show.barley} of barley goes into the steep at ${show.from} moisture and comes out at ${show.to}. If no dry matter is lost, how much water has the grain taken up?`,
  working: ({ barley, from, to }, water) => {
    const dry = barley * (1 - from / 100);
    const wet = dry / (1 - to / 100);
    return [
      `The dry matter stays: ${n(barley, 0)} × (100 − ${from}) ÷ 100 = ${n(dry, 1)} kg`,
      `At ${to} % moisture it is 100 − ${to} parts in a hundred: ${n(dry, 1)} ÷ (100 − ${to}) × 100 = ${n(wet, 1)} kg of wet grain`,
      `Water taken up: ${n(wet, 1)} − ${n(barley, 0)} = ${n(water, 0)} kg`,
    ];
  },
  slips: [
    {
      family: 'points',
      gives: ({ barley, from, to }) => (barley * (to - from)) / 100,
      say: 'The points between the two moistures were taken as parts of the barley; but the second moisture is a part of grain that has grown heavier.',
    },
    {
      family: 'wetForDry',
      gives: ({ barley, from, to }) => (barley * (1 - from / 100) * (to - from)) / 100,
      say: 'Moistures of the whole were used on the dry matter; first find what the wet grain weighs.',
    },
    {
      family: 'otherFigure',
      gives: ({ barley, from, to }) => (barley * (1 - from / 100)) / (1 - to / 100),
      say: 'That is what the wet grain weighs; take off the barley that went in.',
    },
  ],
});
