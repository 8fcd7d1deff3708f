// The volume that two spirits make together, by their masses.
import blendTwoSpirits from '../../../calculators/distilling/blend-two-spirits.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { celsius, strength as percentVol } from '../../../core/quantity.ts';
import { densityFromStrength } from '../../../core/spirit/strength.ts';
import { exercise } from '../../exercise.ts';

/** Density at 20 °C, kg/m³, as a table prints it. */
const tabled = (strength: number) =>
  Number(densityFromStrength(percentVol(strength), celsius(20)).toFixed(2));

type Poured = Readonly<Record<'volume' | 'otherVolume', number>>;
type Tabled = Readonly<Record<'one' | 'other' | 'mixture', number>>;
const mass = ({ volume, otherVolume }: Poured, { one, other }: Tabled) =>
  (volume * one + otherVolume * other) / 1000;

export default exercise(blendTwoSpirits, {
  topic: 'strength',
  level: 2,
  ask: 'volume',
  vary: {
    volume: [300, 400, 500, 600, 800, 1000],
    strength: [68, 70, 72, 74, 94, 96],
    otherVolume: [400, 500, 600, 750, 900],
    otherStrength: [5, 8, 10, 12, 15, 20],
  },
  within: 0.0012,
  quotes: {
    one: [2, ({ strength }) => tabled(strength)],
    other: [2, ({ otherStrength }) => tabled(otherStrength)],
    mixture: [2, (_, { strength }) => tabled(strength)],
  },
  redo: (given, table) => {
    const volume = (1000 * mass(given, table)) / table.mixture;
    return { volume, contraction: given.volume + given.otherVolume - volume };
  },
  prompt: (show, _, table) =>
    `${show.volume} of spirit at ${show.strength} and ${show.otherVolume} at ${show.otherStrength} are put together, all at 20 °C. A table gives ${n(table.one, 2)} kg/m³ for the first, ${n(table.other, 2)} for the second and ${n(table.mixture, 2)} for the mixture. What volume do they make, to the litre?`,
  slips: [
    {
      family: 'contraction',
      gives: ({ volume, otherVolume }) => volume + otherVolume,
      say: 'The volumes were added. Masses add, but spirit and water draw together when they mix, so the whole is less.',
    },
    {
      family: 'massForVolume',
      gives: (given, table) => mass(given, table),
      say: 'Those are the kilograms of the mixture. Divide by its density to have litres.',
    },
    {
      family: 'upsideDown',
      gives: (given, table) => (mass(given, table) * table.mixture) / 1000,
      say: 'Multiplied by the density where one divides: the mixture is lighter than a kilogram to the litre, so its litres are more than its kilograms.',
    },
  ],
  working: (given, result) => [
    `Masses: ${n(given.volume, 0)} × ${n(result.one, 2)} ÷ 1,000 + ${n(given.otherVolume, 0)} × ${n(result.other, 2)} ÷ 1,000 = ${n(mass(given, result), 2)} kg`,
    'Volume = mass ÷ density of the mixture × 1,000',
    `${n(mass(given, result), 2)} ÷ ${n(result.mixture, 2)} × 1,000 = ${n(result.volume, 1)} L, or ${n(result.contraction, 1)} L less than was poured`,
  ],
});
