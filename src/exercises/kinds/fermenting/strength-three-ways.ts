// How many litres of alcohol lie between the highest and the lowest of three strengths.
import strengthThreeWays from '../../../calculators/fermenting/strength-three-ways.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

interface Three {
  readonly byDensity: number;
  readonly byBalling: number;
  readonly byExcise: number;
}
const sorted = ({ byDensity, byBalling, byExcise }: Three) =>
  [byDensity, byBalling, byExcise].sort((a, b) => a - b) as [number, number, number];

export default exercise(strengthThreeWays, {
  level: 2,
  ask: 'apart',
  vary: {
    original: [1.06, 1.061, 1.062, 1.063, 1.064],
    final: [0.996, 0.997, 0.998, 0.999],
    density: [987.4, 987.6, 987.8, 988, 988.2, 988.4],
    temperature: [20],
    volume: [6000, 7000, 7500, 8000, 9000, 12_000, 15_000, 20_000],
  },
  within: 0.05,
  quotes: {
    byDensity: [2, (_, three) => three.byDensity],
    byBalling: [2, (_, three) => three.byBalling],
    byExcise: [2, (_, three) => three.byExcise],
  },
  redo: ({ volume }, three) => ({ apart: ((sorted(three)[2] - sorted(three)[0]) * volume) / 100 }),
  prompt: (show, _, three) =>
    `One washback with ${show.volume} of wash is at ${n(three.byDensity, 2)} % vol by a distilled sample, ${n(three.byBalling, 2)} by Balling and ${n(three.byExcise, 2)} by the excise table. How many litres of pure alcohol lie between the highest and the lowest?`,
  slips: [
    {
      family: 'percent',
      gives: (_, { apart }) => apart * 100,
      say: 'The difference in per cent was not divided by 100.',
    },
    {
      family: 'otherFigure',
      gives: ({ volume }, result) => (sorted(result)[2] * volume) / 100,
      say: 'That is all the alcohol by the highest of the three. The question asks for the difference only.',
    },
  ],
  working: ({ volume }, result) => {
    const [low, , high] = sorted(result);
    return [
      `Highest less lowest: ${n(high, 2)} − ${n(low, 2)} = ${n(high - low, 2)} % vol`,
      'Pure alcohol = volume × strength ÷ 100',
      `${n(volume, 0)} × ${n(high - low, 2)} ÷ 100 = ${n(result.apart, 1)} L; when the gap is wide, look for a wrong reading before you blame the yeast`,
    ];
  },
});
