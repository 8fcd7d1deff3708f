// The clock of a shift: its time, how fast it goes, on and off, and a step at a time.
import { For } from 'solid-js';
import type { ClockPace } from './shift-post.ts';

export function ShiftClock(props: {
  readonly time: string;
  readonly isRunning: boolean;
  readonly pace: number;
  readonly paces: readonly ClockPace[];
  readonly setPace: (steps: number) => void;
  readonly toggle: () => void;
  readonly stepOn: () => void;
}) {
  return (
    <div class="shift-clock">
      <div class="clock-row">
        <span class="time">
          <span class="visually-hidden">Time of the run </span>
          {props.time}
        </span>
        <button type="button" id="shift-go" aria-keyshortcuts="p" onClick={() => props.toggle()}>
          {props.isRunning ? 'Pause' : 'Go'} <kbd aria-hidden="true">p</kbd>
        </button>
        <button type="button" aria-keyshortcuts="g" onClick={() => props.stepOn()}>
          One step <kbd aria-hidden="true">g</kbd>
        </button>
      </div>
      <div class="paces" role="group" aria-label="Pace">
        <For each={props.paces}>
          {(each, i) => (
            <button
              type="button"
              aria-pressed={props.pace === each.steps}
              aria-keyshortcuts={String(i() + 1)}
              onClick={() => props.setPace(each.steps)}
            >
              {each.name}
              <span class="visually-hidden">{each.after}</span> <kbd aria-hidden="true">{i() + 1}</kbd>
            </button>
          )}
        </For>
      </div>
    </div>
  );
}
