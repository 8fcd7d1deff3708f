// The clock of a shift: its time, how fast it goes, on and off, and a step at a time.
import { For } from 'solid-js';
import { clockAt } from './shift-words.ts';
import { paces, type ShiftRun } from './shift-run.ts';
import { STEP } from '../core/shift/rig.ts';

const names: Readonly<Record<number, string>> = { 300: '5 min', 60: '1 min', 10: '10 s', 1: 'real' };
/** Steps that the clock goes on by at one press: what the pace makes of a second, or one step. */
export const stepsOf = (pace: number): number => Math.max(1, Math.round(pace / STEP));

export function ShiftClock(props: { readonly run: ShiftRun; readonly toggle: () => void }) {
  const { state, isRunning, pace, setPace, pause, goOn } = props.run; // signals: they do not change
  return (
    <div class="shift-clock">
      <div class="clock-row">
        <span class="time">
          <span class="visually-hidden">Time of the run </span>
          {clockAt(state()!.step)}
        </span>
        <button type="button" id="shift-go" aria-keyshortcuts="p" onClick={() => props.toggle()}>
          {isRunning() ? 'Pause' : 'Go'} <kbd aria-hidden="true">p</kbd>
        </button>
        <button
          type="button"
          aria-keyshortcuts="g"
          onClick={() => {
            pause();
            goOn(stepsOf(pace()));
          }}
        >
          One step <kbd aria-hidden="true">g</kbd>
        </button>
      </div>
      <div class="paces" role="group" aria-label="Pace">
        <For each={paces}>
          {(each, i) => (
            <button
              type="button"
              aria-pressed={pace() === each}
              aria-keyshortcuts={String(i() + 1)}
              onClick={() => setPace(each)}
            >
              {names[each]}
              <span class="visually-hidden">{each === 1 ? ' time' : ' a second'}</span>{' '}
              <kbd aria-hidden="true">{i() + 1}</kbd>
            </button>
          )}
        </For>
      </div>
    </div>
  );
}
