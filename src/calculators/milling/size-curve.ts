// The sizes of a grist from a whole stack of sieves.
import { formatNumber as n } from '../../core/format.ts';
import { sizeCurve, type Sieve, type SizeCurve } from '../../core/milling/size-curve.ts';
import { percent, type Quantity } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';
import { isRefusal } from '../../core/refusal.ts';

interface Given {
  readonly sieves: readonly Sieve[];
  readonly pan: Quantity<'grams'>;
}
const curveOf = ({ sieves, pan }: Given) => sizeCurve(sieves, pan) as SizeCurve;

export default defineCalculator({
  id: 'size-curve',
  stage: 'milling',
  title: 'How fine the grist is',
  purpose:
    'Draws how much of the grist passes each sieve of a stack, and finds the size that half of it passes.',
  sources: ['memory'],
  cautions: ['dust'],
  inputs: {
    sieves: {
      label: 'Sieves',
      columns: {
        opening: { kind: 'opening', label: 'Opening', range: [0.02, 20], step: 0.001 },
        mass: { kind: 'grams', label: 'Stays on it', range: [0, 5000], step: 0.1 },
      },
      // Openings of the five-sieve laboratory set, from memory; masses of a grist of 20, 70 and 10 per cent.
      value: [
        { opening: 1.27, mass: 20 },
        { opening: 1.01, mass: 10 },
        { opening: 0.547, mass: 38 },
        { opening: 0.253, mass: 22 },
        { opening: 0.152, mass: 5 },
      ],
      count: [2, 8],
    },
    pan: { kind: 'grams', label: 'In the pan', range: [0, 5000], step: 0.1, value: 5 },
  },
  outputs: {
    median: { kind: 'opening', label: 'Half the grist is finer than', digits: 2 },
    coarse: { kind: 'percent', label: 'Stays on the widest sieve' },
    fine: { kind: 'percent', label: 'Passes the finest sieve' },
    total: { kind: 'grams', label: 'Weighed in all' },
  },
  compute: ({ sieves, pan }) => {
    const curve = sizeCurve(sieves, pan);
    if (isRefusal(curve)) return curve;
    return {
      median: curve.median,
      coarse: percent(100 - curve.points.at(-1)!.passing),
      fine: curve.points[0]!.passing,
      total: curve.total,
    };
  },
  steps: (given, result) => {
    const points = curveOf(given).points;
    const widest = points.at(-1)!;
    return [
      'What passes a sieve = all that lies below it ÷ all that was weighed × 100',
      `The widest sieve keeps ${n(widest.mass, 1)} of ${n(result.total, 1)} g, so ${n(widest.passing, 1)} % passes ${n(widest.opening, 3)} mm`,
      ...points
        .slice(0, -1)
        .reverse()
        .map(({ opening, passing }) => `${n(passing, 1)} % passes ${n(opening, 3)} mm`),
      `Between the two sieves on either side of 50 %, the part that passes is taken to grow evenly with the logarithm of the size: ${n(result.median, 2)} mm`,
    ];
  },
  chart: (given) => {
    const points = curveOf(given).points;
    const [opening, passing] = [points.map((p) => p.opening), points.map((p) => p.passing)];
    return {
      caption: 'Share of the grist that passes each opening',
      columns: [
        { kind: 'opening', label: 'Opening, mm', values: opening },
        { kind: 'percent', label: 'Passes', values: passing },
        { kind: 'grams', label: 'Stays on it', values: points.map((p) => p.mass) },
      ],
      points: opening.map((size, i) => [size, passing[i]!] as const),
    };
  },
  examples: [
    {
      given: {
        sieves: [
          { opening: 2, mass: 25 },
          { opening: 0.5, mass: 50 },
        ],
        pan: 25,
      },
      gives: { median: 1, coarse: 25, fine: 25, total: 100 },
      within: 1e-9,
      source: 'derived',
      note: 'half-way between 25 and 75 %, and 1 mm is half-way from 0.5 to 2 by doubling',
    },
    {
      given: {
        sieves: [
          { opening: 1.27, mass: 20 },
          { opening: 1.01, mass: 10 },
          { opening: 0.547, mass: 38 },
          { opening: 0.253, mass: 22 },
          { opening: 0.152, mass: 5 },
        ],
        pan: 5,
      },
      gives: { median: 0.7314, coarse: 20, fine: 5 },
      within: 1e-4,
      source: 'derived',
      note: '18 of the 38 points from 0.547 to 1.01 mm, by hand with logarithms to four figures',
    },
    {
      given: {
        sieves: [
          { opening: 2, mass: 40 },
          { opening: 0.85, mass: 60 },
          { opening: 0.425, mass: 89 },
          { opening: 0.25, mass: 140 },
          { opening: 0.18, mass: 122 },
          { opening: 0.15, mass: 210 },
          { opening: 0.075, mass: 56 },
        ],
        pan: 12,
      },
      gives: { coarse: 5.5, fine: 1.7, total: 729 },
      within: 0.035,
      source: 'das-geotechnical',
      note: 'a soil: 94.5 % finer than 2 mm and 1.7 % than 0.075 mm of 729 g, both to one decimal, which is 3 % of so small a part',
    },
  ],
});
