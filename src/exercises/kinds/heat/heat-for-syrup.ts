// The heat that it takes to boil pot ale down to syrup.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const kind = sum({
  id: 'heat-for-syrup',
  title: 'Boiling pot ale down',
  topic: 'heat',
  level: 2,
  sources: ['perry-heat', 'derived'],
  of: 'energy',
  to: 0,
  vary: {
    potAle: ['mass', [4400, 4600, 4800, 5000, 5200, 5400], 'potAle.volume'],
    left: ['percent', [10, 12, 14, 15, 16]],
  },
  answer: ({ potAle, left }) => (potAle * (100 - left) * 2.26) / 100,
  prompt: (show) =>
    `The pot ale of a mash, ${show.potAle}, is boiled down until ${show.left} of its weight is left as syrup. It comes hot, and to boil a kilogram of water away takes 2,260 kJ. How much heat does it take in a plain pan, where none is won back?`,
  slips: [
    {
      family: 'otherFigure',
      gives: ({ potAle, left }) => (potAle * left * 2.26) / 100,
      say: 'That is the heat for what is left. It is the rest that boils away.',
    },
    {
      family: 'forgotten',
      gives: ({ potAle }) => potAle * 2.26,
      say: 'All of it was boiled away, and there would be no syrup.',
    },
    {
      family: 'wrongConstant',
      gives: ({ potAle, left }) => (potAle * (100 - left) * 0.855) / 100,
      say: '855 kJ boil a kilogram of alcohol away. Pot ale has hardly any: it is water that leaves.',
    },
    {
      family: 'thousand',
      gives: ({ potAle, left }) => (potAle * (100 - left) * 2260) / 100,
      say: 'Those are kilojoules. A megajoule is a thousand of them.',
    },
  ],
  working: ({ potAle, left }, answer) => [
    'Heat = water boiled away × 2,260 ÷ 1,000, in megajoules',
    `Boiled away: ${n(potAle, 0)} × ${n(100 - left, 0)} ÷ 100 = ${n((potAle * (100 - left)) / 100, 0)} kg`,
    `${n((potAle * (100 - left)) / 100, 0)} × 2,260 ÷ 1,000 = ${n(answer, 0)} MJ`,
  ],
});

export default { ...kind, since: 7 };
