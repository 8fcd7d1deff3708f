// The alcohol ledger: litres of pure alcohol at every station of the line, at four paces.
import { litresOfAlcohol, type Quantity } from '../quantity.ts';
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
export type LedgerPace = keyof typeof paces;

/**
 * How many mashes make one unit of a pace.
 * @example mashesIn('mash', line) // 1 (a mash)
 */
export function mashesIn(pace: LedgerPace, { pace: own, house }: Line): number {
  return { mash: 1, tonne: 1 / own.tonnesPerMash, week: house.mashesPerWeek, year: own.mashesPerYear }[pace];
}

/**
 * The line of the mash of which a pace is told: a year of several malts has a mash of its own, the mean of all.
 * @example lineFor('mash', line) === line // true (a mash is of the line itself)
 */
export const lineFor = (pace: LedgerPace, line: Line): Line => (pace === 'year' && line.ofYear) || line;

/**
 * Litres of pure alcohol at each station for one pace. The charge holds the recycled foreshots and feints
 * as well, so it is more than the wash brings. Bottles are of the same mash, at the end of its years in wood.
 * @example ledger(line, 'week').heart / line.heart.alcohol === house.mashesPerWeek // true (as many mashes as a week has)
 */
export function ledger(whole: Line, pace: LedgerPace): Record<Station, Quantity<'alcohol'>> {
  const line = lineFor(pace, whole);
  const mashes = mashesIn(pace, line);
  const of = (alcohol: number) => litresOfAlcohol(alcohol * mashes);
  return {
    malt: of(line.malt.alcohol),
    wash: of(line.wash.alcohol),
    lowWines: of(line.lowWines.alcohol),
    charge: of(line.charge.alcohol),
    heart: of(line.heart.alcohol),
    casks: of(line.filling.alcohol),
    bottles: of(line.bottling.alcohol),
  };
}
