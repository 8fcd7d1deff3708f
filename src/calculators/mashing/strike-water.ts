// How hot the first water must be for the mash wanted.
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { slaking, strikeTemperature, TABLE_RATIO } from '../../core/mashing/strike.ts';
import { litres } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';

export default defineCalculator({
  id: 'strike-water',
  stage: 'mashing',
  title: 'The first water',
  purpose: 'Finds how hot the first water must be, allowing for cold grist and the heat of wetting.',
  sources: ['slaking-table', 'derived'],
  cautions: ['hot-liquor'],
  inputs: {
    malt: { label: 'Mass of the grist', house: 'maltPerMash' },
    ratio: { house: 'liquorRatio' },
    wanted: { label: 'Mash wanted', house: 'mashTemperature' },
    grist: { label: 'Temperature of the grist', house: 'gristTemperature' },
    moisture: { house: 'maltMoisture' },
  },
  outputs: {
    strike: { kind: 'temperature', label: 'First water at' },
    water: { kind: 'volume', label: 'First water' },
    rise: { kind: 'temperatureDifference', label: 'Rise from wetting' },
  },
  compute: ({ malt, ratio, wanted, grist, moisture }) => ({
    strike: strikeTemperature(wanted, { ratio, gristTemperature: grist, maltMoisture: moisture }),
    water: litres(malt * ratio),
    rise: slaking(moisture, ratio).rise,
  }),
  steps: (given, result) => {
    const { heat } = slaking(given.moisture, given.ratio);
    return [
      `Malt at ${given.moisture} % moisture takes ${w(heat)} of the heat that as much water takes, and warms this mash by ${w(result.rise)} K when wetted: the table’s rise is for ${TABLE_RATIO} L/kg, and the same heat goes into more or less water.`,
      'First water = ((mash − R) × (S + r) − S × grist) ÷ r, with R the rise, S that part, and r the litres of water to a kilogram of grist',
      `((${given.wanted} − ${w(result.rise)}) × (${w(heat)} + ${given.ratio}) − ${w(heat)} × ${given.grist < 0 ? `(${n(given.grist, 0)})` : given.grist}) ÷ ${given.ratio} = ${n(result.strike, 1)} °C`,
    ];
  },
  examples: [
    {
      given: { malt: 1000, ratio: 2.68, wanted: 65.9645, grist: 27, moisture: 2 },
      gives: { strike: 69, water: 2680, rise: 2.3 },
      within: 1e-5,
      source: 'slaking-table',
      note: 'the table’s own figures for malt at 2 %, run backwards',
    },
    {
      given: { malt: 1000, ratio: 4, wanted: 64.5, grist: 15, moisture: 4 },
      gives: { strike: 68.295, rise: 1.05 },
      within: 1e-5,
      source: 'derived',
      note: 'by hand: the table’s 1.5 K on 0.4 + 2.68 is 4.62 K on 1 L of water, or 4.62 ÷ 4.4 = 1.05 K here; ((64.5 − 1.05) × 4.4 − 6) ÷ 4 = 68.295',
    },
  ],
});
