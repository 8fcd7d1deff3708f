// The spirit run as a drawn curve, with its cuts to be moved by pointer, touch and keyboard.
import { createMemo, createSignal, For, Show } from 'solid-js';
import type { RunPoint } from '../core/distilling/run.ts';
import { formatNumber as n } from '../core/format.ts';
import type { Line } from '../core/line/line.ts';
import { numberFigures } from '../house/figures.ts';
import { changeFigure, useHouse } from '../house/store.ts';
import { cutHandles, nearestPoint, strengthAt, type CutHandle } from './cut-handles.ts';
import { axisTicks, linePath, span } from './plot.ts';

const [WIDTH, HEIGHT] = [720, 400];
const MARGIN = { left: 52, right: 20, top: 28, bottom: 52 };
const STRONGEST = 90; // % vol at the top of the drawing: stronger than any pot still gives
const FOOT = HEIGHT - MARGIN.bottom;
const TABLE_ROWS = 12;

const parts = {
  foreshots: 'Foreshots',
  heart: 'Heart',
  feints: 'Feints',
  spentLees: 'Left in the still',
} as const;

export default function SpiritRun() {
  const { line } = useHouse();
  const [problem, setProblem] = createSignal<string>();
  const curve = () => line().round.spiritRun.curve;
  const end = () => curve().at(-1)!.volume;
  const x = createMemo(() => span([0, end()], MARGIN.left, WIDTH - MARGIN.right));
  const y = span([0, STRONGEST], FOOT, MARGIN.top);
  const handles = createMemo(() => cutHandles(line()));
  const move = (handle: CutHandle, value: number) => {
    const [low, high] = numberFigures[handle.figure].range;
    setProblem(changeFigure(handle.figure, Math.min(high, Math.max(low, value))));
  };

  return (
    <figure class="run" aria-labelledby="spirit-run-title">
      <h3 id="spirit-run-title">The spirit run, and where it is cut</h3>
      <svg
        class="run-curve"
        viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
        role="group"
        aria-label="Strength at the safe against litres come over, with three cuts"
      >
        <defs>
          <pattern
            id="hatch-foreshots"
            width="6"
            height="6"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45)"
          >
            <line x1="0" y1="0" x2="0" y2="6" class="hatch" />
          </pattern>
          <pattern
            id="hatch-feints"
            width="9"
            height="9"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(-45)"
          >
            <line x1="0" y1="0" x2="0" y2="9" class="hatch" />
          </pattern>
        </defs>
        <Axes end={end()} x={x()} y={y} />
        <For each={areas(line())}>
          {(area) => (
            <>
              <path class={`area ${area.part}`} d={areaPath(curve(), area.from, area.to, x(), y)} />
              <Show when={x()(area.to) - x()(area.from) > 70}>
                <text
                  class="label area-label"
                  x={(x()(area.from) + x()(area.to)) / 2}
                  y={FOOT - 12}
                  text-anchor="middle"
                >
                  {parts[area.part]}
                </text>
              </Show>
            </>
          )}
        </For>
        <path
          class="curve"
          d={linePath(
            curve().map((p) => p.volume),
            curve().map((p) => p.strength),
            x(),
            y,
          )}
        />
        <For each={[0, 1, 2]}>
          {(i) => <Cut handle={handles()[i]!} curve={curve()} x={x()} y={y} end={end()} move={move} />}
        </For>
      </svg>
      <figcaption>
        Move a cut along the curve, or choose it and use the arrow keys. Across: litres come over in one
        round. Up: strength at the safe, % vol.
      </figcaption>
      <p class="cut-report" role="status">
        <Show
          when={problem()}
          fallback={
            handles()
              .map(({ says }) => says)
              .join('; ') + '.'
          }
        >
          <span class="problem">{problem()}</span>
        </Show>
      </p>
      <PartsTable line={line()} />
      <RunTable curve={curve()} />
    </figure>
  );
}

function Axes(props: {
  readonly end: number;
  readonly x: (v: number) => number;
  readonly y: (v: number) => number;
}) {
  return (
    <g class="axis" aria-hidden="true">
      <For each={axisTicks([0, STRONGEST], 9)}>
        {(tick) => (
          <>
            <line
              class="grid"
              x1={MARGIN.left}
              x2={WIDTH - MARGIN.right}
              y1={props.y(tick)}
              y2={props.y(tick)}
            />
            <text class="tick" x={MARGIN.left - 8} y={props.y(tick) + 5} text-anchor="end">
              {tick}
            </text>
          </>
        )}
      </For>
      <For each={axisTicks([0, props.end], 6)}>
        {(tick) => (
          <text class="tick" x={props.x(tick)} y={FOOT + 22} text-anchor="middle">
            {n(tick, 0)}
          </text>
        )}
      </For>
      <text class="label" x={MARGIN.left} y={16}>
        % vol at the safe
      </text>
      <text class="label" x={WIDTH - MARGIN.right} y={HEIGHT - 8} text-anchor="end">
        litres come over
      </text>
    </g>
  );
}

interface CutProps {
  readonly handle: CutHandle;
  readonly curve: readonly RunPoint[];
  readonly x: (volume: number) => number;
  readonly y: (strength: number) => number;
  readonly end: number;
  readonly move: (handle: CutHandle, value: number) => void;
}

function Cut(props: CutProps) {
  // While a cut is dragged the round settles anew and the curve shifts; the pointer keeps to the curve as it was taken hold of.
  let held: { point: (place: { x: number; y: number }) => RunPoint } | undefined;
  const take = (event: PointerEvent & { currentTarget: SVGElement }) => {
    const [curve, x] = [props.curve, props.x];
    held = {
      point: (place) => nearestPoint(curve, place, (p) => ({ x: x(p.volume), y: props.y(p.strength) })),
    };
    event.currentTarget.setPointerCapture(event.pointerId);
    event.preventDefault();
    event.currentTarget.focus();
  };
  const drag = (event: PointerEvent & { currentTarget: SVGElement }) => {
    if (!held) return;
    const box = event.currentTarget.ownerSVGElement!.getBoundingClientRect();
    const scale = WIDTH / box.width;
    props.move(
      props.handle,
      props.handle.valueAt(
        held.point({ x: (event.clientX - box.left) * scale, y: (event.clientY - box.top) * scale }),
      ),
    );
  };
  const drop = () => (held = undefined);
  const press = (event: KeyboardEvent) => {
    const steps = { ArrowRight: 1, ArrowDown: 1, PageDown: 10, ArrowLeft: -1, ArrowUp: -1, PageUp: -10 }[
      event.key
    ];
    if (steps === undefined) return;
    event.preventDefault();
    props.move(props.handle, props.handle.stepped(steps));
  };
  const cx = () => props.x(props.handle.volume);
  const cy = () => props.y(props.handle.strength);
  return (
    <g class={`cut ${props.handle.id}`}>
      <line class="cut-line" x1={cx()} x2={cx()} y1={FOOT} y2={cy()} />
      <g
        class="cut-handle"
        role="slider"
        tabindex="0"
        aria-label={props.handle.label}
        aria-valuemin={0}
        aria-valuemax={Math.round(props.end)}
        aria-valuenow={Math.round(props.handle.volume)}
        aria-valuetext={props.handle.says}
        onPointerDown={take}
        onPointerMove={drag}
        onPointerUp={drop}
        onPointerCancel={drop}
        onKeyDown={press}
      >
        <circle class="cut-reach" cx={cx()} cy={cy()} r="26" />
        <circle class="cut-knob" cx={cx()} cy={cy()} r="9" />
      </g>
    </g>
  );
}

function PartsTable(props: { readonly line: Line }) {
  return (
    <table class="parts">
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
        <For each={Object.keys(parts) as (keyof typeof parts)[]}>
          {(part) => (
            <tr class={part}>
              <th scope="row">{parts[part]}</th>
              <td class="number">{n(props.line[part].volume, 0)}</td>
              <td class="number">{n(props.line[part].strength, 1)}</td>
              <td class="number">{n(props.line[part].alcohol, 1)}</td>
            </tr>
          )}
        </For>
      </tbody>
      <tfoot>
        <tr>
          <th scope="row">Together, the charge</th>
          <td class="number">{n(props.line.charge.volume, 0)}</td>
          <td class="number">{n(props.line.charge.strength, 1)}</td>
          <td class="number">{n(props.line.charge.alcohol, 1)}</td>
        </tr>
      </tfoot>
    </table>
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
            <th scope="col">Come over, L</th>
            <th scope="col">Strength, % vol</th>
            <th scope="col">Still boils at, °C</th>
            <th scope="col">Pure alcohol so far, L</th>
          </tr>
        </thead>
        <tbody>
          <For each={rows()}>
            {(point) => (
              <tr>
                <td class="number">{n(point.volume, 0)}</td>
                <td class="number">{n(point.strength, 1)}</td>
                <td class="number">{n(point.temperature, 1)}</td>
                <td class="number">{n(point.alcohol, 1)}</td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
    </details>
  );
}

/** From and to where along the run each part is taken, L. */
function areas({ foreshots, heart, round }: Line) {
  const ends = foreshots.volume + heart.volume;
  return [
    { part: 'foreshots', from: 0, to: foreshots.volume },
    { part: 'heart', from: foreshots.volume, to: ends },
    { part: 'feints', from: ends, to: round.spiritRun.distillate.volume },
  ] as const;
}

/** The outline of what lies under the curve between two volumes. */
function areaPath(
  curve: readonly RunPoint[],
  from: number,
  to: number,
  x: (v: number) => number,
  y: (v: number) => number,
): string {
  const inside = curve
    .filter(({ volume }) => volume > from && volume < to)
    .map(({ volume, strength }) => [volume, strength] as const);
  const top = [[from, strengthAt(curve, from)] as const, ...inside, [to, strengthAt(curve, to)] as const];
  const points = [[from, 0] as const, ...top, [to, 0] as const];
  return (
    linePath(
      points.map(([v]) => v),
      points.map(([, s]) => s),
      x,
      y,
    ) + 'Z'
  );
}
