// Measures the cross-check on houses of another hand's physics, prints it, and keeps it for the accuracy page: `npm run planted`
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { halves, moves, SUBSET, tally } from './judge.ts';

const percent = (part: number, whole: number) => (whole === 0 ? '–' : `${((100 * part) / whole).toFixed(1)} %`).padStart(8); // prettier-ignore

const measured = Object.fromEntries(
  Object.entries(halves).map(([half, talks]) => [half, moves.map((by) => tally(talks, by))]),
);
for (const [half, rows] of Object.entries(measured)) {
  console.log(`\n${halves[half as keyof typeof halves].length} talks of fourteen figures, ${half}`);
  console.log('one moved by   true ones called   called or doubted   named first   can be checked');
  for (const { by, talks, trueCalled, noticed, checkable, first } of rows)
    console.log(
      `${(by === 0 ? 'nothing' : `${100 * by} %`).padEnd(12)} ${percent(trueCalled, talks).padStart(16)} ${percent(noticed, talks).padStart(19)} ${percent(first, by === 0 ? 0 : talks).padStart(15)} ${percent(checkable, by === 0 ? 0 : talks).padStart(14)}`,
    );
}
const subset = Object.fromEntries(
  Object.entries(halves).map(([half, talks]) => [half, moves.map((by) => tally(talks.slice(0, SUBSET), by))]),
);
const kept = join(import.meta.dirname, '..', '..', 'src', 'published', 'measured', 'study.json');
writeFileSync(kept, `${JSON.stringify({ ...measured, subset }, null, 1)}\n`);
