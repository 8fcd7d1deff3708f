// One column of a chart against the first: every place in parts of the drawing, every letter in the size of the text.
import { createMemo, For, Index, Show } from 'solid-js';
import type { Chart } from '../calculators/define.ts';
import { format, formatWorking } from '../core/format.ts';
import type { KindName } from '../core/kinds.ts';
import { linePoints, scaleOver } from './plot.ts';
import { axisMarks, steadyEnds, type AxisEnds } from './plot-axis.ts';

const [ACROSS, UP] = [8, 5]; // marks on the two axes, about
const CHARACTER = 0.56; // em: widest mean width of a figure
const FULL = 1000; // a side of the square that a curve is drawn in, and stretched with

const counts = (kind: KindName) => kind === 'count' || kind === 'years';
/** A limit as it stands at its line: 15,000 ppm, limit over 15 minutes. */
export const limitInWords = (
  { columns }: Chart,
  { value, label }: { readonly value: number; readonly label: string },
) => `${format(value, columns[1]!.kind)}, ${label}`;
const part = (share: number) => `${share.toFixed(2)}%`;

export interface PlotProps {
  readonly of: Chart;
  readonly column: number;
  readonly says: string;
  /** Another thing for each house that is opened. */
  readonly opened?: unknown;
}

/** The ends of an axis, and the house for which they were found. */
interface Held {
  readonly ends: AxisEnds;
  readonly opened: unknown;
}
const HIGH = 4; // % from the top: a limit above this has its words below it

export function Plot(props: PlotProps) {
  const foot = () => props.of.columns[0]!;
  const curve = () => props.of.columns[props.column]!;
  const isFirst = () => props.column === 1;
  const points = () => (isFirst() ? (props.of.points ?? []) : []);
  const limits = () => (isFirst() ? (props.of.limits ?? []) : []);
  const isBars = () => props.of.as === 'bars';
  /** The limits that the curve passes, and the next one. */
  const reached = () => {
    const top = Math.max(...curve().values);
    const next = limits().findIndex(({ value }) => value >= top);
    return limits().slice(0, next < 0 ? undefined : next + 1);
  };
  /** The ends of an axis, kept while figures move and found anew for another house. */
  const held = (values: () => readonly number[], marks: number) => {
    const axis = createMemo<Held | undefined>((before) => ({
      ends: steadyEnds(values(), marks, before?.opened === props.opened ? before?.ends : undefined),
      opened: props.opened,
    }));
    return createMemo(() => axis()!.ends);
  };
  const across = held(() => [...foot().values, ...points().map(([at]) => at)], ACROSS);
  const up = held(
    () => [
      ...curve().values,
      ...points().map(([, value]) => value),
      ...reached().map(({ value }) => value),
      ...(isBars() ? [0] : []),
    ],
    UP,
  );
  const y = createMemo(() => scaleOver(up(), 100, 0));
  /** Where a row stands along the foot: a bar in its own part of it. */
  const x = createMemo(() => {
    const [first, last] = [foot().values[0]!, foot().values.at(-1)!];
    const room = (last - first) / Math.max(1, foot().values.length - 1) / 2 || 0.5;
    return isBars() ? scaleOver([first - room, last + room], 0, 100) : scaleOver(across(), 0, 100);
  });
  const ticks = createMemo(() =>
    axisMarks(isBars() ? [foot().values[0]!, foot().values.at(-1)!] : across(), ACROSS, counts(foot().kind)),
  );
  const marks = createMemo(() => axisMarks(up(), UP, counts(curve().kind)));
  const widest = () => Math.max(...marks().map((mark) => formatWorking(mark).length));
  const wide = () => 72 / foot().values.length; // % of the drawing: a bar, with a gap beside it

  return (
    <div class="plot" role="img" aria-label={`${props.says}: ${isBars() ? 'bars' : 'curve'}`}>
      <svg class="axis up" width={`${(CHARACTER * widest()).toFixed(2)}em`} height="100%">
        <For each={marks()}>
          {(mark) => (
            <text class="tick" x="100%" y={part(y()(mark))} dy="0.32em" text-anchor="end">
              {formatWorking(mark)}
            </text>
          )}
        </For>
      </svg>
      <svg class="ground" width="100%" height="100%">
        <g class="axis">
          <For each={marks()}>
            {(mark) => <line class="grid" x2="100%" y1={part(y()(mark))} y2={part(y()(mark))} />}
          </For>
        </g>
        <Show
          when={isBars()}
          fallback={
            <svg viewBox={`0 0 ${FULL} ${FULL}`} width="100%" height="100%" preserveAspectRatio="none">
              <polyline
                class="curve"
                points={linePoints(
                  foot().values,
                  curve().values,
                  (value) => (x()(value) * FULL) / 100,
                  (value) => (y()(value) * FULL) / 100,
                )}
              />
            </svg>
          }
        >
          <Index each={curve().values}>
            {(value, i) => (
              <rect
                class="bar"
                x={part(x()(foot().values[i]!) - wide() / 2)}
                width={part(wide())}
                y={part(y()(Math.max(0, value())))}
                height={part(Math.abs(y()(0) - y()(value())))}
              />
            )}
          </Index>
        </Show>
        <Index each={points()}>
          {(point) => <circle class="reading" cx={part(x()(point()[0]))} cy={part(y()(point()[1]))} r="5" />}
        </Index>
        <Index each={reached()}>
          {(limit) => (
            <>
              <line class="limit" x2="100%" y1={part(y()(limit().value))} y2={part(y()(limit().value))} />
              <text
                class="limit-name"
                x="0.375em"
                y={part(y()(limit().value))}
                dy={y()(limit().value) < HIGH ? '1.1em' : '-0.4em'}
              >
                {limitInWords(props.of, limit())}
              </text>
            </>
          )}
        </Index>
      </svg>
      <svg class="axis along" width="100%" height="1.25em">
        <For each={ticks()}>
          {(tick, i) => (
            <text
              class="tick"
              classList={{ odd: i() % 2 === 1, between: i() > 0 && i() < ticks().length - 1 }}
              x={part(x()(tick))}
              y="1em"
              text-anchor={x()(tick) > 94 ? 'end' : x()(tick) < 6 ? 'start' : 'middle'}
            >
              {formatWorking(tick)}
            </text>
          )}
        </For>
      </svg>
      <span class="along-label">{foot().label}</span>
    </div>
  );
}
