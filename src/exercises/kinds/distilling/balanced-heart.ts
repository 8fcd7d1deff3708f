// The heart of a balanced round: what comes in less what the lees take out.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

type Round = Readonly<Record<'lowWines' | 'strength' | 'lees' | 'heartStrength' | 'leesStrength', number>>;
const into = (v: Round) => (v.lowWines * v.strength) / 100;
const out = (v: Round) => (v.lees * v.leesStrength) / 100;
const MISSING = 0.05; // of the low wines, that heart and lees may lack in litres or have too many: numbers are clean
const litresBalance = (v: Round, heart: number) =>
  Math.abs(v.lowWines - heart - v.lees) <= MISSING * v.lowWines;

const told = (show: Readonly<Record<keyof Round, string>>, leesStrength = show.leesStrength) =>
  `brings ${show.lowWines} of low wines at ${show.strength} and sends ${show.lees} of spent lees at ${leesStrength} away. The heart is at ${show.heartStrength}; how many litres is it?`;

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
    lees: ['volume20', [1500, 1600, 1700, 1800, 1900, 2000], 'spentLees.volume'],
    heartStrength: ['strength', [67, 67.5, 68, 68.5, 69], 'heart.strength'],
    leesStrength: ['strength', [0.2, 0.25, 0.3]],
  },
  fits: (v, heart) => litresBalance(v, heart),
  answer: (v) => (100 * (into(v) - out(v))) / v.heartStrength,
  prompt: (show) =>
    `A round is in balance: foreshots and feints always go back, and each charge is like the last. It ${told(show)}`,
  renewed: 7,
  before: {
    vary: {
      lowWines: ['volume20', [2400, 2500, 2600, 2700, 2800, 3000]],
      strength: ['strength', [21.5, 22, 22.5, 23, 23.5]],
      lees: ['volume20', [2600, 2800, 3000, 3200]],
      heartStrength: ['strength', [67, 67.5, 68, 68.5, 69]],
      leesStrength: ['strength', [0.1]],
    },
    prompt: (show) =>
      `At Harrowmere the round is in balance: foreshots and feints always go back, and each charge is like the last. A round ${told(show, '0.1 % vol')}`,
  },
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
    `${n(v.lowWines, 0)} × ${n(v.strength, 1)} ÷ 100 = ${n(into(v), 1)} L come in; ${n(v.lees, 0)} × ${v.leesStrength} ÷ 100 = ${n(out(v), 1)} L leave with the lees`,
    `Heart: ${n(into(v), 1)} − ${n(out(v), 1)} = ${n(into(v) - out(v), 1)} L of pure alcohol`,
    `Its volume = ${n(into(v) - out(v), 1)} ÷ ${n(v.heartStrength, 1)} × 100 = ${n(answer, 0)} L`,
  ],
});
