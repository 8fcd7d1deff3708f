// What a stronger wort adds to the heart.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const FACTOR = 0.132; // % vol a degree, for falls of 57.2 to 67.9 degrees; HMRC Notice 226, by two traders’ copies

export default sum({
  id: 'what-a-degree-brings',
  title: 'What a stronger wort brings',
  topic: 'line',
  level: 3,
  sources: ['excise-226', 'derived'],
  of: 'alcohol',
  to: 1,
  within: 0.01,
  vary: {
    wort: ['volume20', [7500, 9000, 12_000, 15_000, 18_000, 20_000], 'wort.volume'],
    from: ['gravity', [1.056, 1.057, 1.058, 1.059, 1.06], 'house.originalGravity'],
    rise: ['count', [2, 3, 4, 5]],
    kept: ['percent', [97, 98, 99]],
  },
  answer: (v) => (v.wort * v.rise * FACTOR * v.kept) / 1e4,
  prompt: (show, _, v) =>
    `The house makes its wort stronger, from ${show.from} to ${n(v.from + v.rise / 1000, 3)}. Volume, ${show.wort}, and final gravity, 0.998, stay as they were, and the stills bring ${show.kept} of the wash’s alcohol into the heart. How much more pure alcohol does the heart of each mash hold, if every degree of 0.001 that the gravity falls is worth 0.132 % vol?`,
  slips: [
    {
      family: 'otherFigure',
      gives: (v) => (v.wort * (1000 * (v.from - 0.998) + v.rise) * FACTOR * v.kept) / 1e4,
      say: 'That is all the alcohol in the new heart. Only what was added is asked for.',
    },
    {
      family: 'percent',
      gives: (_, answer) => 100 * answer,
      say: 'A per cent was not divided by 100.',
    },
    {
      family: 'thousand',
      gives: (_, answer) => answer / 1000,
      say: 'The rise was taken as 0.00…, not in degrees. A rise of 0.001 is one degree.',
    },
    {
      family: 'forgotten',
      gives: (v) => v.rise * FACTOR,
      say: 'That is the rise in % vol of the wash. It has to be taken of the volume, and through the stills.',
    },
  ],
  working: (v, answer) => [
    `Gravity falls by ${v.rise} degrees more, so the wash is ${v.rise} × 0.132 = ${n(v.rise * FACTOR, 3)} % vol stronger`,
    `More alcohol in the wash: ${n(v.wort, 0)} × ${n(v.rise * FACTOR, 3)} ÷ 100 = ${n((v.wort * v.rise * FACTOR) / 100, 1)} L`,
    `In the heart: ${n((v.wort * v.rise * FACTOR) / 100, 1)} × ${v.kept} ÷ 100 = ${n(answer, 1)} L`,
  ],
});
