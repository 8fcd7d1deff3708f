// The size that half of a grist passes, read off its curve.
import sizeCurve from '../../../calculators/milling/size-curve.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { sizeCurve as curveOf, type Sieve, type SizeCurve } from '../../../core/milling/size-curve.ts';
import { quantity, type Quantity } from '../../../core/quantity.ts';
import { exercise } from '../../exercise.ts';

const OPENINGS = [1.27, 1.01, 0.547, 0.253, 0.152]; // mm; the laboratory's set, from memory

const stack = (...masses: readonly number[]) =>
  OPENINGS.map((opening, i) => ({
    opening: quantity('opening', opening),
    mass: quantity('grams', masses[i]!),
  }));

/** The sieves on either side of the size that half the grist passes. */
function aroundHalf({ sieves, pan }: { readonly sieves: readonly Sieve[]; readonly pan: Quantity<'grams'> }) {
  const { points } = curveOf(sieves, pan) as SizeCurve;
  const at = points.findIndex(({ passing }) => passing >= 50);
  return { above: points[at]!.opening, below: points[at - 1]!.opening };
}

export default exercise(sizeCurve, {
  form: 'curve',
  level: 1,
  ask: 'median',
  vary: {
    sieves: [
      stack(20, 10, 38, 22, 5),
      stack(18, 12, 36, 24, 5),
      stack(22, 9, 40, 20, 4),
      stack(25, 12, 35, 18, 5),
      stack(19, 11, 33, 26, 6),
      stack(21, 8, 30, 29, 7),
      stack(17, 9, 31, 31, 7),
      stack(24, 14, 34, 17, 6),
      stack(16, 10, 42, 22, 5),
      stack(23, 10, 28, 28, 6),
      stack(20, 14, 40, 16, 4),
      stack(18, 8, 29, 33, 7),
    ],
    pan: [3, 4, 5, 6, 7, 8, 9],
  },
  within: 0.08,
  prompt: (show, { sieves }) =>
    `A stack of sieves kept ${sieves.map(({ mass, opening }) => `${n(mass, 0)} g on ${opening} mm`).join(', ')}, and ${show.pan} lay in the pan. The curve shows how much passes each opening. Which size does half of the grist pass?`,
  slips: [
    {
      family: 'roundedWrongWay',
      gives: (given) => aroundHalf(given).above,
      say: 'That is the sieve just above; half of the grist passes somewhere between two sieves, so read between them.',
    },
    {
      family: 'otherFigure',
      gives: (given) => aroundHalf(given).below,
      say: 'That is the sieve just below, which less than half of the grist passes; read between it and the next.',
    },
  ],
  working: (given, { median, total }) => {
    const { above, below } = aroundHalf(given);
    return [
      `Weighed in all ${n(total, 0)} g, so 50 % are ${n(total / 2, 1)} g`,
      `Go across from 50 % to the curve, which it meets between ${below} and ${above} mm, and down: about ${n(median, 2)} mm`,
    ];
  },
});
