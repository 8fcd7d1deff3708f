// Pure alcohol of three vintages in one store.
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const AGES = [5, 10, 15];

export default sum({
  id: 'alcohol-of-three-vintages',
  title: 'Three vintages in the store',
  topic: 'maturing',
  level: 3,
  sources: ['derived', 'common-practice'],
  of: 'alcohol',
  to: 0,
  within: 0.008,
  vary: {
    casks: ['count', [20, 30, 40, 50, 60, 80]],
    filled: ['volume20', [120, 125, 127, 130, 140, 158]],
    rate: ['percent', [2.5, 3, 3.5, 4]],
  },
  answer: (v) => AGES.reduce((all, age) => all + v.casks * v.filled * (1 - v.rate / 100) ** age, 0),
  prompt: (show) =>
    `In a store lie ${show.casks} casks of each of three vintages: 5, 10 and 15 years old. Each was filled with ${show.filled} of pure alcohol, and each year ${show.rate} of what is still there leaves. How much pure alcohol do all these casks hold now?`,
  slips: [
    {
      family: 'compound',
      gives: (v) => AGES.reduce((all, age) => all + v.casks * v.filled * (1 - (v.rate * age) / 100), 0),
      say: 'The yearly loss was taken of the filling each time. Each year takes its part of what is still there.',
    },
    {
      family: 'forgotten',
      gives: (v) => AGES.length * v.casks * v.filled,
      say: 'That is what was filled. The years have taken a part.',
    },
    {
      family: 'forgotten',
      gives: (_, answer) => answer / AGES.length,
      say: 'There are three vintages, and that is the mean of one.',
    },
  ],
  working: (v, answer) => {
    const kept = 1 - v.rate / 100;
    const parts = AGES.map((age) => kept ** age);
    return [
      `Left after 5, 10 and 15 years: ${AGES.map((age, i) => `${w(kept)}^${age} = ${w(parts[i]!)}`).join(', ')}`,
      `Of each vintage ${v.casks} × ${v.filled} = ${w(v.casks * v.filled)} L were filled`,
      `${w(v.casks * v.filled)} × (${parts.map((part) => w(part)).join(' + ')}) = ${n(answer, 0)} L`,
    ];
  },
});
