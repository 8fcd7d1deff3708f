// The hectares of barley behind a year’s casks.
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const MALT = 0.83; // t of malt from a tonne of barley; common practice

export default sum({
  id: 'fields-behind-the-casks',
  title: 'The fields behind the casks',
  topic: 'line',
  level: 3,
  sources: ['common-practice', 'memory', 'derived'],
  of: 'land',
  to: 1,
  within: 0.01,
  vary: {
    casks: ['count', [500, 800, 1000, 1200, 2000, 5000]],
    alcohol: ['volume20', [125, 127, 140, 159]],
    spiritYield: ['count', [395, 400, 405, 410, 415]],
    harvest: ['harvest', [5.5, 5.8, 6, 6.2, 6.5]],
  },
  answer: (v) => (v.casks * v.alcohol) / v.spiritYield / MALT / v.harvest,
  prompt: (show) =>
    `A house fills ${show.casks} casks a year, each with ${show.alcohol} of pure alcohol. A tonne of its malt gives ${show.spiritYield} L of pure alcohol, a tonne of barley gives 0.83 t of malt, and a hectare ${show.harvest.replace('/ha', '')} of barley. How many hectares does the house need?`,
  slips: [
    {
      family: 'forgotten',
      gives: (_, answer) => answer * MALT,
      say: 'Barley was taken as malt. It takes more barley than malt, so divide by 0.83 as well.',
    },
    {
      family: 'upsideDown',
      gives: (_, answer) => answer * MALT * MALT,
      say: 'Multiplied by 0.83 where one divides: it takes more barley than malt.',
    },
    {
      family: 'otherFigure',
      gives: (v, answer) => answer * v.harvest,
      say: 'That is the tonnes of barley. A hectare brings several of them.',
    },
  ],
  working: (v, answer) => {
    const alcohol = v.casks * v.alcohol;
    const malt = alcohol / v.spiritYield;
    return [
      `Pure alcohol: ${w(v.casks)} × ${v.alcohol} = ${w(alcohol)} L`,
      `Malt: ${w(alcohol)} ÷ ${v.spiritYield} = ${w(malt)} t; barley: ${w(malt)} ÷ 0.83 = ${w(malt / MALT)} t`,
      `Land: ${w(malt / MALT)} ÷ ${v.harvest} = ${n(answer, 1)} ha`,
    ];
  },
});
