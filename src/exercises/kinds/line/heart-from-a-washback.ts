// Litres of heart from a washback, through both stills.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'heart-from-a-washback',
  title: 'Heart from a washback',
  topic: 'line',
  level: 2,
  sources: ['derived', 'memory'],
  of: 'volume20',
  to: 0,
  within: 0.005,
  vary: {
    wash: ['volume20', [7500, 9000, 12_000, 15_000, 18_000, 21_000, 24_000], 'wash.volume'],
    strength: ['strength', [7.6, 7.8, 8, 8.2, 8.4, 8.6], 'wash.strength'],
    kept: ['percent', [97, 97.5, 98, 98.5]],
    heart: ['strength', [67, 68, 69, 70], 'heart.strength'],
  },
  answer: (v) => (v.wash * v.strength * v.kept) / 100 / v.heart,
  prompt: (show) =>
    `A washback holds ${show.wash} at ${show.strength}. Once the round is in balance, the two stills bring ${show.kept} of its alcohol into the heart, which is at ${show.heart}. How many litres of heart does the washback end as?`,
  slips: [
    {
      family: 'bulkForAlcohol',
      gives: (v) => (v.wash * v.strength * v.kept) / 1e4,
      say: 'That is litres of pure alcohol. The heart has water in it too: divide by its strength.',
    },
    {
      family: 'forgotten',
      gives: (v) => (v.wash * v.strength) / v.heart,
      say: 'What stays in pot ale and lees was not taken off.',
    },
    {
      family: 'upsideDown',
      gives: (v) => (v.wash * v.heart * v.kept) / 100 / v.strength,
      say: 'The two strengths changed places. Stronger spirit takes fewer litres.',
    },
  ],
  working: (v, answer) => {
    const alcohol = (v.wash * v.strength) / 100;
    return [
      `Pure alcohol in the wash: ${n(v.wash, 0)} × ${v.strength} ÷ 100 = ${n(alcohol, 1)} L`,
      `In the heart: ${n(alcohol, 1)} × ${v.kept} ÷ 100 = ${n((alcohol * v.kept) / 100, 1)} L`,
      `Litres of heart: ${n((alcohol * v.kept) / 100, 1)} ÷ ${v.heart} × 100 = ${n(answer, 0)} L`,
    ];
  },
});
