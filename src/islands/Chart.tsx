// A curve, or bars, with the table that says the same.
import { createMemo, For, Index, Show } from 'solid-js';
import type { Chart as ChartData } from '../calculators/define.ts';
import { format } from '../core/format.ts';
import { kinds } from '../core/kinds.ts';
import { Plot, limitInWords as inWords } from './Plot.tsx';

/** The first column along the foot, the second as the curve; all columns in the table. */
export function Chart(props: {
  readonly of: ChartData;
  /** Another thing for each house that is opened: its axes begin anew, and then stand still under the hand. */
  readonly opened?: unknown;
}) {
  const drawn = () => [1, ...(props.of.below === undefined ? [] : [props.of.below])];
  const limits = () => props.of.limits ?? [];
  /** The table, without a row that would print like the one above it. */
  const rows = createMemo(() =>
    props.of.columns[0]!.values.map((_, row) =>
      props.of.columns.map((column) =>
        row < (column.empty ?? 0) ? '' : format(column.values[row]!, column.kind),
      ),
    ).filter((cells, row, all) => row === 0 || cells.join('|') !== all[row - 1]!.join('|')),
  );
  const inUnit = (column: number) => {
    const { label, kind } = props.of.columns[column]!;
    const { unit } = kinds[kind];
    return `${column === 1 ? props.of.caption : label}${unit && `, ${unit}`}`;
  };
  return (
    <figure class="chart">
      <div class="plots">
        <For each={drawn()}>
          {(column) => (
            <>
              <p class="plot-of">{inUnit(column)}</p>
              <Plot of={props.of} column={column} says={inUnit(column)} opened={props.opened} />
            </>
          )}
        </For>
      </div>
      <Show when={limits().length > 0}>
        <figcaption>
          Dashed:{' '}
          {limits()
            .map(({ known, ...limit }) => inWords(props.of, limit) + (known ? ` (${known})` : ''))
            .join('; ')}
          .
        </figcaption>
      </Show>
      <details class="working">
        <summary>The same as a table</summary>
        <table class="series">
          <thead>
            <tr>
              <Index each={props.of.columns}>{(column) => <th scope="col">{column().label}</th>}</Index>
            </tr>
          </thead>
          <tbody>
            <Index each={rows()}>
              {(cells) => (
                <tr>
                  <Index each={cells()}>{(cell) => <td class="number">{cell()}</td>}</Index>
                </tr>
              )}
            </Index>
          </tbody>
        </table>
      </details>
    </figure>
  );
}
