// One handle of the line: a knob on the vessel, dragged by mouse and finger or moved by keys.
import { keySteps } from './key-steps.ts';
import type { LineHandle } from './line-handles.ts';
import { VESSEL_HEIGHT } from './LineVessel.tsx';

/** A rail in the drawing of a vessel: how far across, and its head and foot down it. */
export type RailPlace = readonly [x: number, head: number, foot: number];

interface KnobProps {
  readonly handle: LineHandle;
  /** Where it stood before the last move, 0–1; nothing when it has not moved. */
  readonly before: number | undefined;
  readonly rail: RailPlace;
  readonly move: (handle: LineHandle, value: number) => void;
}

/** How far down the window the pointer was pressed that has moved on; public/early.js puts it down. */
function pressedAt(knob: Element): number | undefined {
  const pressed = knob.closest<HTMLElement>('[data-pressed]')?.dataset['pressed'];
  return pressed === undefined ? undefined : Number(pressed);
}

const inside = (part: number) => Math.min(1, Math.max(0, part));

export function LineKnob(props: KnobProps) {
  let held: number | undefined; // where on the knob the pointer took hold, px below its middle
  const y = (part: number) => {
    const [, head, foot] = props.rail;
    return foot + inside(part) * (head - foot);
  };
  /** The place of the drawing on the page, and the pixels of one of its units. */
  const drawing = (knob: SVGElement) => {
    const box = knob.ownerSVGElement!.getBoundingClientRect();
    return { top: box.top, unit: box.height / VESSEL_HEIGHT };
  };
  const take = (event: PointerEvent & { currentTarget: SVGElement }, at = event.clientY) => {
    const { top, unit } = drawing(event.currentTarget);
    held = at - top - y(props.handle.part) * unit;
    event.currentTarget.setPointerCapture(event.pointerId);
    event.preventDefault();
    event.currentTarget.focus({ preventScroll: true });
  };
  const drag = (event: PointerEvent & { currentTarget: SVGElement }) => {
    if (held === undefined && event.buttons === 1) take(event, pressedAt(event.currentTarget)); // pressed before the script had come
    if (held === undefined) return;
    const { top, unit } = drawing(event.currentTarget);
    const [, head, foot] = props.rail;
    const part = ((event.clientY - held - top) / unit - foot) / (head - foot);
    props.move(props.handle, props.handle.valueAt(inside(part)));
  };
  const drop = () => (held = undefined);
  const press = (event: KeyboardEvent) => {
    const isEnd = event.key === 'Home' || event.key === 'End';
    const steps = keySteps[event.key];
    if (steps === undefined && !isEnd) return;
    event.preventDefault();
    const { handle, move } = props;
    move(handle, steps === undefined ? handle.valueAt(event.key === 'End' ? 1 : 0) : handle.stepped(steps));
  };
  return (
    <>
      <path class="rail" d={`M${props.rail[0]} ${props.rail[1]} V${props.rail[2]}`} />
      <path
        class="rail-before"
        classList={{ hidden: props.before === undefined }}
        d={`M${props.rail[0] - 11} ${y(props.before ?? 0).toFixed(2)} h22`}
      />
      <g
        class="knob"
        role="slider"
        tabindex="0"
        data-handle={props.handle.id}
        aria-label={props.handle.label}
        aria-orientation="vertical"
        aria-valuemin={0}
        aria-valuemax={100}
        aria-valuenow={Math.round(100 * inside(props.handle.part))}
        aria-valuetext={props.handle.says}
        onPointerDown={(event) => take(event)}
        onPointerMove={drag}
        onPointerUp={drop}
        onPointerCancel={drop}
        onKeyDown={press}
      >
        <circle class="reach" cx={props.rail[0]} cy={y(props.handle.part).toFixed(2)} r="25" />
        <circle class="ring" cx={props.rail[0]} cy={y(props.handle.part).toFixed(2)} r="14" />
        <circle class="grip" cx={props.rail[0]} cy={y(props.handle.part).toFixed(2)} r="9" />
      </g>
    </>
  );
}

/** A handle in words beside its vessel, between less and more. Its buttons are for fingers: keys have the knob, and need not stop here as well. */
export function LineSteps(props: Pick<KnobProps, 'handle' | 'move'>) {
  const step = (steps: number) => props.move(props.handle, props.handle.stepped(steps));
  return (
    <div class="steps-of" data-steps={props.handle.id}>
      <button type="button" tabindex="-1" aria-label={`${props.handle.label}: down`} onClick={() => step(-1)}>
        −
      </button>
      <p>
        <small>{props.handle.short}</small> <b>{props.handle.shows}</b>
      </p>
      <button type="button" tabindex="-1" aria-label={`${props.handle.label}: up`} onClick={() => step(1)}>
        +
      </button>
    </div>
  );
}
