// The heart's part of the alcohol in the charge.
import chargeStrength from '../../../calculators/distilling/charge-strength.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

export default exercise(chargeStrength, {
  title: 'The heart’s part of the charge',
  level: 2,
  ask: 'heartShare',
  vary: {
    volume: [3600, 4000, 4200, 4500, 5000, 5960, 7000, 8000],
    strength: [24, 24.5, 25, 25.5, 26, 26.5, 27, 28],
    foreshotsBy: ['strength'],
    foreshotsStrength: [72, 72.5, 73, 74],
    heartEnd: [60, 61, 62, 63],
    spiritReflux: [0.1],
    airPressure: [101.3],
  },
  quotes: {
    heart: [0, (_, { heart }) => heart],
    heartStrength: [1, (_, { heartStrength }) => heartStrength],
  },
  redo: ({ volume, strength }, { heart, heartStrength }) => ({
    heartShare: (100 * heart * heartStrength) / (volume * strength),
    heartVolumeShare: (100 * heart) / volume,
  }),
  prompt: (show, _, { heart, heartStrength }) =>
    `The spirit still was charged with ${show.volume} at ${show.strength}. The heart is ${n(heart, 0)} L at ${n(heartStrength, 1)} % vol. What part of the charge’s alcohol has it, in per cent?`,
  slips: [
    {
      family: 'bulkForAlcohol',
      gives: (_, { heartVolumeShare }) => heartVolumeShare,
      say: 'Those are bulk litres over bulk litres. Compare pure alcohol with pure alcohol.',
    },
    {
      family: 'wrongWhole',
      gives: ({ volume }, { heart, heartStrength }) => (heart * heartStrength) / volume,
      say: 'The heart’s pure alcohol was divided by the bulk of the charge. Divide by the charge’s pure alcohol.',
    },
    {
      family: 'forgotten',
      gives: ({ strength }, { heartStrength }) => (100 * strength) / heartStrength,
      say: 'That is the one strength over the other. How much there is of each counts as well.',
    },
  ],
  working: ({ volume, strength }, { heart, heartStrength, heartShare }) => [
    `Charge: ${n(volume, 0)} × ${n(strength, 1)} ÷ 100 = ${n((volume * strength) / 100, 1)} L of pure alcohol`,
    `Heart: ${n(heart, 0)} × ${n(heartStrength, 1)} ÷ 100 = ${n((heart * heartStrength) / 100, 1)} L`,
    `${n((heart * heartStrength) / 100, 1)} ÷ ${n((volume * strength) / 100, 1)} × 100 = ${n(heartShare, 1)} %; the rest is in foreshots, feints and spent lees`,
  ],
});
