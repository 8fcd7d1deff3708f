// How long the mill is busy, stops counted.
import millAndBin from '../../../calculators/milling/mill-and-bin.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

const inMinutes = (hours: number) => Math.round(60 * hours);

export default exercise(millAndBin, {
  title: 'From start to end at the mill',
  level: 2,
  ask: 'time',
  vary: {
    malt: [3000, 4000, 4500, 5000, 6000, 7500, 8000, 9000],
    rate: [1.5, 2, 2.5, 3, 3.5],
    stops: [0.25, 0.3, 0.4, 0.5, 0.6, 0.75],
    bulk: [530],
    bin: [40],
  },
  prompt: (show, { stops }) =>
    `The mill takes ${show.rate}, and a mash is ${show.malt}. Stops come to ${inMinutes(stops)} minutes in all. How many hours pass from start to end?`,
  slips: [
    {
      family: 'forgotten',
      gives: (_, { running }) => running,
      say: 'The rollers run for so long; the stops come on top.',
    },
    {
      family: 'thousand',
      gives: ({ stops }, { running }) => running + inMinutes(stops) / 100,
      say: 'The minutes were taken as hundredths of an hour; an hour has 60.',
    },
    {
      family: 'upsideDown',
      gives: ({ malt, rate, stops }) => rate / (malt / 1000) + stops,
      say: 'The rate was divided by the malt; more malt must take longer.',
    },
  ],
  working: ({ malt, rate, stops }, { running, time }) => [
    `Running: ${n(malt / 1000, 1)} t ÷ ${rate} t/h = ${n(running, 2)} h`,
    `Stops: ${inMinutes(stops)} ÷ 60 = ${n(stops, 2)} h`,
    `${n(running, 2)} + ${n(stops, 2)} = ${n(time, 2)} h`,
  ],
});
