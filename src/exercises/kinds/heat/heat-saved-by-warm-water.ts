// The part of the heat that warm water from a cooler saves.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const kind = sum({
  id: 'heat-saved-by-warm-water',
  title: 'Heat saved by warm water',
  topic: 'heat',
  level: 1,
  sources: ['derived'],
  of: 'percent',
  to: 1,
  vary: {
    cold: ['temperature', [6, 8, 10, 12, 14]],
    warm: ['temperature', [40, 42, 45, 48, 50, 52]],
    hot: ['temperature', [68, 70, 72, 75, 80]],
  },
  answer: ({ cold, warm, hot }) => (100 * (warm - cold)) / (hot - cold),
  prompt: (show) =>
    `The hot liquor tank is heated to ${show.hot}. It was filled with cold water at ${show.cold}; now it gets water from the wort cooler at ${show.warm}. What part of the heat does that save, in per cent?`,
  slips: [
    {
      family: 'temperature',
      gives: ({ warm, hot }) => (100 * warm) / hot,
      say: 'The temperatures were set against each other. Both rises begin at the cold water.',
    },
    {
      family: 'otherFigure',
      gives: ({ cold, warm, hot }) => (100 * (hot - warm)) / (hot - cold),
      say: 'That is the part which still has to be heated.',
    },
    {
      family: 'wrongWhole',
      gives: ({ cold, warm, hot }) => (100 * (warm - cold)) / hot,
      say: 'The whole is the rise from the cold water, not from 0 °C.',
    },
  ],
  working: ({ cold, warm, hot }, answer) => [
    'Part saved = rise that the cooler gives ÷ whole rise',
    `The cooler gives ${n(warm, 0)} − ${n(cold, 0)} = ${n(warm - cold, 0)} degrees of ${n(hot, 0)} − ${n(cold, 0)} = ${n(hot - cold, 0)}`,
    `${n(warm - cold, 0)} ÷ ${n(hot - cold, 0)} × 100 = ${n(answer, 1)} %`,
  ],
});

export default { ...kind, since: 7 };
