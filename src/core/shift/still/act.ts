// What a stillman does, and what comes of it: each action changes the shift, or is refused with the reason.
import { minus, plus } from '../../spirit/amounts.ts';
import { goneWrong, isMark, refusedAsWrong, type Acted as Any, type Course, type LogNote, type LogRead } from '../course.ts'; // prettier-ignore
import { atSafe, type Rig } from './rig.ts';
import { isHazy, sampleOfSafe } from './samples.ts';
import { beginStill, type Spout, type ShiftState } from './state.ts';
import { litresOver, stepStill } from './step.ts';
import { isRefusal } from '../../refusal.ts';

export const valves = ['charging', 'air', 'manhole'] as const;
export type Valve = (typeof valves)[number];

export type Action =
  | { readonly do: 'steam' | 'water'; readonly to: number }
  | { readonly do: 'spout'; readonly to: Spout }
  | { readonly do: Valve; readonly open: boolean }
  | LogRead
  | { readonly do: 'haze' | 'refuse' | 'discharge' }
  | LogNote;
type Acted = Any<ShiftState>;

const COLD = 40; // °C below which a still may count as cold; from memory, and the site's own procedure says what holds
const key = { charging: 'isChargingOpen', air: 'isAirOpen', manhole: 'isManholeOpen' } as const;
const names = { charging: 'charging valve', air: 'air valve', manhole: 'manhole' } as const;

function turnValve(state: ShiftState, valve: Valve, open: boolean): Acted {
  const isHot = state.steam > 0 || state.pressure > 0;
  if (open && valve === 'manhole' && (isHot || state.temperature > COLD || !state.isAirOpen))
    return refusedAsWrong(state, 'manhole', 'The manhole stays shut: the still is hot. Opened, it would let out scalding steam and vapour. It waits until the still is off, cold, vented and isolated.'); // prettier-ignore
  if (open && valve === 'air' && isHot)
    return refusedAsWrong(state, 'air-hot', 'The air valve stays shut: the still is under steam, and vapour would blow into the still house.'); // prettier-ignore
  if (open && valve === 'charging' && (isHot || state.temperature > COLD))
    return refusedAsWrong(state, 'charging-hot', 'The charging valve stays shut: the still is hot, and its vapour would go back through it.'); // prettier-ignore
  return { state: { ...state, [key[valve]]: open }, says: `The ${names[valve]} is ${open ? 'open' : 'shut'}.` }; // prettier-ignore
}

function setSteam(state: ShiftState, to: number): Acted {
  const open = valves.filter((valve) => state[key[valve]]).map((valve) => names[valve]);
  if (to > 0 && open.length > 0)
    return refusedAsWrong(state, 'open-steam', `No steam yet: the ${open.join(' and the ')} ${open.length === 1 ? 'is' : 'are'} open.`); // prettier-ignore
  return { state: { ...state, steam: to }, says: to === 0 ? 'Steam off.' : `Steam at ${to}.` };
}

function turnSpout(rig: Rig, state: ShiftState, to: Spout): Acted {
  const strength = state.flow > 0 ? atSafe(state.vapour) : 0;
  const turn = { step: state.step, to, strength, volume: litresOver(state) };
  const turned = { ...state, spout: to, turns: [...state.turns, turn] };
  const says = to === 'spirit' ? 'The spout is on the spirit receiver.' : 'The spout is on the foreshots and feints receiver.'; // prettier-ignore
  const isHazyNow = to === 'spirit' && state.flow > 0 && isHazy(rig, state);
  return isHazyNow ? goneWrong(turned, 'hazy-heart', says) : { state: turned, says };
}

function discharge(state: ShiftState): Acted {
  if (state.steam > 0 || state.pressure > 0)
    return { state, says: 'The still is under steam: take it off, and wait until the pressure is gone.' };
  if (!state.isAirOpen)
    return refusedAsWrong(state, 'vacuum', 'The discharge stays shut: emptied with its air valve shut, the still would draw a vacuum and collapse. Air first.'); // prettier-ignore
  const { pot, lees } = state;
  return {
    state: { ...state, pot: minus(pot, pot), lees: plus(lees, pot), flow: 0, isDone: true },
    says: 'The spent lees run off, and the shift is done.',
  };
}

/**
 * Does an action. A shift that is done takes none but a note.
 * @example actAtStill({}, { isDone: true }, { do: 'steam', to: 5 }).says // 'The shift is done.' (it takes no more)
 */
export function actAtStill(rig: Rig, state: ShiftState, action: Action): Acted {
  if (action.do === 'note') return { state, says: '' };
  if (state.isDone) return { state, says: 'The shift is done.' };
  switch (action.do) {
    case 'steam':
      return isMark(action.to) ? setSteam(state, action.to) : { state, says: 'The valve has marks from 0 to 10.' }; // prettier-ignore
    case 'water':
      return isMark(action.to)
        ? { state: { ...state, water: action.to }, says: `Cooling water at ${action.to}.` }
        : { state, says: 'The valve has marks from 0 to 10.' };
    case 'spout':
      return turnSpout(rig, state, action.to);
    case 'read': {
      const sample = sampleOfSafe(rig, state);
      if (isRefusal(sample)) return { state, says: sample.refused };
      const { read, corrected } = action;
      const reading = { step: state.step, read, corrected, stood: sample.stands, was: sample.was, temperature: sample.temperature }; // prettier-ignore
      return { state: { ...state, readings: [...state.readings, reading] }, says: 'The reading is in the log.' }; // prettier-ignore
    }
    case 'haze': {
      if (state.flow <= 0) return { state, says: 'Nothing runs, so there is nothing to test.' };
      return { state, says: isHazy(rig, state) ? 'With water the sample turns hazy.' : 'With water the sample stays clear.' }; // prettier-ignore
    }
    case 'refuse':
      return state.isAsked
        ? { state: { ...state, isAsked: false }, says: 'You say no: not before the still is off, cold, vented and isolated, by the site’s own procedure.' } // prettier-ignore
        : { state, says: 'Nobody asks.' };
    case 'discharge':
      return discharge(state);
    default:
      return turnValve(state, action.do, action.open);
  }
}

/** The rules of a shift at the still; a day at most. */
export const stillCourse: Course<Rig, ShiftState, Action> = { begin: beginStill, act: actAtStill, step: stepStill, longest: 24 * 720 }; // prettier-ignore
