// The share by mass of a strength by volume.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';
import { tabled } from './tabled.ts';

export default sum({
  id: 'mass-percent',
  title: '% mass from % vol',
  topic: 'strength',
  level: 1,
  sources: ['directive-76-766', 'oiml-r22'],
  of: 'massPercent',
  to: 2,
  within: 0.004,
  vary: {
    strength: [
      'strength',
      Array.from({ length: 81 }, (_, i) => 32 + i / 2).filter((strength) => strength !== 40),
    ],
  },
  quotes: { density: [1, ({ strength }) => tabled(strength)] },
  answer: ({ strength, density }) => (strength * 789.24) / density,
  prompt: (show, _, { density }) =>
    `For a sum with masses you need the alcohol in spirit of ${show.strength} as % mass. At 20 °C pure alcohol weighs 789.24 kg/m³ and this spirit ${n(density, 1)} kg/m³. What is it in % mass?`,
  working: ({ strength, density }, answer) => [
    '% mass = % vol × density of pure alcohol ÷ density of the spirit',
    `${n(strength, 1)} × 789.24 ÷ ${n(density, 1)} = ${n(answer, 2)} % mass`,
  ],
  slips: [
    {
      family: 'massForVolume',
      gives: ({ strength }) => strength,
      say: 'Per cent by volume was taken for per cent by mass. Alcohol is lighter than water, so by mass the figure is smaller.',
    },
    {
      family: 'upsideDown',
      gives: ({ strength, density }) => (strength * density) / 789.24,
      say: 'The two densities changed places. Alcohol is the lighter, so % mass must come out below % vol.',
    },
    {
      family: 'wrongConstant',
      gives: ({ strength }) => (strength * 789.24) / 998.2,
      say: 'The density of water stood below the line. Divide by the density of the spirit itself.',
    },
    {
      family: 'forgotten',
      gives: ({ strength }) => (strength * 789.24) / 1000,
      say: 'The mass of the spirit was left out: a litre of it does not weigh a whole kilogram.',
    },
  ],
});
