// Rows of cells from a text with commas, semicolons or tabs between them. Source: RFC 4180, section 2, with any of the three.

export const separators = { ',': 'commas', ';': 'semicolons', '\t': 'tabs' } as const;
export type Separator = keyof typeof separators;

/**
 * Cells of every row; a cell in double quotes may hold separators and line ends, and two quotes for one. Empty rows are rows.
 * @example rowsOf('a,"b,c"\n1,2', ',') // [['a', 'b,c'], ['1', '2']] (RFC 4180: quotes hold a comma)
 */
export function rowsOf(text: string, separator: Separator): readonly (readonly string[])[] {
  const rows: string[][] = [];
  let row: string[] = [];
  let at = text.startsWith('\ufeff') ? 1 : 0;
  while (at < text.length || row.length > 0) {
    let cell = '';
    if (text[at] === '"') {
      let end = at + 1;
      while (end < text.length && (text[end] !== '"' || text[end + 1] === '"'))
        end += text[end] === '"' ? 2 : 1;
      cell = text.slice(at + 1, end).replaceAll('""', '"');
      at = end + 1;
    }
    let end = at;
    while (end < text.length && text[end] !== separator && text[end] !== '\n' && text[end] !== '\r') end++;
    row.push(cell + text.slice(at, end));
    at = end;
    if (text[at] === separator) {
      at++;
      continue;
    }
    rows.push(row);
    row = [];
    at += text.startsWith('\r\n', at) ? 2 : 1;
  }
  return rows;
}

/**
 * What separates the cells of a text: the sign by which its first row has the most cells.
 * @example separatorOf('a;b;c') // ';' (it cuts most cells)
 */
export function separatorOf(text: string): Separator {
  const signs = Object.keys(separators) as Separator[];
  const first = text.slice(0, 10_000);
  const cells = (sign: Separator) => rowsOf(first, sign)[0]?.length ?? 0;
  return signs.reduce((best, sign) => (cells(sign) > cells(best) ? sign : best));
}
