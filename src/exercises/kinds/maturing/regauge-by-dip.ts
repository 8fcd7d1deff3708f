// What a cask holds full, from three inside measures.
import regaugeByDip from '../../../calculators/maturing/regauge-by-dip.ts';
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

const litres = (square: number, length: number) => (Math.PI * square * length) / 60e6;

export default exercise(regaugeByDip, {
  title: 'A cask from its measures',
  level: 2,
  ask: 'full',
  vary: {
    bung: [580, 590, 600, 605, 610, 620, 640],
    head: [490, 500, 510, 520, 530],
    length: [760, 780, 790, 800, 820],
    dip: [300],
    strength: [60],
    temperature: [20],
    filled: [150],
    filledAt: [63.5],
    years: [10],
  },
  within: 0.008,
  prompt: (_, { bung, head, length }) =>
    `Inside, a cask measures ${n(bung / 100, 2)} dm at the bung, ${n(head / 100, 2)} dm at a head and ${n(length / 100, 2)} dm in length. With bung D and head d it holds 3.1416 × length × (8 D² + 4 D d + 3 d²) ÷ 60, in litres when all is in decimetres. How many litres is that?`,
  slips: [
    {
      family: 'forgotten',
      gives: ({ bung, length }) => litres(15 * bung ** 2, length),
      say: 'That is a straight tube as wide as the bung. The cask narrows towards its heads.',
    },
    {
      family: 'averaged',
      gives: ({ bung, head, length }) => litres(15 * ((bung + head) / 2) ** 2, length),
      say: 'The two widths were averaged. The bulge counts for more than the heads, as the rule says.',
    },
    {
      family: 'wrongConstant',
      gives: ({ bung, head, length }) => 4 * litres(8 * bung ** 2 + 4 * bung * head + 3 * head ** 2, length),
      say: 'The rule was divided by 15, as for radii. The measures are whole widths, so divide by 60.',
    },
  ],
  working: ({ bung, head, length }, { full }) => {
    const [D, d, long] = [bung / 100, head / 100, length / 100];
    return [
      `8 × ${w(D)}² + 4 × ${w(D)} × ${w(d)} + 3 × ${w(d)}² = ${w(8 * D * D)} + ${w(4 * D * d)} + ${w(3 * d * d)} = ${w(8 * D * D + 4 * D * d + 3 * d * d)}`,
      `3.1416 × ${w(long)} × ${w(8 * D * D + 4 * D * d + 3 * d * d)} ÷ 60 = ${n(full, 1)} L`,
    ];
  },
});
