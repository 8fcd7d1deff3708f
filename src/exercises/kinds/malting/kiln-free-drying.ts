// The hours that green malt dries freely.
import { formatNumber as n } from '../../../core/format.ts';
import { BREAK_MOISTURE, waterBetween } from '../../../core/malting/kiln-drying.ts';
import { kilograms, percent } from '../../../core/quantity.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'kiln-free-drying',
  title: 'Hours to the break',
  topic: 'malting',
  level: 2,
  sources: ['derived', 'britannica-beer'],
  of: 'hours',
  to: 1,
  within: 0.015,
  vary: {
    load: ['mass', [1500, 1800, 2000, 2400, 3000, 3600, 4000]],
    green: ['percent', [42, 43, 44, 45, 46, 47]],
    rate: ['massFlow', [50, 60, 70, 80, 90, 100]],
  },
  answer: ({ load, green, rate }) =>
    waterBetween(kilograms(load * (1 - green / 100)), percent(green), percent(BREAK_MOISTURE)) / rate,
  prompt: (show) =>
    `${show.load} of green malt at ${show.green} moisture lies on the kiln, and the air carries off water at ${show.rate}. It dries so down to ${BREAK_MOISTURE} % moisture. How many hours does that take?`,
  working: ({ load, green, rate }, answer) => {
    const dry = load * (1 - green / 100);
    const then = dry / (1 - BREAK_MOISTURE / 100);
    return [
      `Dry matter, which stays: ${n(load, 0)} × (100 − ${green}) ÷ 100 = ${n(dry, 1)} kg`,
      `At ${BREAK_MOISTURE} % it weighs ${n(dry, 1)} ÷ (100 − ${BREAK_MOISTURE}) × 100 = ${n(then, 1)} kg, so ${n(load - then, 1)} kg of water are gone`,
      `${n(load - then, 1)} ÷ ${rate} = ${n(answer, 1)} h`,
    ];
  },
  slips: [
    {
      family: 'points',
      gives: ({ load, green, rate }) => (load * (green - BREAK_MOISTURE)) / 100 / rate,
      say: 'The points between the moistures were taken of the green malt; the second moisture is a part of malt that has grown lighter.',
    },
    {
      family: 'forgotten',
      gives: ({ load, green, rate }) => (load * green) / 100 / rate,
      say: `All the water was driven off; at the break ${BREAK_MOISTURE} % is still there.`,
    },
    {
      family: 'wetForDry',
      gives: ({ load, green, rate }) => (load * (1 - green / 100) * (green - BREAK_MOISTURE)) / 100 / rate,
      say: 'Moistures of the whole were used on the dry matter; find what the malt weighs at each moisture.',
    },
  ],
});
