// The meter: how far the handbook's arithmetic is from every printed row. `node tests/accuracy.ts`, with `--all` for each row.
import { published, type Row } from '../src/published/index.ts';

const figure = (n: number) => (n === 0 ? '0' : Number(n.toPrecision(3)).toString());
/** How much of its tolerance a row uses; a row that allows nothing uses all of it when it is off at all. */
const used = ({ deviation, tolerance }: Row) => (deviation === 0 ? 0 : Math.abs(deviation) / tolerance);

function describe(row: Row): string {
  const distance = `${figure(row.deviation)} of ${figure(row.tolerance)} allowed`;
  return `${row.what}: printed ${figure6(row.printed)}, computed ${figure6(row.computed)}, ${distance}`;
}
function figure6(n: number): string {
  return Number(n.toPrecision(7)).toString();
}

for (const { title, unit, rows } of published) {
  const standings = [...new Set(rows.map((row) => row.standing))].join(', ');
  const worst = rows.reduce((a, b) => (used(b) > used(a) ? b : a));
  console.log(`\n${title} (${unit}): ${rows.length} rows, ${standings}`);
  console.log(`  worst  ${describe(worst)}`);
  console.log(`         ${worst.reason}`);
  console.log(`         ${worst.source}`);
  if (process.argv.includes('--all'))
    for (const row of rows) console.log(`  ${describe(row)} [${row.standing}]`);
}

const all = published.flatMap((group) => group.rows);
console.log(
  `\n${all.length} rows, ${all.filter((row) => !(used(row) <= 1)).length} outside their tolerance.`,
);
