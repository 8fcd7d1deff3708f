// Hours of a week as a timetable writes them.
import { HOURS_IN_WEEK } from './calendar.ts';

export const dayNames = [
  'Monday',
  'Tuesday',
  'Wednesday',
  'Thursday',
  'Friday',
  'Saturday',
  'Sunday',
] as const;

/**
 * An hour of the week brought into it: 170 is 2, −1 is 167.
 * @example [inWeek(170), inWeek(-1)] // [2, 167] (168 hours to the week)
 */
export const inWeek = (hour: number): number => ((hour % HOURS_IN_WEEK) + HOURS_IN_WEEK) % HOURS_IN_WEEK;

/**
 * The time of day of an hour, to the minute: 14:00.
 * @example timeOfDay(38) // '14:00' (24 + 14)
 */
export function timeOfDay(hour: number): string {
  const minutes = Math.round(inWeek(hour) * 60) % (24 * 60);
  const two = (n: number) => String(n).padStart(2, '0');
  return `${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
}

/**
 * The day of an hour of the week, 0–6 from Monday.
 * @example dayOfHour(38) // 1 (Tuesday)
 */
export const dayOfHour = (hour: number): number => Math.floor(Math.round(inWeek(hour) * 60) / (24 * 60)) % 7;

/**
 * Day and time: Tue 14:00.
 * @example dayAndTime(38) // 'Tue 14:00' (24 + 14)
 */
export const dayAndTime = (hour: number): string =>
  `${dayNames[dayOfHour(hour)]!.slice(0, 3)} ${timeOfDay(hour)}`;
