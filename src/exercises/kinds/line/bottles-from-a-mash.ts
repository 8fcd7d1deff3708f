// Bottles that come, years later, from one mash.
import { format, formatNumber as n } from '../../../core/format.ts';
import { wholeNumberOf } from '../../question.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'bottles-from-a-mash',
  title: 'Bottles from a mash',
  topic: 'line',
  level: 3,
  sources: ['derived'],
  of: 'count',
  to: 0,
  whole: 'down',
  within: 0.005,
  vary: {
    lost: ['percent', [15, 16, 18, 20, 22, 24, 25]],
    strength: ['strength', [40, 43, 46, 48, 50, 55], 'house.bottlingStrength'],
    bottle: ['bottle', [50, 70, 75]],
  },
  quotes: { filled: [0, (_, { filling }) => filling.alcohol] },
  answer: (v) => (v.filled * (100 - v.lost) * 100) / (v.strength * v.bottle),
  prompt: (show, _, v) =>
    `The spirit of one mash goes into casks with ${format(v.filled, 'volume20', 0)} of pure alcohol. Of that ${show.lost} is lost before bottling. How many bottles of ${show.bottle} at ${show.strength} does the mash end as?`,
  slips: [
    {
      family: 'bulkForAlcohol',
      gives: (v, answer) => (answer * v.strength) / 100,
      say: 'Pure alcohol was bottled without water. A bottle at this strength holds only that part of its volume as alcohol.',
    },
    {
      family: 'forgotten',
      gives: (v, answer) => (100 * answer) / (100 - v.lost),
      say: 'The loss in the casks was not taken off.',
    },
    {
      family: 'otherFigure',
      gives: (v, answer) => (answer * v.lost) / (100 - v.lost),
      say: 'That is what is lost, counted in bottles. What is left was asked for.',
    },
    {
      family: 'thousand',
      gives: (_, answer) => answer / 100,
      say: 'The bottle’s centilitres were taken as litres.',
    },
  ],
  working: (v, answer) => {
    const left = (v.filled * (100 - v.lost)) / 100;
    const inBottle = (v.bottle * v.strength) / 1e4;
    return [
      `Pure alcohol left: ${v.filled} × (100 − ${v.lost}) ÷ 100 = ${n(left, 2)} L`,
      `In a bottle: ${v.bottle} ÷ 100 × ${v.strength} ÷ 100 = ${n(inBottle, 4)} L`,
      `Bottles: ${n(left, 2)} ÷ ${n(inBottle, 4)} = ${n(answer, 1)}, so ${n(wholeNumberOf(answer, 'down'), 0)} full ones`,
    ];
  },
});
