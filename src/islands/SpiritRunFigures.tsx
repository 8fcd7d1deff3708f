// What the cuts make of a mash: the heart, what goes round with it and a year’s alcohol, as they were and as they are.
import { createMemo, For } from 'solid-js';
import { formatNumber as n } from '../core/format.ts';
import { mashesIn } from '../core/line/ledger.ts';
import type { Line } from '../core/line/line.ts';
import type { FigureName } from '../house/figures.ts';
import { lineOf } from '../house/line-of.ts';
import { lastTrial } from '../house/store.ts';

const rows: readonly (readonly [what: string, of: (line: Line) => string])[] = [
  ['Heart, L', ({ heart }) => n(heart.volume, 0)],
  ['Heart, % vol', ({ heart }) => n(heart.strength, 1)],
  ['Heart, L of pure alcohol', ({ heart }) => n(heart.alcohol, 1)],
  ['Feints, L', ({ feints }) => n(feints.volume, 0)],
  ['Pure alcohol in a year, L', (line) => n(line.heart.alcohol * mashesIn('year', line), 0)],
];

export function RunFigures(props: { readonly line: Line; readonly of: readonly FigureName[] }) {
  /** The line before the change that the reader is making here. */
  const before = createMemo(() => {
    const last = lastTrial();
    return last && props.of.includes(last.figure) && last.before !== last.after
      ? lineOf(last.before)
      : undefined;
  });
  return (
    <table class="run-figures">
      <thead>
        <tr>
          <th scope="col">One mash</th>
          <th scope="col">was</th>
          <th scope="col">now</th>
        </tr>
      </thead>
      <tbody>
        <For each={rows}>
          {([what, of]) => {
            const now = () => of(props.line);
            const was = () => (before() ? of(before()!) : now());
            return (
              <tr>
                <th scope="row">{what}</th>
                <td class="number">{was()}</td>
                <td class="number" classList={{ moved: was() !== now() }}>
                  {now()}
                </td>
              </tr>
            );
          }}
        </For>
      </tbody>
    </table>
  );
}
