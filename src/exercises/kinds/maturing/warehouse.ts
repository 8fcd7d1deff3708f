// What the air takes in a year from a store that stands still.
import warehouse from '../../../calculators/maturing/warehouse.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

const filled = (casks: number, size: number, strength: number) => (casks * size * strength) / 100;

export default exercise(warehouse, {
  level: 3,
  ask: 'lost',
  vary: {
    casks: [400, 600, 800, 1000, 1200, 1500, 2000],
    size: [190, 200, 225, 250],
    strength: [63.5],
    years: [6, 8, 10, 12, 15],
    loss: [2, 2.5, 3, 4],
    indrink: [0],
  },
  within: 0.015,
  prompt: (show) =>
    `${show.casks} casks of ${show.size} are filled each year at ${show.strength}, kept ${show.years}, and lose ${show.loss} of their alcohol a year. Once as many leave as come, the air takes what is filled less what is emptied. How much pure alcohol is that in a year?`,
  slips: [
    {
      family: 'compound',
      gives: ({ casks, size, strength, years, loss }) => (filled(casks, size, strength) * years * loss) / 100,
      say: 'Every cask was counted as full. Those that have lain long hold less, and lose less.',
    },
    {
      family: 'forgotten',
      gives: ({ casks, size, strength, loss }) => (filled(casks, size, strength) * loss) / 100,
      say: 'Only the newest year’s casks were counted. All the years in the store breathe at once.',
    },
    {
      family: 'otherFigure',
      gives: (_, { emptied }) => emptied,
      say: 'That is what the casks emptied still hold. Take it from what was filled.',
    },
    {
      family: 'bulkForAlcohol',
      gives: ({ casks, size, years, loss }) => casks * size * (1 - (1 - loss / 100) ** years),
      say: 'The strength was left out. Of the litres filled only a part is alcohol.',
    },
  ],
  working: ({ casks, size, strength, years, loss }, { lost, emptied }) => [
    `Filled in a year: ${n(casks, 0)} × ${n(size, 0)} × ${strength} ÷ 100 = ${n(filled(casks, size, strength), 0)} L of pure alcohol`,
    `A cask emptied has kept ${n(1 - loss / 100, 3)} to the power ${years} = ${n((1 - loss / 100) ** years, 4)} of it: ${n(emptied, 0)} L`,
    `${n(filled(casks, size, strength), 0)} − ${n(emptied, 0)} = ${n(lost, 0)} L to the air in a year`,
  ],
});
