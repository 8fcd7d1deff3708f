// Litres of pure alcohol from a tonne of malt, from what the wash and the stills showed.
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'yield-of-a-tonne',
  title: 'Yield of a tonne',
  topic: 'line',
  level: 2,
  sources: ['derived'],
  of: 'yield',
  to: 1,
  within: 0.004,
  vary: {
    malt: ['count', [1.2, 1.5, 2, 2.5, 4, 5, 6, 8]],
    perKilogram: ['count', [4.9, 5, 5.1]],
    strength: ['strength', [7.8, 7.9, 8, 8.1, 8.2], 'wash.strength'],
    kept: ['percent', [97, 97.5, 98, 98.5]],
  },
  answer: (v) => (v.perKilogram * 1000 * v.strength * v.kept) / 1e4,
  prompt: (show, _, v) =>
    `A mash of ${show.malt} t of malt made ${n(v.malt * v.perKilogram * 1000, 0)} L of wash at ${show.strength}, and the stills brought ${show.kept} of its alcohol into the heart. How much pure alcohol did a tonne of malt give?`,
  slips: [
    {
      family: 'forgotten',
      gives: (v, answer) => (100 * answer) / v.kept,
      say: 'That is the wash’s alcohol. What stays in pot ale and lees has to be taken off.',
    },
    {
      family: 'otherFigure',
      gives: (v, answer) => answer * v.malt,
      say: 'That is the whole mash. It has to be divided by its tonnes.',
    },
    {
      family: 'thousand',
      gives: (_, answer) => answer / 1000,
      say: 'That is for a kilogram of malt.',
    },
    {
      family: 'bulkForAlcohol',
      gives: (v) => v.perKilogram * 1000,
      say: 'That is litres of wash for a tonne. Only the strength’s part of them is alcohol.',
    },
  ],
  working: (v, answer) => {
    const wash = v.malt * v.perKilogram * 1000;
    const alcohol = (wash * v.strength) / 100;
    return [
      `Pure alcohol in the wash: ${w(wash)} × ${v.strength} ÷ 100 = ${w(alcohol)} L`,
      `In the heart: ${w(alcohol)} × ${v.kept} ÷ 100 = ${w((alcohol * v.kept) / 100)} L`,
      `From a tonne: ${w((alcohol * v.kept) / 100)} ÷ ${v.malt} = ${n(answer, 1)} L`,
    ];
  },
});
