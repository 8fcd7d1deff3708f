// Years until a cask reaches the floor of 40 % vol, falling evenly.
import belowForty from '../../../calculators/maturing/below-forty.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

export default exercise(belowForty, {
  level: 1,
  ask: 'year',
  vary: {
    by: ['evenly'],
    size: [200],
    strength: [46.5, 48, 49, 50.5, 51.5, 52, 53.5, 54],
    limit: [40],
    loss: [2],
    humidity: [80],
    steady: [65],
    yearly: [0.25, 0.3, 0.35, 0.4, 0.45, 0.5, 0.6],
  },
  prompt: (show) =>
    `An old cask stands at ${show.strength}, and its regauges show that it falls by ${show.yearly} a year. After how many more years does it reach ${show.limit}, the floor for whisky in most laws?`,
  slips: [
    {
      family: 'percent',
      gives: ({ strength, limit, yearly }) => (100 * (1 - limit / strength)) / yearly,
      say: 'The fall was taken as a part of the strength now. The yearly fall is in % vol as well: take the plain difference.',
    },
    {
      family: 'forgotten',
      gives: ({ strength, yearly }) => strength / yearly,
      say: 'That is the time until no alcohol is left. It need only fall to the floor.',
    },
    {
      family: 'upsideDown',
      gives: ({ strength, limit, yearly }) => (strength - limit) * yearly,
      say: 'The difference was multiplied by the yearly fall. Ask how many times the yearly fall goes into it.',
    },
  ],
  working: ({ strength, limit, yearly }, { year }) => [
    'Years = (strength now − floor) ÷ fall in a year',
    `(${n(strength, 1)} − ${n(limit, 0)}) ÷ ${yearly} = ${n(year, 1)} years; regauge well before then`,
  ],
});
