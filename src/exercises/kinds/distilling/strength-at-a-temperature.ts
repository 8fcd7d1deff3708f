// The strength from a density at a temperature, between two rows of that temperature's table.
import strengthFromDensity from '../../../calculators/distilling/strength-from-density.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { density as kilograms, strength as percentVol, type Quantity } from '../../../core/quantity.ts';
import { densityFromStrength, strengthFromDensity as strengthOf } from '../../../core/spirit/strength.ts';
import { celsius } from '../../../core/quantity.ts';
import { exercise } from '../../exercise.ts';

interface Measured {
  readonly density: Quantity<'density'>;
  readonly temperature: Quantity<'temperature'>;
}
/** The two rows round the density in the table for its temperature. */
function rows({ density, temperature }: Measured) {
  const low = Math.floor(strengthOf(density, temperature));
  const row = (strength: number) => Number(densityFromStrength(percentVol(strength), temperature).toFixed(2));
  return { low, heavy: row(low), light: row(low + 1) };
}
type Rows = Readonly<Record<'low' | 'heavy' | 'light', number>>;
/** Part of the way from the weaker row to the stronger. */
const part = ({ density }: { readonly density: number }, { heavy, light }: Rows) =>
  (heavy - density) / (heavy - light);

export default exercise(strengthFromDensity, {
  id: 'strength-at-a-temperature',
  topic: 'strength',
  level: 2,
  ask: 'strength',
  vary: {
    density: [884, 886.5, 888, 889.5, 891, 893.5, 896, 898.5, 901, 903.5],
    temperature: [12, 13, 14, 15, 16, 17, 22, 23, 24, 25],
  },
  within: 0.001,
  quotes: {
    low: [0, (given) => rows(given).low],
    heavy: [2, (given) => rows(given).heavy],
    light: [2, (given) => rows(given).light],
  },
  redo: (given, table) => ({ strength: table.low + part(given, table) }),
  prompt: (show, _, { low, heavy, light }) =>
    `A spirit measures ${show.density} at ${show.temperature}. The table for ${show.temperature} gives ${n(heavy, 2)} kg/m³ for a spirit of ${low} % vol and ${n(light, 2)} for one of ${low + 1}, both strengths at 20 °C. How strong is it, to a tenth or better?`,
  slips: [
    {
      family: 'wrongWhole',
      gives: (given, table) => table.low + 1 - part(given, table),
      say: 'The part of the way was counted from the stronger row. Count from the weaker, which is the heavier.',
    },
    {
      family: 'temperature',
      gives: ({ density }) => strengthOf(kilograms(density), celsius(20)),
      say: 'That is what the table for 20 °C would say. The density was measured at another temperature, so take the table for that.',
    },
    {
      family: 'upsideDown',
      gives: ({ density }, { low, heavy, light }) => low + (heavy - density) * (heavy - light),
      say: 'The difference was multiplied by the step between the rows. Divide by it, for the part of the way.',
    },
  ],
  working: (given, { strength, ...table }) => {
    const { low, heavy, light } = table;
    return [
      'From row to row the strength goes as the density falls',
      `Part of the way: (${n(heavy, 2)} − ${n(given.density, 2)}) ÷ (${n(heavy, 2)} − ${n(light, 2)}) = ${n(part(given, table), 2)}`,
      `${low} + ${n(part(given, table), 2)} = ${n(strength, 2)} % vol`,
    ];
  },
});
