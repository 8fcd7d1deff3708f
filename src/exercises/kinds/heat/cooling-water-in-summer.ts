// How much more cooling water a warm intake asks for.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const kind = sum({
  id: 'cooling-water-in-summer',
  title: 'Cooling water in summer',
  topic: 'heat',
  level: 2,
  sources: ['derived'],
  of: 'volume',
  to: 0,
  vary: {
    winter: ['volume', [30_000, 32_000, 36_000, 40_000, 45_000, 50_000], 'lowWines.volume'],
    cold: ['temperature', [6, 7, 8, 9, 10]],
    warm: ['temperature', [16, 17, 18, 19, 20]],
    out: ['temperature', [42, 44, 45, 48, 50]],
  },
  answer: ({ winter, cold, warm, out }) => (winter * (out - cold)) / (out - warm),
  prompt: (show) =>
    `In winter the condenser of a charge takes ${show.winter} of water that comes in at ${show.cold} and leaves at ${show.out}. In summer it comes in at ${show.warm} and may leave no warmer. How much does the same charge take then?`,
  slips: [
    {
      family: 'upsideDown',
      gives: ({ winter, cold, warm, out }) => (winter * (out - warm)) / (out - cold),
      say: 'Upside down: each litre takes up less heat, so more of them are needed.',
    },
    {
      family: 'temperature',
      gives: ({ winter, cold, warm }) => (winter * warm) / cold,
      say: 'The temperatures were set against each other. What counts is how far the water warms.',
    },
    {
      family: 'otherFigure',
      gives: ({ winter, cold, warm, out }) => (winter * (out - cold)) / (out - warm) - winter,
      say: 'That is what summer takes on top. The question is for all of it.',
    },
  ],
  working: ({ winter, cold, warm, out }, answer) => [
    'The heat is the same, so litres × rise is the same',
    `In winter the water warms by ${n(out, 0)} − ${n(cold, 0)} = ${n(out - cold, 0)} degrees, in summer by ${n(out, 0)} − ${n(warm, 0)} = ${n(out - warm, 0)}`,
    `${n(winter, 0)} × ${n(out - cold, 0)} ÷ ${n(out - warm, 0)} = ${n(answer, 0)} L`,
  ],
});

export default { ...kind, since: 7 };
