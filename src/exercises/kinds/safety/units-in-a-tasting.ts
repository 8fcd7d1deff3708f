// What share of a week’s guideline a tasting is.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const WEEK = 14; // units a week, low-risk guideline; UK Chief Medical Officers

export default sum({
  id: 'units-in-a-tasting',
  title: 'A tasting and the week',
  topic: 'safety',
  level: 2,
  sources: ['cmo-drink', 'derived'],
  of: 'percent',
  to: 0,
  within: 0.02,
  vary: {
    samples: ['count', [3, 4, 5, 6, 8]],
    measure: ['count', [10, 15, 20, 25]],
    strength: ['strength', [46, 50, 55, 58, 60, 63.5]],
  },
  answer: (v) => (100 * v.samples * v.measure * v.strength) / 1000 / WEEK,
  prompt: (show) =>
    `At a tasting each guest is given ${show.samples} samples of ${show.measure} mL at ${show.strength}. British guidance names ${WEEK} units a week as a low-risk limit, spread over three days or more; a unit is 10 mL of pure alcohol. What part of those ${WEEK} units, in per cent, is this one tasting?`,
  slips: [
    {
      family: 'forgotten',
      gives: (v) => (100 * v.measure * v.strength) / 1000 / WEEK,
      say: 'That is one sample. Each guest is given several.',
    },
    {
      family: 'forgotten',
      gives: (v) => (100 * v.samples * v.measure) / 10 / WEEK,
      say: 'The strength was left out: only a part of each measure is alcohol.',
    },
    {
      family: 'otherFigure',
      gives: (v) => (v.samples * v.measure * v.strength) / 1000,
      say: 'That is the number of units. The question asks for the part of the week’s 14, in per cent.',
    },
  ],
  working: (v, answer) => {
    const units = (v.samples * v.measure * v.strength) / 1000;
    return [
      'Units = samples × millilitres × strength ÷ 100 ÷ 10',
      `${v.samples} × ${v.measure} × ${v.strength} ÷ 1,000 = ${n(units, 2)} units`,
      `${n(units, 2)} ÷ ${WEEK} × 100 = ${n(answer, 0)} %. It says nothing of driving or of working after it: the site’s rules and the law do.`,
    ];
  },
});
