// The fresh air that would thin a stream of gas to a level.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'fresh-air-for-a-level',
  title: 'Fresh air for a level',
  topic: 'safety',
  level: 3,
  sources: ['common-practice', 'memory', 'derived'],
  of: 'flow',
  to: 0,
  within: 0.015,
  vary: {
    gas: ['flow', [2, 3, 4, 5, 6, 8, 10, 15]],
    limit: ['ppm', [2000, 2500, 3000, 4000, 5000]],
    outside: ['ppm', [400, 420, 450]],
  },
  answer: (v) => (v.gas * (1e6 - v.limit)) / (v.limit - v.outside),
  prompt: (show) =>
    `A washback lets ${show.gas} of carbon dioxide into a room. An engineer asks how much fresh air, with ${show.outside} of carbon dioxide in it, would hold mixed air at ${show.limit}. What does the sum give?`,
  slips: [
    {
      family: 'forgotten',
      gives: (v) => (v.gas * (1e6 - v.limit)) / v.limit,
      say: 'The fresh air has carbon dioxide of its own, so it can take up only what lies between its level and the one wanted.',
    },
    {
      family: 'thousand',
      gives: (_, answer) => answer / 1000,
      say: 'A thousand was lost: parts are in a million.',
    },
    {
      family: 'sign',
      gives: (v) => (v.gas * (1e6 - v.limit)) / (v.limit + v.outside),
      say: 'The level of the fresh air was added. It has to be taken off: that much is in the air already.',
    },
  ],
  working: (v, answer) => [
    'Gas above the level = room that the fresh air has for it: gas × (1,000,000 − level) = fresh air × (level − level outside)',
    `${v.gas} × (1,000,000 − ${n(v.limit, 0)}) ÷ (${n(v.limit, 0)} − ${n(v.outside, 0)}) = ${n(answer, 0)} m³/h`,
    'This is a sum for mixed air, and no air is mixed. Ventilation is laid out by people licensed for it, and checked by meters.',
  ],
});
