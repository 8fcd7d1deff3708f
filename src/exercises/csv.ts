// Tables as comma-separated text. Source: RFC 4180, section 2; the mark before it, by which a spreadsheet knows UTF-8: The Unicode Standard, section 23.8.

const MARK = '\ufeff';
/** Where a formula begins, its sign of any width, and behind what cannot be seen: at the start of a cell, or behind a sign at which a spreadsheet may cut a cell in two. */
const FORMULA = /(?<=^|[,;\t\r\n])(?=[\s"\p{Cc}\p{DI}\u2800]*[=+\-@＝＋－＠﹦﹢﹣﹫])/gu;

/** A cell: quoted where it must be; what a spreadsheet would take for a formula gets an apostrophe before it. */
function cell(value: string | number): string {
  const text = typeof value === 'string' ? value.replace(FORMULA, "'") : String(value);
  return /[",;\t\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** Rows of cells as one text, with the mark of UTF-8. */
export const csvOf = (rows: readonly (readonly (string | number)[])[]): string =>
  MARK + rows.map((row) => `${row.map(cell).join(',')}\r\n`).join('');
