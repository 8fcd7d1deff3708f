// The efficiency of a mash that was given weak wort and passed some on.
import mashEfficiency from '../../../calculators/mashing/mash-efficiency.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { wortExtract } from '../../../core/mashing/wort.ts';
import { exercise } from '../../exercise.ts';

export default exercise(mashEfficiency, {
  level: 2,
  ask: 'efficiency',
  vary: {
    malt: [1500],
    extract: [77, 77.5, 78],
    volume: [7400, 7450, 7500, 7550, 7600],
    gravity: [1.057, 1.058],
    givenVolume: [2800, 2900, 3000],
    givenGravity: [1.01, 1.011, 1.012, 1.013],
    passedVolume: [2800, 2900, 3000],
    passedGravity: [1.005, 1.006, 1.007],
  },
  within: 0.004,
  quotes: {
    wort: [1, ({ volume, gravity }) => wortExtract({ volume, gravity })],
    borrowed: [1, (_, { borrowed }) => borrowed],
    passedOn: [1, (_, { passedOn }) => passedOn],
  },
  redo: ({ malt, extract }, { wort, borrowed, passedOn }) => ({
    own: wort + passedOn - borrowed,
    efficiency: (1e4 * (wort + passedOn - borrowed)) / (malt * extract),
    ofWortAlone: (1e4 * wort) / (malt * extract),
  }),
  prompt: (show, _, { wort, borrowed, passedOn }) =>
    `A mash of ${show.malt} of malt with ${show.extract} soluble extract began with weak wort that held ${n(borrowed, 1)} kg of extract. Its own wort holds ${n(wort, 1)} kg, and the weak wort that it passes on holds ${n(passedOn, 1)} kg. What is the efficiency of this mash, in per cent?`,
  slips: [
    {
      family: 'forgotten',
      gives: (_, { ofWortAlone }) => ofWortAlone,
      say: 'Only the wort was counted; take off what the mash was given, and add what it passes on.',
    },
    {
      family: 'sign',
      gives: ({ malt, extract }, { own, borrowed, passedOn }) =>
        (1e4 * (own + 2 * borrowed - 2 * passedOn)) / (malt * extract),
      say: 'Given and passed on were exchanged: what was given is not of this malt and comes off, what it passes on is and is added.',
    },
    {
      family: 'wrongWhole',
      gives: ({ malt }, { own }) => (100 * own) / malt,
      say: 'The extract was set against all the malt; set it against the extract that the malt had.',
    },
  ],
  working: (given, { efficiency, own, wort, borrowed, passedOn }) => {
    const promised = (given.malt * given.extract) / 100;
    return [
      `Of this malt: ${n(wort, 1)} + ${n(passedOn, 1)} − ${n(borrowed, 1)} = ${n(own, 1)} kg`,
      `The malt had ${n(given.malt, 0)} × ${given.extract} ÷ 100 = ${n(promised, 1)} kg`,
      `${n(own, 1)} ÷ ${n(promised, 1)} × 100 = ${n(efficiency, 1)} %`,
    ];
  },
});
