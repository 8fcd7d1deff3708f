// When a part of the beta-amylase is gone, read off its curve.
import type { Chart } from '../../../calculators/define.ts';
import conversion from '../../../calculators/mashing/conversion.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { halfLife } from '../../../core/mashing/enzymes.ts';
import { celsius } from '../../../core/quantity.ts';
import { sum } from '../../sum.ts';

const REST = 35; // minutes drawn

/** Minutes until so many per cent are left. */
const until = (temperature: number, left: number) =>
  halfLife('beta', celsius(temperature)) * Math.log2(100 / left);

function curve(temperature: number): Chart {
  const given = { rests: [{ minutes: REST, temperature }] };
  const result = conversion.compute(given) as Readonly<Record<string, number>>;
  return conversion.chart!(given, result);
}

export default sum({
  id: 'conversion-curve',
  title: 'How fast an enzyme dies',
  topic: 'mashing',
  form: 'curve',
  level: 1,
  sources: ['brandam-2003'],
  of: 'minutes',
  to: 1,
  within: 0.06,
  vary: {
    temperature: ['temperature', [62.4, 62.5, 62.6, 62.7, 62.8, 62.9, 63, 63.1, 63.2, 63.4]],
    left: ['percent', [36, 34, 33, 32, 30, 28, 26, 25, 22, 20]],
  },
  answer: ({ temperature, left }) => until(temperature, left),
  prompt: (show) =>
    `The curve shows how much beta-amylase is still alive in a mash that stands at ${show.temperature}. After how many minutes is ${show.left} of it left?`,
  before: {
    prompt: (show) =>
      `The curve shows how much beta-amylase is still alive in a mash that stands at ${show.temperature}, by constants recalled from memory. After how many minutes is ${show.left} of it left?`,
  },
  working: ({ temperature, left }, answer) => [
    `Go across from ${left} % to the curve and down to the minutes: about ${n(answer, 0)}`,
    `Or reckon: half is lost in ${n(halfLife('beta', celsius(temperature)), 1)} minutes, and half of the rest in as long again`,
  ],
  slips: [
    {
      family: 'otherFigure',
      gives: ({ temperature, left }) => until(temperature, 100 - left),
      say: 'That is when so much of it is lost; read the part that is still alive.',
    },
    {
      family: 'compound',
      gives: ({ temperature, left }) => ((100 - left) / 50) * halfLife('beta', celsius(temperature)),
      say: 'A straight line was drawn through the first half-life; the curve flattens.',
    },
  ],
  curve: ({ temperature }) => curve(temperature),
});
