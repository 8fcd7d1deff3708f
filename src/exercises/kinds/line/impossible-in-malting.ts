// Malt that holds more than its barley, an analysis over the whole, and other figures that no maltings can have.
import { ETHANOL_DENSITY } from '../../../core/spirit/density.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { impossible, optionOf } from './impossible.ts';
import { said } from './quoted.ts';

export default impossible({
  id: 'impossible-in-malting',
  title: 'Figures of barley and malt',
  topic: 'malting',
  level: 2,
  sources: ['common-practice', 'bringhurst-1996', 'derived'],
  scenes: [
    'A maltster reads out the day’s book.',
    'On a tour of the maltings somebody notes what the guide says.',
    'A delivery comes with a sheet of figures.',
    'The maltings and the distillery compare their records.',
  ],
  spans: true,
  claims: (line, chance, mashes) => {
    const { house, barley, malt } = line;
    const { barleyMoisture: wet, maltMoisture: dry, solubleExtract: extract, fermentability } = house;
    const dryIn = barley.mass * mashes * (1 - wet / 100);
    const dryOut = malt.mass * mashes * (1 - dry / 100);
    const moreMalt = (dryIn / (1 - dry / 100)) * chance.pick([1.03, 1.05, 1.07, 1.1]);
    const [barleySaid, wetSaid, drySaid] = [
      said(barley.mass * mashes, 'mass'),
      said(wet, 'percent'),
      said(dry, 'percent'),
    ];
    const over = chance.pick([1, 1.5, 2, 3]);
    const grains = chance.pick([94, 95, 96, 97, 98]);
    const tooMuch = extract * 10 * chance.pick([0.76, 0.8, 0.84]);
    const fermentable = (extract * fermentability) / 100;
    const moreFermentable = extract + chance.pick([1.5, 2.5, 3.5]);
    return [
      {
        can: optionOf(
          `${barleySaid} of barley at ${wetSaid} moisture became ${said(malt.mass * mashes, 'mass')} of malt at ${drySaid}.`,
          `It can be: of ${said(dryIn, 'mass')} of dry matter ${said(dryOut, 'mass')} are left, and the rest went in breath and rootlets.`,
        ),
        cannot: [
          optionOf(
            `${barleySaid} of barley at ${wetSaid} moisture became ${said(moreMalt, 'mass')} of malt at ${drySaid}.`,
            `The barley held ${said(dryIn, 'mass')} of dry matter; this malt would hold ${said(moreMalt * (1 - dry / 100), 'mass')}. Growing takes dry matter and gives none.`,
          ),
        ],
      },
      {
        can: optionOf(
          `The malt has ${said(extract, 'percent')} soluble extract and ${drySaid} water, each of its whole mass.`,
          `It can be: together they are ${n(extract + dry, 1)} %, and the rest is what stays behind as draff.`,
        ),
        cannot: [
          optionOf(
            `The malt has ${said(100 - dry + over, 'percent')} soluble extract and ${drySaid} water, each of its whole mass.`,
            `Extract and water are two parts of one malt, and here they make ${n(100 + over, 1)} %.`,
          ),
        ],
      },
      {
        can: optionOf(
          `Of the malt ${said(extract, 'percent')} is extract, and ${said(fermentable, 'percent', 3)} is fermentable extract.`,
          `It can be: the fermentable part is ${said(fermentability, 'percent')} of the whole extract.`,
        ),
        cannot: [
          optionOf(
            `Of the malt ${said(extract, 'percent')} is extract, and ${said(moreFermentable, 'percent', 3)} is fermentable extract.`,
            'The fermentable extract is a part of the extract and cannot be more than it.',
          ),
        ],
      },
      {
        alike: {
          can: optionOf(
            `Of one dish of 100 grains, ${grains} sprouted and ${100 - grains} did not.`,
            `It can be: the two make the dish.`,
          ),
          cannot: optionOf(
            `Of one dish of 100 grains, ${grains} sprouted and ${103 - grains} did not.`,
            `${grains} and ${103 - grains} make 103 grains, and the dish had 100.`,
          ),
        },
        can: optionOf(
          `Of one dish of 100 grains, ${grains} % sprouted.`,
          `It can be: that is ${grains} grains.`,
        ),
        cannot: [
          optionOf(
            `Of one dish of 100 grains, ${grains}.5 % sprouted.`,
            `In one dish of 100 every grain is a whole per cent. ${grains}.5 % would be half a grain.`,
          ),
          optionOf(
            `Of one dish of 100 grains, ${grains} sprouted and ${103 - grains} did not.`,
            `${grains} and ${103 - grains} make 103 grains, and the dish had 100.`,
          ),
        ],
      },
      {
        alike: {
          can: optionOf(
            `A tonne of this malt, with ${said(extract, 'percent')} extract, gave ${said(malt.spiritYield, 'volume20', 3)} of pure alcohol.`,
            `It can be: ${said(malt.spiritYield, 'volume20', 3)} weigh ${said((malt.spiritYield * ETHANOL_DENSITY) / 1000, 'mass', 3)}, and sugar gives about half its mass in alcohol.`,
          ),
          cannot: optionOf(
            `A tonne of this malt, with ${said(extract, 'percent')} extract, gave ${said(tooMuch, 'volume20', 3)} of pure alcohol.`,
            `That alcohol weighs ${said((tooMuch * ETHANOL_DENSITY) / 1000, 'mass', 3)}, and the tonne holds ${said(10 * extract, 'mass')} of extract. Sugar gives about half its mass in alcohol and the rest in gas.`,
          ),
        },
        can: optionOf(
          `A tonne of this malt, with ${said(extract, 'percent')} extract, could give ${said(malt.spiritYield, 'volume20', 3)} of pure alcohol.`,
          `It can be: ${said(malt.spiritYield, 'volume20', 3)} weigh ${said((malt.spiritYield * ETHANOL_DENSITY) / 1000, 'mass', 3)}, and sugar gives about half its mass in alcohol.`,
        ),
        cannot: [
          optionOf(
            `A tonne of this malt, with ${said(extract, 'percent')} extract, gave ${said(tooMuch, 'volume20', 3)} of pure alcohol.`,
            `That alcohol weighs ${said((tooMuch * ETHANOL_DENSITY) / 1000, 'mass', 3)}, and the tonne holds ${said(10 * extract, 'mass')} of extract. Sugar gives about half its mass in alcohol and the rest in gas.`,
          ),
        ],
      },
    ];
  },
});
