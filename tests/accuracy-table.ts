// The accuracy of the arithmetic as the README's table: a line for each group of printed rows. `node tests/accuracy-table.ts`
import { published, type Group, type Row } from '../src/published/index.ts';

const used = ({ deviation, tolerance }: Row) => (deviation === 0 ? 0 : Math.abs(deviation) / tolerance);
/** To two figures; what is only the machine’s rounding, which may differ elsewhere, is nought. */
const figure = (n: number) => (Math.abs(n) < 1e-9 ? '0' : Number(Math.abs(n).toPrecision(2)).toString());

function lineOf({ title, unit, rows }: Group): string {
  const worst = rows.reduce((a, b) => (used(b) > used(a) ? b : a));
  const standings = [...new Set(rows.map(({ standing }) => standing))].sort().join(', ');
  const off = `${figure(worst.deviation)} of ${figure(worst.tolerance)} allowed`;
  return `| ${title}${unit && `, ${unit}`} | ${rows.length} | ${standings} | ${off} |`;
}

/** Markdown lines: what, how many rows, their standing, and the row that uses most of its tolerance. */
export const accuracyTable = [
  '| what is compared | rows | standing of the rows | worst row |',
  '| --- | --- | --- | --- |',
  ...published.map(lineOf),
];

if (import.meta.main) console.log(accuracyTable.join('\n'));
