// A timetable in words: rows for a table and for a file.
import {
  vesselsAtHour,
  vesselDoings,
  vesselStretches,
  vesselsOf,
  type VesselNow,
  type Stretch,
} from '../core/week/vessels-at-hour.ts';
import { dayAndTime } from '../core/week/clock.ts';
import { formatNumber } from '../core/format.ts';
import type { Timetable } from '../core/week/timetable.ts';

const beginsAs: Readonly<Record<Stretch['doing'], string>> = {
  mash: 'mashing in',
  fill: 'begins to fill',
  ferment: 'full, fermenting',
  wait: 'ready, waits for the still',
  clean: 'empty, cleaning',
  run: 'charged',
};

/** A vessel's name, with its number where there is more than one of its kind. */
function namesIn(week: Timetable) {
  const all = vesselsOf(week);
  return ({ vessel, which }: Pick<Stretch, 'vessel' | 'which'>): string =>
    all.filter((each) => each.vessel === vessel).length > 1 ? `${vessel} ${which}` : vessel;
}

/** What begins in the hours from `from` to `to` of the week, in the order of time. */
export function beginningsIn(week: Timetable, from: number, to: number) {
  const nameOf = namesIn(week);
  return vesselStretches(week)
    .filter(({ start }) => start >= from && start < to)
    .sort((a, b) => a.start - b.start)
    .map((each) => [dayAndTime(each.start), nameOf(each), beginsAs[each.doing]] as const);
}

/** Every stretch that begins in the week, for a file. */
export const weekRows = (week: Timetable): readonly (readonly (string | number)[])[] => [
  ['Vessel', 'Number', 'What it does', 'From', 'To', 'Hours', 'From, hours after Monday 00:00'],
  ...vesselStretches(week)
    .filter(({ start }) => start >= 0 && start < 168)
    .sort((a, b) => a.start - b.start)
    .map(({ vessel, which, doing, start, end }) => [
      vessel,
      which,
      vesselDoings[doing],
      dayAndTime(start),
      dayAndTime(end),
      Number((end - start).toFixed(2)),
      start,
    ]),
];

const hours = (n: number) => `${formatNumber(n, n % 1 === 0 ? 0 : 2)} h`;

/** What goes on at an hour: a sentence for each vessel at work, and the names of those at rest. */
export function vesselsAtHourInWords(week: Timetable, hour: number) {
  const all = vesselsAtHour(week, hour);
  const nameOf = namesIn(week);
  const isAtWork = (now: VesselNow) => now.doing !== undefined;
  return {
    working: all
      .filter(isAtWork)
      .map((now) => ({ name: nameOf(now), says: `${vesselDoings[now.doing!]} for ${hours(now.since!)}, ${hours(now.left!)} to go` })),
    resting: all.filter((now) => !isAtWork(now)).map(nameOf),
  };
} // prettier-ignore
