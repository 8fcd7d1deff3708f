// Litres of pure alcohol in a volume of known strength.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'pure-alcohol',
  title: 'Litres of pure alcohol',
  topic: 'strength',
  level: 1,
  sources: ['derived'],
  of: 'alcohol',
  to: 1,
  within: 0.002,
  vary: {
    volume: ['volume20', [850, 960, 1060, 1250, 2200, 2600, 3400, 4000, 4300, 5200]],
    strength: ['strength', [21.5, 22, 23, 24.5, 26, 28, 30.5, 63.5, 67, 68.5]],
  },
  answer: (v) => (v.volume * v.strength) / 100,
  prompt: (show) =>
    `A receiver holds ${show.volume} at ${show.strength}, both at 20 °C. How many litres of pure alcohol is that?`,
  slips: [
    {
      family: 'otherCountry',
      gives: (v) => (2 * v.volume * v.strength) / 100,
      say: 'The strength was doubled, as for US proof. % vol is itself the part of pure alcohol in a hundred.',
    },
    {
      family: 'percent',
      gives: (v) => v.volume * v.strength,
      say: 'The per cent were not divided by 100: that is more alcohol than there is liquid.',
    },
    {
      family: 'massForVolume',
      gives: (v) => ((v.volume * v.strength) / 100) * 0.78924,
      say: 'Those are the kilograms of pure alcohol. In litres it is more, for a litre weighs only 0.789 kg.',
    },
    {
      family: 'wrongWhole',
      gives: (v) => v.volume * (1 - v.strength / 100),
      say: 'That is the volume less the alcohol. Multiply the volume by the strength, and divide by 100.',
    },
  ],
  working: (v, answer) => [
    'Pure alcohol = volume × strength ÷ 100',
    `${n(v.volume, 0)} × ${n(v.strength, 1)} ÷ 100 = ${n(answer, 1)} L of pure alcohol`,
  ],
});
