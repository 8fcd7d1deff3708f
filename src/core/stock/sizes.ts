// Casks that have a name, by what they hold; a cask may be of any other size.
import { formatCount } from '../format.ts';
import { litres, type Quantity } from '../quantity.ts';

/** Smallest and largest cask that the register takes, L: from a teaching cask to beyond every law's 700 L. */
export const CASK_RANGE = [10, 1000] as const;

/**
 * What casks of a name hold, L, as the trade rounds it; one cask of the name may hold a tenth more or less.
 * Sources: trade FAQ of 1995 and later cask guides; gallons of a cask guide for the last four.
 */
export const namedSizes: Readonly<Record<string, Quantity<'volume'>>> = {
  octave: litres(50), // 45–68, trade FAQ 1995
  'quarter cask': litres(125), // about 125 today; 127–159, trade FAQ 1995
  barrel: litres(200), // 173–191, trade FAQ 1995; 190–200 today, cask guides
  barrique: litres(225), // 59 US gallons, a cask guide
  hogshead: litres(250), // 225–305, trade FAQ 1995 and cask guides
  butt: litres(500), // trade FAQ 1995
  puncheon: litres(500), // 450–600, cask guides; 132 US gallons, a cask guide
  'port pipe': litres(650), // 172 US gallons, a cask guide
  'madeira drum': litres(650), // 172 US gallons, a cask guide
  gorda: litres(700), // 185 US gallons, a cask guide
};

/**
 * So many casks of a size in words: 40 butts, 2 casks of 180 L. A size with two names has the first.
 * @example casksOf(40, 500) // '40 butts' (a butt holds 500 L)
 */
export function casksOf(many: number, size: number): string {
  const name = Object.entries(namedSizes).find(([, litres]) => litres === size)?.[0];
  return name === undefined ? `${formatCount(many, 'cask')} of ${size} L` : formatCount(many, name);
}
