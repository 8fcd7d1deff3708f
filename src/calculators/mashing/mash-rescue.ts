// Hot or cold water for a mash that stands wrong.
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { rescueWater } from '../../core/mashing/rescue.ts';
import { slaking } from '../../core/mashing/strike.ts';
import { litres } from '../../core/quantity.ts';
import { isRefusal } from '../../core/refusal.ts';
import { defineCalculator } from '../define.ts';

export default defineCalculator({
  id: 'mash-rescue',
  stage: 'mashing',
  title: 'A mash that stands wrong',
  purpose: 'The hot or cold litres that put it right.',
  sources: ['slaking-table', 'derived'],
  cautions: ['hot-liquor'],
  readings: ['stands'],
  inputs: {
    malt: { label: 'Mass of the grist', house: 'maltPerMash' },
    ratio: { house: 'liquorRatio' },
    stands: { kind: 'temperature', label: 'The mash stands at', range: [30, 90], step: 0.1, value: 62.5 },
    wanted: { label: 'It should stand at', house: 'mashTemperature' },
    water: { kind: 'temperature', label: 'Water to hand at', range: [1, 99], step: 1, value: 90 },
    moisture: { house: 'maltMoisture' },
  },
  main: ['stands', 'wanted', 'water', 'malt', 'ratio'],
  outputs: {
    add: { kind: 'volume', label: 'Water to add' },
    ratio: { kind: 'liquorRatio', label: 'Water to grist then' },
  },
  compute: ({ malt, ratio, stands, wanted, water, moisture }) => {
    const inMash = litres(malt * ratio);
    const add = rescueWater(
      { malt, water: inMash, maltMoisture: moisture, temperature: stands },
      wanted,
      water,
    );
    if (typeof add === 'object' && isRefusal(add)) return add;
    return { add, ratio: ((inMash + add) / malt) as typeof ratio };
  },
  steps: (given, result) => {
    const { heat } = slaking(given.moisture);
    const asWater = given.malt * given.ratio + heat * given.malt;
    return [
      `The mash takes heat as so many litres of water would: ${w(given.malt)} × ${w(given.ratio)} + ${w(heat)} × ${w(given.malt)} = ${n(asWater, 0)} L`,
      'Water to add = those litres × degrees missing ÷ degrees that the water has over the mash wanted; both count downwards for cold water',
      `${w(asWater)} × ${w(Math.abs(given.wanted - given.stands))} ÷ ${w(Math.abs(given.water - given.wanted))} = ${n(result.add, 0)} L`,
    ];
  },
  remark: ({ stands, wanted }) =>
    stands > wanted
      ? 'Cool it at once: enzymes that heat has killed do not come back.'
      : 'The vessel takes some of the heat as well. Add it in parts, stir, wait and read again.',
  examples: [
    {
      given: { malt: 5000, ratio: 3.6, stands: 80, wanted: 60, water: 20, moisture: 4 },
      gives: { add: 10_000 },
      within: 1e-9,
      source: 'mixed-water',
      note: '20 L of water at 80 °C and 10 at 20 come to 60, here a thousandfold: 5,000 kg of malt count as 2,000 L beside their 18,000',
    },
    {
      given: { malt: 1000, ratio: 4, stands: 62.5, wanted: 64.5, water: 90, moisture: 4 },
      gives: { add: 345.1, ratio: 4.3451 },
      within: 1e-4,
      source: 'derived',
      note: 'by hand: 4,000 L and malt that counts as 400 are 4,400; × 2 ÷ 25.5',
    },
    {
      given: { malt: 1000, ratio: 4, stands: 66.5, wanted: 64.5, water: 12, moisture: 4 },
      gives: { add: 167.6 },
      within: 1e-3,
      source: 'derived',
      note: 'by hand, with cold water: 4,400 × 2 ÷ 52.5',
    },
  ],
});
