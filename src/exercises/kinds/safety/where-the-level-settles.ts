// The level at which a room with gas and fresh air coming in would settle.
import { FRESH_AIR, steadyLevel } from '../../../core/fermenting/gas.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { quantity } from '../../../core/quantity.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'where-the-level-settles',
  title: 'Where the level settles',
  topic: 'safety',
  level: 2,
  sources: ['memory', 'derived'],
  of: 'ppm',
  to: 0,
  within: 0.015,
  vary: {
    gas: ['flow', [2, 3, 4, 5, 6, 8, 10, 12]],
    freshAir: ['flow', [400, 500, 600, 800, 1000, 1200, 1500, 2000]],
  },
  answer: (v) =>
    steadyLevel({
      volume: quantity('space', 1),
      gas: quantity('flow', v.gas),
      freshAir: quantity('flow', v.freshAir),
    }),
  prompt: (show) =>
    `A washback lets ${show.gas} of carbon dioxide into the tun room, and a fan brings ${show.freshAir} of fresh air with ${FRESH_AIR} ppm of it. At what level would the room settle if all were mixed?`,
  slips: [
    {
      family: 'forgotten',
      gives: (v) => (1e6 * v.gas) / (v.gas + v.freshAir),
      say: 'Fresh air brings carbon dioxide as well, some 420 ppm, and that was left out.',
    },
    {
      family: 'thousand',
      gives: (_, answer) => answer / 10_000,
      say: 'That is in per cent. One per cent is 10,000 ppm.',
    },
    {
      family: 'upsideDown',
      gives: (v) => v.freshAir / v.gas,
      say: 'That is how many cubic metres of air come to one of gas: upside down, and not in ppm.',
    },
  ],
  working: (v, answer) => [
    'Level = (1,000,000 × gas + 420 × fresh air) ÷ (gas + fresh air)',
    `(1,000,000 × ${v.gas} + 420 × ${n(v.freshAir, 0)}) ÷ (${v.gas} + ${n(v.freshAir, 0)}) = ${n(answer, 0)} ppm`,
    'Real gas lies low, and near the washback it is far thicker. No sum says that anyone may be there; meters and the site’s procedures do.',
  ],
});
