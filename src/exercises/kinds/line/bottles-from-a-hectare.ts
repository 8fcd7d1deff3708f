// Bottles that a hectare of barley could give.
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { wholeNumberOf } from '../../question.ts';
import { sum } from '../../sum.ts';

const MALT = 0.83; // t of malt from a tonne of barley; common practice

export default sum({
  id: 'bottles-from-a-hectare',
  title: 'Bottles from a hectare',
  topic: 'line',
  level: 3,
  sources: ['common-practice', 'memory', 'derived'],
  of: 'count',
  to: 0,
  whole: 'down',
  vary: {
    harvest: ['harvest', [5.5, 5.8, 6, 6.2, 6.5]],
    spiritYield: ['count', [395, 400, 405, 410]],
    left: ['percent', [70, 75, 78, 80, 82]],
    strength: ['strength', [40, 43, 46, 50], 'house.bottlingStrength'],
  },
  answer: (v) => (v.harvest * MALT * v.spiritYield * v.left) / (0.7 * v.strength),
  prompt: (show) =>
    `A hectare brings ${show.harvest.replace('/ha', '')} of barley, a tonne of barley 0.83 t of malt, and a tonne of malt ${show.spiritYield} L of pure alcohol, of which ${show.left} is left after the years in wood. How many bottles of 70 cL at ${show.strength} is that?`,
  slips: [
    {
      family: 'forgotten',
      gives: (_, answer) => answer / MALT,
      say: 'Barley was taken as malt: a tonne of barley gives only 0.83 t of malt.',
    },
    {
      family: 'bulkForAlcohol',
      gives: (v, answer) => (answer * v.strength) / 100,
      say: 'The bottles were filled with pure alcohol. At this strength each holds less of it.',
    },
    {
      family: 'forgotten',
      gives: (v, answer) => (100 * answer) / v.left,
      say: 'What the wood lets go was not taken off.',
    },
  ],
  working: (v, answer) => {
    const alcohol = v.harvest * MALT * v.spiritYield;
    return [
      `Pure alcohol: ${v.harvest} × 0.83 × ${v.spiritYield} = ${w(alcohol)} L; left of it ${w((alcohol * v.left) / 100)} L`,
      `In a bottle: 0.7 × ${v.strength} ÷ 100 = ${w((0.7 * v.strength) / 100)} L`,
      `Bottles: ${w((alcohol * v.left) / 100)} ÷ ${w((0.7 * v.strength) / 100)} = ${n(answer, 1)}, so ${n(wholeNumberOf(answer, 'down'), 0)} full ones`,
    ];
  },
});
