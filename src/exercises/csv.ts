// Tables as comma-separated text. Source: RFC 4180, section 2; the mark before it, by which a spreadsheet knows UTF-8: The Unicode Standard, section 23.8.

const MARK = '\ufeff';
/** Where a formula begins, its sign of any width, and behind what cannot be seen: at the start of a cell, or behind a sign at which a spreadsheet may cut a cell in two. */
const FORMULA = /(?<=^|[,;\t\r\n])(?=[\s"\p{Cc}\p{DI}\u2800]*[=+\-@＝＋－＠﹦﹢﹣﹫])/gu;

/** A cell: quoted where it must be; what a spreadsheet would take for a formula gets an apostrophe before it. */
function cell(value: string | number, comma = false): string {
  const text = typeof value === 'string' ? value.replace(FORMULA, "'") : comma ? String(value).replace('.', ',') : String(value); // prettier-ignore
  if (typeof value === 'number') return text;
  return /[",;\t\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** Rows of cells as one text, with the mark of UTF-8. `comma` for spreadsheets whose numbers have a decimal comma: semicolons then stand between cells. */
export const csvOf = (rows: readonly (readonly (string | number)[])[], comma = false): string =>
  MARK + rows.map((row) => `${row.map((each) => cell(each, comma)).join(comma ? ';' : ',')}\r\n`).join(''); // prettier-ignore
