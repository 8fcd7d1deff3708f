// The extract that goes round in a house that returns its weak worts.
import { allWaters } from '../../../calculators/mashing/bed.ts';
import returnedWorts from '../../../calculators/mashing/returned-worts.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { returnWeakWorts, type Returned } from '../../../core/mashing/returned-worts.ts';
import { exercise } from '../../exercise.ts';

type Given = Parameters<typeof allWaters>[0];

/** Part of the extract in the tun that goes on to the next mash, %. */
const passed = (given: Given) =>
  100 * (returnWeakWorts(given, allWaters(given), given.collected) as Returned).passedOn;

export default exercise(returnedWorts, {
  title: 'Extract that goes round',
  level: 2,
  ask: 'weakExtract',
  vary: {
    malt: [1000, 1200, 1500, 2000, 2500],
    moisture: [4.5],
    extract: [76.5, 77, 77.5, 78],
    ratio: [4],
    strike: [68],
    later: [1.6, 1.8, 2, 2.2, 2.4].map((ratio) => [{ ratio, temperature: 75 }]),
    collected: [1],
    held: [0.7, 0.8],
    washing: [0.85],
  },
  quotes: { part: [1, passed] },
  redo: ({ malt, extract }, { part }) => ({ weakExtract: (malt * extract * part) / (100 * (100 - part)) }),
  prompt: (show, _, { part }) =>
    `Each mash of ${show.malt} of malt with ${show.extract} soluble extract passes ${n(part, 1)} % of all the extract in its tun to the next, in the weak wort. After many mashes it passes on as much as it was given. How many kilograms of extract is that?`,
  slips: [
    {
      family: 'forgotten',
      gives: ({ malt, extract }, { part }) => (malt * extract * part) / 1e4,
      say: 'That is passed on by a mash that was given nothing; in balance the tun holds the returned extract as well.',
    },
    {
      family: 'sign',
      gives: ({ malt, extract }, { part }) => ((malt * extract) / 100) * (part / (100 + part)),
      say: 'It was divided by one plus the part; what goes round makes the tun richer, so divide by one less the part.',
    },
    {
      family: 'wrongWhole',
      gives: ({ malt }, { part }) => (malt * part) / (100 - part),
      say: 'The part was taken of all the malt; only its extract dissolves.',
    },
  ],
  working: (given, { weakExtract, part }) => [
    `The malt brings E = ${n(given.malt, 0)} × ${given.extract} ÷ 100 = ${n((given.malt * given.extract) / 100, 1)} kg`,
    'In balance, passed on = part × (E + passed on), so passed on = part × E ÷ (1 − part)',
    `${n(part / 100, 3)} × ${n((given.malt * given.extract) / 100, 1)} ÷ (1 − ${n(part / 100, 3)}) = ${n(weakExtract, 1)} kg`,
  ],
});
