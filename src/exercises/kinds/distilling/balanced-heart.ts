// The heart of a balanced round: what comes in less what the lees take out.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

type Round = Readonly<Record<'lowWines' | 'strength' | 'lees' | 'heartStrength', number>>;
const into = (v: Round) => (v.lowWines * v.strength) / 100;
const LEES = 0.1; // % vol of the spent lees, for the house of the question
const out = (v: Round) => (v.lees * LEES) / 100;

export default sum({
  id: 'balanced-heart',
  title: 'The heart of a balanced round',
  topic: 'distilling',
  level: 3,
  sources: ['derived'],
  of: 'volume20',
  to: 0,
  within: 0.002,
  vary: {
    lowWines: ['volume20', [2400, 2500, 2600, 2700, 2800, 3000], 'lowWines.volume'],
    strength: ['strength', [21.5, 22, 22.5, 23, 23.5], 'lowWines.strength'],
    lees: ['volume20', [2600, 2800, 3000, 3200], 'spentLees.volume'],
    heartStrength: ['strength', [67, 67.5, 68, 68.5, 69], 'heart.strength'],
  },
  answer: (v) => (100 * (into(v) - out(v))) / v.heartStrength,
  prompt: (show) =>
    `At Harrowmere the round is in balance: foreshots and feints always go back, and each charge is like the last. A round brings ${show.lowWines} of low wines at ${show.strength} and sends ${show.lees} of spent lees at ${LEES} % vol away. The heart is at ${show.heartStrength}; how many litres is it?`,
  slips: [
    {
      family: 'bulkForAlcohol',
      gives: (v) => into(v) - out(v),
      say: 'That is the pure alcohol of the heart. The question asks for its litres as it runs: divide by its strength.',
    },
    {
      family: 'forgotten',
      gives: (v) => (100 * into(v)) / v.heartStrength,
      say: 'The alcohol that leaves with the spent lees was forgotten.',
    },
    {
      family: 'bulkForAlcohol',
      gives: (v) => v.lowWines - v.lees,
      say: 'Bulk litres were subtracted. Only pure alcohol can be followed through the round, for feints travel in a circle.',
    },
    {
      family: 'percent',
      gives: (v) => (100 * (into(v) - 100 * out(v))) / v.heartStrength,
      say: 'The strength of the lees was not divided by 100.',
    },
  ],
  working: (v, answer) => [
    'In balance: alcohol in the low wines = alcohol in the heart + alcohol in the lees',
    `${n(v.lowWines, 0)} × ${n(v.strength, 1)} ÷ 100 = ${n(into(v), 1)} L come in; ${n(v.lees, 0)} × ${LEES} ÷ 100 = ${n(out(v), 1)} L leave with the lees`,
    `Heart: ${n(into(v), 1)} − ${n(out(v), 1)} = ${n(into(v) - out(v), 1)} L of pure alcohol`,
    `Its volume = ${n(into(v) - out(v), 1)} ÷ ${n(v.heartStrength, 1)} × 100 = ${n(answer, 0)} L`,
  ],
});
