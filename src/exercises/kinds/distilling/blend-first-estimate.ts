// The strength of two lots together, as a first estimate without contraction.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

type Lots = Readonly<Record<'volume' | 'strength' | 'other' | 'otherStrength', number>>;
const alcohol = (v: Lots) => (v.volume * v.strength + v.other * v.otherStrength) / 100;

export default sum({
  id: 'blend-first-estimate',
  title: 'Low wines and feints together',
  topic: 'strength',
  level: 2,
  sources: ['derived'],
  of: 'strength',
  to: 1,
  within: 0.004,
  vary: {
    volume: ['volume20', [2400, 2800, 3000, 3600, 4000, 4500], 'lowWines.volume'],
    strength: ['strength', [20, 21, 22, 23, 24], 'lowWines.strength'],
    other: ['volume20', [900, 1200, 1300, 1500, 1800, 2200]],
    otherStrength: ['strength', [30, 32, 34, 36, 38]],
  },
  answer: (v) => (100 * alcohol(v)) / (v.volume + v.other),
  prompt: (show) =>
    `The next charge is made of ${show.volume} of low wines at ${show.strength} and ${show.other} of foreshots and feints at ${show.otherStrength}. As a first estimate, leaving aside that the mixture shrinks a little, how strong is it?`,
  slips: [
    {
      family: 'averaged',
      gives: (v) => (v.strength + v.otherStrength) / 2,
      say: 'That is the mean of the two strengths. There is more of the one than of the other, so each counts by its litres.',
    },
    {
      family: 'wrongWhole',
      gives: (v) => (v.volume * v.otherStrength + v.other * v.strength) / (v.volume + v.other),
      say: 'Each volume was taken with the strength of the other.',
    },
    {
      family: 'wrongWhole',
      gives: (v) => (100 * alcohol(v)) / v.volume,
      say: 'The alcohol was divided by the low wines alone. It is now in the whole charge.',
    },
  ],
  working: (v, answer) => [
    `Pure alcohol: ${n(v.volume, 0)} × ${n(v.strength, 1)} ÷ 100 + ${n(v.other, 0)} × ${n(v.otherStrength, 1)} ÷ 100 = ${n(alcohol(v), 1)} L`,
    `Volume, as poured: ${n(v.volume, 0)} + ${n(v.other, 0)} = ${n(v.volume + v.other, 0)} L`,
    `Strength = pure alcohol ÷ volume × 100: ${n(alcohol(v), 1)} ÷ ${n(v.volume + v.other, 0)} × 100 = ${n(answer, 1)} % vol; the true volume is a few litres less`,
  ],
});
