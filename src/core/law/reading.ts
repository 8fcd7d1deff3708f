// How old the reading of a law is: laws change, and a row read long ago is no longer to be trusted.
import { months } from '../months.ts';

const DAY = 86_400_000; // ms in a day
const YEAR = 365; // days after which a row is to be read again; this handbook's own choice

/** Whole days from one day to another, both as 2026-11-28. */
const daysBetween = (from: string, to: string) => (Date.parse(to) - Date.parse(from)) / DAY;

/** The rows last read more than 365 days before `today`, as 2026-11-28: each by its name and the day it was read. */
export function readLongAgo(
  rows: readonly { readonly name: string; readonly readOn: string }[],
  today: string,
): readonly string[] {
  return rows
    .filter(({ readOn }) => daysBetween(readOn, today) > YEAR)
    .map(({ name, readOn }) => `${name}, read on ${dayInWords(readOn)}`);
}

/** A year, a month or a day in words: 2025, January 2025, 19 January 2025. */
export function dayInWords(iso: string): string {
  const [year, month, day] = iso.split('-');
  return [day && String(Number(day)), month && months[Number(month) - 1], year].filter(Boolean).join(' ');
}
