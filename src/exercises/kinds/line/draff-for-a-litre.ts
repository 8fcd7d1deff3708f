// Wet draff that comes with each litre of pure alcohol.
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { HYDROLYSIS_WATER } from '../../../core/mashing/wort.ts';
import { sum } from '../../sum.ts';

/** Dry draff of a tonne, kg: 4 % of the extract is water that starch took up. */
const dryOf = (moisture: number, extract: number) => 10 * (100 - moisture - extract * (1 - HYDROLYSIS_WATER));

export default sum({
  id: 'draff-for-a-litre',
  title: 'Draff for each litre',
  topic: 'line',
  level: 3,
  sources: ['derived'],
  of: 'mass',
  to: 2,
  within: 0.01,
  vary: {
    moisture: ['percent', [4, 4.5, 5], 'house.maltMoisture'],
    extract: ['percent', [76, 76.5, 77, 77.5, 78], 'house.solubleExtract'],
    dry: ['percent', [20, 21, 22, 23, 24]],
    spiritYield: ['count', [400, 405, 410, 415]],
  },
  answer: (v) => (100 * dryOf(v.moisture, v.extract)) / v.dry / v.spiritYield,
  prompt: (show) =>
    `A tonne of malt at ${show.moisture} moisture gives up its extract, ${show.extract} of the malt as it is, of which ${n(100 * HYDROLYSIS_WATER, 0)} % is water that starch took up, and later ${show.spiritYield} L of pure alcohol. The rest is draff, with ${show.dry} dry matter. How many kilograms of wet draff come with each litre of pure alcohol?`,
  slips: [
    {
      family: 'wetForDry',
      gives: (v) => (100 * dryOf(0, v.extract)) / v.dry / v.spiritYield,
      say: 'The malt’s own water was counted as solids. Take its moisture off as well.',
    },
    {
      family: 'wetForDry',
      gives: (v, answer) => (answer * v.dry) / 100,
      say: 'That is dry draff. It leaves the tun wet, and weighs several times as much.',
    },
    {
      family: 'otherFigure',
      gives: (v, answer) => answer * v.spiritYield,
      say: 'That is for the tonne of malt. Each litre has its part of it.',
    },
    {
      family: 'wrongWhole',
      gives: (v, answer) => (answer * v.dry) / (100 - v.dry),
      say: 'The dry matter was divided by the part that is water. It is the dry part of the draff.',
    },
  ],
  working: (v, answer) => {
    const dry = dryOf(v.moisture, v.extract);
    return [
      `Dry matter left of a tonne: 1,000 × (100 − ${v.moisture} − ${1 - HYDROLYSIS_WATER} × ${v.extract}) ÷ 100 = ${w(dry)} kg`,
      `Wet draff: ${w(dry)} ÷ ${v.dry} × 100 = ${w((100 * dry) / v.dry)} kg`,
      `For each litre: ${w((100 * dry) / v.dry)} ÷ ${v.spiritYield} = ${n(answer, 2)} kg`,
    ];
  },
});
