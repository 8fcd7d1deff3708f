// What a bottle holds, from two weighings.
import fillByMass from '../../../calculators/maturing/fill-by-mass.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { quantity } from '../../../core/quantity.ts';
import { exercise } from '../../exercise.ts';

const kind = exercise(fillByMass, {
  level: 2,
  ask: 'holds',
  within: 0.003,
  vary: {
    bottle: [70],
    strength: [40, 43, 46, 48],
    empty: [455, 470, 480, 495, 510],
    full: [1118, 1126, 1134, 1142, 1150],
  },
  quotes: { litre: [1, ({ bottle }, { shown }) => (100 * shown) / bottle] },
  redo: ({ empty, full }, { litre }) => ({ holds: quantity('bottle', (100 * (full - empty)) / litre) }),
  prompt: (show, _, { litre }) =>
    `An empty bottle with its cap shows ${show.empty} on the scales, and ${show.full} when it is filled. A litre of its spirit at 20 °C shows ${n(litre, 1)} g. How much does it hold at 20 °C, in centilitres to two decimals?`,
  slips: [
    {
      family: 'massForVolume',
      gives: ({ empty, full }) => (full - empty) / 10,
      say: 'A gram of spirit is more than a millilitre: divide by what a litre weighs.',
    },
    {
      family: 'forgotten',
      gives: ({ full }, { litre }) => (100 * full) / litre,
      say: 'The glass was weighed in: take the empty bottle off first.',
    },
    {
      family: 'upsideDown',
      gives: ({ empty, full }, { litre }) => ((full - empty) * litre) / 10_000,
      say: 'Multiplied where one divides: spirit is lighter than water, so there are more millilitres than grams.',
    },
  ],
  working: ({ empty, full }, { litre, holds }) => [
    'Volume = (full − empty) ÷ what a litre shows',
    `(${n(full, 0)} − ${n(empty, 0)}) ÷ ${n(litre, 1)} × 100 = ${n(holds, 2)} cL`,
  ],
});

export default { ...kind, since: 5 };
