// The meter of the reader: how much of each script it finds and matches. `node tests/talk/measure.ts`, with `--all` for each miss.
import { judge, scripts, type Judgement } from './judge.ts';

const percent = (part: number, whole: number) =>
  whole === 0 ? '—' : `${((100 * part) / whole).toFixed(1)} %`;
const sum = (all: readonly Judgement[], of: (each: Judgement) => number) =>
  all.reduce((total, each) => total + of(each), 0);

function row(name: string, all: readonly Judgement[]): string {
  const [quantities, found, kinds] = [sum(all, (j) => j.quantities), sum(all, (j) => j.found), sum(all, (j) => j.kinds)];
  const [figures, matched] = [sum(all, (j) => j.figures), sum(all, (j) => j.matched)];
  const [proposed, wrong, extra] = [sum(all, (j) => j.proposed), sum(all, (j) => j.wrong), sum(all, (j) => j.extra)];
  return [
    name.padEnd(20),
    `${found}/${quantities}`.padStart(9), percent(found, quantities).padStart(8),
    percent(kinds, found).padStart(8),
    `${matched}/${figures}`.padStart(9), percent(matched, figures).padStart(8),
    `${wrong}/${proposed}`.padStart(7), percent(wrong, proposed).padStart(7),
    String(extra).padStart(6),
  ].join(' ');
} // prettier-ignore

const judged = scripts().map((script) => ({ script, judgement: judge(script) }));
const open = judged.filter(({ script }) => !script.heldOut);
const held = judged.filter(({ script }) => script.heldOut);
const only = (some: typeof judged) => some.map(({ judgement }) => judgement);

console.log(`${'script'.padEnd(20)}     found              kinds   matched             false          extra`);
for (const { script, judgement } of judged)
  console.log(row(script.name + (script.heldOut ? ' (held out)' : ''), [judgement]));
console.log(row('all tuned on', only(open)));
console.log(row('all held out', only(held)));
console.log(row('overall', only(judged)));

if (process.argv.includes('--all'))
  for (const { script, judgement } of process.argv.includes('--held') ? held : open)
    for (const miss of judgement.misses) console.log(`${script.name}: ${miss}`);
