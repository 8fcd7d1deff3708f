// The alcohol that a mash of malt could give, from its analysis.
import predictedSpiritYield from '../../../calculators/malting/predicted-spirit-yield.ts';
import { SPIRIT_YIELD_FACTOR } from '../../../core/malting/spirit-yield.ts';
import { exercise } from '../../exercise.ts';

const MOISTURE = 4.5; // % of the lot in the question; it is not needed

export default exercise(predictedSpiritYield, {
  level: 2,
  ask: 'alcohol',
  vary: {
    extract: [76, 76.5, 77, 77.5, 78, 78.5, 79],
    fermentability: [86, 86.5, 87, 87.5, 88, 88.5],
    malt: [1000, 1200, 1500, 1800, 2000, 2500, 3000, 4500],
  },
  within: 0.005,
  prompt: (show) =>
    `The analysis of a malt, all of it as it is, says: moisture ${MOISTURE} %, soluble extract ${show.extract}, fermentability ${show.fermentability}. Each per cent of fermentable extract is worth ${SPIRIT_YIELD_FACTOR} L of pure alcohol from a tonne. How much could a mash of ${show.malt} give?`,
  slips: [
    {
      family: 'forgotten',
      gives: ({ extract, malt }) => (SPIRIT_YIELD_FACTOR * extract * malt) / 1000,
      say: 'The yield was taken from all the extract; yeast can use only the fermentable part of it.',
    },
    {
      family: 'percent',
      gives: (_, { alcohol }) => alcohol / 100,
      say: 'It was divided by 100 twice; the factor already counts in per cent.',
    },
    {
      family: 'wetForDry',
      gives: (_, { alcohol }) => alcohol * (1 - MOISTURE / 100),
      say: 'Moisture was taken off once more, though the extract is of the malt as it is, water included.',
    },
    {
      family: 'thousand',
      gives: (_, { alcohol }) => alcohol * 1000,
      say: 'Kilograms were put in where the rule asks for tonnes.',
    },
  ],
});
