// A curve with the table that says the same.
import { createMemo, For, Index } from 'solid-js';
import type { Chart as ChartData } from '../calculators/define.ts';
import { format, formatWorking } from '../core/format.ts';
import { kinds } from '../core/kinds.ts';
import { axisTicks, linePoints, span } from './plot.ts';

const [WIDTH, HEIGHT] = [640, 308];
const MARGIN = { right: 16, top: 16, bottom: 52 };
const CHARACTER = 12.5; // widest mean width of a figure in the margin, as on a narrow screen

/** The first column along the foot, the second as the curve; all columns in the table. */
export function Chart(props: { readonly of: ChartData }) {
  const foot = () => props.of.columns[0]!;
  const curve = () => props.of.columns[1]!;
  const points = () => props.of.points ?? [];
  const across = createMemo(() => [...foot().values, ...points().map(([at]) => at)]);
  const up = createMemo(() => padded([...curve().values, ...points().map(([, value]) => value)]));
  /** The table, without a row that would print like the one above it. */
  const rows = () =>
    foot()
      .values.map((_, row) =>
        props.of.columns.map((column) =>
          row < (column.empty ?? 0) ? '' : format(column.values[row]!, column.kind),
        ),
      )
      .filter((cells, row, all) => row === 0 || cells.join('|') !== all[row - 1]!.join('|'));
  const left = createMemo(() =>
    Math.max(56, 12 + CHARACTER * Math.max(...axisTicks(up(), 5).map((tick) => formatWorking(tick).length))),
  );
  const x = createMemo(() => span(across(), left(), WIDTH - MARGIN.right));
  const y = createMemo(() => span(up(), HEIGHT - MARGIN.bottom, MARGIN.top));
  return (
    <figure class="chart">
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={props.of.caption}>
        <g class="axis">
          <For each={axisTicks(across(), 8)}>
            {(tick) => (
              <text class="tick" x={x()(tick)} y={HEIGHT - MARGIN.bottom + 20} text-anchor="middle">
                {formatWorking(tick)}
              </text>
            )}
          </For>
          <For each={axisTicks(up(), 5)}>
            {(tick) => (
              <>
                <line class="grid" x1={left()} x2={WIDTH - MARGIN.right} y1={y()(tick)} y2={y()(tick)} />
                <text class="tick" x={left() - 8} y={y()(tick) + 4} text-anchor="end">
                  {formatWorking(tick)}
                </text>
              </>
            )}
          </For>
          <text class="label" x={WIDTH - MARGIN.right} y={HEIGHT - 6} text-anchor="end">
            {foot().label}
          </text>
        </g>
        <polyline class="curve" points={linePoints(foot().values, curve().values, x(), y())} />
        <Index each={points()}>
          {(point) => <circle class="reading" cx={x()(point()[0])} cy={y()(point()[1])} r="5" />}
        </Index>
      </svg>
      <figcaption>
        {props.of.caption}
        {kinds[curve().kind].unit && `, ${kinds[curve().kind].unit}`}
      </figcaption>
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

/** The values with a little room above and below, so that a level curve still shows. */
function padded(values: readonly number[]): readonly number[] {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const room = Math.max((high - low) * 0.1, Math.abs(high) * 0.01, 0.1);
  return [low - room, high + room];
}
