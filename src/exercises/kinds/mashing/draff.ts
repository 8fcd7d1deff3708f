// The wet draff of a mash.
import draff from '../../../calculators/mashing/draff.ts';
import { HYDROLYSIS_WATER } from '../../../core/mashing/wort.ts';
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

export default exercise(draff, {
  title: 'Wet draff of a mash',
  level: 2,
  ask: 'wet',
  vary: {
    malt: [1000, 1200, 1500, 1800, 2000, 3000, 4500],
    moisture: [4, 4.5, 5],
    extract: [76, 76.5, 77, 77.5, 78],
    efficiency: [96, 97, 98, 99],
    draffMoisture: [76, 77, 78, 79, 80],
    mashes: [6],
    weeks: [46],
  },
  prompt: (show) =>
    `A mash of ${show.malt} of malt, with ${show.moisture} moisture and ${show.extract} soluble extract, gives ${show.efficiency} of that extract to the wort. In each kilogram of the extract are ${HYDROLYSIS_WATER} kg of water that starch took up as it became sugar. The draff leaves at ${show.draffMoisture} moisture. What does the wet draff weigh?`,
  slips: [
    {
      family: 'forgotten',
      gives: ({ malt, extract, draffMoisture }, { wet }) =>
        wet - (HYDROLYSIS_WATER * malt * extract) / (100 - draffMoisture),
      say: 'The water that the starch took up was forgotten: sugar weighs more than the starch it was.',
    },
    {
      family: 'wetForDry',
      gives: ({ malt, extract, efficiency, draffMoisture }) =>
        (malt * (1 + (HYDROLYSIS_WATER * extract) / 100 - (extract * efficiency) / 1e4)) /
        (1 - draffMoisture / 100),
      say: 'The malt’s own water was counted as solids; take it off first.',
    },
    {
      family: 'forgotten',
      gives: (_, { dry }) => dry,
      say: 'That is the dry matter of the draff; most of the load is water.',
    },
    {
      family: 'wrongWhole',
      gives: ({ draffMoisture }, { dry }) => dry / (draffMoisture / 100),
      say: 'The dry matter was divided by the water’s part; divide it by its own part, which is what the moisture leaves.',
    },
  ],
  working: ({ malt, moisture, extract, efficiency, draffMoisture }, { dry, wet }) => {
    const dissolved = (malt * extract * efficiency) / 1e4;
    const takenUp = (HYDROLYSIS_WATER * malt * extract) / 100;
    return [
      `Dry malt: ${w(malt)} × (100 − ${moisture}) ÷ 100 = ${w(malt * (1 - moisture / 100))} kg; extract in the wort: ${w(malt)} × ${extract} ÷ 100 × ${efficiency} ÷ 100 = ${w(dissolved)} kg`,
      `Water taken up: ${w(malt)} × ${extract} ÷ 100 × ${HYDROLYSIS_WATER} = ${w(takenUp)} kg`,
      `Dry matter of the draff: dry malt and water taken up, less the extract in the wort, ${w(dry)} kg`,
      `${w(dry)} ÷ (100 − ${draffMoisture}) × 100 = ${n(wet, 0)} kg`,
    ];
  },
});
