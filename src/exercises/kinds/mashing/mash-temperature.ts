// Where the mash will stand, from water and grist.
import { formatNumber as n } from '../../../core/format.ts';
import { mashTemperature, slaking } from '../../../core/mashing/strike.ts';
import { celsius, litresPerKilogram, percent } from '../../../core/quantity.ts';
import { sum } from '../../sum.ts';

const wetting = (moisture: number, ratio: number) => slaking(percent(moisture), litresPerKilogram(ratio));

export default sum({
  id: 'mash-temperature',
  title: 'Where the mash will stand',
  topic: 'mashing',
  level: 2,
  sources: ['slaking-table'],
  of: 'temperature',
  to: 1,
  within: 0.004,
  vary: {
    ratio: ['liquorRatio', [2.7, 3, 3.5, 3.8, 4, 4.2], 'house.liquorRatio'],
    water: ['temperature', [66, 67, 68, 69, 70, 71], 'mash.strike'],
    grist: ['temperature', [5, 8, 10, 12, 15, 18, 20], 'house.gristTemperature'],
    moisture: ['percent', [3, 4, 5, 6], 'house.maltMoisture'],
  },
  renewed: 7,
  before: {
    vary: {
      ratio: ['liquorRatio', [2.7, 3, 3.5, 3.8, 4, 4.2]],
      water: ['temperature', [66, 67, 68, 69, 70, 71]],
      grist: ['temperature', [5, 8, 10, 12, 15, 18, 20]],
      moisture: ['percent', [2, 3, 4, 6]],
    },
  },
  answer: ({ ratio, water, grist, moisture }) =>
    mashTemperature(celsius(water), {
      ratio: litresPerKilogram(ratio),
      gristTemperature: celsius(grist),
      maltMoisture: percent(moisture),
    }),
  prompt: (show, _, { moisture, ratio }) =>
    `Water at ${show.water} and grist at ${show.grist} run together at ${show.ratio}. At ${show.moisture} moisture malt takes ${n(wetting(moisture, ratio).heat, 2)} of the heat that as much water takes, and wetting it warms the mash by ${n(wetting(moisture, ratio).rise, 2)} degrees. Where will the mash stand?`,
  working: ({ ratio, water, grist, moisture }, answer) => {
    const { heat, rise } = wetting(moisture, ratio);
    return [
      'Mash = (S × grist + R × water) ÷ (S + R) + rise, with S the malt’s part of water’s heat and R the litres to a kilogram',
      `(${n(heat, 2)} × ${grist} + ${ratio} × ${water}) ÷ (${n(heat, 2)} + ${ratio}) + ${n(rise, 2)} = ${n(answer, 1)} °C`,
    ];
  },
  slips: [
    {
      family: 'forgotten',
      gives: ({ moisture, ratio }, answer) => answer - wetting(moisture, ratio).rise,
      say: 'The warmth from wetting was left out; dry malt warms the mash a little.',
    },
    {
      family: 'wrongConstant',
      gives: ({ ratio, water, grist, moisture }) =>
        (grist + ratio * water) / (1 + ratio) + wetting(moisture, ratio).rise,
      say: 'Malt was taken to need as much heat as water does; it needs only about 0.4 of that.',
    },
    {
      family: 'averaged',
      gives: ({ water, grist }) => (water + grist) / 2,
      say: 'The two temperatures were averaged; there is far more water than grist, and it holds more heat.',
    },
  ],
});
