// The spirit run as tables: what the cuts make of the charge, and the curve point by point; they follow once the curve is drawn.
import { For, Index, Show } from 'solid-js';
import type { RunPoint } from '../core/distilling/run.ts';
import { formatNumber as n } from '../core/format.ts';
import type { Line } from '../core/line/line.ts';
import { useHouseAtHand } from './at-hand.ts';
import { runParts, type RunPart } from './run-frame.ts';

const TABLE_ROWS = 12;

export function RunTables() {
  let table: HTMLTableElement | undefined;
  const { line } = useHouseAtHand(() => table);
  return (
    <>
      <PartsTable line={line()} ref={table} />
      <RunTable curve={line().round.spiritRun.curve} />
    </>
  );
}

function PartsTable(props: { readonly line: Line; readonly ref: HTMLTableElement | undefined }) {
  const more = () =>
    (Object.keys(runParts) as RunPart[]).reduce((sum, part) => sum + props.line[part].volume, 0) -
    props.line.charge.volume;
  return (
    <>
      <table class="parts" ref={props.ref}>
        <caption>What the cuts make of the charge</caption>
        <thead>
          <tr>
            <th scope="col">Part</th>
            <th scope="col">Volume, L</th>
            <th scope="col">Strength, % vol</th>
            <th scope="col">Pure alcohol, L</th>
          </tr>
        </thead>
        <tbody>
          <For each={Object.keys(runParts) as RunPart[]}>
            {(part) => (
              <tr class={part}>
                <th scope="row">{runParts[part]}</th>
                <td class="number">{n(props.line[part].volume, 0)}</td>
                <td class="number">{n(props.line[part].strength, 1)}</td>
                <td class="number">{n(props.line[part].alcohol, 1)}</td>
              </tr>
            )}
          </For>
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">The charge</th>
            <td class="number">{n(props.line.charge.volume, 0)}</td>
            <td class="number">{n(props.line.charge.strength, 1)}</td>
            <td class="number">{n(props.line.charge.alcohol, 1)}</td>
          </tr>
        </tfoot>
      </table>
      <Show when={more() >= 0.5}>
        <p class="note">
          Caught apart, the parts measure {n(more(), 0)} L more than the charge: spirit and water shrink when
          they mix. Litres on the curve are counted as if all stood in one vessel. Only the pure alcohol adds
          up.
        </p>
      </Show>
    </>
  );
}

function RunTable(props: { readonly curve: readonly RunPoint[] }) {
  const rows = () =>
    Array.from(
      { length: TABLE_ROWS + 1 },
      (_, i) => props.curve[Math.round((i * (props.curve.length - 1)) / TABLE_ROWS)]!,
    );
  return (
    <details class="working">
      <summary>The curve as a table</summary>
      <table class="series">
        <thead>
          <tr>
            <th scope="col">Over, L</th>
            <th scope="col">Strength, % vol</th>
            <th scope="col">Boils at, °C</th>
            <th scope="col">Alcohol so far, L</th>
          </tr>
        </thead>
        <tbody>
          <Index each={rows()}>
            {(point) => (
              <tr>
                <td class="number">{n(point().volume, 0)}</td>
                <td class="number">{n(point().strength, 1)}</td>
                <td class="number">{n(point().temperature, 1)}</td>
                <td class="number">{n(point().alcohol, 1)}</td>
              </tr>
            )}
          </Index>
        </tbody>
      </table>
    </details>
  );
}
