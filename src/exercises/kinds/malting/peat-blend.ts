// Peated malt for a level of smoke.
import peatBlend from '../../../calculators/malting/peat-blend.ts';
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

export default exercise(peatBlend, {
  level: 2,
  ask: 'peatedMass',
  vary: {
    malt: [1000, 1200, 1500, 1800, 2000, 2500, 3000],
    plain: [1, 2, 3, 4],
    peated: [40, 42, 45, 48, 50, 52, 55],
    wanted: [8, 10, 12, 15, 18, 20, 22, 25],
  },
  prompt: (show) =>
    `A mash of ${show.malt} of malt is to hold ${show.wanted} of phenols. The peated malt has ${show.peated}, and the plain malt ${show.plain} of its own. How much of it must be peated malt?`,
  slips: [
    {
      family: 'forgotten',
      gives: ({ malt, peated, wanted }) => (malt * wanted) / peated,
      say: 'The phenols of the plain malt were left out; take them off both the wanted and the peated figure.',
    },
    {
      family: 'otherFigure',
      gives: (_, { plainMass }) => plainMass,
      say: 'That is the plain malt; the rest is peated.',
    },
    {
      family: 'wrongWhole',
      gives: ({ malt, plain, peated, wanted }) => (malt * (wanted - plain)) / peated,
      say: 'The plain malt’s phenols were taken off the wanted figure only; the way from plain to peated is peated − plain.',
    },
  ],
  working: (given, { share, peatedMass }) => [
    'Part of peated malt = (wanted − plain) ÷ (peated − plain)',
    `(${given.wanted} − ${given.plain}) ÷ (${given.peated} − ${given.plain}) = ${w(share / 100)}`,
    `${w(given.malt)} × ${w(share / 100)} = ${n(peatedMass, 1)} kg`,
  ],
});
