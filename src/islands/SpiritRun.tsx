// The spirit run as a drawn curve: the gravity behind it, its cuts to be moved by finger, pointer and keyboard, and the heart that comes of them.
import { createMemo, createSignal, For, Index, Show } from 'solid-js';
import type { RunPoint } from '../core/distilling/run.ts';
import { formatNumber as n } from '../core/format.ts';
import type { Line } from '../core/line/line.ts';
import { numberFigures } from '../house/figures.ts';
import { changeFigure, keepFigures } from '../browser/change-figure.ts';
import { useHouse } from '../browser/house-store.ts';
import { strengthAt } from '../core/distilling/strength-at.ts';
import { useHouseWhenIdle } from './house-when-idle.ts';
import { useAnnouncement } from './announce.ts';
import { cutHandles, type CutHandle } from './cut-handles.ts';
import { NumberField } from './NumberField.tsx';
import { axisTicks, linePoints, roundUp, scaleOver } from './plot.ts';
import { RUN_FOOT, RUN_HEIGHT, RUN_MARGIN, runParts, STRONGEST_SHOWN, RUN_WIDTH } from './run-frame.ts';
import { SpiritRunCut } from './SpiritRunCut.tsx';
import { SpiritRunFigures } from './SpiritRunFigures.tsx';
import { SpiritRunTable } from './SpiritRunTable.tsx';
import { WhatMoved } from './WhatMoved.tsx';

const moves = [
  'originalGravity',
  'foreshotsShare',
  'foreshotsVolume',
  'foreshotsMinutes',
  'foreshotsStrength',
  'heartEnd',
  'feintsEnd',
] as const;
const TICKS = 4; // along the foot, about: as many as fit with letters of twice the size
const ROOM = { foreshots: 230, heart: 130, feints: 150 }; // how wide a part is that takes its name, in letters of twice the size
const ASIDE = 24; // from a narrow part to its name
const gravity = numberFigures.originalGravity;
/** What a higher gravity does to the alcohol, by what the house holds. */
const ofGravity = {
  efficiency: 'A higher gravity makes less wort from the same malt, so the alcohol hardly changes.',
  readings: 'The volume of the wort stays as measured, so a higher gravity means more alcohol.',
} as const;

export default function SpiritRun() {
  let island: HTMLElement | undefined;
  const { house, opened, line } = useHouseWhenIdle(() => island);
  const [problem, setProblem] = createSignal<string>();
  const [held, setHeld] = createSignal<{ readonly id: CutHandle['id']; readonly point?: RunPoint }>();
  /** The line that is drawn: while a cut is held, the run as it stood when it was taken hold of. */
  const drawn = createMemo<Line>((was) => (held() && was ? was : line()));
  const curve = () => drawn().round.spiritRun.curve;
  const end = () => curve().at(-1)!.volume;
  /** Where the axis ends: a round number that stays while a cut is held, and until the run has outgrown it, fills less than half, or is another house’s. */
  const axis = createMemo<{ readonly end: number; readonly opened: unknown } | undefined>((was) => {
    const isSame = was !== undefined && was.opened === opened();
    const stays = isSame && (held() || (end() <= was.end && end() > was.end / 2));
    return stays ? was : { end: roundUp(end(), TICKS), opened: opened() };
  });
  const axisEnd = () => axis()!.end;
  const x = createMemo(() => scaleOver([0, axisEnd()], RUN_MARGIN.left, RUN_WIDTH - RUN_MARGIN.right));
  const y = scaleOver([0, STRONGEST_SHOWN], RUN_FOOT, RUN_MARGIN.top);
  /** The cuts as they are drawn: a held one stands where it is held, and says where the house has it. */
  const handles = createMemo(() => {
    const now = held();
    if (!now) return cutHandles(line());
    return cutHandles(drawn()).map((each, i) => {
      const { says, value } = cutHandles(line())[i]!;
      const place =
        each.id === now.id && now.point ? { volume: now.point.volume, strength: now.point.strength } : {};
      return { ...each, ...place, says, value };
    });
  });
  const move = (handle: CutHandle, value: number) => {
    const [low, high] = numberFigures[handle.figure].range;
    setProblem(changeFigure(handle.figure, Math.min(high, Math.max(low, value)), undefined, true));
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
  // Each cut says where it stands; what the cuts make of the charge is said when they rest.
  useAnnouncement(
    'spirit-run',
    () => [handles(), problem()],
    () => problem() ?? `Heart ${n(line().heart.volume, 0)} L at ${n(line().heart.strength, 1)} % vol.`,
    () => island,
  );

  return (
    <figure ref={island} class="run" aria-labelledby="spirit-run-title">
      <h3 id="spirit-run-title">The spirit run and its cuts</h3>
      <form class="inputs" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
        <NumberField
          id="run-originalGravity"
          label={gravity.label}
          kind={gravity.kind}
          range={gravity.range}
          step={gravity.step}
          value={house().originalGravity}
          among={house()}
          take={(value) => changeFigure('originalGravity', value)}
          keep={keepFigures}
          meaning={ofGravity[house().holds]}
          ofHouse
        />
      </form>
      <p class="axis-name" aria-hidden="true">
        Strength at the safe, % vol
      </p>
      <svg
        class="run-curve"
        viewBox={`0 0 ${RUN_WIDTH} ${RUN_HEIGHT}`}
        role="group"
        aria-label="Strength at the safe against litres come over, with three cuts"
      >
        <defs>
          <clipPath id="run-frame">
            <rect x="0" y="0" width={RUN_WIDTH} height={RUN_HEIGHT} />
          </clipPath>
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
        <g clip-path="url(#run-frame)">
          <Index each={areas(handles())}>
            {(area) => (
              <polygon
                class={`area ${area().part}`}
                points={areaPoints(curve(), area().from, area().to, x(), y)}
              />
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
        </g>
        <Index each={areas(handles())}>
          {(area) => <PartName part={area().part} from={x()(area().from)} to={x()(area().to)} />}
        </Index>
        <For each={[0, 1, 2]}>
          {(i) => (
            <SpiritRunCut
              handle={handles()[i]!}
              curve={curve()}
              x={x()}
              y={y}
              hold={(id, point) => setHeld(id && { id, ...(point && { point }) })}
              move={move}
              step={step}
              moveFar={moveFar}
            />
          )}
        </For>
      </svg>
      <p class="axis-name along" aria-hidden="true">
        Litres come over
      </p>
      <SpiritRunFigures line={line()} of={moves} />
      <Show when={problem()}>
        <p class="problem">{problem()}</p>
      </Show>
      <WhatMoved of={moves} brief />
      <figcaption>Drag a cut, or select it and use the arrow, Page, Home and End keys.</figcaption>
      <SpiritRunTable />
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
      <For each={axisTicks([0, STRONGEST_SHOWN], 5)}>
        {(tick) => (
          <>
            <line
              class="grid"
              x1={RUN_MARGIN.left}
              x2={RUN_WIDTH - RUN_MARGIN.right}
              y1={props.y(tick)}
              y2={props.y(tick)}
            />
            <text class="tick" x={RUN_MARGIN.left - 8} y={props.y(tick)} dy="0.35em" text-anchor="end">
              {tick}
            </text>
          </>
        )}
      </For>
      <For each={axisTicks([0, props.end], TICKS)}>
        {(tick) => (
          <text
            class="tick"
            x={tick === props.end ? RUN_WIDTH : props.x(tick)}
            y={RUN_FOOT + 6}
            dy="1em"
            text-anchor={tick === props.end ? 'end' : 'middle'}
          >
            {n(tick, 0)}
          </text>
        )}
      </For>
    </g>
  );
}

/** The name of a part within it, or beside it where it is too narrow for its name. */
function PartName(props: { readonly part: keyof typeof ROOM; readonly from: number; readonly to: number }) {
  const middle = () => (props.from + props.to) / 2;
  const isIn = () => props.to - props.from > ROOM[props.part];
  const aside = () => (props.to < RUN_WIDTH / 2 ? props.to + ASIDE : props.from - ASIDE);
  return (
    <Show
      when={isIn()}
      fallback={
        <g aria-hidden="true">
          <line class="leader" x1={middle()} x2={aside()} y1={RUN_FOOT / 2} y2={RUN_FOOT / 2} />
          <circle class="leader-end" cx={middle()} cy={RUN_FOOT / 2} r="4" />
          <text
            class="label"
            x={aside()}
            y={RUN_FOOT / 2}
            dx={props.to < RUN_WIDTH / 2 ? 6 : -6}
            dy="0.35em"
            text-anchor={props.to < RUN_WIDTH / 2 ? 'start' : 'end'}
          >
            {runParts[props.part]}
          </text>
        </g>
      }
    >
      <text class="label" x={middle()} y={RUN_FOOT - 12} text-anchor="middle">
        {runParts[props.part]}
      </text>
    </Show>
  );
}

/** From and to where along the run each part is taken, L, by its cuts. */
function areas(cuts: readonly CutHandle[]) {
  const [begins, ends, end] = cuts.map(({ volume }) => volume) as [number, number, number];
  return [
    { part: 'foreshots', from: 0, to: begins },
    { part: 'heart', from: begins, to: ends },
    { part: 'feints', from: ends, to: end },
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
