// What stays in the vat when the casks are full.
import fillCasks from '../../../calculators/maturing/fill-casks.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

export default exercise(fillCasks, {
  level: 2,
  ask: 'left',
  to: 0,
  vary: {
    volume: [900, 1000, 1100, 1200, 1300, 1400, 1500, 1700, 1900],
    from: [67, 68, 69, 70, 71, 72],
    to: [60, 62, 62.5, 63.5, 64],
    casks: [200, 250, 180].map((size) => [{ size, count: 30 }]),
  },
  within: 0.012,
  prompt: (show, { casks }) =>
    `The vat holds ${show.volume} at ${show.from}. It is let down to ${show.to} and run into casks of ${casks[0]!.size} L, as many as it fills whole. How many litres stay in the vat?`,
  slips: [
    {
      family: 'forgotten',
      gives: ({ volume, casks }) => volume % casks[0]!.size,
      say: 'The casks were filled from the vat as it stood. Water is added first, so there is more to fill.',
    },
    {
      family: 'upsideDown',
      gives: ({ volume, from, to, casks }) => ((volume * to) / from) % casks[0]!.size,
      say: 'The two strengths changed places. Weaker spirit takes more room: the old strength goes on top.',
    },
    {
      family: 'otherFigure',
      gives: ({ volume, from, to, casks }) => casks[0]!.size - (((volume * from) / to) % casks[0]!.size),
      say: 'That is what one more cask would still want. Asked for is what stays in the vat.',
    },
  ],
  working: ({ volume, from, to, casks }, { made, filled, left }) => [
    `Pure alcohol stays the same, so the vat then holds ${n(volume, 0)} × ${from} ÷ ${to} = ${n(made, 0)} L`,
    `${n(made, 0)} ÷ ${casks[0]!.size} = ${n(made / casks[0]!.size, 2)}: ${n(filled, 0)} casks are filled whole`,
    `${n(made, 0)} − ${n(filled, 0)} × ${casks[0]!.size} = ${n(left, 0)} L stay`,
  ],
});
