// What the cuts make of a mash: the heart and what goes round with it, as they were and as they are.
import { createMemo, For } from 'solid-js';
import { formatNumber as n } from '../core/format.ts';
import type { Line } from '../core/line/line.ts';
import type { FigureName } from '../house/figures.ts';
import { lineOf } from '../house/line-of.ts';
import { lastTrial } from '../browser/house-store.ts';

const rows: readonly (readonly [id: string, what: string, of: (line: Line) => string])[] = [
  ['heart-volume', 'Heart, L', ({ heart }) => n(heart.volume, 0)],
  ['heart-strength', 'Heart, % vol', ({ heart }) => n(heart.strength, 1)],
  ['heart-alcohol', 'Heart, L of pure alcohol', ({ heart }) => n(heart.alcohol, 1)],
  ['foreshots-volume', 'Foreshots, L', ({ foreshots }) => n(foreshots.volume, 0)],
  ['feints-volume', 'Feints, L', ({ feints }) => n(feints.volume, 0)],
];

export function SpiritRunFigures(props: { readonly line: Line; readonly of: readonly FigureName[] }) {
  /** The line before the change that the reader is making here. */
  const before = createMemo(() => {
    const last = lastTrial();
    return last && props.of.includes(last.figure) && last.before !== last.after
      ? lineOf(last.before)
      : undefined;
  });
  return (
    <>
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
            {([id, what, of]) => {
              const now = () => of(props.line);
              const was = () => (before() ? of(before()!) : now());
              return (
                <tr class={id}>
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
      <p class="meaning">
        Litres do not quite add up: spirit and water take up less room once mixed. Litres of pure alcohol do.
      </p>
    </>
  );
}
