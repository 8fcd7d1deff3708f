// The strength by volume of a share by mass.
import { formatNumber as n } from '../../../core/format.ts';
import { celsius, massPercent } from '../../../core/quantity.ts';
import { densityOfSpirit } from '../../../core/spirit/density.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'strength-from-mass-percent',
  title: '% vol from % mass',
  topic: 'strength',
  level: 1,
  sources: ['directive-76-766', 'oiml-r22'],
  of: 'strength',
  to: 1,
  within: 0.004,
  vary: { mass: ['massPercent', Array.from({ length: 76 }, (_, i) => 25 + i / 2)] },
  quotes: { density: [1, ({ mass }) => densityOfSpirit(massPercent(mass), celsius(20))] },
  answer: ({ mass, density }) => (mass * density) / 789.24,
  prompt: (show, _, { density }) =>
    `The laboratory reports a sample with ${show.mass} of alcohol, and a density of ${n(density, 1)} kg/m³ at 20 °C. Pure alcohol weighs 789.24 kg/m³. How strong is the sample by volume?`,
  working: ({ mass, density }, answer) => [
    '% vol = % mass × density of the spirit ÷ density of pure alcohol',
    `${n(mass, 1)} × ${n(density, 1)} ÷ 789.24 = ${n(answer, 1)} % vol`,
  ],
  slips: [
    {
      family: 'massForVolume',
      gives: ({ mass }) => mass,
      say: 'Per cent by mass was taken for per cent by volume. Alcohol is light and takes more room than its mass tells.',
    },
    {
      family: 'upsideDown',
      gives: ({ mass, density }) => (mass * 789.24) / density,
      say: 'The two densities changed places. % vol must come out above % mass.',
    },
    {
      family: 'wrongConstant',
      gives: ({ mass }) => (mass * 998.2) / 789.24,
      say: 'The density of water was used. The sample is spirit, and its own density stands in the report.',
    },
  ],
});
