// How much more a cask has lost than the loss which the house reckons with.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const kept = ({ loss, years }: Record<'loss' | 'years', number>) => (1 - loss / 100) ** years;

const kind = sum({
  id: 'more-than-the-yearly-loss',
  title: 'Beyond the usual loss of a cask',
  topic: 'running',
  level: 2,
  sources: ['derived'],
  of: 'alcohol',
  to: 1,
  vary: {
    filled: ['alcohol', [122, 124, 126, 140, 158, 160]],
    loss: ['percent', [1.8, 2, 2.2, 2.5], 'house.alcoholLoss'],
    years: ['years', [6, 8, 9, 10, 12]],
    found: ['alcohol', [90, 92, 94, 96, 98, 106, 110, 114, 118]],
  },
  answer: ({ filled, found, ...v }) => filled * kept(v) - found,
  fits: ({ filled }, answer) => answer > 3 && answer < filled / 8,
  prompt: (show, _, v) =>
    `A cask went in with ${n(v.filled, 0)} L of pure alcohol, what the wood drank already taken off. The house reckons with a loss of ${show.loss} a year of what is there. After ${show.years} the regauge finds ${n(v.found, 0)} L. How much less is that than the yearly loss leaves?`,
  slips: [
    {
      family: 'compound',
      gives: ({ filled, loss, years, found }) => filled * (1 - (loss * years) / 100) - found,
      say: 'Each year’s loss was taken of the first filling. It is a part of what is still there.',
    },
    {
      family: 'otherFigure',
      gives: ({ filled, found }) => filled - found,
      say: 'That is all that is gone. The usual loss of the years has to be taken off it.',
    },
    {
      family: 'forgotten',
      gives: ({ filled, loss, found }) => filled * (1 - loss / 100) - found,
      say: 'The loss of one year was allowed. The cask has lain for several.',
    },
  ],
  working: ({ filled, found, ...v }, answer) => [
    'Left by the yearly loss = filled × (1 − loss ÷ 100), once for each year',
    `${n(filled, 0)} × (1 − ${n(v.loss, 1)} ÷ 100) to the power ${n(v.years, 0)} = ${n(filled * kept(v), 1)} L`,
    `${n(filled * kept(v), 1)} − ${n(found, 0)} = ${n(answer, 1)} L less. Look first for a wrong dip, then for a leak. A loss beyond the usual is told to the tax office, as the law of your country asks.`,
  ],
});

export default { ...kind, since: 7 };
