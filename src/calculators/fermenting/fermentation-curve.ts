// The S of a fermentation, fitted to the reader's own gravity readings.
import { extractAt, hourOfPartFallen } from '../../core/fermenting/fall.ts';
import { fitFall, type GravityReading } from '../../core/fermenting/fit-fall.ts';
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { plato, type Quantity } from '../../core/quantity.ts';
import { isRefusal } from '../../core/refusal.ts';
import { gravityFromPlato, platoFromGravity } from '../../core/wort/extract.ts';
import { defineCalculator } from '../define.ts';

const MUCH_SCATTER = 0.5; // °P, about two degrees of gravity: more than careful readings should stray; from memory
const CHART_STEPS = 48;

interface Curve {
  readonly initialExtract: Quantity<'plato'>;
  readonly finalExtract: Quantity<'plato'>;
  readonly half: Quantity<'hours'>;
  readonly steepness: Quantity<'perHour'>;
}
const fallOf = ({ initialExtract, finalExtract, half, steepness }: Curve) => ({
  initial: initialExtract,
  final: finalExtract,
  half,
  steepness,
});
const lastOf = (readings: readonly GravityReading[]) => Math.max(...readings.map(({ hour }) => hour));

export default defineCalculator({
  id: 'fermentation-curve',
  stage: 'fermenting',
  title: 'The curve through your readings',
  purpose: 'Fits the S-shaped fall of gravity to your own readings, and finds when it is done.',
  sources: ['reid-2021', 'sugar-tables', 'common-practice'],
  cautions: ['carbon-dioxide'],
  readings: ['readings'],
  inputs: {
    readings: {
      label: 'Readings of one washback',
      columns: {
        hour: { kind: 'hours', label: 'Hours from the start', range: [0, 200], step: 1 },
        gravity: { kind: 'gravity', label: 'Gravity', range: [0.985, 1.12], step: 0.001 },
      },
      value: [
        { hour: 0, gravity: 1.057 },
        { hour: 8, gravity: 1.05 },
        { hour: 12, gravity: 1.042 },
        { hour: 16, gravity: 1.029 },
        { hour: 20, gravity: 1.015 },
        { hour: 24, gravity: 1.006 },
        { hour: 32, gravity: 1.0 },
        { hour: 48, gravity: 0.998 },
      ],
      count: [4, 12],
    },
  },
  outputs: {
    initial: { kind: 'gravity', label: 'Falls from', digits: 4 },
    final: { kind: 'gravity', label: 'Falls to', digits: 4 },
    initialExtract: { kind: 'plato', label: 'Apparent extract at the start' },
    finalExtract: { kind: 'plato', label: 'Apparent extract at the end' },
    half: { kind: 'hours', label: 'Half the fall reached at' },
    steepness: { kind: 'perHour', label: 'Steepness' },
    done: { kind: 'hours', label: '95 % of the fall reached at' },
    scatter: { kind: 'plato', label: 'Scatter of the readings about it' },
  },
  compute: ({ readings }) => {
    const fit = fitFall(readings);
    if (isRefusal(fit)) return fit;
    return {
      initial: gravityFromPlato(fit.initial),
      final: gravityFromPlato(fit.final),
      initialExtract: fit.initial,
      finalExtract: fit.final,
      half: fit.half,
      steepness: fit.steepness,
      done: hourOfPartFallen(fit, 0.95),
      scatter: fit.scatter,
    };
  },
  steps: ({ readings }, result) => {
    const near = readings.reduce((best, reading) =>
      Math.abs(reading.hour - result.half) < Math.abs(best.hour - result.half) ? reading : best,
    );
    const curve = extractAt(fallOf(result), near.hour);
    return [
      'P = Pe + (Pi − Pe) ÷ (1 + e^(b (t − m))), with P the apparent extract after t hours',
      `Least sum of squared distances from ${readings.length} readings: Pi = ${n(result.initialExtract, 2)}, Pe = ${n(result.finalExtract, 2)} °P, m = ${w(result.half)} h, b = ${w(result.steepness)} an hour`,
      `At ${n(near.hour, 1)} h: ${n(result.finalExtract, 2)} + ${n(result.initialExtract - result.finalExtract, 2)} ÷ (1 + e^(${n(result.steepness * (near.hour - result.half), 2)})) = ${n(curve, 2)} °P; you read ${n(platoFromGravity(near.gravity), 2)}`,
      `95 % is done when e^(b (t − m)) is 0.95 ÷ 0.05 = 19: t = ${w(result.half)} + ln(19) ÷ ${w(result.steepness)} = ${n(result.done, 1)} h`,
    ];
  },
  remark: ({ readings }, result) => {
    const last = lastOf(readings);
    const fit = fitFall(readings);
    if (result.done > last)
      return `Your readings end at ${n(last, 1)} h, before 95 % of the fall is done: the end of the curve is a guess, so read on before you trust its final gravity.`;
    if (result.scatter > MUCH_SCATTER && !isRefusal(fit))
      return `The readings stray far from the curve; the one at ${n(fit.furthest.hour, 1)} h, ${n(fit.furthest.gravity, 3)}, strays most, so look at that one first.`;
    if (readings.length === 4)
      return 'Four readings fix four unknowns with none to spare: the curve passes through them all and cannot show a wrong one. Take eight or more, some of them in the steep part.';
    return 'All but the last twentieth of the fall is done by the hour named; alcohol is commonly all but complete at 44 to 48 hours (common practice), and what follows is for flavour.';
  },
  chart: ({ readings }, result) => {
    const end = Math.max(lastOf(readings), result.done);
    const hours = Array.from({ length: CHART_STEPS + 1 }, (_, i) => (i * end) / CHART_STEPS);
    const extracts = hours.map((hour) => extractAt(fallOf(result), hour));
    return {
      caption: 'Apparent extract by the curve',
      columns: [
        { kind: 'hours', label: 'Hours', values: hours },
        { kind: 'plato', label: 'Apparent extract', values: extracts },
        { kind: 'gravity', label: 'Gravity', values: extracts.map((p) => gravityFromPlato(plato(p))) },
      ],
      points: readings.map(({ hour, gravity }) => [hour, platoFromGravity(gravity)] as const),
    };
  },
  examples: [
    {
      given: {
        readings: [
          { hour: 8, gravity: 1.07404 },
          { hour: 12, gravity: 1.06109 },
          { hour: 16, gravity: 1.03998 },
          { hour: 20, gravity: 1.01968 },
          { hour: 24, gravity: 1.00779 },
        ],
      },
      gives: { initialExtract: 20, half: 16, steepness: 0.27465, done: 26.72 },
      within: 0.005,
      source: 'sugar-tables',
      note: '18, 15, 10, 5 and 2 °P, from memory of the sugar table: nine, three, one, a third and a ninth of what has gone, so 20 °P falls to 0, half at 16 h, and b is ln 3 in 4 h',
    },
  ],
});
