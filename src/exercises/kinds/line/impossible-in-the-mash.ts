// More extract than the malt had, a mash hotter than its water, and other figures that no mash can have.
import { formatNumber as n } from '../../../core/format.ts';
import { impossible, optionOf } from './impossible.ts';
import { quoted, said } from './quoted.ts';

export default impossible({
  id: 'impossible-in-the-mash',
  title: 'Figures of the mash',
  topic: 'mashing',
  level: 2,
  sources: ['sugar-tables', 'slaking-table', 'derived'],
  scenes: [
    'The mash sheet is read out in the morning.',
    'A mashman shows a visitor from another house the record.',
    'Figures of the mash house are copied from the board into the book.',
  ],
  spans: true,
  claims: (line, chance, mashes) => {
    const { house, malt, mash, wort } = line;
    const mass = (kilograms: number) => said(kilograms * mashes, 'mass');
    const volume = said(wort.volume * mashes, 'volume20');
    const water = mash.efficiency <= 100 ? wort.mass + mash.draff - malt.mass : 0;
    const moreExtract = malt.extract * chance.pick([1.03, 1.05, 1.08, 1.12]);
    const moreOut = chance.pick([1.06, 1.08, 1.1]);
    const light = wort.volume * chance.pick([0.93, 0.95, 0.97]);
    const hotter = mash.strike + chance.pick([3, 4, 5]);
    const over = chance.pick([3, 4, 6]);
    const [part, left] = chance.pick([
      ['a quarter', 0.25],
      ['a fifth', 0.2],
      ['a third', 1 / 3],
    ] as const);
    const times = Math.round(1 / (1 - left)) + 2;
    return [
      {
        can:
          mash.efficiency <= 99.5 &&
          optionOf(
            `The malt held ${mass(malt.extract)} of extract and the wort holds ${mass(wort.extract)}.`,
            `It can be: the wort has ${n(mash.efficiency, 1)} % of what was there.`,
          ),
        cannot: [
          optionOf(
            `The malt held ${mass(malt.extract)} of extract and the wort holds ${mass(moreExtract)}.`,
            'Mashing dissolves the malt’s extract and adds none, so the wort cannot hold more than there was.',
          ),
        ],
      },
      {
        can: optionOf(
          `${volume} of wort at ${said(house.originalGravity, 'gravity')} weigh ${mass(wort.mass)}, at 20 °C.`,
          'It can be: wort is heavier than water, and a litre of water weighs 0.998 kg.',
        ),
        cannot: [
          optionOf(
            `${volume} of wort at ${said(house.originalGravity, 'gravity')} weigh ${mass(light)}, at 20 °C.`,
            'As many litres of water would weigh more, and wort of this gravity is heavier than water.',
          ),
        ],
      },
      {
        alike: mash.strike > house.mashTemperature &&
          mash.strike > house.gristTemperature + 20 && {
            can: optionOf(
              `Grist at ${said(house.gristTemperature, 'temperature')} and water at ${said(mash.strike, 'temperature', 3)} made a mash at ${said(house.mashTemperature, 'temperature', 3)}, with no other heat.`,
              `It can be: the grist cools the water, and wetting gives a little heat back.`,
            ),
            cannot: optionOf(
              `Grist at ${said(house.gristTemperature, 'temperature')} and water at ${said(mash.strike, 'temperature', 3)} made a mash at ${said(hotter, 'temperature', 3)}, with no other heat.`,
              `The mash would be hotter than the water and the grist. Wetting malt gives a degree or two at most, less than such grist takes.`,
            ),
          },
        can:
          mash.strike > house.mashTemperature &&
          optionOf(
            `Grist at ${said(house.gristTemperature, 'temperature')} and water at ${said(mash.strike, 'temperature', 3)} made a mash at ${said(house.mashTemperature, 'temperature')}.`,
            'It can be: the grist cools the water, and wetting gives a little heat back.',
          ),
        cannot:
          mash.strike > house.gristTemperature + 20
            ? [
                optionOf(
                  `Grist at ${said(house.gristTemperature, 'temperature')} and water at ${said(mash.strike, 'temperature', 3)} made a mash at ${said(hotter, 'temperature', 3)}, with no other heat.`,
                  'The mash would be hotter than the water and the grist. Wetting malt gives a degree or two at most, less than such grist takes.',
                ),
              ]
            : [],
      },
      {
        alike: water > 0 && {
          can: optionOf(
            `${mass(malt.mass)} of malt and ${mass(water)} of water gave ${mass(wort.mass)} of wort and ${mass(mash.draff)} of wet draff, with nothing else added.`,
            `It can be: as much came out as went in.`,
          ),
          cannot: optionOf(
            `${mass(malt.mass)} of malt and ${mass(water)} of water gave ${mass(wort.mass * moreOut)} of wort and ${mass(mash.draff * moreOut)} of wet draff, with nothing else added.`,
            `Wort and draff together would weigh more than the malt and the water.`,
          ),
        },
        can:
          water > 0 &&
          optionOf(
            `${mass(malt.mass)} of malt and ${mass(water)} of water gave ${mass(wort.mass)} of wort and ${mass(mash.draff)} of wet draff.`,
            'It can be: as much came out as went in.',
          ),
        cannot:
          water > 0
            ? [
                optionOf(
                  `${mass(malt.mass)} of malt and ${mass(water)} of water gave ${mass(wort.mass * moreOut)} of wort and ${mass(mash.draff * moreOut)} of wet draff, with nothing else added.`,
                  'Wort and draff together would weigh more than the malt and the water.',
                ),
              ]
            : [],
      },
      {
        alike: {
          can: optionOf(
            `In 100 kg of wort at ${said(wort.plato, 'plato', 3)} there are ${said(wort.plato, 'mass', 3)} of extract and ${said(100 - quoted(wort.plato, 3), 'mass', 3)} of water.`,
            `It can be: the two parts make the hundred.`,
          ),
          cannot: optionOf(
            `In 100 kg of wort at ${said(wort.plato, 'plato', 3)} there are ${said(wort.plato, 'mass', 3)} of extract and ${said(100 - quoted(wort.plato, 3) + over, 'mass', 3)} of water.`,
            `Extract and water are the two parts of those 100 kg, and here they make ${100 + over} kg.`,
          ),
        },
        can: optionOf(
          `Wort at ${said(wort.plato, 'plato', 3)} has ${said(wort.plato, 'mass', 3)} of extract in 100 kg of it.`,
          'It can be: that is what the degree means.',
        ),
        cannot: [
          optionOf(
            `In 100 kg of wort at ${said(wort.plato, 'plato', 3)} there are ${said(wort.plato, 'mass', 3)} of extract and ${said(100 - wort.plato + over, 'mass', 3)} of water.`,
            `Extract and water are the two parts of those 100 kg, and here they make ${100 + over} kg.`,
          ),
        ],
      },
      {
        alike: {
          can: optionOf(
            `Each draining leaves ${part} of what was dissolved; after ${times} of them ${n(100 * left ** times, 1)} % are left.`,
            `It can be: each takes its part of what the one before left.`,
          ),
          cannot: optionOf(
            `Each draining leaves ${part} of what was dissolved; after ${times} of them ${n(100 * left, 1)} % are left.`,
            `That is what the first draining leaves. Each of the others takes its part again.`,
          ),
        },
        can: optionOf(
          `Each draining leaves ${part} of what was dissolved; after ${times} of them ${n(100 * left ** times, 1)} % are left.`,
          'It can be: each takes its part of what the one before left.',
        ),
        cannot: [
          optionOf(
            `Each draining leaves ${part} of what was dissolved; after ${times} of them exactly nothing is left.`,
            'A part of something is never nothing. Each draining takes its part of a smaller rest, so there is always some left.',
          ),
        ],
      },
    ];
  },
});
