// What a cask holds in a year between two printed rows, read off the curve.
import { formatNumber as n } from '../../../core/format.ts';
import { ageCask } from '../../../core/maturing/cask.ts';
import { litres, litres20, percent, strength, years } from '../../../core/quantity.ts';
import { sum } from '../../sum.ts';

const EVERY = 4; // years between two rows

const record = ({ size, loss, humidity }: Record<'size' | 'loss' | 'humidity', number>) =>
  ageCask({
    volume: litres20(size),
    strength: strength(63.5),
    cask: { size: litres(size) },
    store: { alcoholLoss: percent(loss), humidity: percent(humidity), steadyHumidity: percent(65) },
    years: years(32),
  });

export default sum({
  id: 'volume-through-years',
  title: 'Litres left, between two rows',
  topic: 'maturing',
  form: 'curve',
  level: 1,
  sources: ['conner-2003', 'de-nevers', 'memory'],
  of: 'volume20',
  to: 0,
  within: 0.02,
  vary: {
    size: ['volume', [180, 190, 200, 210, 225, 250, 300, 500]],
    loss: ['percent', [2.5, 3, 3.5, 4], 'house.alcoholLoss'],
    humidity: ['percent', [60, 70, 80], 'house.storeHumidity'],
    year: ['years', [13, 14, 15, 17, 18, 19, 21, 22, 23, 25]],
  },
  answer: (v) => record(v)[v.year]!.volume,
  prompt: (show) =>
    `The curve follows a cask filled with ${show.size} at 63.5 % vol, with a row in the table for every fourth year. How many litres does it hold after ${show.year}?`,
  working: ({ year }, answer) => {
    const before = Math.floor(year / EVERY) * EVERY;
    return [
      `Find ${year} years along the foot, go up to the curve, and across: about ${n(answer, 0)} L`,
      `Or go between the rows for ${before} and ${before + EVERY} years, by the same part of the step`,
    ];
  },
  slips: [
    {
      family: 'compound',
      gives: (v) => {
        const [first, fourth] = [record(v)[0]!.volume, record(v)[EVERY]!.volume];
        return first - ((first - fourth) * v.year) / EVERY;
      },
      say: 'The loss of the first years was drawn on as a straight line. Each year takes its part of less, so the curve flattens: read it where the year is.',
    },
  ],
  curve: (v) => {
    const rows = record(v).filter(({ year }) => year % EVERY === 0);
    return {
      caption: 'Litres left in the cask, every fourth year',
      columns: [
        { kind: 'years', label: 'Year', values: rows.map(({ year }) => year) },
        { kind: 'volume20', label: 'Volume', values: rows.map(({ volume }) => volume) },
      ],
    };
  },
});
