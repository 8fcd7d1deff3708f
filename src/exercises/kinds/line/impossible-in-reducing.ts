// Mixtures larger than their parts, alcohol out of water, and densities that no spirit has.
import { celsius, litres20, strength } from '../../../core/quantity.ts';
import { reduce } from '../../../core/spirit/mixing.ts';
import { densityFromStrength, massPercentFromStrength } from '../../../core/spirit/strength.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { impossible, optionOf } from './impossible.ts';

export default impossible({
  id: 'impossible-in-reducing',
  title: 'Figures of strength and volume',
  topic: 'strength',
  level: 2,
  sources: ['oiml-r22', 'derived'],
  scenes: [
    'Spirit has been let down, and the figures are read out.',
    'Somebody has filled in a sheet on reducing and blending.',
    'A notice on strength and volume is checked before it is hung up.',
  ],
  claims: (_, chance) => {
    const volume = chance.pick([400, 500, 600, 800, 1000, 1200]);
    const from = chance.pick([68, 69, 70, 71, 72]);
    const to = chance.pick([55, 58, 60, 62, 63.5]);
    const { waterVolume: water, volume: made } = reduce(
      { volume: litres20(volume), strength: strength(from) },
      strength(to),
    );
    const alcohol = (volume * from) / 100;
    const [weak, strong] = [chance.pick([58, 59, 60, 61]), chance.pick([66, 67, 68])];
    const blended = strong + chance.pick([0.6, 1.1, 1.5]);
    const kilogram = densityFromStrength(strength(to), celsius(20)) / 1000;
    const byMass = massPercentFromStrength(strength(to));
    const litres = chance.pick([50, 100, 200]);
    return [
      {
        can: optionOf(
          `At 20 °C, ${n(volume, 0)} L at ${from} % vol and ${n(water, 0)} L of water made ${n(made, 0)} L.`,
          'It can be: spirit and water shrink a little when they mix.',
        ),
        cannot: [
          optionOf(
            `At 20 °C, ${n(volume, 0)} L at ${from} % vol and ${n(water, 0)} L of water made ${n((volume + water) * chance.pick([1.012, 1.015, 1.02]), 0)} L.`,
            `The two were ${n(volume + water, 0)} L before they were mixed, and spirit and water shrink in mixing. The whole cannot be more.`,
          ),
        ],
      },
      {
        alike: {
          can: optionOf(
            `Spirit with ${n(alcohol, 0)} L of pure alcohol was let down to ${to} % vol, and now has ${n(alcohol, 0)} L.`,
            `It can be: water brings no alcohol and takes none.`,
          ),
          cannot: optionOf(
            `Spirit with ${n(alcohol, 0)} L of pure alcohol was let down to ${to} % vol, and now has ${n((alcohol * blended) / strong + 3, 0)} L.`,
            `Water brings no alcohol. Whatever was added, there cannot be more than before.`,
          ),
        },
        can: optionOf(
          `Spirit with ${n(alcohol, 0)} L of pure alcohol was let down to ${to} % vol, and still has ${n(alcohol, 0)} L.`,
          'It can be: water brings no alcohol and takes none.',
        ),
        cannot: [
          optionOf(
            `Spirit with ${n(alcohol, 0)} L of pure alcohol was let down to ${to} % vol, and now has ${n(alcohol * chance.pick([1.02, 1.04, 1.06]), 0)} L.`,
            'Water brings no alcohol. Whatever was added, there cannot be more than before.',
          ),
        ],
      },
      {
        alike: {
          can: optionOf(
            `At 20 °C, ${litres} L of pure alcohol and ${litres} L of water make ${n(litres * 1.93, 1)} L.`,
            `It can be: fifty and fifty make about 96.5.`,
          ),
          cannot: optionOf(
            `At 20 °C, ${litres} L of pure alcohol and ${litres} L of water make ${n(litres * 2.05, 1)} L.`,
            `Alcohol and water shrink when they mix: about ${n(litres * 1.93, 1)} L, and never more than ${2 * litres}.`,
          ),
        },
        can: optionOf(
          `At 20 °C, ${litres} L of pure alcohol and ${litres} L of water make ${n(litres * 1.93, 1)} L.`,
          'It can be: fifty and fifty make about 96.5.',
        ),
        cannot: [
          optionOf(
            `At 20 °C, ${litres} L of pure alcohol and ${litres} L of water make ${n(litres * chance.pick([2.04, 2.06]), 0)} L.`,
            `Alcohol and water shrink when they mix: about ${n(litres * 1.93, 1)} L, and never more than ${2 * litres}.`,
          ),
        ],
      },
      {
        can: optionOf(
          `Spirit at ${weak} % vol and spirit at ${strong} % vol were blended, and the blend is at ${n((weak + strong) / 2 + 0.3, 1)} % vol.`,
          'It can be: the blend lies between the two, nearer to that of which there is more.',
        ),
        cannot: [
          optionOf(
            `Spirit at ${weak} % vol and spirit at ${strong} % vol were blended, and the blend is at ${n(blended, 1)} % vol.`,
            'A blend lies between its parts. It cannot be stronger than the strongest.',
          ),
        ],
      },
      {
        can: optionOf(
          `Spirit at ${to} % vol weighs ${n(kilogram, 3)} kg a litre at 20 °C.`,
          'It can be: between pure alcohol, 0.789 kg, and water, 0.998.',
        ),
        cannot: [
          optionOf(
            `Spirit at ${to} % vol weighs ${n(chance.pick([0.752, 0.768, 0.777]), 3)} kg a litre at 20 °C.`,
            'Pure alcohol weighs 0.789 kg a litre, and spirit with water in it weighs more.',
          ),
          optionOf(
            `Spirit at ${to} % vol weighs ${n(chance.pick([1.012, 1.024, 1.03]), 3)} kg a litre at 20 °C.`,
            'Water weighs 0.998 kg a litre, and spirit is lighter.',
          ),
        ],
      },
      {
        can: optionOf(
          `Spirit at ${from} % vol has ${n(massPercentFromStrength(strength(from)), 1)} % of its mass as alcohol.`,
          'It can be: alcohol is lighter than water, so its share by mass is the smaller number.',
        ),
        cannot: [
          optionOf(
            `Spirit at ${to} % vol has ${n(to + chance.pick([4, 6, 7]), 1)} % of its mass as alcohol.`,
            `Alcohol is lighter than water, so its share by mass is always below that by volume: ${n(byMass, 1)} %.`,
          ),
        ],
      },
    ];
  },
});
