// A sieve test against the house's target, and which rollers to move.
import { formatNumber as n } from '../../core/format.ts';
import { rollersToMove, sieveTest, type Move } from '../../core/milling/sieve.ts';
import { percent } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';
import { isRefusal } from '../../core/refusal.ts';

const EFFECT = {
  first: {
    wider:
      'Set the first pair of rollers a little wider: husks then split off whole instead of tearing, and less of them goes to flour.',
    narrower:
      'Set the first pair of rollers a little closer: they then crack the grains that came through whole, and the husk part falls.',
  },
  second: {
    wider:
      'Set the second pair a little wider: they then leave more of the grits unbroken and make less flour.',
    narrower: 'Set the second pair a little closer: they then break more of the grits into flour.',
  },
} as const;
const LARGE_LOSS = 5; // % of the sample missing, above which the split is in doubt; common practice

const effect = (pair: keyof typeof EFFECT, move: Move) => (move === 'as it is' ? [] : [EFFECT[pair][move]]);

export default defineCalculator({
  id: 'sieve-test',
  stage: 'milling',
  title: 'The sieve test',
  purpose:
    'Turns what lies on the sieves into percentages, sets them against your target, and says which rollers to move.',
  sources: ['common-practice', 'memory'],
  cautions: ['dust'],
  readings: ['husk', 'grits', 'flour'],
  inputs: {
    putOn: { kind: 'grams', label: 'Sample weighed in', range: [10, 5000], step: 1, value: 125 },
    husk: { kind: 'grams', label: 'Husk found', range: [0, 5000], step: 0.1, value: 24 },
    grits: { kind: 'grams', label: 'Grits found', range: [0, 5000], step: 0.1, value: 84 },
    flour: { kind: 'grams', label: 'Flour found', range: [0, 5000], step: 0.1, value: 12 },
    wantedHusk: { label: 'Husk wanted', house: 'husk' },
    wantedFlour: { label: 'Flour wanted', house: 'flour' },
    tolerance: { kind: 'percent', label: 'Tolerance, either way', range: [0.5, 20], step: 0.5, value: 3 },
  },
  main: ['putOn', 'husk', 'grits', 'flour'],
  outputs: {
    husk: { kind: 'percent', label: 'Husk' },
    grits: { kind: 'percent', label: 'Grits' },
    flour: { kind: 'percent', label: 'Flour' },
    huskOff: { kind: 'percent', label: 'Husk, above or below target' },
    flourOff: { kind: 'percent', label: 'Flour, above or below target' },
    lost: { kind: 'percent', label: 'Lost on the sieves' },
  },
  refuse: ({ wantedHusk, wantedFlour }) =>
    wantedHusk + wantedFlour > 100
      ? `Husk ${wantedHusk} % and flour ${wantedFlour} % are more than the whole grist; together they can be at most 100 %.`
      : undefined,
  compute: ({ putOn, husk, grits, flour, wantedHusk, wantedFlour }) => {
    const test = sieveTest({ husk, grits, flour }, putOn);
    if (isRefusal(test)) return test;
    return {
      ...test,
      huskOff: percent(test.husk - wantedHusk),
      flourOff: percent(test.flour - wantedFlour),
    };
  },
  steps: ({ putOn, husk, grits, flour, wantedFlour }, result) => {
    const found = husk + grits + flour;
    return [
      'Each part = its mass ÷ all that was found × 100; what stuck to the sieves is left out',
      `Found: ${n(husk, 1)} + ${n(grits, 1)} + ${n(flour, 1)} = ${n(found, 1)} g`,
      `Flour: ${n(flour, 1)} ÷ ${n(found, 1)} × 100 = ${n(result.flour, 1)} %, against ${n(wantedFlour, 1)} % wanted`,
      'Lost = sample − all that was found, as a part of the sample',
      `(${n(putOn, 1)} − ${n(found, 1)}) ÷ ${n(putOn, 1)} × 100 = ${n(result.lost, 1)} %`,
    ];
  },
  remark: ({ tolerance, wantedHusk, wantedFlour }, { husk, flour, huskOff, flourOff, lost }) => {
    if (lost > LARGE_LOSS) {
      return `${n(lost, 1)} % of the sample is missing. Brush out the sieves and weigh again before moving a roller.`;
    }
    const move = rollersToMove({ husk: huskOff, flour: flourOff }, tolerance);
    const moves = [...effect('first', move.first), ...effect('second', move.second)];
    if (moves.length > 0) {
      return `${moves.join(' ')} This is common practice: one small move by the site’s procedure, then sieve again.`;
    }
    const gritsOff = wantedHusk + wantedFlour - husk - flour;
    return Math.abs(gritsOff) > tolerance
      ? `Husk and flour are each within ${n(tolerance, 1)} of the target, yet the grits are ${n(Math.abs(gritsOff), 1)} off. Sieve a second sample before moving a roller.`
      : `Every part is within ${n(tolerance, 1)} of the target: leave the rollers as they are.`;
  },
  examples: [
    {
      given: { putOn: 125, husk: 24, grits: 84, flour: 12, wantedHusk: 20, wantedFlour: 10, tolerance: 3 },
      gives: { husk: 20, grits: 70, flour: 10, lost: 4 },
      within: 1e-9,
      source: 'derived',
      note: '12 of 120 g found, by hand; the other 5 g of 125 stuck to the sieves',
    },
  ],
});
