// A stillman who does by rule what the page asks for: for tests that need a whole run and its log.
import type { Logged } from '../../../../src/core/shift/course.ts';
import { actAtStill, type Action } from '../../../../src/core/shift/still/act.ts';
import { isHazy, sampleOfSafe } from '../../../../src/core/shift/still/samples.ts';
import {
  atSafe,
  rigOfStill,
  type Rig,
  type ShiftEvents,
  type ShiftSetup,
} from '../../../../src/core/shift/still/rig.ts';
import { hasHappened, lastHappened } from '../../../../src/core/shift/course.ts';
import { beginStill, type ShiftState } from '../../../../src/core/shift/still/state.ts';
import { litresOver, stepStill } from '../../../../src/core/shift/still/step.ts';
import { kilopascals, litres20, share, strength } from '../../../../src/core/quantity.ts';
import { answer } from '../../draw.ts';

export const calm: ShiftEvents = {
  lively: { stands: 0.75, minutes: 20 },
  jar: 0,
  clears: 0.9,
  hazesBelow: 2,
};
export const setup: ShiftSetup = {
  charge: { volume: litres20(3600), strength: strength(26.4) },
  reflux: share(0),
  pressure: kilopascals(101.325),
  cuts: { foreshots: { share: share(0.03) }, heart: strength(62), feints: strength(1) },
  hours: 8,
};
export const rigged = (events = calm, changes: Partial<ShiftSetup> = {}): Rig =>
  answer(rigOfStill({ ...setup, ...changes }, events));

export interface Played {
  readonly state: ShiftState;
  readonly log: readonly Logged<Action>[];
  /** Every state of the run, one a step. */
  readonly states: readonly ShiftState[];
}

/** Runs a charge well: eases the steam at the boil, reads twice, turns the spout at the house's cuts, answers each event. */
export function play(rig: Rig, steam = { warming: 8, fresh: 3, running: 5 }): Played {
  let state = beginStill(rig);
  const log: Logged<Action>[] = [];
  const states: ShiftState[] = [];
  const does = (action: Action) => {
    log.push({ step: state.step, action });
    ({ state } = actAtStill(rig, state, action));
  };
  for (const valve of ['charging', 'air', 'manhole'] as const) does({ do: valve, open: false });
  does({ do: 'water', to: 5 });
  does({ do: 'steam', to: steam.warming });
  while (!state.isDone && state.step < 20_000) {
    const before = state;
    state = stepStill(rig, state);
    states.push(state);
    const now = (id: Parameters<typeof lastHappened<ShiftState['happened'][number]['id']>>[1]) =>
      hasHappened(state.happened.slice(before.happened.length), id);
    if (now('boils')) does({ do: 'steam', to: steam.fresh });
    if (state.boiled === (rig.events.lively.minutes + 1) * 12) does({ do: 'steam', to: steam.running });
    if (now('warm')) does({ do: 'water', to: 9 });
    if (now('blocked')) does({ do: 'steam', to: 0 });
    if (now('cleared')) does({ do: 'steam', to: steam.running });
    if (now('asks')) does({ do: 'refuse' });
    const isHeart = state.spout === 'spirit';
    if (
      state.turns.length === 0 &&
      state.flow > 0 &&
      !isHazy(rig, state) &&
      litresOver(state) >= rig.goal.foreshots.volume
    )
      does({ do: 'spout', to: 'spirit' });
    else if (isHeart && atSafe(state.vapour) <= rig.setup.cuts.heart) does({ do: 'spout', to: 'feints' });
    if (isHeart && state.readings.length < 2 && state.step % 120 === 0) {
      const sample = sampleOfSafe(rig, state);
      if (!('refused' in sample)) does({ do: 'read', read: sample.stands, corrected: sample.was });
    }
    if (hasHappened(state.happened, 'weak') && state.steam > 0) does({ do: 'steam', to: 0 });
    if (hasHappened(state.happened, 'weak') && state.steam === 0 && state.pressure === 0) {
      does({ do: 'air', open: true });
      does({ do: 'discharge' });
    }
  }
  return { state, log, states };
}
