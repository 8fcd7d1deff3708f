// A year of several malts: what a line tells of a year is the sum over the weeks of each.
import { count, kilograms } from '../quantity.ts';
import { amountIn } from './ledger.ts';
import type { Campaign, Line } from './line.ts';

/** A line whose year is that of several lines, each for so many mashes, 0 upwards; all else is told of the first line’s own mash. */
export function withYear(line: Line, campaigns: readonly Campaign[]): Line {
  const all: Line = { ...line, campaigns };
  const year = (of: (line: Line) => number) => amountIn('year', all, of);
  const bottles = year(({ bottling }) => bottling.bottles);
  const casks = year(({ casks }) => casks.perMash);
  const barley = year(({ barley }) => barley.mass);
  return {
    ...all,
    pace: {
      ...line.pace,
      mashesPerYear: count(year(() => 1)),
      maltPerYear: kilograms(year(({ malt }) => malt.mass)),
    },
    barley: { ...line.barley, perYear: kilograms(barley), perBottle: kilograms(barley / bottles) },
    casks: { ...line.casks, perYear: count(casks), inStore: count(casks * line.house.yearsInWood) },
    bottling: { ...line.bottling, bottlesPerYear: count(bottles), bottlesPerCask: count(bottles / casks) },
  };
}
