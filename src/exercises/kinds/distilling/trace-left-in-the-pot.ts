// What is left of a trace when a part of the pot has boiled off.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'trace-left-in-the-pot',
  title: 'A trace that stays behind',
  topic: 'distilling',
  level: 2,
  sources: ['derived'],
  of: 'percent',
  to: 1,
  within: 0.015,
  vary: {
    volatility: ['ratio', [0.3, 0.4, 0.5, 0.6, 1.6, 1.8, 2, 2.5, 3, 3.5]],
    boiled: ['percent', [15, 20, 24, 30, 35, 40, 45, 55, 60]],
  },
  answer: (v) => 100 * (1 - v.boiled / 100) ** v.volatility,
  prompt: (show, _, v) =>
    `Take a trace with a volatility of ${v.volatility} all through a run. By Rayleigh’s law the part of it that is left in the pot is the part of the pot that is left, to the power of the volatility. When ${show.boiled} of the pot has boiled off, how many per cent of the trace are left?`,
  slips: [
    {
      family: 'compound',
      gives: (v) => 100 - v.volatility * v.boiled,
      say: 'That takes the same amount of the trace off with each hundredth. But each takes its part of what is still there.',
    },
    {
      family: 'otherFigure',
      gives: (_, answer) => 100 - answer,
      say: 'That is the part that has come over. The question asks for what is left in the pot.',
    },
    {
      family: 'wrongWhole',
      gives: (v) => 100 * (v.boiled / 100) ** v.volatility,
      say: 'The part boiled off was raised to the power. Take the part that is left.',
    },
    {
      family: 'forgotten',
      gives: (v) => 100 - v.boiled,
      say: 'That is the part of the pot that is left. The trace boils out at its own rate.',
    },
  ],
  working: (v, answer) => [
    `Left of the pot: 1 − ${v.boiled} ÷ 100 = ${n(1 - v.boiled / 100, 2)}`,
    'Left of the trace = left of the pot to the power of the volatility',
    `${n(1 - v.boiled / 100, 2)} to the power of ${v.volatility} = ${n(answer / 100, 3)}, or ${n(answer, 1)} %`,
    'In a real run the volatility changes as the pot grows weaker; the rule shows the way, not the amount.',
  ],
});
