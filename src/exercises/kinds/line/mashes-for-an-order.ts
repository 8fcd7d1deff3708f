// Mashes that an order of casks takes.
import { format, formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'mashes-for-an-order',
  title: 'Mashes for an order',
  topic: 'line',
  level: 2,
  sources: ['derived'],
  of: 'ratio',
  to: 2,
  within: 0.01,
  vary: {
    casks: ['count', [20, 25, 30, 40, 50, 60, 80, 100]],
    size: ['volume', [190, 200, 225, 250, 500]],
    strength: ['strength', [60, 62, 62.5, 63.5, 65], 'house.fillingStrength'],
  },
  quotes: { mash: [0, (_, { heart }) => heart.alcohol] },
  answer: (v) => (v.casks * v.size * v.strength) / 100 / v.mash,
  prompt: (show, _, v) =>
    `A blender orders ${show.casks} casks of ${show.size} of new spirit at ${show.strength}. The heart of one mash brings ${format(v.mash, 'volume20', 0)} of pure alcohol. How many mashes does the order take, to two decimals?`,
  slips: [
    {
      family: 'bulkForAlcohol',
      gives: (v) => (v.casks * v.size) / v.mash,
      say: 'Litres of spirit were divided by litres of pure alcohol. Take the strength of the casks first.',
    },
    {
      family: 'upsideDown',
      gives: (_, answer) => 1 / answer,
      say: 'Divided the wrong way round: that is how many such orders one mash fills.',
    },
    {
      family: 'percent',
      gives: (_, answer) => 100 * answer,
      say: 'The strength in per cent was not divided by 100.',
    },
  ],
  working: (v, answer) => {
    const alcohol = (v.casks * v.size * v.strength) / 100;
    return [
      `Pure alcohol ordered: ${v.casks} × ${v.size} × ${v.strength} ÷ 100 = ${n(alcohol, 0)} L`,
      `Mashes: ${n(alcohol, 0)} ÷ ${v.mash} = ${n(answer, 2)}; in practice the next whole one`,
    ];
  },
});
