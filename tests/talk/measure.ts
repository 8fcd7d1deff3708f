// The meter of the reader, by authors left out: how much of their talks it finds and matches, and how honest its chances are. `npm run talk`, with `-- --all` for each miss; what it tells is kept for the accuracy page.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Judgement } from './judge.ts';
import { leftOut, neverLearnt, type LeftOut } from './left-out.ts';

export interface Told {
  readonly author: string;
  readonly talks: number;
  readonly quantities: number;
  readonly found: number;
  readonly figures: number;
  readonly matched: number;
  readonly proposed: number;
  readonly wrong: number;
  readonly extra: number;
}

const sum = (all: readonly LeftOut[], of: (each: Judgement) => number) =>
  all.reduce((total, { judgement }) => total + of(judgement), 0);
const told = (author: string, all: readonly LeftOut[]): Told => ({
  author,
  talks: all.length,
  quantities: sum(all, (j) => j.quantities),
  found: sum(all, (j) => j.found),
  figures: sum(all, (j) => j.figures),
  matched: sum(all, (j) => j.matched),
  proposed: sum(all, (j) => j.proposed),
  wrong: sum(all, (j) => j.wrong),
  extra: sum(all, (j) => j.extra),
});

/** Of the chances told, by tenths: how many, what they were on average, and how often they were right. */
function reliability(all: readonly LeftOut[]) {
  const chances = all.flatMap(({ judgement }) => judgement.chances);
  const tenths = Array.from({ length: 10 }, (_, i) => {
    const within = chances.filter(({ chance }) => Math.min(9, Math.floor(10 * chance)) === i);
    const mean = within.reduce((total, { chance }) => total + chance, 0) / Math.max(1, within.length);
    const right = within.filter((each) => each.right).length / Math.max(1, within.length);
    return { from: i / 10, count: within.length, chance: Number(mean.toFixed(3)), right: Number(right.toFixed(3)) };
  });
  const error = tenths.reduce((total, { count, chance, right }) => total + (count / chances.length) * Math.abs(chance - right), 0);
  return { tenths: tenths.filter(({ count }) => count > 0), error: Number(error.toFixed(4)) };
} // prettier-ignore

/** Prints what talks came to, and keeps it for the accuracy page. */
export function tell(all: readonly LeftOut[], unseen: readonly LeftOut[]): void {
  const authors = [...new Set(all.map(({ script }) => script.author))];
  const rows = authors.map((author) => told(author, all.filter(({ script }) => script.author === author))); // prettier-ignore
  const whole = told('all', all);
  const never = told('never learnt from', unseen);
  const { tenths, error } = reliability(all);

  const percent = (part: number, of: number) =>
    (of === 0 ? '—' : `${((100 * part) / of).toFixed(1)} %`).padStart(8);
  console.log('left out           found            matched            false         extra');
  for (const row of [...rows, whole, never])
    console.log(row.author.padEnd(12), `${row.found}/${row.quantities}`.padStart(10), percent(row.found, row.quantities), `${row.matched}/${row.figures}`.padStart(10), percent(row.matched, row.figures), `${row.wrong}/${row.proposed}`.padStart(9), percent(row.wrong, row.proposed), String(row.extra).padStart(6)); // prettier-ignore
  console.log(`chances: ${tenths.map(({ count, chance, right }) => `${chance.toFixed(2)} right ${right.toFixed(2)} of ${count}`).join('; ')}; expected calibration error ${error}`); // prettier-ignore

  writeFileSync(join(import.meta.dirname, '..', '..', 'src', 'published', 'measured', 'talks.json'), `${JSON.stringify({ rows, whole, never, tenths, error }, undefined, 2)}\n`); // prettier-ignore
  if (process.argv.includes('--all'))
    for (const { script, judgement } of all) for (const miss of judgement.misses) console.log(`${script.name}: ${miss}`); // prettier-ignore
} // prettier-ignore

if (import.meta.main) tell(leftOut(), neverLearnt());
