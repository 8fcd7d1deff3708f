// Too few hours, too much malt from a field, more casks than were filled: years that no house has.
import { formatNumber as n } from '../../../core/format.ts';
import { impossible, optionOf } from './impossible.ts';
import { many, quoted, said } from './quoted.ts';

const HOURS = 168; // in a week
const kept = (share: number) => n(share, 1);

export default impossible({
  id: 'impossible-in-a-year',
  title: 'A house and its year',
  topic: 'line',
  level: 3,
  sources: ['derived', 'memory'],
  scenes: [
    'A leaflet about the house is checked before it is printed.',
    'A guide has learnt some figures of the house by heart.',
    'Someone wants to plan next year and writes down what is known.',
  ],
  claims: ({ house, pace, barley, malt, casks, wash, heart }, chance) => {
    const busy = house.mashesPerWeek * house.fermentationHours;
    const fewest = Math.ceil(busy / HOURS);
    const harvest = chance.pick([5.5, 5.8, 6, 6.3, 6.5]);
    const dryHarvest = harvest * (1 - house.barleyMoisture / 100);
    const tooMuchMalt = (dryHarvest / (1 - house.maltMoisture / 100)) * chance.pick([1.04, 1.07, 1.12]);
    const maltOf = (harvest * malt.mass) / barley.mass;
    const years = chance.pick([3, 5, 8, 10, 12]);
    const filled = Math.max(12, Math.round(quoted(casks.perYear, 3)));
    const mashes = Math.round(house.mashesPerWeek);
    const weeks = Math.round(house.weeksPerYear);
    const fewer = Math.max(1, Math.floor(weeks * chance.pick([0.8, 0.85, 0.9])));
    const share = (100 * heart.alcohol) / wash.alcohol;
    return [
      {
        alike: fewest > 2 && {
          can: optionOf(
            `With ${many(mashes, 'mash', 'mashes')} a week, week after week, each stays ${n(house.fermentationHours, 0)} hours in one of ${fewest + 1} washbacks.`,
            `It can be: they need ${n(busy, 0)} washback hours, and ${fewest + 1} washbacks have ${n((fewest + 1) * HOURS, 0)} in a week.`,
          ),
          cannot: optionOf(
            `With ${many(mashes, 'mash', 'mashes')} a week, week after week, each stays ${n(house.fermentationHours, 0)} hours in one of ${fewest - 1} washbacks.`,
            `They need ${n(busy, 0)} washback hours, and a week has ${n((fewest - 1) * HOURS, 0)} in that many.`,
          ),
        },
        can: optionOf(
          `With ${many(mashes, 'mash', 'mashes')} a week, each stays ${n(house.fermentationHours, 0)} hours in one of ${fewest + 1} washbacks.`,
          `It can be: they need ${n(busy, 0)} washback hours, and ${fewest + 1} washbacks have ${n((fewest + 1) * HOURS, 0)} in a week.`,
        ),
        cannot:
          fewest > 1
            ? [
                optionOf(
                  `Week after week, with ${many(mashes, 'mash', 'mashes')} in each, every mash stays ${n(house.fermentationHours, 0)} hours in one of ${many(fewest - 1, 'washback')}.`,
                  `They need ${n(busy, 0)} washback hours, and a week has ${n((fewest - 1) * HOURS, 0)} in that many.`,
                ),
              ]
            : [],
      },
      {
        can: optionOf(
          `A hectare with ${n(harvest, 1)} t of barley at ${said(house.barleyMoisture, 'percent')} moisture gave ${n(maltOf, 2)} t of malt at ${said(house.maltMoisture, 'percent')}.`,
          'It can be: malting takes a part of the dry matter, and the kiln most of the water.',
        ),
        cannot: [
          optionOf(
            `A hectare with ${n(harvest, 1)} t of barley at ${said(house.barleyMoisture, 'percent')} moisture gave ${n(tooMuchMalt, 2)} t of malt at ${said(house.maltMoisture, 'percent')}.`,
            `The barley held ${n(dryHarvest, 2)} t of dry matter, and this malt would hold more. Malting adds none.`,
          ),
        ],
      },
      {
        alike: {
          can: optionOf(
            `In its first ${years} years a house filled ${n(filled, 0)} casks a year and bought none, and ${n(Math.floor(quoted(filled * years * 0.96)), 0)} full ones lie in its store.`,
            `It can be: some were already emptied.`,
          ),
          cannot: optionOf(
            `In its first ${years} years a house filled ${n(filled, 0)} casks a year and bought none, and ${n(Math.ceil(quoted(filled * years * 1.08)), 0)} full ones lie in its store.`,
            `It has filled ${n(filled * years, 0)} in all.`,
          ),
        },
        can: optionOf(
          `In its first ${years} years a house filled ${n(filled, 0)} casks a year, and ${n(Math.floor(quoted(filled * years * 0.96)), 0)} lie in its store.`,
          'It can be: some were already emptied.',
        ),
        cannot: [
          optionOf(
            `In its first ${years} years a house filled ${n(filled, 0)} casks a year and bought none, and ${n(Math.ceil(quoted(filled * years * 1.08)), 0)} full ones lie in its store.`,
            `It has filled ${n(filled * years, 0)} in all.`,
          ),
        ],
      },
      {
        alike: fewer < weeks &&
          fewer > 1 && {
            can: optionOf(
              `At ${many(mashes, 'mash', 'mashes')} a week and no more, the house made ${n(mashes * weeks, 0)} in ${many(weeks, 'week')}.`,
              `It can be: mashes times weeks.`,
            ),
            cannot: optionOf(
              `At ${many(mashes, 'mash', 'mashes')} a week and no more, the house made ${n(mashes * weeks, 0)} in ${many(fewer, 'week')}.`,
              `${mashes} × ${fewer} are ${n(mashes * fewer, 0)}.`,
            ),
          },
        can: optionOf(
          `At ${many(mashes, 'mash', 'mashes')} a week the house made ${n(mashes * weeks, 0)} in ${many(weeks, 'week')}.`,
          'It can be: mashes times weeks.',
        ),
        cannot:
          fewer < weeks
            ? [
                optionOf(
                  `At ${many(mashes, 'mash', 'mashes')} a week and no more, the house made ${n(mashes * weeks, 0)} in ${many(fewer, 'week')}.`,
                  `${mashes} × ${fewer} are ${n(mashes * fewer, 0)}.`,
                ),
              ]
            : [],
      },
      {
        alike: {
          can: optionOf(
            `Over a year ${kept(share)} % of the alcohol in the washes came over as heart, with no stock of feints used up.`,
            `It can be: the rest stayed in pot ale and lees.`,
          ),
          cannot: optionOf(
            `Over a year ${kept(100 + harvest - 4)} % of the alcohol in the washes came over as heart, with no stock of feints used up.`,
            `Stills make no alcohol. Over a year, with the same stock at both ends, no more comes over than was in the wash.`,
          ),
        },
        can: optionOf(
          `Over a year ${kept(share)} % of the alcohol in the washes came over as heart.`,
          'It can be: the rest stayed in pot ale and lees.',
        ),
        cannot: [
          optionOf(
            `Over a year ${kept(chance.pick([101.5, 102.4, 103.2, 104]))} % of the alcohol in the washes came over as heart, with no stock of feints used up.`,
            'Stills make no alcohol. Over a year, with the same stock at both ends, no more comes over than was in the wash.',
          ),
        ],
      },
      {
        can: optionOf(
          `The house takes ${n(quoted(pace.maltPerYear / 1000), pace.maltPerYear < 100_000 ? 1 : 0)} t of malt a year, and ${n(quoted(barley.perYear / 1000), barley.perYear < 100_000 ? 1 : 0)} t of barley were steeped for it.`,
          'It can be: malt weighs less than the barley that it was.',
        ),
        cannot: [],
      },
    ];
  },
});
