// What goes into a stage and what comes out, as two bars to one scale, with the same figures as a table.
import { createMemo, For, Index, Show } from 'solid-js';
import { formatNumber } from '../core/format.ts';
import { kinds, type KindName } from '../core/kinds.ts';
import type { Stage } from '../house/figures.ts';
import { useHouseWhenIdle } from './house-when-idle.ts';
import { flowsOf, type StageFlow, type PartPattern, type FlowPart } from './in-and-out-flows.ts';

const [LEFT, RIGHT] = [38, 478]; // of 480: where a bar that fills the drawing begins and ends
const LETTER = 8.2; // mean width of a letter, in drawing units

const total = (parts: readonly FlowPart[]) => parts.reduce((sum, { amount }) => sum + amount, 0);

const digits: Partial<Record<KindName, number>> = { alcohol: 1 };

/** A box in the fill and the stroke pattern of its mark. */
function Box(props: { mark: PartPattern; x: number; y: number; width: number; height: number }) {
  return (
    <>
      <rect class={`box ${props.mark}`} x={props.x} y={props.y} width={props.width} height={props.height} />
      <rect
        fill={`url(#in-and-out-${props.mark}) none`}
        x={props.x}
        y={props.y}
        width={props.width}
        height={props.height}
      />
    </>
  );
}

/** One bar: its parts side by side, named where the name fits. */
function Bar(props: { parts: readonly FlowPart[]; scale: number; y: number; name: string }) {
  const placed = createMemo(() => {
    let x = LEFT;
    return props.parts.map((part) => {
      const width = part.amount * props.scale;
      const left = x;
      x += width;
      return { ...part, left, width };
    });
  });
  return (
    <>
      <text x="0" y={props.y + 24}>
        {props.name}
      </text>
      <Index each={placed()}>
        {(part) => (
          <Show when={part().width > 0}>
            <Box mark={part().mark} x={part().left} y={props.y} width={part().width} height={36} />
            <Show when={part().name.length * LETTER + 14 < part().width}>
              <text class="over" x={part().left + part().width / 2} y={props.y + 24} text-anchor="middle">
                {part().name}
              </text>
            </Show>
          </Show>
        )}
      </Index>
    </>
  );
}

function Rows(props: { flow: StageFlow; parts: readonly FlowPart[]; name: string }) {
  return (
    <tbody>
      <Index each={props.parts}>
        {(part, row) => (
          <tr>
            <Show when={row === 0}>
              <th scope="rowgroup" rowspan={props.parts.length}>
                {props.name}
              </th>
            </Show>
            <th scope="row">
              <span class="keyed">
                <svg class="drawing" viewBox="0 0 24 16" width="24" height="16" aria-hidden="true">
                  <Box mark={part().mark} x={1} y={1} width={22} height={14} />
                </svg>
                {part().name}
              </span>
            </th>
            <td class="number">{formatNumber(part().amount, digits[props.flow.kind] ?? 0)}</td>
            <td class="number">{formatNumber((100 * part().amount) / total(props.flow.into), 1)}</td>
          </tr>
        )}
      </Index>
    </tbody>
  );
}

/** The stroke patterns, one for each mark that has strokes; foreshots, heart and feints as in the drawn run, and both that go round crossed. */
function Patterns() {
  const strokes: readonly [mark: PartPattern, size: number, d: string][] = [
    [
      'grain',
      14,
      'M2 5 q3 -4 7 0 q-4 4 -7 0 M9 12 q3 -4 7 0 M-5 12 q3 -4 7 0 M9 12 q4 4 7 0 M-5 12 q4 4 7 0',
    ],
    ['husk', 12, 'M1 5 q3 -4 6 0 M7 11 q3 -4 6 0 M-5 11 q3 -4 6 0'],
    ['liquid', 16, 'M1 4 h8 M8 12 h7'],
    ['water', 16, 'M0 5 q4 -3 8 0 q4 3 8 0 M0 13 q4 -3 8 0 q4 3 8 0'],
    ['foreshots', 8, 'M0 8 L8 0 M-1 1 L1 -1 M7 9 L9 7'],
    ['feints', 12, 'M0 0 L12 12 M-1 11 L1 13 M11 -1 L13 1'],
    ['round', 8, 'M0 0 L8 8 M0 8 L8 0'],
    ['lost', 8, 'M2 2 h0.1 M6 6 h0.1'],
  ];
  return (
    <svg class="drawing patterns" width="0" height="0" aria-hidden="true">
      <defs>
        <For each={strokes}>
          {([mark, size, d]) => (
            <pattern id={`in-and-out-${mark}`} width={size} height={size} patternUnits="userSpaceOnUse">
              <path class="pattern" d={d} />
            </pattern>
          )}
        </For>
      </defs>
    </svg>
  );
}

export default function InAndOut(props: { stage: Stage }) {
  let island: HTMLElement | undefined;
  const { line } = useHouseWhenIdle(() => island);
  const flows = createMemo(() => flowsOf(props.stage, line()));
  return (
    <figure
      ref={island}
      class="drawing-figure in-and-out"
      aria-label="What goes in and what comes out, drawn to scale"
    >
      <Patterns />
      <Index each={flows()}>
        {(flow) => {
          const scale = () => (RIGHT - LEFT) / Math.max(total(flow().into), total(flow().out));
          return (
            <>
              <svg class="drawing" viewBox="0 0 480 90" aria-hidden="true">
                <Bar parts={flow().into} scale={scale()} y={2} name="in" />
                <Bar parts={flow().out} scale={scale()} y={50} name="out" />
              </svg>
              <table>
                <caption>{flow().title}, one mash</caption>
                <thead>
                  <tr>
                    <td />
                    <th scope="col">What</th>
                    <th scope="col" class="number">
                      {kinds[flow().kind].unit}
                    </th>
                    <th scope="col" class="number">
                      % of all in
                    </th>
                  </tr>
                </thead>
                <Rows flow={flow()} parts={flow().into} name="In" />
                <Rows flow={flow()} parts={flow().out} name="Out" />
              </table>
            </>
          );
        }}
      </Index>
      <figcaption>
        Both bars of a pair are drawn to one scale and follow the house’s figures. Percentages are of all that
        goes in, and rounded.
        <Show when={flows().some(({ kind }) => kind === 'volume20')}>
          {' '}
          Where spirit and water mix, the whole is a little less than its parts; where a still takes them
          apart, the parts may be a little more or a little less.
        </Show>
      </figcaption>
    </figure>
  );
}
