// The share of the alcohol handled that a stocktake does not find.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const kind = sum({
  id: 'missing-of-what-was-handled',
  title: 'Missing at the stocktake',
  topic: 'running',
  level: 2,
  sources: ['derived', 'memory'],
  of: 'percent',
  to: 2,
  vary: {
    opening: ['alcohol', [820, 860, 900, 940, 980, 1020], 'heart.alcohol'],
    made: ['alcohol', [3300, 3400, 3500, 3560, 3600], 'heart.alcohol'],
    out: ['alcohol', [3100, 3200, 3300, 3400], 'heart.alcohol'],
    found: ['alcohol', [930, 960, 1000, 1040, 1080, 1120], 'heart.alcohol'],
  },
  answer: ({ opening, made, out, found }) => (100 * (opening + made - out - found)) / (opening + made),
  fits: (_, answer) => answer > 0.3 && answer < 2.5,
  prompt: (_, __, v) =>
    `At the last stocktake the stillhouse held ${n(v.opening, 0)} L of pure alcohol. It has made ${n(v.made, 0)} L since, ${n(v.out, 0)} L went out to casks, and today the dips find ${n(v.found, 0)} L. What part of the alcohol that was handled, opening and made together, is missing, in per cent?`,
  slips: [
    {
      family: 'wrongWhole',
      gives: ({ opening, made, out, found }) => (100 * (opening + made - out - found)) / made,
      say: 'What was there at the opening was handled too: the whole is opening and made together.',
    },
    {
      family: 'wrongWhole',
      gives: ({ opening, made, out, found }) => (100 * (opening + made - out - found)) / found,
      say: 'The whole is what was handled, not what was found.',
    },
    {
      family: 'otherFigure',
      gives: ({ opening, made, out, found }) => (100 * (out + found)) / (opening + made),
      say: 'That is the part which is accounted for. What is missing is the rest of a hundred.',
    },
    {
      family: 'forgotten',
      gives: ({ made, out }) => (100 * (made - out)) / made,
      say: 'Opening and closing stock were left out: what was made and did not go out may still be there.',
    },
  ],
  working: ({ opening, made, out, found }, answer) => [
    'Missing = opening + made − gone out − found; its share = missing ÷ (opening + made)',
    `${n(opening, 0)} + ${n(made, 0)} − ${n(out, 0)} − ${n(found, 0)} = ${n(opening + made - out - found, 0)} L`,
    `${n(opening + made - out - found, 0)} ÷ ${n(opening + made, 0)} × 100 = ${n(answer, 2)} %`,
    'A house that accounts for 98 to 99.5 % of what it handles is called good.',
  ],
});

export default { ...kind, since: 7 };
