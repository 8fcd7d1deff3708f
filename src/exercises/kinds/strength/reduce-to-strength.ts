// The water to add to spirit for the strength wanted.
import reduceToStrength from '../../../calculators/maturing/reduce-to-strength.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { celsius, strength } from '../../../core/quantity.ts';
import { densityOfSpirit } from '../../../core/spirit/density.ts';
import { massPercentFromStrength } from '../../../core/spirit/strength.ts';
import { exercise } from '../../exercise.ts';

/** Density at 20 °C of a strength, as a table prints it. */
const tabled = (percent: number) => densityOfSpirit(massPercentFromStrength(strength(percent)), celsius(20));

export default exercise(reduceToStrength, {
  topic: 'strength',
  level: 2,
  ask: 'waterVolume',
  vary: {
    volume: [250, 400, 500, 600, 800, 1000, 1200, 1500, 2000],
    from: [68, 68.5, 69, 69.5, 70, 70.5, 71, 72],
    to: [63.5, 62, 60, 58, 55],
  },
  within: 0.015,
  quotes: {
    fromDensity: [1, ({ from }) => tabled(from)],
    toDensity: [1, ({ to }) => tabled(to)],
    waterDensity: [1, () => tabled(0)],
  },
  redo: ({ volume, from, to }, { fromDensity, toDensity, waterDensity }) => {
    const made = (volume * from) / to;
    const waterMass = (made * toDensity - volume * fromDensity) / 1000;
    return { volume: made, waterMass, waterVolume: (1000 * waterMass) / waterDensity };
  },
  prompt: (show, _, { fromDensity, toDensity, waterDensity }) =>
    `The receiver holds ${show.volume} of spirit at ${show.from}, all at 20 °C. How much water brings it to ${show.to}? The table gives ${n(fromDensity, 1)} kg/m³ for the one strength, ${n(toDensity, 1)} for the other and ${n(waterDensity, 1)} for water.`,
  slips: [
    {
      family: 'contraction',
      gives: ({ volume, from, to }) => (volume * from) / to - volume,
      say: 'That is the new volume less the old one: it forgets that spirit and water shrink when they mix, so the spirit would stay too strong.',
    },
    {
      family: 'wrongWhole',
      gives: ({ volume, from, to }) => (volume * (from - to)) / from,
      say: 'The fall in strength was taken as a part of the old strength; the new volume is found from the new strength.',
    },
  ],
  working: ({ volume, from, to }, { waterMass, waterVolume, alcohol, volume: made, ...table }) => [
    `Pure alcohol stays the same: ${volume} × ${from} ÷ 100 = ${n(alcohol, 1)} L`,
    `Volume made: ${n(alcohol, 1)} ÷ ${to} × 100 = ${n(made, 1)} L`,
    `It weighs ${n(made, 1)} × ${n(table.toDensity, 1)} ÷ 1,000, the spirit ${volume} × ${n(table.fromDensity, 1)} ÷ 1,000; the rest is water, about ${n(waterMass, 1)} kg`,
    `${n(waterMass, 1)} kg ÷ ${n(table.waterDensity, 1)} × 1,000 = ${n(waterVolume, 1)} L of water`,
  ],
});
