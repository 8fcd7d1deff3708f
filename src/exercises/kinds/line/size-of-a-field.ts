// About how much land some bottles stand for.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'size-of-a-field',
  title: 'About how much land?',
  topic: 'line',
  form: 'estimate',
  level: 2,
  sources: ['common-practice', 'memory', 'derived'],
  of: 'land',
  to: 1,
  vary: {
    bottles: ['count', [10_000, 20_000, 30_000, 50_000, 100_000, 200_000, 500_000, 1_000_000]],
    strength: ['strength', [40, 43, 46], 'house.bottlingStrength'],
    lost: ['percent', [15, 20, 25]],
  },
  answer: (v) => (v.bottles * 0.7 * v.strength) / 100 / (1 - v.lost / 100) / (6 * 0.83 * 410),
  prompt: (show) =>
    `Without paper: a house sells ${show.bottles} bottles of 70 cL at ${show.strength} a year, and the casks lost about ${show.lost} of the alcohol. About how many hectares of barley does that take? A hectare gives 6 t of barley or 5 t of malt.`,
  slips: [
    {
      family: 'thousand',
      gives: (_, answer) => answer / 10,
      say: 'A ten was lost: a hectare is good for about 2,000 L of pure alcohol.',
    },
    {
      family: 'thousand',
      gives: (_, answer) => answer * 10,
      say: 'There is a ten too much: a hectare is good for about 2,000 L of pure alcohol.',
    },
    {
      family: 'bulkForAlcohol',
      gives: (v, answer) => (100 * answer) / v.strength,
      say: 'The bottles were taken as pure alcohol. Less than half of what is in them is.',
    },
  ],
  working: (v, answer) => {
    const alcohol = (v.bottles * 0.7 * v.strength) / 100;
    return [
      `Pure alcohol in the bottles: ${n(v.bottles, 0)} × 0.7 × ${v.strength} ÷ 100 = about ${n(alcohol, 0)} L, and about ${n(alcohol / (1 - v.lost / 100), 0)} L when it was made`,
      'A hectare gives about 5 t of malt, and a tonne about 410 L: some 2,000 L',
      `${n(alcohol / (1 - v.lost / 100), 0)} ÷ 2,000 = about ${n(alcohol / (1 - v.lost / 100) / 2000, 1)} ha; in full, with 2,042 L from a hectare, ${n(answer, 1)}`,
    ];
  },
});
