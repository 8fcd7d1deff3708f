// The draff of a mash, a tonne and a year, and the extract lost with it.
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { draffOf } from '../../core/mashing/draff.ts';
import { HYDROLYSIS_WATER } from '../../core/mashing/wort.ts';
import { kilograms, quantity } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';
import { isRefusal } from '../../core/refusal.ts';

/** Water, kg, that the extract of so much malt takes up. */
const takenUp = (malt: number, extract: number) => (HYDROLYSIS_WATER * malt * extract) / 100;

export default defineCalculator({
  id: 'draff',
  stage: 'mashing',
  title: 'Draff',
  purpose: 'Weighs the wet draff of a mash, a tonne of malt and a year, and the extract that leaves with it.',
  sources: ['derived', 'bioresources-2020', 'oxford-beer'],
  cautions: ['hot-liquor', 'confined-space'],
  inputs: {
    malt: { house: 'maltPerMash' },
    moisture: { house: 'maltMoisture' },
    extract: { label: 'Soluble extract of the malt', house: 'solubleExtract' },
    efficiency: {
      kind: 'percent',
      label: 'Mash efficiency',
      range: [0, 100],
      step: 0.1,
      from: 'mash.efficiency',
    },
    draffMoisture: { house: 'draffMoisture' },
    mashes: { house: 'mashesPerWeek' },
    weeks: { house: 'weeksPerYear' },
  },
  main: ['malt', 'efficiency', 'draffMoisture'],
  outputs: {
    wet: { kind: 'mass', label: 'Wet draff of a mash' },
    dry: { kind: 'mass', label: 'Dry matter in it' },
    perTonne: { kind: 'perTonne', label: 'Wet draff from a tonne of malt', digits: 0 },
    year: { kind: 'mass', label: 'Wet draff in a year' },
    lost: { kind: 'mass', label: 'Extract lost with a mash’s draff', digits: 1 },
    lostYear: { kind: 'mass', label: 'Extract lost in a year' },
  },
  compute: ({ malt, moisture, extract, efficiency, draffMoisture, mashes, weeks }) => {
    const draff = draffOf({ mass: malt, moisture, extract }, efficiency, draffMoisture);
    if (isRefusal(draff)) return draff;
    return {
      wet: draff.wet,
      dry: draff.dry,
      perTonne: quantity('perTonne', (1000 * draff.wet) / malt),
      year: kilograms(draff.wet * mashes * weeks),
      lost: draff.lost,
      lostYear: kilograms(draff.lost * mashes * weeks),
    };
  },
  steps: ({ malt, moisture, extract, efficiency, draffMoisture, mashes, weeks }, result) => [
    `Starch takes up water as it becomes sugar: ${HYDROLYSIS_WATER} kg in each kilogram of extract, ${w(malt)} × ${extract} ÷ 100 × ${HYDROLYSIS_WATER} = ${w(takenUp(malt, extract))} kg`,
    'Dry matter of the draff = dry malt + water taken up − extract in the wort',
    `${w(malt)} × (1 − ${moisture} ÷ 100) + ${w(takenUp(malt, extract))} − ${w(malt)} × ${extract} ÷ 100 × ${w(efficiency)} ÷ 100 = ${w(result.dry)} kg`,
    'Wet draff = dry matter ÷ (1 − moisture of the draff ÷ 100)',
    `${w(result.dry)} ÷ (1 − ${draffMoisture} ÷ 100) = ${n(result.wet, 0)} kg`,
    `In a year, ${w(result.wet, 9)} × ${n(mashes, 0)} × ${n(weeks, 0)} = ${n(result.year, 0)} kg`,
    'Extract lost = what the malt had − what the wort has',
    `${w(malt)} × ${extract} ÷ 100 × (100 − ${w(efficiency)}) ÷ 100 = ${n(result.lost, 1)} kg`,
  ],
  remark: ({ extract }, { lostYear }) =>
    lostYear === 0
      ? undefined
      : `The extract lost in a year is what ${n(lostYear / (extract / 100), 0)} kg of malt holds.`,
  examples: [
    {
      given: {
        malt: 1000,
        moisture: 4.5,
        extract: 77,
        efficiency: 100,
        draffMoisture: 78,
        mashes: 6,
        weeks: 46,
      },
      gives: { dry: 215.8, wet: 980.909, perTonne: 980.909, year: 270_730.9 },
      within: 1e-6,
      source: 'derived',
      note: '1,000 kg less 45 of moisture and 770 of extract, and 0.04 × 770 = 30.8 kg of water taken up: 215.8 kg at 22 % dry, to six figures; 276 mashes by hand',
    },
    {
      given: { malt: 1000, moisture: 5, extract: 75, efficiency: 96, draffMoisture: 80, mashes: 1, weeks: 1 },
      gives: { dry: 260, wet: 1300, lost: 30 },
      within: 1e-9,
      source: 'derived',
      note: 'by hand: 950 + 30 − 720 kg, five times that when a fifth is dry, and 4 % of 750 kg lost',
    },
    {
      given: {
        malt: 1000,
        moisture: 4.5,
        extract: 77.5,
        efficiency: 97.5,
        draffMoisture: 77.5,
        mashes: 1,
        weeks: 1,
      },
      gives: { perTonne: 1098 },
      within: 0.13,
      source: 'oxford-beer',
      note: 'entry “Spent grain”: 100–130 kg wet, at 75–80 % moisture, from 100 kg of dry grist, which is 955–1,242 kg from a tonne of this malt',
    },
  ],
});
