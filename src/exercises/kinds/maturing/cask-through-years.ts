// The alcohol left in a cask after years of the same loss.
import caskThroughYears from '../../../calculators/maturing/cask-through-years.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

export default exercise(caskThroughYears, {
  title: 'What the angels leave',
  level: 2,
  ask: 'alcohol',
  vary: {
    size: [125, 180, 190, 200, 225, 250, 500],
    strength: [63.5],
    loss: [2, 2.5, 3, 3.5, 4, 5],
    humidity: [65],
    steady: [65],
    years: [6, 8, 10, 12, 15, 18, 20],
    indrink: [0],
  },
  within: 0.004,
  prompt: (show) =>
    `A cask is filled with ${show.size} at ${show.strength}, and loses ${show.loss} of its alcohol in each year. How much pure alcohol is left after ${show.years}?`,
  slips: [
    {
      family: 'compound',
      gives: ({ size, strength, loss, years }) => ((size * strength) / 100) * (1 - (loss * years) / 100),
      say: 'The yearly loss was taken so many times off the filling. Each year takes its part of what is still there, which is a little less each time.',
    },
    {
      family: 'wrongWhole',
      gives: ({ size, strength, loss, years }) => (size * strength) / 100 - (size * loss * years) / 100,
      say: 'The loss was taken off the litres in the cask. It is a part of the alcohol only.',
    },
    {
      family: 'otherFigure',
      gives: (_, { lost }) => lost,
      say: 'That is what the air has had. Asked for is what is left.',
    },
    {
      family: 'bulkForAlcohol',
      gives: ({ size, loss, years }) => size * (1 - loss / 100) ** years,
      say: 'Those are litres of spirit at the old strength. Multiply by the strength for the pure alcohol.',
    },
  ],
  working: ({ size, strength, loss, years }, { alcohol }) => [
    `Filled with ${n(size, 0)} × ${strength} ÷ 100 = ${n((size * strength) / 100, 2)} L of pure alcohol`,
    `Each year ${n(1 - loss / 100, 3)} of it is left`,
    `${n((size * strength) / 100, 2)} × ${n(1 - loss / 100, 3)} to the power ${years} = ${n(alcohol, 1)} L`,
  ],
});
