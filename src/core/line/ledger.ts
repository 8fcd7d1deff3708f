// The alcohol ledger: litres of pure alcohol at every station of the line, at four paces.
import { litresOfAlcohol, type Portion, type Quantity } from '../quantity.ts';
import type { Line } from './line.ts';

export const stations = {
  malt: 'In the malt',
  wash: 'Wash',
  lowWines: 'Low wines',
  charge: 'Spirit charge',
  heart: 'Heart',
  casks: 'Into casks',
  bottles: 'In bottles',
} as const;
export type Station = keyof typeof stations;

export const paces = {
  mash: 'a mash',
  tonne: 'a tonne of malt',
  week: 'a week',
  year: 'a year',
} as const;
export type Pace = keyof typeof paces;

/** How many mashes make one unit of a pace. */
export function mashesIn(pace: Pace, { pace: own, house }: Line): number {
  return { mash: 1, tonne: 1 / own.tonnesPerMash, week: house.mashesPerWeek, year: own.mashesPerYear }[pace];
}

/** An amount of a mash, for one pace; a year’s is the sum over its campaigns. */
export function amountIn(pace: Pace, line: Line, of: (line: Line) => number): number {
  if (pace !== 'year' || !line.campaigns) return of(line) * mashesIn(pace, line);
  return line.campaigns.reduce((sum, each) => sum + each.mashes * of(each.line), 0);
}

/**
 * Litres of pure alcohol at each station for one pace. The charge holds the recycled foreshots and feints
 * as well, so it is more than the wash brings. Bottles are of the same mash, at the end of its years in wood.
 */
export function ledger(line: Line, pace: Pace): Record<Station, Quantity<'alcohol'>> {
  const of = (part: (line: Line) => Portion | Line['malt']) =>
    litresOfAlcohol(amountIn(pace, line, (each) => part(each).alcohol));
  return {
    malt: of(({ malt }) => malt),
    wash: of(({ wash }) => wash),
    lowWines: of(({ lowWines }) => lowWines),
    charge: of(({ charge }) => charge),
    heart: of(({ heart }) => heart),
    casks: of(({ filling }) => filling),
    bottles: of(({ bottling }) => bottling),
  };
}
