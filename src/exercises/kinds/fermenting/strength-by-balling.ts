// The strength of the wash by Balling's balance, from the extract before and after.
import strengthFromGravities from '../../../calculators/fermenting/strength-from-gravities.ts';
import { formatNumber as n } from '../../../core/format.ts';
import type { Gravities } from '../../../core/wort/attenuation.ts';
import { platoFromGravity } from '../../../core/wort/extract.ts';
import { exercise } from '../../exercise.ts';

/** Extract before, as read after, and real; °P. */
function extracts({ original, final }: Gravities) {
  const [before, reads] = [original, final].map((gravity) =>
    Number(platoFromGravity(gravity).toFixed(2)),
  ) as [number, number]; // as the prompt prints them
  return { before, reads, real: 0.1808 * before + 0.8192 * reads };
}
const byMass = (before: number, after: number) => (before - after) / (2.0665 - 0.010665 * before);
const ALCOHOL = 0.791; // pure alcohol over water, both at 20 °C: 789.24 ÷ 998.20
const byVolume = (mass: number, final: number) => (mass * final) / ALCOHOL;

export default exercise(strengthFromGravities, {
  id: 'strength-by-balling',
  title: 'Strength by Balling',
  level: 3,
  ask: 'strength',
  vary: {
    original: [1.05, 1.052, 1.054, 1.055, 1.056, 1.058, 1.06, 1.062, 1.064],
    final: [0.996, 0.997, 0.998, 1.002, 1.004, 1.006],
  },
  redo: (given) => {
    const { before, real } = extracts(given);
    return { strength: byVolume(byMass(before, real), given.final) };
  },
  prompt: (show, given) => {
    const { before, reads } = extracts(given);
    return `Wort of ${n(before, 2)} °P has become wash that reads ${n(reads, 2)} °P at a gravity of ${show.final}. By Balling the real extract is 0.1808 × the first + 0.8192 × the second, and the alcohol in % mass is what the real extract has fallen, divided by 2.0665 − 0.010665 × the first. How strong is the wash by volume, if pure alcohol has 0.791 times the density of water?`;
  },
  before: {
    prompt: (show, given) => {
      const { before, reads } = extracts(given);
      return `Wort of ${n(before, 2)} °P has become wash that reads ${n(reads, 2)} °P at a gravity of ${show.final}. By Balling the real extract is 0.1808 × the first + 0.8192 × the second, and the alcohol in % mass is what the real extract has fallen, divided by 2.0665 − 0.010665 × the first. How strong is the wash by volume, if pure alcohol has 0.789 times the density of water?`;
    },
  },
  slips: [
    {
      family: 'apparent',
      gives: (given) => {
        const { before, reads } = extracts(given);
        return byVolume(byMass(before, reads), given.final);
      },
      say: 'That takes the reading of the wash for its extract. Alcohol lightens the wash and hides extract, so the real extract comes first.',
    },
    {
      family: 'massForVolume',
      gives: (given) => {
        const { before, real } = extracts(given);
        return byMass(before, real);
      },
      say: 'That is the alcohol in % mass. Alcohol is light and takes more room: multiply by the gravity of the wash and divide by the density of alcohol.',
    },
    {
      family: 'upsideDown',
      gives: (given) => {
        const { before, real } = extracts(given);
        return (byMass(before, real) * 0.78924) / given.final;
      },
      say: 'From mass to volume one divides by the density of alcohol. The light part of a mixture is larger by volume than by mass.',
    },
  ],
  working: (given, { strength }) => {
    const { before, reads, real } = extracts(given);
    const mass = byMass(before, real);
    return [
      `Real extract = 0.1808 × ${n(before, 2)} + 0.8192 × (${n(reads, 2)}) = ${n(real, 4)} °P`,
      `Alcohol by mass = (${n(before, 2)} − ${n(real, 4)}) ÷ (2.0665 − 0.010665 × ${n(before, 2)}) = ${n(mass, 4)} %`,
      'By volume = by mass × gravity of the wash ÷ relative density of alcohol',
      `${n(mass, 4)} × ${n(given.final, 3)} ÷ ${ALCOHOL} = ${n(strength, 2)} % vol`,
    ];
  },
});
