// What moving the cut does to the heart of a balanced round, read from a curve of many cuts.
import type { Chart } from '../../../calculators/define.ts';
import { settleRound } from '../../../core/distilling/round.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { litres20, share, strength } from '../../../core/quantity.ts';
import { isRefusal } from '../../../core/refusal.ts';
import { sum } from '../../sum.ts';

const CUTS = Array.from({ length: 13 }, (_, i) => 55 + i); // % vol, at which the heart may end

/** Litres of heart of a balanced round whose heart ends at a strength, with foreshots of 3 % of the alcohol. */
function heart(wash: number, washStrength: number, ends: number): number {
  const round = settleRound({
    wash: { volume: litres20(wash), strength: strength(washStrength) },
    washStill: { reflux: share(0.05), until: strength(1) },
    spiritStill: {
      reflux: share(0.1),
      foreshots: { share: share(0.03) },
      heart: strength(ends),
      feints: strength(1),
    },
    diluteTo: strength(30),
  });
  return isRefusal(round) ? NaN : round.heart.volume;
}

function chartOf(wash: number, washStrength: number): Chart {
  return {
    caption: 'Heart of a balanced round, by the strength at which it ends',
    columns: [
      { kind: 'strength', label: 'Heart ends at', values: CUTS },
      { kind: 'volume20', label: 'Heart', values: CUTS.map((cut) => heart(wash, washStrength, cut)) },
    ],
  };
}

export default sum({
  id: 'what-if',
  title: 'What if the cut were moved?',
  topic: 'distilling',
  form: 'curve',
  level: 2,
  sources: ['de-nevers', 'oiml-r22'],
  of: 'volume20',
  to: 0,
  within: 0.1,
  vary: {
    wash: ['volume20', [7000, 7500, 8000, 10_000, 12_000], 'wash.volume'],
    washStrength: ['strength', [7.8, 8, 8.2, 8.4], 'wash.strength'],
    now: ['strength', [62.5, 63.5, 64.5, 65.5], 'house.heartEnd'],
    moved: ['strength', [55.5, 56.5, 57.5, 58.5], 'house.heartEnd'],
  },
  answer: (v) => heart(v.wash, v.washStrength, v.moved) - heart(v.wash, v.washStrength, v.now),
  prompt: (show) =>
    `Harrowmere boils ${show.wash} of wash at ${show.washStrength} in each round, and its heart ends at ${show.now}. The curve shows the heart of a balanced round for other cuts. By how many litres would the heart grow if it ended at ${show.moved}?`,
  slips: [
    {
      family: 'otherFigure',
      gives: (v) => heart(v.wash, v.washStrength, v.moved),
      say: 'That is the whole heart after the change. The question is by how much it grows.',
    },
    {
      family: 'sign',
      gives: (v) => heart(v.wash, v.washStrength, v.now) - heart(v.wash, v.washStrength, v.moved),
      say: 'The heart that ends later is the larger: take the one now from the one to come.',
    },
  ],
  working: (v, answer) => {
    const [now, then] = [v.now, v.moved].map((cut) => heart(v.wash, v.washStrength, cut));
    return [
      `At ${n(v.moved, 1)} % vol the curve stands at ${n(then!, 0)} L, at ${n(v.now, 1)} at ${n(now!, 0)} L`,
      `${n(then!, 0)} − ${n(now!, 0)} = ${n(answer, 0)} L more`,
      'It is a weaker heart: in a balanced round its pure alcohol hardly changes.',
    ];
  },
  curve: (v) => chartOf(v.wash, v.washStrength),
});
