// A shift run again to where it stood, a portion at a time so that the page stays awake.
import type { Course, Logged, Moment } from '../core/shift/course.ts';
import { outcomeInLog } from './shift-log.ts';

const PORTION = 150; // steps in one task

export interface Again<S> {
  readonly state: S;
  /** What came of each action of its log. */
  readonly came: readonly string[];
}

/** Runs a shift again and calls `then` where it stood; stops without it as soon as it is no longer wanted. */
export function runAgain<R, S extends Moment, A extends { readonly do: string }>(
  { course, told }: { readonly course: Course<R, S, A>; readonly told: readonly string[] },
  rig: R,
  { log, step }: { readonly log: readonly Logged<A>[]; readonly step: number },
  isWanted: () => boolean,
  then: (again: Again<S>) => void,
): void {
  let state = course.begin(rig);
  const came: string[] = [];
  const portion = () => {
    if (!isWanted()) return;
    for (let i = 0; ; i++) {
      for (; came.length < log.length && log[came.length]!.step <= state.step;) {
        const { action } = log[came.length]!;
        const acted = course.act(rig, state, action);
        came.push(outcomeInLog(state, acted, told.includes(action.do)));
        state = acted.state;
      }
      if (state.step >= step || state.isDone) return then({ state, came });
      if (i === PORTION) return void setTimeout(portion);
      state = course.step(rig, state);
    }
  };
  portion();
}
