// Tables as comma-separated text. Source: RFC 4180, section 2.

/** A cell: quoted where it must be; a text that a spreadsheet would take for a formula gets an apostrophe before it. */
function cell(value: string | number): string {
  const text = typeof value === 'string' && /^[=+\-@\t\r]/.test(value) ? `'${value}` : String(value);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** Rows of cells as one text. */
export const csvOf = (rows: readonly (readonly (string | number)[])[]): string =>
  rows.map((row) => `${row.map(cell).join(',')}\r\n`).join('');
