// Days of the calendar as text, 2016-03-14; a month, 2016-03, or a year, 2016, where no more is known (ISO 8601).
import { years, type Quantity } from '../quantity.ts';

const LENGTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]; // days in a month, January first
const BEFORE = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334]; // days of the year before each month
const FORM = /^(\d{4})(?:-(\d{2})(?:-(\d{2}))?)?$/;

const isLeap = (year: number) => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
const daysIn = (year: number, month: number) =>
  month === 2 && isLeap(year) ? 29 : (LENGTHS[month - 1] ?? 0);

/**
 * Whether a text is a day, a month or a year of the calendar.
 * @example [isDay('2024-02-29'), isDay('2023-02-29'), isDay('2023-02')] // [true, false, true] (2024 is a leap year)
 */
export function isDay(text: string): boolean {
  const [, year, month = '01', day = '01'] = FORM.exec(text) ?? [];
  return year !== undefined && Number(day) >= 1 && Number(day) <= daysIn(Number(year), Number(month));
}

/**
 * The first day that a text may mean: 2016-01-01 for 2016.
 * @example firstDay('2016') // '2016-01-01' (the first of the year)
 */
export function firstDay(text: string): string {
  return `${text}-01-01`.slice(0, 10);
}

/**
 * The last day that a text may mean: 2016-12-31 for 2016, so that no cask is called older than it is.
 * @example lastDay('2016-02') // '2016-02-29' (2016 is a leap year)
 */
export function lastDay(text: string): string {
  const [year, month = '12', day] = text.split('-');
  return `${year}-${month}-${day ?? daysIn(Number(year), Number(month))}`;
}

/** Days since a day long ago, of a day in full; 29 February of a year that has none is 1 March. Gregorian calendar. */
function dayNumber(text: string): number {
  const [year, month, day] = text.split('-').map(Number) as [number, number, number];
  const before = year - 1;
  const leapDays = Math.floor(before / 4) - Math.floor(before / 100) + Math.floor(before / 400);
  return 365 * before + leapDays + BEFORE[month - 1]! + (month > 2 && isLeap(year) ? 1 : 0) + day;
}

/** Whole years from one day to another, each in full: a year is over on the day on which it began; below 0 for none yet. */
function completed(from: string, to: string): number {
  return Number(to.slice(0, 4)) - Number(from.slice(0, 4)) - (to.slice(5) < from.slice(5) ? 1 : 0);
}

/**
 * Years from one day to another, each in full, with the part of the year that has begun; 0 for a day still to come.
 * Its whole part is the years that are over, to the day: no year counts before its last day is past.
 * @example yearsBetween('2016-03-14', '2026-03-14') // 10 (to the day)
 */
export function yearsBetween(from: string, to: string): Quantity<'years'> {
  const whole = completed(from, to);
  if (whole < 0) return years(0);
  const birthday = (after: number) =>
    dayNumber(`${String(Number(from.slice(0, 4)) + after).padStart(4, '0')}${from.slice(4)}`);
  const begun = dayNumber(to) - birthday(whole);
  return years(whole + begun / (birthday(whole + 1) - birthday(whole)));
}
