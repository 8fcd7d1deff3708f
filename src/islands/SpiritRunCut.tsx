// One cut of the spirit run, moved along the curve by finger, pointer and keyboard.
import type { RunPoint } from '../core/distilling/run.ts';
import { formatNumber } from '../core/format.ts';
import { numberFigures } from '../house/figures.ts';
import { pointAt, type CutHandle } from './cut-handles.ts';
import { keySteps } from './key-steps.ts';
import { RUN_FOOT, RUN_WIDTH } from './run-frame.ts';

interface CutProps {
  readonly handle: CutHandle;
  readonly curve: readonly RunPoint[];
  readonly x: (volume: number) => number;
  readonly y: (strength: number) => number;
  /** Told when a cut is taken hold of, where on the run it is held, and, with nothing, when it is let go. */
  readonly hold: (id?: CutHandle['id'], point?: RunPoint) => void;
  readonly move: (handle: CutHandle, value: number) => void;
  readonly step: (id: CutHandle['id'], steps: number) => void;
  /** As low (−1) or as high (1) as the house allows. */
  readonly moveFar: (id: CutHandle['id'], direction: 1 | -1) => void;
}

export function SpiritRunCut(props: CutProps) {
  // While a cut is dragged the pointer keeps to the run as it was taken hold of, and the cut stays below it; the round that settles is drawn once it is let go.
  let held: { pointAt: (across: number) => RunPoint } | undefined;
  const across = ({ clientX, currentTarget }: PointerEvent & { currentTarget: SVGElement }) => {
    const box = currentTarget.ownerSVGElement!.getBoundingClientRect();
    return ((clientX - box.left) * RUN_WIDTH) / box.width;
  };
  const take = (event: PointerEvent & { currentTarget: SVGElement }) => {
    const { curve, handle } = props;
    const [start, litre] = [props.x(0), props.x(1) - props.x(0)];
    const beside = across(event) - props.x(handle.volume); // of its middle
    held = { pointAt: (at) => pointAt(curve, (at - beside - start) / litre) };
    event.currentTarget.setPointerCapture(event.pointerId);
    event.preventDefault();
    event.currentTarget.focus({ preventScroll: true });
    props.hold(handle.id);
  };
  const drag = (event: PointerEvent & { currentTarget: SVGElement }) => {
    if (!held) return;
    const point = held.pointAt(across(event));
    props.hold(props.handle.id, point);
    props.move(props.handle, props.handle.valueAt(point));
  };
  const drop = () => {
    held = undefined;
    props.hold();
  };
  const press = (event: KeyboardEvent) => {
    if (event.key === 'Home' || event.key === 'End') {
      event.preventDefault();
      return props.moveFar(props.handle.id, event.key === 'Home' ? -1 : 1);
    }
    const steps = keySteps[event.key];
    if (steps === undefined) return;
    event.preventDefault();
    props.step(props.handle.id, steps);
  };
  /** While a cut is held the run may outgrow the frame; a cut beyond it stands at its edge. */
  const cx = () => Math.min(props.x(props.handle.volume), RUN_WIDTH - 12);
  const cy = () => props.y(props.handle.strength);
  const isLast = () => cx() > 0.85 * RUN_WIDTH;
  return (
    <g class={`cut ${props.handle.id}`}>
      <line class="cut-line" x1={cx()} x2={cx()} y1={RUN_FOOT} y2={cy()} />
      <g
        class="cut-handle"
        role="slider"
        tabindex="0"
        aria-label={props.handle.label}
        aria-valuemin={numberFigures[props.handle.figure].range[0]}
        aria-valuemax={numberFigures[props.handle.figure].range[1]}
        aria-valuenow={props.handle.value}
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
      <text
        class="label cut-strength"
        x={cx()}
        y={cy() - 20}
        dx={isLast() ? 12 : 4}
        text-anchor={isLast() ? 'end' : 'start'}
        aria-hidden="true"
      >
        {formatNumber(props.handle.strength, 1)}
      </text>
    </g>
  );
}
