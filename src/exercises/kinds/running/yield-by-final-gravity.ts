// What a washback that stops too high costs for a tonne of malt.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const kind = sum({
  id: 'yield-by-final-gravity',
  title: 'Yield lost by a high final gravity',
  topic: 'running',
  level: 2,
  sources: ['derived'],
  of: 'yield',
  to: 1,
  within: 0.015,
  vary: {
    usual: ['yield', [396, 398, 400, 402, 404, 406], 'malt.spiritYield'],
    original: ['gravity', [1.056, 1.057, 1.058, 1.059, 1.06], 'house.originalGravity'],
    final: ['gravity', [0.997, 0.998, 0.999], 'house.finalGravity'],
    now: ['gravity', [1.001, 1.002, 1.003, 1.004], 'house.finalGravity'],
  },
  answer: ({ usual, original, final, now }) => (usual * (now - final)) / (original - final),
  fits: ({ final, now }) => now > final,
  prompt: (show, _, v) =>
    `The wort starts at ${show.original} and the wash ends at ${show.final} as a rule, and then a tonne of malt gives ${n(v.usual, 0)} L of pure alcohol. This week the washbacks stopped at ${show.now}. Take the alcohol to go with the fall in gravity. By how much does a tonne fall short for that alone?`,
  slips: [
    {
      family: 'wrongWhole',
      gives: ({ usual, original, now, final }) => (usual * (now - final)) / (original - 1),
      say: 'The whole fall is down to the usual final gravity, not to 1.000.',
    },
    {
      family: 'otherFigure',
      gives: ({ usual, original, now, final }) => (usual * (original - now)) / (original - final),
      say: 'That is what the tonne still gives. The question is for what it falls short.',
    },
    {
      family: 'wrongWhole',
      gives: ({ usual, original, now, final }) => (usual * (now - final)) / (original - now),
      say: 'The whole is the usual fall, which gave the usual yield.',
    },
  ],
  working: ({ usual, original, final, now }, answer) => [
    'Shortfall = usual yield × fall that is missing ÷ usual fall',
    `Missing: ${n(now, 3)} − ${n(final, 3)} = ${n(now - final, 3)}; usual fall: ${n(original, 3)} − ${n(final, 3)} = ${n(original - final, 3)}`,
    `${n(usual, 0)} × ${n(now - final, 3)} ÷ ${n(original - final, 3)} = ${n(answer, 1)} L`,
  ],
});

export default { ...kind, since: 7 };
