// The spirit run's curve as a table, point by point; it follows once the curve is drawn.
import { Index } from 'solid-js';
import { formatNumber as n } from '../core/format.ts';
import { useHouseWhenIdle } from './house-when-idle.ts';

const TABLE_ROWS = 12;

export function SpiritRunTable() {
  let table: HTMLDetailsElement | undefined;
  const { line } = useHouseWhenIdle(() => table);
  const curve = () => line().round.spiritRun.curve;
  const rows = () =>
    Array.from(
      { length: TABLE_ROWS + 1 },
      (_, i) => curve()[Math.round((i * (curve().length - 1)) / TABLE_ROWS)]!,
    );
  return (
    <details class="working" ref={table}>
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
