// How far the wash would warm by itself if no heat left it.
import washbackHeat from '../../../calculators/fermenting/washback-heat.ts';
import { fermentWort } from '../../../core/fermenting/wash.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { wortExtract } from '../../../core/mashing/wort.ts';
import type { Quantity } from '../../../core/quantity.ts';
import { exercise } from '../../exercise.ts';

interface Filled {
  readonly volume: Quantity<'volume20'>;
  readonly original: Quantity<'gravity'>;
  readonly final: Quantity<'gravity'>;
}
/** Mass of the wash and extract that the yeast used, whole kg. */
function wash({ volume, original, final }: Filled) {
  const wort = { volume, gravity: original };
  const { washMass, attenuation } = fermentWort(wort, final);
  return {
    mass: Math.round(washMass),
    used: Math.round((wortExtract(wort) * attenuation.extractUsed) / 100),
  };
}

export default exercise(washbackHeat, {
  title: 'Warming without cooling',
  level: 2,
  ask: 'rise',
  vary: {
    volume: [5000, 6000, 7500, 8000, 10_000, 12_000, 15_000],
    original: [1.05, 1.054, 1.056, 1.058, 1.06, 1.064],
    final: [0.997, 0.998, 0.999, 1.002],
    perKilogram: [586],
  },
  quotes: {
    mass: [0, (given) => wash(given).mass],
    used: [0, (given) => wash(given).used],
  },
  redo: ({ perKilogram }, { mass, used }) => ({ rise: (used * perKilogram) / (mass * 4) }),
  prompt: (show, _, { mass, used }) =>
    `The yeast uses ${n(used, 0)} kg of extract in a washback that ends with ${n(mass, 0)} kg of wash. Each kilogram of extract gives ${show.perKilogram.replace('/kg', '')}, and 4.0 kJ warm a kilogram of wash by one degree. By how many degrees would it warm if no heat left?`,
  slips: [
    {
      family: 'forgotten',
      gives: (_, { rise }) => rise * 4,
      say: 'The heat that a kilogram of wash takes up for each degree was forgotten: divide by 4.0 as well.',
    },
    {
      family: 'wrongConstant',
      gives: (_, { rise }) => rise / 4.186,
      say: 'The heat was turned into kilocalories and then divided by kilojoules. Keep one unit through the whole sum.',
    },
    {
      family: 'upsideDown',
      gives: (_, { rise }) => rise * 16,
      say: 'Multiplied by 4.0 where one divides: the more heat the wash can take up, the less it warms.',
    },
  ],
  working: (given, { rise, mass, used }) => [
    `Heat = extract used × heat of a kilogram: ${n(used, 0)} × ${n(given.perKilogram, 0)} = ${n(used * given.perKilogram, 0)} kJ`,
    'Rise = heat ÷ (mass × heat capacity)',
    `${n(used * given.perKilogram, 0)} ÷ (${n(mass, 0)} × 4.0) = ${n(rise, 1)} degrees; that is why the wort goes in cool`,
  ],
});
