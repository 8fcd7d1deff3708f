// Strength from the pure alcohol and the litres found.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'strength-from-alcohol',
  title: 'Strength from alcohol and litres',
  topic: 'strength',
  level: 1,
  sources: ['directive-76-766', 'derived'],
  of: 'strength',
  to: 1,
  within: 0.006,
  vary: {
    alcohol: ['alcohol', [96, 98.5, 101, 103.8, 105, 108, 110.4, 112]],
    volume: ['volume20', [166, 168, 170, 172, 175, 178, 180]],
    filled: ['volume20', [195, 200, 205]],
  },
  answer: ({ alcohol, volume }) => (100 * alcohol) / volume,
  prompt: (show, _, { alcohol }) =>
    `A cask filled years ago with ${show.filled} holds ${show.volume} today, and ${n(alcohol, 1)} L of pure alcohol in them, all at 20 °C. How strong is the spirit?`,
  working: ({ alcohol, volume }, answer) => [
    'Strength = pure alcohol ÷ litres of spirit × 100',
    `${n(alcohol, 1)} ÷ ${n(volume, 0)} × 100 = ${n(answer, 1)} % vol`,
  ],
  slips: [
    {
      family: 'upsideDown',
      gives: ({ alcohol, volume }) => (100 * volume) / alcohol,
      say: 'The litres were divided by the alcohol, and more than 100 % vol cannot be. The alcohol is the part, so it goes on top.',
    },
    {
      family: 'wrongWhole',
      gives: ({ alcohol, filled }) => (100 * alcohol) / filled,
      say: 'The alcohol of today was set against the litres once filled. Set it against the litres that are there now.',
    },
  ],
});
