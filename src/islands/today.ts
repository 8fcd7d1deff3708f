// Today, as the reader's own clock and calendar have it.
import { months } from '../core/months.ts';

/** As 2026-05-14. */
export function today(): string {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()]
    .map((part) => String(part).padStart(2, '0'))
    .join('-');
}

/** A day such as 2026-05-14 in words: 14 May 2026. */
export function dateInWords(day: string): string {
  const [year, month, date] = day.split('-').map(Number);
  return `${date} ${months[month! - 1]} ${year}`;
}
