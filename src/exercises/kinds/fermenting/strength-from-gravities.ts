// The strength of the wash by the excise table: degrees fallen times the factor.
import strengthFromGravities from '../../../calculators/fermenting/strength-from-gravities.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';
import { degreesFallen, factorFor } from './fall.ts';

export default exercise(strengthFromGravities, {
  title: 'Strength by the excise table',
  level: 1,
  ask: 'excise',
  vary: {
    original: [1.05, 1.052, 1.054, 1.055, 1.056, 1.058, 1.06, 1.062, 1.064, 1.066],
    final: [0.995, 0.996, 0.997, 0.998, 1.002, 1.003, 1.004, 1.006],
  },
  within: 0.004,
  prompt: (show, given) =>
    `The wort stood at ${show.original} and the wash reads ${show.final}. For such a fall the excise table gives ${n(factorFor(given), 3)} % vol for each degree of gravity, a degree being 0.001. How strong is the wash?`,
  slips: [
    {
      family: 'forgotten',
      gives: (given) => 1000 * (given.original - 1) * factorFor(given),
      say: 'That counts the degrees from the original gravity to 1.000. The fall goes on to the final gravity, on whichever side of 1.000 it lies.',
    },
    {
      family: 'thousand',
      gives: (_, { excise }) => excise / 1000,
      say: 'The gravities were taken as they stand. The factor is for a degree, and a degree is a thousandth.',
    },
    {
      family: 'forgotten',
      gives: (given) => degreesFallen(given),
      say: 'Those are the degrees of gravity that were lost. Each is worth only the factor in % vol.',
    },
  ],
  working: (given, { excise }) => [
    'Strength = degrees fallen × factor',
    `Degrees: 1,000 × (${n(given.original, 3)} − ${n(given.final, 3)}) = ${n(degreesFallen(given), 0)}`,
    `${n(degreesFallen(given), 0)} × ${n(factorFor(given), 3)} = ${n(excise, 2)} % vol`,
  ],
});
