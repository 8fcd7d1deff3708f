// Litres of pure alcohol in a washback, by the excise factor.
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { gravity } from '../../../core/quantity.ts';
import { sum } from '../../sum.ts';
import { degreesFallen, factorFor } from './fall.ts';

const gravities = (v: { readonly original: number; readonly final: number }) => ({
  original: gravity(v.original),
  final: gravity(v.final),
});

export default sum({
  id: 'alcohol-in-the-washback',
  title: 'Alcohol in the washback',
  topic: 'fermenting',
  level: 2,
  sources: ['excise-226', 'derived'],
  of: 'alcohol',
  to: 0,
  within: 0.005,
  vary: {
    volume: ['volume20', [6000, 7000, 7500, 8000, 9000, 12_000, 15_000, 18_000, 21_000], 'wash.volume'],
    original: ['gravity', [1.054, 1.056, 1.058, 1.06, 1.062, 1.064], 'house.originalGravity'],
    final: ['gravity', [0.996, 0.997, 0.998, 1.002, 1.003], 'house.finalGravity'],
  },
  answer: (v) => (v.volume * degreesFallen(gravities(v)) * factorFor(gravities(v))) / 100,
  prompt: (show, _, v) =>
    `A washback holds ${show.volume} of wash. Its gravity has fallen from ${show.original} to ${show.final}, and each degree of 0.001 is worth ${n(factorFor(gravities(v)), 3)} % vol by the excise table. How much pure alcohol is in it?`,
  slips: [
    {
      family: 'forgotten',
      gives: (v) => (v.volume * 1000 * (v.original - 1) * factorFor(gravities(v))) / 100,
      say: 'The fall was counted to 1.000 only. It goes from the original gravity to the final one.',
    },
    {
      family: 'percent',
      gives: (_, answer) => answer * 100,
      say: 'The strength in per cent was not divided by 100: that would be more alcohol than there is wash.',
    },
    {
      family: 'forgotten',
      gives: (v) => degreesFallen(gravities(v)) * factorFor(gravities(v)),
      say: 'That is the strength in % vol. Litres of pure alcohol are the volume times the strength, divided by 100.',
    },
  ],
  working: (v, answer) => {
    const [degrees, factor] = [degreesFallen(gravities(v)), factorFor(gravities(v))];
    return [
      `Degrees fallen: 1,000 × (${n(v.original, 3)} − ${n(v.final, 3)}) = ${w(degrees)}`,
      `Strength = degrees × factor: ${w(degrees)} × ${w(factor)} = ${w(degrees * factor)} % vol`,
      `Pure alcohol = volume × strength ÷ 100: ${w(v.volume)} × ${w(degrees * factor)} ÷ 100 = ${n(answer, 0)} L`,
    ];
  },
});
