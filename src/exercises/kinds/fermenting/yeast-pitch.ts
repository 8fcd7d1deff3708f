// How much of a partly dead yeast to pitch.
import yeastPitch from '../../../calculators/fermenting/yeast-pitch.ts';
import { exercise } from '../../exercise.ts';

const kind = exercise(yeastPitch, {
  level: 2,
  ask: 'mass',
  vary: {
    wort: [5000, 8000, 10_000, 12_000, 20_000],
    cells: [10, 12, 15, 18, 20],
    perGram: [8, 10, 12],
    alive: [240, 255, 264, 270, 276],
    dead: [24, 30, 36, 45, 60],
  },
  prompt: (show) =>
    `${show.wort} of wort are to have ${show.cells} of living cells. A gram of the yeast holds ${show.perGram.replace('/g', '')} cells in all; under the microscope ${show.alive} were alive and ${show.dead} dead. How many kilograms must be pitched?`,
  slips: [
    {
      family: 'forgotten',
      gives: (_, { mass, extra }) => mass - extra,
      say: 'That would do if all were alive. More is needed for those that are dead.',
    },
    {
      family: 'upsideDown',
      gives: ({ alive, dead }, { mass, extra }) => ((mass - extra) * alive) / (alive + dead),
      say: 'Multiplied by the living part where one divides: dead cells make it more, not less.',
    },
    {
      family: 'wrongWhole',
      gives: ({ alive, dead }, { mass, extra }) => (mass - extra) / (1 - dead / alive),
      say: 'The living part is living over all that were counted, not one less dead over living.',
    },
    {
      family: 'thousand',
      gives: (_, { mass }) => 1000 * mass,
      say: 'Those are grams. A thousand of them are a kilogram.',
    },
  ],
});

export default { ...kind, since: 5 };
