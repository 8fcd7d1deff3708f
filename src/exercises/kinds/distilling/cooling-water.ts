// The water that takes up the heat of the low wines.
import washRun from '../../../calculators/distilling/wash-run.ts';
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { HEAT_CAPACITY } from '../../../core/vapour/latent-heat.ts';
import { exercise } from '../../exercise.ts';

const CAPACITY = HEAT_CAPACITY.water;
/** Heat that the water takes up, MJ. */
const taken = (water: number, rise: number) => (water * CAPACITY * rise) / 1000;

export default exercise(washRun, {
  id: 'cooling-water',
  title: 'Water for the condenser',
  level: 1,
  ask: 'water',
  vary: {
    washVolume: [5000, 6000, 7000, 7500, 8000, 9000, 10_000, 12_000],
    washStrength: [7.5, 8, 8.5],
    washEnd: [1],
    airPressure: [101.3],
    filledAt: [30],
    rise: [25, 30, 35, 40, 45, 50],
  },
  quotes: { heat: [0, ({ rise }, { water }) => taken(water, rise)] },
  redo: ({ rise }, { heat }) => ({ water: (1000 * heat) / (CAPACITY * rise) }),
  prompt: (_, given, { heat }) =>
    `To turn the vapour of one wash charge into cool low wines, the condenser must take away ${n(heat, 0)} MJ. The water that runs through it comes out ${n(given.rise, 0)} degrees warmer, and ${CAPACITY} kJ warm a litre by one degree. How many litres run through?`,
  slips: [
    {
      family: 'forgotten',
      gives: ({ rise }, { water }) => water * rise,
      say: 'Each litre warms by many degrees, not by one: divide by the rise as well.',
    },
    {
      family: 'forgotten',
      gives: (_, { water }) => water * CAPACITY,
      say: 'The heat that a litre takes up for each degree was left out: divide by it as well.',
    },
    {
      family: 'thousand',
      gives: (_, { water }) => water / 1000,
      say: 'Megajoules were divided by kilojoules. A megajoule is a thousand kilojoules.',
    },
  ],
  working: ({ rise }, { water, heat }) => [
    'Water = heat ÷ (heat capacity × rise)',
    `A litre takes up ${CAPACITY} × ${w(rise)} = ${w(CAPACITY * rise)} kJ`,
    `${w(heat)} × 1,000 ÷ ${w(CAPACITY * rise)} = ${n(water, 0)} L`,
  ],
});
