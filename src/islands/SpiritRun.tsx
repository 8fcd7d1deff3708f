// The spirit run as a drawn curve, with its cuts to be moved by pointer, touch and keyboard.
import { createEffect, createMemo, createSignal, For, Index, on, Show, untrack } from 'solid-js';
import type { RunPoint } from '../core/distilling/run.ts';
import { formatNumber as n } from '../core/format.ts';
import type { Line } from '../core/line/line.ts';
import { numberFigures } from '../house/figures.ts';
import { whenIdle } from '../house/idle.ts';
import { changeFigure, useHouse } from '../house/store.ts';
import { strengthAt } from '../core/distilling/strength-at.ts';
import { useHouseAtHand } from './at-hand.ts';
import { useAnnouncement } from './announce.ts';
import { cutHandles, type CutHandle } from './cut-handles.ts';
import { axisTicks, linePoints, roundUp, span } from './plot.ts';
import { FOOT, HEIGHT, MARGIN, runParts, STRONGEST, WIDTH } from './run-frame.ts';
import { Cut } from './SpiritRunCut.tsx';
import { RunTables } from './SpiritRunTables.tsx';
import { WhatMoved } from './WhatMoved.tsx';

const cutFigures = [
  'foreshotsShare',
  'foreshotsVolume',
  'foreshotsMinutes',
  'foreshotsStrength',
  'heartEnd',
  'feintsEnd',
] as const;
const TICKS = 6; // along the foot, about

export default function SpiritRun() {
  let island: HTMLElement | undefined;
  const { line } = useHouseAtHand(() => island);
  const [problem, setProblem] = createSignal<string>();
  const curve = () => line().round.spiritRun.curve;
  const end = () => curve().at(-1)!.volume;
  /** Where the axis ends: a round number, so that the curve moves over a scale that stands still. */
  const axisEnd = createMemo(() => roundUp(end(), TICKS));
  const x = createMemo(() => span([0, axisEnd()], MARGIN.left, WIDTH - MARGIN.right));
  const y = span([0, STRONGEST], FOOT, MARGIN.top);
  const handles = createMemo(() => cutHandles(line()));
  const move = (handle: CutHandle, value: number) => {
    const [low, high] = numberFigures[handle.figure].range;
    setProblem(changeFigure(handle.figure, Math.min(high, Math.max(low, value))));
  };
  /** Keys step from where the house stands now, also before the drawing has come into sight and caught up. */
  const now = useHouse();
  const current = (id: CutHandle['id']) => cutHandles(now.line()).find((each) => each.id === id)!;
  const step = (id: CutHandle['id'], steps: number) => move(current(id), current(id).stepped(steps));
  /** Moves a cut to the end of its reach: in ever smaller leaps, until the house takes none. */
  const moveFar = (id: CutHandle['id'], direction: 1 | -1) => {
    for (let steps = 512; steps >= 1;) {
      const before = current(id).volume;
      step(id, direction * steps);
      if (current(id).volume === before) steps /= 2;
    }
    setProblem(undefined);
  };
  /** Words take longer to lay out than lines: they follow right after the frame that shows the cut where it went. */
  const words = createMemo(() => problem() ?? sentenceOf(handles().map(({ says }) => says)));
  const [report, setReport] = createSignal(untrack(words));
  const tell = () => void setReport(untrack(words));
  createEffect(on(words, () => whenIdle(tell, true)));
  // Each cut says where it stands; what the cuts make of the charge is said when they rest.
  useAnnouncement(
    'spirit-run',
    () => [handles(), problem()],
    () => problem() ?? `Heart ${n(line().heart.volume, 0)} L at ${n(line().heart.strength, 1)} % vol.`,
    () => island,
  );

  return (
    <figure ref={island} class="run" aria-labelledby="spirit-run-title">
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
        <Axes end={axisEnd()} x={x()} y={y} />
        <Index each={areas(line())}>
          {(area) => (
            <>
              <polygon
                class={`area ${area().part}`}
                points={areaPoints(curve(), area().from, area().to, x(), y)}
              />
              <Show when={x()(area().to) - x()(area().from) > 70}>
                <text
                  class="label area-label"
                  x={(x()(area().from) + x()(area().to)) / 2}
                  y={FOOT - 12}
                  text-anchor="middle"
                >
                  {runParts[area().part]}
                </text>
              </Show>
            </>
          )}
        </Index>
        <polyline
          class="curve"
          points={linePoints(
            curve().map((p) => p.volume),
            curve().map((p) => p.strength),
            x(),
            y,
          )}
        />
        <For each={[0, 1, 2]}>
          {(i) => (
            <Cut
              handle={handles()[i]!}
              curve={curve()}
              x={x()}
              y={y}
              end={end()}
              move={move}
              step={step}
              moveFar={moveFar}
            />
          )}
        </For>
      </svg>
      <figcaption>
        Move a cut along the curve, or choose it and use the arrow, page, Home and End keys. Across: litres
        come over in one round. Up: strength at the safe, % vol.
      </figcaption>
      <p class="cut-report" classList={{ problem: problem() !== undefined }}>
        {report()}
      </p>
      <WhatMoved of={cutFigures} />
      <RunTables />
    </figure>
  );
}

const sentenceOf = ([first, ...others]: readonly string[]) =>
  `${[first!.charAt(0).toUpperCase() + first!.slice(1), ...others].join('; ')}.`;

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
      <For each={axisTicks([0, props.end], TICKS)}>
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
function areaPoints(
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
  return linePoints(
    points.map(([v]) => v),
    points.map(([, s]) => s),
    x,
    y,
  );
}
