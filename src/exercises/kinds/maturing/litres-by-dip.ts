// Litres in a cask from the wet length of a rod, read off its curve.
import { formatNumber as n } from '../../../core/format.ts';
import { dippedVolume, shapeOf } from '../../../core/maturing/shape.ts';
import { litres, quantity } from '../../../core/quantity.ts';
import { sum } from '../../sum.ts';

const EVERY = 50; // mm between two rows

const shape = (size: number) => shapeOf(litres(size), { length: 1.3, head: 0.83 });
const holds = (size: number, dip: number) => dippedVolume(shape(size), quantity('length', dip));

export default sum({
  id: 'litres-by-dip',
  title: 'The curve of a dip',
  topic: 'maturing',
  form: 'curve',
  level: 1,
  sources: ['derived'],
  of: 'volume',
  to: 0,
  within: 0.03,
  vary: {
    size: ['volume', [180, 190, 200, 210, 225, 250]],
    dip: [
      'length',
      [
        215, 222, 230, 236, 265, 272, 280, 285, 325, 330, 364, 370, 378, 385, 415, 420, 428, 435, 463, 470,
        478, 485,
      ],
    ],
  },
  answer: ({ size, dip }) => holds(size, dip),
  prompt: (show) =>
    `The curve is that of a cask lying with its bung up, which holds ${show.size} when it is full. The rod through the bung comes out wet for ${show.dip}. How many litres are in it?`,
  working: ({ size, dip }, answer) => {
    const below = Math.floor(dip / EVERY) * EVERY;
    return [
      `Find ${dip} mm along the foot, go up to the curve, and across: about ${n(answer, 0)} L`,
      `The rows beside it are ${n(holds(size, below), 0)} L at ${below} mm and ${n(holds(size, below + EVERY), 0)} L at ${below + EVERY} mm`,
    ];
  },
  slips: [
    {
      family: 'compound',
      gives: ({ size, dip }) => (size * dip) / shape(size).bung,
      say: 'The litres were taken in the same part as the wet length. A lying cask is narrow below and above and wide in the middle, so read the curve.',
    },
    {
      family: 'otherFigure',
      gives: ({ size, dip }) => size - holds(size, dip),
      say: 'That is the empty room in the cask. Asked for are the litres in it.',
    },
  ],
  curve: ({ size }) => {
    const rows = Math.floor(shape(size).bung / EVERY);
    const dips = Array.from({ length: rows + 1 }, (_, i) => i * EVERY);
    return {
      caption: 'What the cask holds at each dip',
      columns: [
        { kind: 'length', label: 'Wet length of the rod', values: dips },
        { kind: 'volume', label: 'Holds', values: dips.map((dip) => holds(size, dip)) },
      ],
    };
  },
});
