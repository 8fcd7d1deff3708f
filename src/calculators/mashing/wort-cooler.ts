// The wort cooler: how cold, and how much water.
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { coolWort, WORT_HEAT, type Cooler } from '../../core/mashing/cooler.ts';
import { quantity } from '../../core/quantity.ts';
import { isRefusal } from '../../core/refusal.ts';
import { defineCalculator } from '../define.ts';

export default defineCalculator({
  id: 'wort-cooler',
  stage: 'mashing',
  title: 'The wort cooler',
  purpose: 'The coldest it can reach, and the water it takes.',
  sources: ['memory', 'derived'],
  cautions: ['hot-liquor'],
  inputs: {
    wort: { house: 'wortVolume', staysHere: true },
    from: { kind: 'temperature', label: 'Wort comes at', range: [30, 98], step: 0.5, value: 62 },
    wanted: { house: 'setTemperature', label: 'Wort wanted at', staysHere: true },
    water: { kind: 'temperature', label: 'Cooling water comes at', range: [1, 35], step: 0.5, value: 12 },
    leaves: { kind: 'temperature', label: 'Cooling water leaves at', range: [5, 95], step: 1, value: 45 },
    near: {
      kind: 'temperatureDifference',
      label: 'The cooler comes within',
      range: [0.5, 15],
      step: 0.5,
      value: 3,
    },
  },
  main: ['wort', 'from', 'wanted', 'water', 'leaves'],
  outputs: {
    coldest: { kind: 'temperature', label: 'Coldest it can reach' },
    reached: { kind: 'temperature', label: 'Wort leaves at' },
    water: { kind: 'volume', label: 'Cooling water' },
    perLitre: { kind: 'ratio', label: 'Litres of it to a litre of wort', digits: 2 },
    heat: { kind: 'energy', label: 'Heat it carries off', digits: 0 },
  },
  compute: (given) => {
    const cooled = coolWort(given as Cooler);
    if (isRefusal(cooled)) return cooled;
    const { coldest, reached, heat, litres } = cooled;
    return { coldest, reached, water: litres, perLitre: quantity('ratio', litres / given.wort), heat };
  },
  steps: ({ wort, from, water, leaves, near }, { coldest, reached, heat, water: litres }) => [
    `Coldest = the water’s own + what the cooler falls short by: ${w(water)} + ${w(near)} = ${n(coldest, 1)} °C`,
    'The water takes what the wort gives, and a litre of either holds as much heat: water = wort × its fall ÷ the water’s rise',
    `${w(wort)} × (${w(from)} − ${w(reached)}) ÷ (${w(leaves)} − ${w(water)}) = ${n(litres, 0)} L`,
    `Heat = ${w(wort)} × ${WORT_HEAT} × (${w(from)} − ${w(reached)}) ÷ 1,000 = ${n(heat, 0)} MJ`,
  ],
  remark: ({ wanted }, { coldest }) =>
    coldest > wanted
      ? `It cannot reach ${n(wanted, 1)} °C: however much water runs, the wort stays ${n(coldest - wanted, 1)} degrees too warm. Chill the water, or mash when it is colder.`
      : 'The warm water is worth keeping for the next mash. A cooler that falls short by more each week is dirty.',
  examples: [
    {
      given: { wort: 5000, from: 62, wanted: 20, water: 12, leaves: 42, near: 3 },
      gives: { coldest: 15, reached: 20, water: 7000, perLitre: 1.4, heat: 877.8 },
      within: 1e-9,
      source: 'derived',
      note: 'by hand: 42 degrees off the wort, 30 into the water: 5,000 × 42 ÷ 30',
    },
    {
      given: { wort: 5000, from: 62, wanted: 20, water: 19, leaves: 49, near: 2 },
      gives: { coldest: 21, reached: 21, water: 6833.3 },
      within: 1e-4,
      source: 'derived',
      note: 'by hand: 19 + 2, and 41 degrees off the wort: 5,000 × 41 ÷ 30',
    },
  ],
});
