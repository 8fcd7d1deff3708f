// Carbon dioxide of a week that a plant could catch.
import { format, formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const GAS = 0.754; // kg of carbon dioxide with a litre of pure alcohol: 0.78924 × 44.01 ÷ 46.07

export default sum({
  id: 'gas-to-catch',
  title: 'Gas that could be caught',
  topic: 'line',
  level: 2,
  sources: ['derived'],
  of: 'mass',
  to: 0,
  within: 0.01,
  vary: {
    mashes: ['count', [4, 5, 6, 7, 8, 10, 12, 14]],
    caught: ['percent', [50, 55, 60, 65, 70, 75, 80]],
  },
  quotes: { mash: [0, (_, { wash }) => wash.alcohol] },
  answer: (v) => (v.mash * v.mashes * GAS * v.caught) / 100,
  prompt: (show, _, v) =>
    `Each mash ends as wash with ${format(v.mash, 'volume20', 0)} of pure alcohol. With every litre come 0.754 kg of carbon dioxide, and a plant could catch ${show.caught} of it. How much would that be in a week of ${show.mashes} mashes?`,
  slips: [
    {
      family: 'forgotten',
      gives: (v, answer) => (100 * answer) / v.caught,
      say: 'That is all the gas. Only a part of it is caught.',
    },
    {
      family: 'massForVolume',
      gives: (_, answer) => (answer * 0.78924) / GAS,
      say: 'That is the mass of the alcohol; the gas weighs a little less.',
    },
    {
      family: 'massForVolume',
      gives: (_, answer) => answer / GAS,
      say: 'A litre was taken as a kilogram. With a litre of pure alcohol come 0.754 kg.',
    },
    {
      family: 'forgotten',
      gives: (v, answer) => answer / v.mashes,
      say: 'That is one mash. A week has several.',
    },
  ],
  working: (v, answer) => {
    const alcohol = v.mash * v.mashes;
    return [
      `Pure alcohol in a week: ${v.mash} × ${v.mashes} = ${w(alcohol)} L`,
      `Gas: ${w(alcohol)} × 0.754 = ${w(alcohol * GAS)} kg`,
      `Caught: ${w(alcohol * GAS)} × ${v.caught} ÷ 100 = ${n(answer, 0)} kg`,
    ];
  },
});
