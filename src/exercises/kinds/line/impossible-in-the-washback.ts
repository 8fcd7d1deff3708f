// Gas heavier than the extract, alcohol out of no sugar, and other figures that no washback can have.
import { celsius, strength } from '../../../core/quantity.ts';
import { ETHANOL_DENSITY, WATER_DENSITY } from '../../../core/spirit/density.ts';
import { densityFromStrength } from '../../../core/spirit/strength.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { impossible, optionOf } from './impossible.ts';
import { alcoholSaid, said } from './quoted.ts';

export default impossible({
  id: 'impossible-in-the-washback',
  title: 'Figures of the wash',
  topic: 'fermenting',
  level: 2,
  sources: ['balling', 'oiml-r22', 'derived'],
  scenes: [
    'The tun room’s book is read out.',
    'Two shifts compare what they wrote down about their washbacks.',
    'Figures of a fermentation are checked before they are sent to the office.',
  ],
  spans: true,
  claims: (line, chance, mashes) => {
    const { house, wort, wash } = line;
    const mass = (kilograms: number) => said(kilograms * mashes, 'mass');
    const gas = wort.extract * chance.pick([1.04, 1.1, 1.2]);
    const litres = wort.extract * chance.pick([0.86, 0.9, 0.95]);
    const heavier = (wort.mass + house.yeast) * chance.pick([1.02, 1.03, 1.05]);
    const real = chance.pick([102, 103, 104, 106]);
    const [used, apparent] = [
      wash.attenuation.extractUsed,
      (100 * (house.originalGravity - house.finalGravity)) / (house.originalGravity - 1),
    ];
    const lightest = densityFromStrength(strength(wash.strength), celsius(20)) / WATER_DENSITY;
    const tooLight = lightest - chance.pick([0.012, 0.016, 0.02]);
    const kilograms = (alcohol: number) => mass((alcohol * ETHANOL_DENSITY) / 1000);
    return [
      {
        can: optionOf(
          `Wort with ${mass(wort.extract)} of extract gave off ${mass(wash.carbonDioxide)} of carbon dioxide.`,
          'It can be: somewhat less than half of the sugar used leaves as gas.',
        ),
        cannot: [
          optionOf(
            `Wort with ${mass(wort.extract)} of extract gave off ${mass(gas)} of carbon dioxide.`,
            'The gas comes from the extract, and so does the alcohol. It cannot weigh more than all the extract.',
          ),
        ],
      },
      {
        can: optionOf(
          `${mass(wort.extract)} of extract gave ${alcoholSaid(wash.alcohol * mashes)}.`,
          `It can be: that alcohol weighs ${kilograms(wash.alcohol)}, about half of the sugar used.`,
        ),
        cannot: [
          optionOf(
            `${mass(wort.extract)} of extract gave ${alcoholSaid(litres * mashes)}.`,
            `That alcohol would weigh ${kilograms(litres)}. Sugar gives about half its mass in alcohol; nearly as much goes off as gas.`,
          ),
        ],
      },
      {
        alike: {
          can: optionOf(
            `${mass(wort.mass)} of wort and ${mass(house.yeast)} of yeast became ${mass(wash.washMass)} of wash.`,
            `It can be: the gas went off and took its mass along.`,
          ),
          cannot: optionOf(
            `${mass(wort.mass)} of wort and ${mass(house.yeast)} of yeast became ${mass(heavier)} of wash.`,
            `Gas goes off, so the wash weighs less than the wort and yeast that went in, and never more.`,
          ),
        },
        can: optionOf(
          `${mass(wort.mass)} of wort became ${mass(wash.washMass)} of wash.`,
          'It can be: the gas went off and took its mass along.',
        ),
        cannot: [
          optionOf(
            `${mass(wort.mass)} of wort and ${mass(house.yeast)} of yeast became ${mass(heavier)} of wash.`,
            'Gas goes off, so the wash weighs less than the wort and yeast that went in, and never more.',
          ),
        ],
      },
      {
        alike: {
          can: optionOf(
            `The yeast used ${n(used, 0)} % of the wort’s extract, by weight.`,
            `It can be: what is left keeps the share under a hundred.`,
          ),
          cannot: optionOf(
            `The yeast used ${n(real, 0)} % of the wort’s extract, by weight.`,
            `Yeast cannot use more extract than there is. Only the apparent attenuation, read from gravities, may pass 100 %.`,
          ),
        },
        can: optionOf(
          `The gravity fell from ${said(house.originalGravity, 'gravity')} to ${said(house.finalGravity, 'gravity')}: an apparent attenuation of ${n(apparent, 1)} %.`,
          'It can be: the apparent figure may even pass 100 %, for alcohol is lighter than water.',
        ),
        cannot: [
          optionOf(
            `The yeast used ${n(real, 0)} % of the wort’s extract, by weight.`,
            'Yeast cannot use more extract than there is. Only the apparent attenuation, read from gravities, may pass 100 %.',
          ),
        ],
      },
      {
        alike: {
          can: optionOf(
            `The wash is at ${said(wash.strength, 'strength', 2)}, and its gravity at 20 °C is ${n(house.finalGravity, 3)}.`,
            `It can be: the alcohol makes it lighter, and what the yeast left makes it heavier.`,
          ),
          cannot: optionOf(
            `The wash is at ${said(wash.strength, 'strength', 2)}, and its gravity at 20 °C is ${n(tooLight, 3)}.`,
            `Alcohol and water alone, at this strength, have a gravity of ${n(lightest, 3)}. Whatever else is in the wash makes it heavier.`,
          ),
        },
        can: optionOf(
          `The yeast used ${n(used, 1)} % of the wort’s extract, and the wash is at ${said(wash.strength, 'strength', 2)}.`,
          'It can be: it is what is left that keeps the share under a hundred.',
        ),
        cannot: [
          optionOf(
            `The wash is at ${said(wash.strength, 'strength', 2)}, and its gravity at 20 °C is ${n(tooLight, 3)}.`,
            `Alcohol and water alone, at this strength, have a gravity of ${n(lightest, 3)}. Whatever else is in the wash makes it heavier.`,
          ),
        ],
      },
    ];
  },
});
