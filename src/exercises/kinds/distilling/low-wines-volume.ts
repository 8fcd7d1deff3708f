// Low wines to expect from a charge of wash.
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'low-wines-volume',
  title: 'Low wines from a charge of wash',
  topic: 'distilling',
  level: 2,
  sources: ['derived'],
  of: 'volume20',
  to: 0,
  within: 0.004,
  vary: {
    wash: ['volume20', [6000, 7500, 8000, 9000, 12_000, 15_000, 18_000], 'wash.volume'],
    washStrength: ['strength', [7.2, 7.5, 7.8, 8, 8.2, 8.5], 'wash.strength'],
    lowWines: ['strength', [21, 21.5, 22, 22.5, 23, 24], 'lowWines.strength'],
    kept: ['percent', [98, 98.5, 99]],
  },
  answer: (v) => ((v.wash * v.washStrength) / v.lowWines) * (v.kept / 100),
  prompt: (show) =>
    `The wash still takes ${show.wash} at ${show.washStrength}. Of its alcohol ${show.kept} comes over, as low wines of ${show.lowWines}. How many litres of low wines is that?`,
  slips: [
    {
      family: 'otherFigure',
      gives: (v, answer) => v.wash - answer,
      say: 'That is about what stays behind as pot ale. The question asks for what comes over.',
    },
    {
      family: 'forgotten',
      gives: (v) => (v.wash * v.washStrength) / v.lowWines,
      say: 'That takes all the alcohol over. The part that stays in the pot ale must come off.',
    },
    {
      family: 'upsideDown',
      gives: (v) => (v.wash * v.lowWines) / v.washStrength,
      say: 'The strengths are the wrong way round: low wines are stronger than wash, so they are less.',
    },
    {
      family: 'bulkForAlcohol',
      gives: (v) => (((v.wash * v.washStrength) / 100) * v.kept) / 100,
      say: 'That is the pure alcohol. As low wines it is in more liquid: divide by their strength.',
    },
  ],
  working: (v, answer) => {
    const alcohol = (v.wash * v.washStrength) / 100;
    return [
      `Pure alcohol in the wash: ${w(v.wash)} × ${w(v.washStrength)} ÷ 100 = ${w(alcohol)} L`,
      `Of it comes over: ${w(alcohol)} × ${w(v.kept)} ÷ 100 = ${w((alcohol * v.kept) / 100)} L`,
      `Low wines = alcohol ÷ strength × 100: ${w((alcohol * v.kept) / 100)} ÷ ${w(v.lowWines)} × 100 = ${n(answer, 0)} L`,
    ];
  },
});
