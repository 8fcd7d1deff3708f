// The level at which a leak of gas and fresh air would settle, were the air mixed.
import carbonDioxideInARoom from '../../../calculators/fermenting/carbon-dioxide-in-a-room.ts';
import { FRESH_AIR } from '../../../core/fermenting/gas.ts';
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

const HALF = 60; // h; so late that what the S has before the start does not count
const CUBIC_METRES = 0.5466; // to a kilogram of the gas at 20 °C: 24.055 ÷ 44.01

interface Leak {
  readonly gas: number;
  readonly steepness: number;
  readonly escapes: number;
}
const leak = ({ gas, steepness, escapes }: Leak) => (((gas * steepness) / 4) * escapes * CUBIC_METRES) / 100;
const settles = (flow: number, freshAir: number) => (1e6 * flow + FRESH_AIR * freshAir) / (flow + freshAir);

export default exercise(carbonDioxideInARoom, {
  topic: 'safety',
  level: 3,
  ask: 'steady',
  vary: {
    gas: [300, 400, 480, 600, 800, 900, 1200],
    half: [HALF],
    steepness: [0.16, 0.2, 0.24],
    temperature: [20],
    escapes: [5, 10, 15, 20],
    room: [600],
    freshAir: [300, 400, 500, 600, 800, 1000, 1200],
  },
  prompt: (show, { steepness }) =>
    `A washback gives off ${show.gas} of carbon dioxide, and in its fastest hour ${n(25 * steepness, 0)} % of that. If ${show.escapes} of that hour’s gas leaked into a room through which ${show.freshAir} of fresh air is blown, with ${FRESH_AIR} ppm already in it, at how many ppm would mixed air settle? A kilogram of the gas is ${CUBIC_METRES} m³. This clears no room: only measured carbon dioxide and your site’s procedures decide.`,
  slips: [
    {
      family: 'massForVolume',
      gives: (given) => settles(leak(given) / CUBIC_METRES, given.freshAir),
      say: 'The kilograms of gas were taken as cubic metres. A kilogram is a little more than half of one.',
    },
    {
      family: 'forgotten',
      gives: (given) => settles(leak({ ...given, escapes: 100 }), given.freshAir),
      say: 'That lets all the gas of the hour into the room. Only the part that leaks counts in this sum; where the rest goes must be known too.',
    },
    {
      family: 'forgotten',
      gives: ({ gas, escapes, freshAir }) => settles((gas * escapes * CUBIC_METRES) / 100, freshAir),
      say: 'That lets the gas of the whole fermentation out in one hour. In its fastest hour only the part named comes.',
    },
    {
      family: 'thousand',
      gives: (given) => (100 * leak(given)) / (leak(given) + given.freshAir),
      say: 'That is the gas in per cent, and without what fresh air holds. One per cent is 10,000 ppm.',
    },
  ],
  working: (given, { steady }) => {
    const { gas, steepness, escapes, freshAir } = given;
    return [
      `Gas that leaks in: ${w(gas)} × ${w(25 * steepness)} ÷ 100 × ${w(escapes)} ÷ 100 = ${w(leak(given) / CUBIC_METRES)} kg, × ${CUBIC_METRES} = ${w(leak(given))} m³ in an hour`,
      'Where it settles = (1,000,000 × gas + ppm of fresh air × fresh air) ÷ (gas + fresh air)',
      `(1,000,000 × ${w(leak(given))} + ${FRESH_AIR} × ${w(freshAir)}) ÷ (${w(leak(given))} + ${w(freshAir)}) = ${n(steady, 0)} ppm`,
      'Real gas does not mix: it lies low and can be far above this near a washback, a drain or a pit. Only a meter for carbon dioxide, your site’s procedures and your local code decide whether anyone may be there.',
    ];
  },
});
