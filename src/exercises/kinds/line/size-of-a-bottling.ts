// About how many bottles some tonnes of malt end as.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'size-of-a-bottling',
  title: 'About how many bottles?',
  topic: 'line',
  form: 'estimate',
  level: 2,
  sources: ['common-practice', 'derived'],
  of: 'count',
  to: 0,
  vary: {
    malt: ['count', [1, 2, 3, 5, 8, 10, 20, 50]],
    years: ['years', [5, 8, 10, 12, 15, 18], 'house.yearsInWood'],
    strength: ['strength', [40, 43, 46], 'house.bottlingStrength'],
  },
  answer: (v) => (v.malt * 410 * 0.98 ** v.years) / (0.7 * (v.strength / 100)),
  prompt: (show) =>
    `Without paper: a tonne of malt gives about 410 L of pure alcohol, and a cool store takes about 2 % a year of what is there. About how many bottles of 70 cL at ${show.strength} come in the end from ${show.malt} t of malt, after ${show.years}?`,
  renewed: 7,
  before: {
    prompt: (show) =>
      `Without paper: about how many bottles of 70 cL at ${show.strength} come in the end from ${show.malt} t of malt, after ${show.years} in a cool store?`,
  },
  slips: [
    {
      family: 'thousand',
      gives: (_, answer) => answer / 10,
      say: 'A ten was lost: a tonne of malt is good for about a thousand bottles.',
    },
    {
      family: 'thousand',
      gives: (_, answer) => answer * 10,
      say: 'Ten times too many: a tonne of malt is good for about a thousand bottles.',
    },
    {
      family: 'otherFigure',
      gives: (v) => v.malt * 410 * 0.02 * v.years,
      say: 'That is what the store takes, in litres of pure alcohol.',
    },
  ],
  working: (v, answer) => [
    'A tonne of malt gives about 410 L of pure alcohol; a cool store takes about 2 % a year of what is there',
    `${v.malt} × 410 = ${n(v.malt * 410, 0)} L; after ${v.years} years about ${n(v.malt * 410 * 0.98 ** v.years, 0)} L are left`,
    `A bottle holds 0.7 × ${v.strength} ÷ 100 = ${n((0.7 * v.strength) / 100, 2)} L of it: about ${n(answer, 0)} bottles`,
  ],
});
