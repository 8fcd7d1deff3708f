// How well the cross-check finds one wrong figure among those quoted: `node tests/reconcile-study.ts [houses]` prints a table.
import { tally, sizes } from './core/planted.ts';

const count = Number(process.argv[2] ?? 1000);
const percent = (part: number, whole: number) =>
  (whole === 0 ? '–' : `${((100 * part) / whole).toFixed(1)} %`).padStart(9);

const kinds = [['about', 12], ['exact', 12], ['exact', 20]] as const; // prettier-ignore
for (const [as, figures] of kinds) {
  console.log(`\n${count} houses, ${figures} figures each, ${as === 'about' ? 'said as “about”' : 'read from the book (“exact”)'}`);
  console.log('one moved by   chi-square  checkable    right figure  right figure  right figure   sound figures  sound figures');
  console.log('               notices     (moved one)  suspect no 1  “disagrees”   in doubt too   “disagrees”    “doubtful”');
  for (const by of sizes) {
    const t = tally(20_000, count, by, as, figures);
    const label = by === 0 ? 'nothing' : `${100 * by} %`;
    console.log(
      [label.padEnd(12), percent(t.noticed, t.houses), percent(t.checkable, t.houses), percent(t.first, t.checkable), percent(t.called, t.checkable), percent(t.called + t.doubted, t.checkable), percent(t.soundCalled, t.sound), percent(t.soundDoubted, t.sound)].join('    ') + (t.refused ? `   (${t.refused} refused)` : '') + (t.unsettled ? `   (${t.unsettled} unsettled)` : ''),
    );
  }
} // prettier-ignore
console.log(
  '\n“Right figure” columns are shares of the houses in which the moved figure can be checked at all.',
);
