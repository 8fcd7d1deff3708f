// How old the reading of a law is: laws change, and a row read more than a year ago is to be read again.
import { months } from '../months.ts';

/** The same day a year earlier, as text that sorts; 29 February sorts between 28 February and 1 March. */
const yearBefore = (day: string) => `${Number(day.slice(0, 4)) - 1}${day.slice(4)}`;

/**
 * The rows last read more than a year before `today`, as 2026-11-28: each by its name and the day it was read.
 * @example readLongAgo([{ name: 'Act', readOn: '2025-01-19' }, { name: 'Order', readOn: '2026-01-19' }], '2026-11-28') // ['Act, read on 19 January 2025'] (the other was read within the year)
 */
export function readLongAgo(
  rows: readonly { readonly name: string; readonly readOn: string }[],
  today: string,
): readonly string[] {
  return rows
    .filter(({ readOn }) => readOn < yearBefore(today))
    .map(({ name, readOn }) => `${name}, read on ${dayInWords(readOn)}`);
}

/**
 * A year, a month or a day in words: 2025, January 2025, 19 January 2025.
 * @example dayInWords('2025-01-19') // '19 January 2025' (the same day)
 */
export function dayInWords(iso: string): string {
  const [year, month, day] = iso.split('-');
  return [day && String(Number(day)), month && months[Number(month) - 1], year].filter(Boolean).join(' ');
}
