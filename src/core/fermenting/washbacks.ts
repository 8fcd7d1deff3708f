// How many washbacks a week of mashes needs.
import { count, hours, percent, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';

const HOURS_IN_WEEK = 168; // h; by definition
const SAME_TIME = 1e-9; // h; a washback free at the very hour of the next mash can take it

/** Mashes in a week at even gaps, over all seven days or over the first five. */
export interface MashWeek {
  readonly mashes: Quantity<'count'>;
  readonly pattern: 'seven' | 'five';
}
export interface WashbackNeed {
  readonly needed: Quantity<'count'>;
  /** Part of their time in which they are taken, turn-round included. */
  readonly taken: Quantity<'percent'>;
  /** Longest time from one mash to the end of turn-round that as many washbacks allow, and one fewer; 0 for none. */
  readonly longest: Quantity<'hours'>;
  readonly longestWithOneFewer: Quantity<'hours'>;
}

/** Hours from the start of a mash to that of the mash `ahead` of it, at the least. */
function shortestWait(week: MashWeek, ahead: number): number {
  if (week.pattern === 'seven') return (ahead * HOURS_IN_WEEK) / week.mashes;
  const mashes = Math.ceil(week.mashes);
  const start = (mash: number) =>
    HOURS_IN_WEEK * Math.floor(mash / mashes) + ((mash % mashes) * HOURS_IN_WEEK * 5) / 7 / mashes;
  return Math.min(...Array.from({ length: mashes }, (_, mash) => start(mash + ahead) - start(mash)));
}

/**
 * The least number of washbacks when each is taken for so many hours from its mash, turn-round included, and the
 * one free longest takes the next mash. A washback is emptied when its hours are over, on any day. In a week of five
 * days a part of a mash is a whole one in the busiest week. Mashes 1–1000; hours above 0, at most 1000.
 * @example washbacksNeeded({ mashes: count(14), pattern: 'seven' }, hours(60)) // { needed: 5, taken: 100, longest: 60, longestWithOneFewer: 48 } (a mash every 12 hours)
 */
export function washbacksNeeded(week: MashWeek, takenFor: Quantity<'hours'>): WashbackNeed {
  within('The mashes in a week', week.mashes, 1, 1000);
  within('The hours that a mash takes a washback', takenFor, Number.MIN_VALUE, 1000);
  let needed = 1;
  while (shortestWait(week, needed) < takenFor - SAME_TIME) needed++;
  return {
    needed: count(needed),
    taken: percent((100 * week.mashes * takenFor) / (HOURS_IN_WEEK * needed)),
    longest: hours(shortestWait(week, needed)),
    longestWithOneFewer: hours(shortestWait(week, needed - 1)),
  };
}
