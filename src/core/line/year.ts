// A year of several malts: what a line tells of a year is the sum over the weeks of each.
import { count, kilograms } from '../quantity.ts';
import type { Line } from './line.ts';

/** Some mashes of a year, 0 upwards, and the line of each. */
export interface CampaignLine {
  readonly mashes: number;
  readonly line: Line;
}

/** The mean of what is alike in several things, number by number, each counting by its weight; weights add up to 1. */
function meanOf(things: readonly unknown[], weights: readonly number[]): unknown {
  const [first] = things;
  if (typeof first === 'number') return things.reduce<number>((sum, each, i) => sum + weights[i]! * (each as number), 0);
  if (typeof first !== 'object' || first === null || Array.isArray(first)) return first;
  const rows = things as readonly Readonly<Record<string, unknown>>[];
  return Object.fromEntries(Object.keys(first).map((key) => [key, meanOf(rows.map((row) => row[key]), weights)]));
} // prettier-ignore

/**
 * A line whose year is that of several lines; all else is told of the first line’s own mash.
 * @example withYear(line, [{ mashes: 10, line }]).pace.mashesPerYear // 10 (ten of one campaign)
 */
export function withYear(line: Line, campaigns: readonly CampaignLine[]): Line {
  const mashes = campaigns.reduce((sum, each) => sum + each.mashes, 0);
  const { round, ...own } = line;
  const mean = meanOf(
    campaigns.map(({ line: { round: _, ...rest } }) => rest),
    campaigns.map((each) => each.mashes / mashes),
  ) as Omit<Line, 'round'>;
  const [barley, bottles, casks] = [mean.barley.mass, mean.bottling.bottles, mean.casks.perMash].map((each) => each * mashes); // prettier-ignore
  const pace = {
    ...line.pace,
    mashesPerYear: count(mashes),
    maltPerYear: kilograms(mean.malt.mass * mashes),
  };
  return {
    ...own,
    round,
    ofYear: { ...mean, round, pace },
    pace,
    barley: { ...line.barley, perYear: kilograms(barley!), perBottle: kilograms(barley! / bottles!) },
    casks: { ...line.casks, perYear: count(casks!), inStore: count(casks! * line.house.yearsInWood) },
    bottling: { ...line.bottling, bottlesPerYear: count(bottles!), bottlesPerCask: count(bottles! / casks!) },
  };
}
