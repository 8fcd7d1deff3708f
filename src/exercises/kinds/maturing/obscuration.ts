// True strength of a dark spirit from its dry residue.
import obscuration from '../../../calculators/maturing/obscuration.ts';
import { exercise } from '../../exercise.ts';

const kind = exercise(obscuration, {
  level: 2,
  ask: 'strength',
  within: 0.0008,
  vary: {
    apparent: [41.3, 42.6, 43.1, 44.2, 45.4, 46.7, 47.5],
    residue: [0.1, 0.105, 0.11, 0.115, 0.12, 0.125, 0.13, 0.14, 0.15],
    sample: [25],
  },
  prompt: (show) =>
    `A hydrometer shows ${show.apparent} at 20 °C in a dark old spirit. ${show.sample} of it, dried, leave ${show.residue}. Each gram of solids in a litre hides 0.2 % vol. What is the true strength, to two decimals?`,
  slips: [
    {
      family: 'sign',
      gives: ({ apparent }, { hidden }) => apparent - hidden,
      say: 'Solids make the spirit heavier, so it reads weaker than it is: add what they hide.',
    },
    {
      family: 'thousand',
      gives: ({ apparent }, { hidden }) => apparent + hidden / 10,
      say: 'That is grams in 100 mL. The rule counts grams in a litre.',
    },
    {
      family: 'forgotten',
      gives: ({ apparent }) => apparent,
      say: 'That is what the hydrometer shows: the solids hide some of the strength.',
    },
  ],
});

export default { ...kind, since: 5 };
