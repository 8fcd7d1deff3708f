// How much of the malt's extract came into the wort.
import extractInWort from '../../../calculators/mashing/extract-in-wort.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { platoFromGravity } from '../../../core/wort/extract.ts';
import { exercise } from '../../exercise.ts';

export default exercise(extractInWort, {
  id: 'efficiency-of-wort',
  title: 'Part of the extract in the wort',
  level: 3,
  ask: 'efficiency',
  vary: {
    volume: [7000, 7100, 7200, 7300, 7400],
    gravity: [1.056, 1.057, 1.058, 1.059],
    malt: [1500],
    extract: [76.5, 77, 77.5, 78, 78.5],
  },
  within: 0.005,
  prompt: (show, { gravity }) =>
    `A mash of ${show.malt} of malt with ${show.extract} soluble extract gave ${show.volume} of wort at 20 °C, gravity ${show.gravity}, which is ${n(platoFromGravity(gravity), 2)} °P. A litre of water weighs 0.9982 kg. What part of the malt’s extract is in the wort, in per cent?`,
  slips: [
    {
      family: 'wrongWhole',
      gives: ({ malt }, { extract }) => (100 * extract) / malt,
      say: 'The extract was set against all the malt; set it against the extract that the malt had.',
    },
    {
      family: 'massForVolume',
      gives: ({ volume, malt, extract }, { plato }) => (100 * volume * plato) / (malt * extract),
      say: 'Degrees Plato were taken of the litres; find what the wort weighs first.',
    },
    {
      family: 'otherFigure',
      gives: (_, { efficiency }) => 100 - efficiency,
      say: 'That is the part that did not come into the wort.',
    },
  ],
});
