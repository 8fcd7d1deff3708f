// “If you used butts only, how many casks would you fill?”: all the filling in casks of one size. Tested in tests/asking/reckoned.test.ts.
import { formatNumber } from '../core/format.ts';
import { CASK_SIZES } from '../core/maturing/filling.ts';
import { figureText } from '../house/prose.ts';
import type { Reckoner } from './reckoned.ts';

const IF = /\bif\b|suppose|would|imagine|what about/i;
const ONLY =
  /\b(?:only|just|nothing but|all (?:in|of them|into)?|everything in(?:to)?)\s+(hogsheads|butts|barrels)\b|\b(hogsheads|butts|barrels)\s+(?:only|alone)\b/i;

export const oneSize: Reckoner = ({ text, quantities, line }) => {
  const named = ONLY.exec(text);
  if (!named || quantities.length > 0 || !IF.test(text) || !/\bhow many\b/i.test(text)) return undefined;
  const name = (named[1] ?? named[2]!).toLowerCase();
  const size = CASK_SIZES[name.replace(/s$/, '') as 'barrel' | 'hogshead' | 'butt'];
  const count = (line.filling.volume * line.pace.mashesPerYear) / size;
  return {
    says: `About ${formatNumber(count, 0)} ${name} a year, ${formatNumber(line.filling.volume / size, 1)} a mash; with our mix it is ${figureText(line, 'casks.perYear')}. A larger cask gives less wood to a litre and loses less.`,
    sum: `${figureText(line, 'filling.volume', 'year')} ÷ ${formatNumber(size, 0)}\u00a0L`,
    at: 'maturing/#what-the-wood-gives-and-takes',
    place: 'What the wood gives and takes',
    paths: ['filling.volume', 'casks.perYear'],
  };
};
