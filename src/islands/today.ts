// Today, as the reader's own clock and calendar have it.

/** As 2026-05-14. */
export function today(): string {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()]
    .map((part) => String(part).padStart(2, '0'))
    .join('-');
}

/** A day such as 2026-05-14 in words. */
export const inWords = (day: string): string =>
  new Date(`${day}T12:00:00`).toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });
