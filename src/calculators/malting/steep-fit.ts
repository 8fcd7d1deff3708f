// The steep's two constants from weighings.
import { formatNumber as n } from '../../core/format.ts';
import { fitSteep, moistureOfSample } from '../../core/malting/steep-fit.ts';
import { moistureAfter, moistureInTheEnd } from '../../core/malting/steep.ts';
import { hours } from '../../core/quantity.ts';
import { isRefusal } from '../../core/refusal.ts';
import { defineCalculator } from '../define.ts';

const POINTS = 24;
const CARELESS = 0.01; // of the sample's mass; a scatter above it is worth a second look

export default defineCalculator({
  id: 'steep-fit',
  stage: 'malting',
  title: 'A lot’s own steeping curve',
  purpose: 'Finds a lot’s two constants from three to six weighings of a drained sample.',
  sources: ['peleg-1988', 'derived'],
  cautions: ['carbon-dioxide', 'confined-space'],
  readings: ['weighings'],
  inputs: {
    mass: { kind: 'grams', label: 'Sample before the steep', range: [20, 20_000], step: 1, value: 500 },
    moisture: { label: 'Its moisture', house: 'barleyMoisture' },
    weighings: {
      label: 'Weighings',
      columns: {
        hours: { kind: 'hours', label: 'Hours wet', range: [0.5, 120], step: 0.5 },
        mass: { kind: 'grams', label: 'Mass', range: [20, 60_000], step: 1 },
      },
      value: [
        { hours: 2, mass: 574.6 },
        { hours: 6, mass: 671.9 },
        { hours: 12, mass: 753.8 },
        { hours: 24, mass: 834.2 },
      ],
      count: [3, 6],
    },
  },
  outputs: {
    k1: { kind: 'hoursPerPercent', label: 'k1' },
    k2: { kind: 'perPercent', label: 'k2' },
    half: { kind: 'hours', label: 'Half its water taken up after' },
    ceiling: { kind: 'percent', label: 'Most moisture it could reach' },
    scatter: { kind: 'grams', label: 'Scatter of the weighings', digits: 2 },
  },
  compute: ({ mass, moisture, weighings }) => {
    const fit = fitSteep({ mass, moisture }, weighings);
    if (isRefusal(fit)) return fit;
    return {
      k1: fit.k1,
      k2: fit.k2,
      half: hours(fit.k1 / fit.k2),
      ceiling: moistureInTheEnd(fit),
      scatter: fit.scatter,
    };
  },
  steps: (given, result) => {
    const dry = given.mass * (1 - given.moisture / 100);
    const first = given.weighings[0]!;
    const water = (100 * (first.mass - given.mass)) / dry;
    return [
      'Dry matter of the sample = mass × (100 − moisture) ÷ 100; it is taken to stay, though a steep washes out about one hundredth',
      `${n(given.mass, 1)} × (100 − ${n(given.moisture, 1)}) ÷ 100 = ${n(dry, 1)} g`,
      `Water taken up after ${n(first.hours, 1)} h = (${n(first.mass, 1)} − ${n(given.mass, 1)}) ÷ ${n(dry, 1)} × 100 = ${n(water, 2)} % of the dry matter; and so for each weighing`,
      'The curve is water = t ÷ (k1 + k2 × t), so t ÷ water against t is a straight line; the line gives a first k1 and k2',
      'They are then moved until the sum of the squares between the weighings and the curve is least',
      `k1 = ${n(result.k1, 4)} h/%, k2 = ${n(result.k2, 5)} 1/%; half of all the water is in after k1 ÷ k2 = ${n(result.half, 1)} h`,
    ];
  },
  remark: (given, { scatter, ceiling }) =>
    scatter > CARELESS * given.mass
      ? `The weighings scatter ${n(scatter, 1)} g about the curve, more than a hundredth of the sample. Drain for the same time at every weighing, and repeat the one furthest off.`
      : `Put k1 and k2 into “Moisture through the steep”, with the temperature of this water. The ${n(ceiling, 1)} % it could reach lies beyond your weighings and is the least sure of these figures.`,
  chart: ({ mass, moisture, weighings }, { k1, k2 }) => {
    const longest = Math.max(...weighings.map((weighing) => weighing.hours));
    const times = Array.from({ length: POINTS + 1 }, (_, i) => hours((longest * i) / POINTS));
    return {
      caption: 'Moisture of the sample, and the weighings',
      columns: [
        { kind: 'hours', label: 'Hours wet', values: times },
        {
          kind: 'percent',
          label: 'Moisture',
          values: times.map((time) => moistureAfter({ startMoisture: moisture, k1, k2 }, time)),
        },
      ],
      points: weighings.map((weighing) => [
        weighing.hours,
        moistureOfSample({ mass, moisture }, weighing.mass),
      ]),
    };
  },
  examples: [
    {
      given: {
        mass: 500,
        moisture: 20,
        weighings: [
          { hours: 2, mass: 566.6666666667 },
          { hours: 10, mass: 700 },
          { hours: 20, mass: 766.6666666667 },
        ],
      },
      gives: { k1: 0.1, k2: 0.01, half: 10, ceiling: 55.5555555556 },
      within: 1e-7,
      source: 'derived',
      note: 'by hand with k1 0.1 and k2 0.01: 2 ÷ 0.12, 10 ÷ 0.2 and 20 ÷ 0.3 % of 400 g dry matter',
    },
  ],
});
