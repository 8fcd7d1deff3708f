// What sweet draff costs for a tonne of malt.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const kind = sum({
  id: 'yield-gone-with-the-draff',
  title: 'Yield gone with the draff',
  topic: 'running',
  level: 2,
  sources: ['derived'],
  of: 'yield',
  to: 1,
  vary: {
    draff: ['mass', [960, 980, 1000, 1020, 1040, 1060]],
    usual: ['percent', [0.6, 0.8, 1]],
    now: ['percent', [1.9, 2.2, 2.5, 2.8, 3]],
    each: ['count', [0.52, 0.53, 0.54]],
  },
  answer: ({ draff, usual, now, each }) => ((draff * (now - usual)) / 100) * each,
  prompt: (show) =>
    `A tonne of malt leaves ${show.draff} of wet draff. As a rule a test finds ${show.usual} of extract in it, this week ${show.now}. A kilogram of extract gives ${show.each} L of pure alcohol here. By how much does a tonne of malt fall short for that?`,
  slips: [
    {
      family: 'forgotten',
      gives: ({ draff, now, each }) => ((draff * now) / 100) * each,
      say: 'The usual extract of the draff is lost in any week. Only what is more of it is new.',
    },
    {
      family: 'otherFigure',
      gives: ({ draff, usual, now }) => (draff * (now - usual)) / 100,
      say: 'Those are kilograms of extract. They have still to be made alcohol.',
    },
    {
      family: 'points',
      gives: ({ draff, usual, now, each }) => ((draff * (now / usual - 1)) / 100) * each,
      say: 'The percentages were divided. They are parts of the draff, and their difference counts.',
    },
    {
      family: 'upsideDown',
      gives: ({ draff, usual, now, each }) => (draff * (now - usual)) / 100 / each,
      say: 'Divided by the litres that a kilogram gives. It has to be multiplied.',
    },
  ],
  working: ({ draff, usual, now, each }, answer) => [
    'Shortfall = draff × points of extract more ÷ 100 × litres to a kilogram of extract',
    `Extract: ${n(draff, 0)} × (${n(now, 1)} − ${n(usual, 1)}) ÷ 100 = ${n((draff * (now - usual)) / 100, 2)} kg`,
    `${n((draff * (now - usual)) / 100, 2)} × ${n(each, 2)} = ${n(answer, 1)} L`,
  ],
});

export default { ...kind, since: 7 };
