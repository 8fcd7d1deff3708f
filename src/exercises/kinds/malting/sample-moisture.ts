// The moisture of a sample in the steep, from what it weighs.
import { formatNumber as n } from '../../../core/format.ts';
import { moistureOfSample } from '../../../core/malting/steep-fit.ts';
import { percent, quantity } from '../../../core/quantity.ts';
import { sum } from '../../sum.ts';

/** What the sample weighs now, in grams, from its mass before and the gain in per cent. */
const now = ({ mass, gain }: { readonly mass: number; readonly gain: number }) =>
  Math.round(mass * (1 + gain / 100));

export default sum({
  id: 'sample-moisture',
  title: 'Moisture of a sample by weighing',
  topic: 'malting',
  level: 2,
  sources: ['derived'],
  of: 'percent',
  to: 1,
  vary: {
    mass: ['grams', [200, 300, 400, 500, 600, 800, 1000]],
    moisture: ['percent', [11, 11.5, 12, 12.5, 13, 14], 'house.barleyMoisture'],
    gain: ['percent', [22, 26, 31, 35, 38, 42, 46, 49, 53, 57]],
  },
  answer: (v) =>
    moistureOfSample(
      { mass: quantity('grams', v.mass), moisture: percent(v.moisture) },
      quantity('grams', now(v)),
    ),
  prompt: (show, _, v) =>
    `A net with ${n(v.mass, 0)} g of barley at ${show.moisture} moisture hangs in the steep. Drained, the grain now weighs ${n(now(v), 0)} g. What is its moisture now?`,
  working: (v, moisture) => {
    const dry = v.mass * (1 - v.moisture / 100);
    return [
      `Dry matter, which stays: ${n(v.mass, 0)} × (100 − ${v.moisture}) ÷ 100 = ${n(dry, 1)} g`,
      `Water now: ${n(now(v), 0)} − ${n(dry, 1)} = ${n(now(v) - dry, 1)} g`,
      `${n(now(v) - dry, 1)} ÷ ${n(now(v), 0)} × 100 = ${n(moisture, 1)} %`,
    ];
  },
  slips: [
    {
      family: 'points',
      gives: (v) => v.moisture + (100 * (now(v) - v.mass)) / v.mass,
      say: 'The gain was taken as a part of the first weight and added to the first moisture; the two are parts of different wholes.',
    },
    {
      family: 'wetForDry',
      gives: (v) => 100 * (now(v) / (v.mass * (1 - v.moisture / 100)) - 1),
      say: 'That is the water in per cent of the dry matter; moisture is a part of the whole wet sample.',
    },
    {
      family: 'forgotten',
      gives: (v) => (100 * (now(v) - v.mass)) / now(v),
      say: 'Only the water taken up was counted; the barley brought some of its own.',
    },
  ],
});
