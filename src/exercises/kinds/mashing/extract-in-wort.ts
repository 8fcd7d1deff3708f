// The extract dissolved in a wort.
import extractInWort from '../../../calculators/mashing/extract-in-wort.ts';
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { platoFromGravity } from '../../../core/wort/extract.ts';
import { exercise } from '../../exercise.ts';

export default exercise(extractInWort, {
  level: 2,
  ask: 'extract',
  vary: {
    volume: [5000, 6000, 7000, 7200, 7500, 8000, 10_000, 12_000],
    gravity: [1.052, 1.054, 1.055, 1.056, 1.058, 1.06, 1.062, 1.064],
    malt: [1500],
    extract: [77.5],
  },
  within: 0.005,
  prompt: (show, { gravity }) =>
    `${show.volume} of wort at 20 °C have a gravity of ${show.gravity}. The table gives ${n(platoFromGravity(gravity), 2)} °P for it, and a litre of water weighs 0.9982 kg. How many kilograms of extract are in the wort?`,
  slips: [
    {
      family: 'massForVolume',
      gives: ({ volume }, { plato }) => (volume * plato) / 100,
      say: 'Degrees Plato were taken of the litres; they are kilograms of extract in 100 kg of wort, so find its mass first.',
    },
    {
      family: 'percent',
      gives: (_, { extract }) => extract * 100,
      say: 'It was not divided by 100; degrees Plato count in a hundred.',
    },
    {
      family: 'otherFigure',
      gives: (_, { mass }) => mass,
      say: 'That is what the wort weighs; only a part of it is extract.',
    },
  ],
  working: (given, { mass, plato, extract }) => [
    `Mass: ${w(given.volume)} × ${n(given.gravity, 3)} × 0.9982 = ${w(mass)} kg`,
    `Of every 100 kg ${w(plato)} kg are extract: ${w(mass)} × ${w(plato)} ÷ 100 = ${n(extract, 0)} kg`,
  ],
});
