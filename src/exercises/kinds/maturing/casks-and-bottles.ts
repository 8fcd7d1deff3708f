// Bottles from a vat of old spirit let down.
import casksAndBottles from '../../../calculators/maturing/casks-and-bottles.ts';
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

export default exercise(casksAndBottles, {
  level: 2,
  ask: 'bottles',
  vary: {
    volume: [520, 640, 750, 860, 980, 1100, 1250, 1400],
    from: [55.5, 56.8, 58, 59.3, 60.3],
    to: [40, 43, 46, 48, 50],
    lost: [0],
    bottle: [50, 70, 75],
  },
  within: 0.002,
  whole: 'down',
  prompt: (show) =>
    `A vat of ${show.volume} at ${show.from} is let down to ${show.to} and filled into bottles of ${show.bottle}, with nothing lost on the way. How many bottles are there?`,
  slips: [
    {
      family: 'forgotten',
      gives: ({ volume, bottle }) => (100 * volume) / bottle,
      say: 'The spirit was bottled as it lay in the vat. Let down with water there is more of it.',
    },
    {
      family: 'bulkForAlcohol',
      gives: ({ volume, from, bottle }) => (volume * from) / bottle,
      say: 'The pure alcohol was poured into the bottles. Divide by the bottling strength first: a bottle holds water too.',
    },
    {
      family: 'upsideDown',
      gives: ({ volume, from, to, bottle }) => (100 * volume * to) / from / bottle,
      say: 'The two strengths changed places. Weaker spirit takes more room: the old strength goes on top.',
    },
    {
      family: 'thousand',
      gives: ({ volume, from, to, bottle }) => (10 * volume * from) / to / bottle,
      say: 'Centilitres went astray: there are a hundred in a litre, so put the bottle in litres first.',
    },
  ],
  working: ({ volume, from, to, bottle }, { bottles }) => [
    `Pure alcohol: ${w(volume)} × ${n(from, 1)} ÷ 100 = ${w((volume * from) / 100)} L`,
    `At bottling strength: ${w((volume * from) / 100)} ÷ ${n(to, 1)} × 100 = ${w((volume * from) / to)} L`,
    `${w((volume * from) / to)} ÷ ${w(bottle / 100)} = ${w((100 * volume * from) / to / bottle)}, so ${n(bottles, 0)} whole bottles`,
  ],
});
