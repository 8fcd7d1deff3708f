// A shift run again from its log: the same actions at the same steps give the same shift.
import { act, type Logged } from './act.ts';
import type { Rig } from './rig.ts';
import { beginShift, type ShiftState } from './state.ts';
import { stepShift } from './step.ts';

export const LONGEST = 24 * 720; // steps that a shift lasts at most: a day

/** Runs a shift to a step, each action at its own; what comes before the step it stands at is done there. */
export function replay(rig: Rig, log: readonly Logged[], until: number): ShiftState {
  let state = beginShift(rig);
  let next = 0;
  const last = Math.min(until, LONGEST);
  for (;;) {
    for (; next < log.length && log[next]!.step <= state.step; next++)
      state = act(rig, state, log[next]!.action).state;
    if (state.step >= last || state.isDone) return state;
    state = stepShift(rig, state);
  }
}
