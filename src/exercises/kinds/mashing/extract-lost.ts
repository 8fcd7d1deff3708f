// What a year's draff takes along in extract.
import draff from '../../../calculators/mashing/draff.ts';
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

export default exercise(draff, {
  id: 'extract-lost',
  title: 'Extract lost in a year',
  level: 2,
  ask: 'lostYear',
  vary: {
    malt: [1000, 1200, 1500, 2000, 3000],
    moisture: [4.5],
    extract: [76, 76.5, 77, 77.5, 78],
    efficiency: [95, 96, 97, 98],
    draffMoisture: [78],
    mashes: [5, 6, 8, 10],
    weeks: [44, 46, 48],
  },
  prompt: (show) =>
    `A house makes ${show.mashes} mashes a week for ${show.weeks} weeks, each of ${show.malt} of malt with ${show.extract} soluble extract. On average ${show.efficiency} of that extract comes into the wort. How many kilograms of extract leave with the draff in a year?`,
  slips: [
    {
      family: 'otherFigure',
      gives: ({ malt, extract, efficiency, mashes, weeks }) =>
        ((malt * extract * efficiency) / 1e4) * mashes * weeks,
      say: 'That is the extract in the wort; what is left of a hundred per cent goes with the draff.',
    },
    {
      family: 'wrongWhole',
      gives: ({ malt, efficiency, mashes, weeks }) => ((malt * (100 - efficiency)) / 100) * mashes * weeks,
      say: 'The loss was taken of all the malt; it is a part of the malt’s extract.',
    },
    {
      family: 'forgotten',
      gives: ({ mashes }, { lost }) => lost * mashes,
      say: 'That is the loss of a week; multiply by the weeks.',
    },
  ],
  working: ({ malt, extract, efficiency, mashes, weeks }, { lost, lostYear }) => [
    `Of a mash: ${w(malt)} × ${extract} ÷ 100 = ${w((malt * extract) / 100)} kg of extract, and 100 − ${efficiency} = ${w(100 - efficiency)} % of it is lost: ${w(lost)} kg`,
    `${mashes} × ${weeks} = ${mashes * weeks} mashes: ${w(lost)} × ${mashes * weeks} = ${n(lostYear, 0)} kg`,
  ],
});
