// Tables as comma-separated text. Source: RFC 4180, section 2.

/** Where a formula begins: at the start of a cell, or behind a sign at which a spreadsheet may cut a cell in two. */
const FORMULA = /(?<=^|[;\t\r\n])(?=[\s"]*[=+\-@＝＋－＠])/g;

/** A cell: quoted where it must be; what a spreadsheet would take for a formula gets an apostrophe before it. */
function cell(value: string | number): string {
  const text = typeof value === 'string' ? value.replace(FORMULA, "'") : String(value);
  return /[",;\t\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** Rows of cells as one text. */
export const csvOf = (rows: readonly (readonly (string | number)[])[]): string =>
  rows.map((row) => `${row.map(cell).join(',')}\r\n`).join('');
