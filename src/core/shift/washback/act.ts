// What is done at a washback, and what comes of it: each action changes the shift, or is refused with the reason.
import { formatNumber as n } from '../../format.ts';
import { goneWrong, isMark, lastHappened, refusedAsWrong, type Acted as Any, type Course, type LogNote, type LogRead } from '../course.ts'; // prettier-ignore
import { jarOf, type GravitySample } from '../gravity-jar.ts';
import { isRefusal, refuse, type Refusal } from '../../refusal.ts';
import { chargerFree, DOSE_MARK, GAS_LIMIT, WASHBACK_STEP, type Rig } from './rig.ts';
import { beginWashback, type WashbackState } from './state.ts';
import { gravityAt, hourSinceFirstWort, stepWashback } from './step.ts';

export const COOLER_RANGE = [10, 32] as const; // °C to which the wort cooler can be set, by halves
const HOT_WORT = 30; // °C above which yeast is shocked when it goes in; memory
const METER_HOLDS = 1; // steps in which a reading of the gas lets somebody in, once: five minutes; no source
const DOSES = 2; // of antifoam; no source
const STILL_WORKS = 0.0005; // gravity that wash which is finished loses in six hours at most; no source
const SIX_HOURS = 6; // h

export type Action =
  | { readonly do: 'set' | 'dose' | 'cooling'; readonly to: number }
  | { readonly do: 'switcher'; readonly on: boolean }
  | { readonly do: 'pitch' | 'antifoam' | 'meter' | 'report' | 'go-in' | 'let-in' | 'refuse' | 'hand-over' }
  | LogRead
  | LogNote;
type Acted = Any<WashbackState>;

/**
 * Whether the wort cooler can be set to a temperature.
 * @example [isCoolerTemperature(19.5), isCoolerTemperature(19.3)] // [true, false] (half degrees)
 */
export const isCoolerTemperature = (to: number): boolean =>
  Number.isInteger(to * 2) && to >= COOLER_RANGE[0] && to <= COOLER_RANGE[1];

/**
 * Nobody goes in without a reading of the gas for that entry, nor above the limit: what is wrong with going in now, or nothing.
 * However often it is tried while one alarm lasts, it counts once.
 */
function keepsOut(state: WashbackState): Acted | undefined {
  const isRead = state.meteredAt >= 0 && state.step - state.meteredAt <= METER_HOLDS;
  const isAlarm = state.happened.some(({ id }) => id === 'alarm') && state.isFanOff;
  if (isAlarm || (isRead && state.metered > GAS_LIMIT)) {
    const says = 'You stay out: the gas at the door is over the limit. Keep others out, and report it.';
    const counted = lastHappened(state.wrong, 'went-in');
    const isCounted = counted >= 0 && counted >= lastHappened(state.happened, 'alarm');
    return isCounted ? { state, says, isRefused: true } : refusedAsWrong(state, 'went-in', says);
  }
  if (!isRead) return refusedAsWrong(state, 'unmeasured', 'Not yet: read the gas meter at the door first.');
  return undefined;
}

function pitch(rig: Rig, state: WashbackState): Acted {
  if (state.pitched >= 0) return { state, says: 'The yeast is in already.' };
  if (state.dose === 0) return { state, says: 'The yeast is at nothing: set how much.' };
  const ratio = state.dose / DOSE_MARK;
  const half = rig.pace.half * rig.pace.steepness;
  const pitched: WashbackState = {
    ...state,
    pitched: hourSinceFirstWort(state),
    pitchedWith: ratio,
    pitchedAt: state.temperature,
    odds: Math.log(ratio) - half,
    oddsThen: Math.log(ratio) - half,
  };
  const says = `${n(state.dose * rig.perMark, 0)} kg of yeast are in, at ${n(state.temperature, 1)} °C.`;
  if (state.filled < rig.mass / 3) return goneWrong(pitched, 'dry-pitch', says);
  if (state.temperature > HOT_WORT) return goneWrong({ ...pitched, alive: 0.5 }, 'hot-pitch', says);
  return { state: pitched, says };
}

/**
 * A jar of the wash. Refuses while there is too little of it, and a sample that is too warm.
 * @example sampleOfWash({ mass: 9000 }, { filled: 1000 }) // refuses: too little wort (less than a third)
 */
export function sampleOfWash(rig: Rig, state: WashbackState): GravitySample | Refusal {
  if (state.filled < rig.mass / 3)
    return refuse('There is too little wort in the washback yet to draw a sample.');
  return jarOf(gravityAt(rig, state.part), state.temperature + rig.events.jar);
}

function handOver(rig: Rig, state: WashbackState): Acted {
  if (state.filled < rig.mass || state.pitched < 0)
    return { state, says: 'There is no wash to hand over yet.' };
  if (hourSinceFirstWort(state) < chargerFree(rig) - 1e-9)
    return { state, says: 'The wash charger has no room yet. The stillman calls when it has.' };
  // Whether it still works: what its gravity would lose in the next hours.
  let later = state;
  for (let i = 0; i < SIX_HOURS / WASHBACK_STEP; i++) later = stepWashback(rig, later);
  const done: WashbackState = { ...state, isDone: true, handedAt: hourSinceFirstWort(state) };
  const works = gravityAt(rig, state.part) - gravityAt(rig, later.part) > STILL_WORKS;
  const says = 'The wash runs to the charger, and the shift is done.';
  return works ? goneWrong(done, 'early', says) : { state: done, says };
}

/**
 * Does an action. A shift that is done takes none but a note.
 * @example actAtWashback({}, { isDone: true }, { do: 'set', to: 20 }).says // 'The shift is done.' (it takes no more)
 */
export function actAtWashback(rig: Rig, state: WashbackState, action: Action): Acted {
  if (action.do === 'note') return { state, says: '' };
  if (state.isDone) return { state, says: 'The shift is done.' };
  switch (action.do) {
    case 'set':
      if (!isCoolerTemperature(action.to))
        return { state, says: `The wort cooler goes from ${COOLER_RANGE[0]} to ${COOLER_RANGE[1]} °C.` };
      if (state.filled >= rig.mass) return { state, says: 'All the wort is in; the cooler is off.' };
      return { state: { ...state, set: action.to }, says: `Wort cooler at ${n(action.to, 1)} °C.` };
    case 'dose':
      if (!isMark(action.to)) return { state, says: 'The yeast has marks from 0 to 10.' };
      if (state.pitched >= 0) return { state, says: 'The yeast is in already.' };
      return {
        state: { ...state, dose: action.to },
        says: `Yeast weighed out: ${n(action.to * rig.perMark, 0)} kg.`,
      };
    case 'cooling':
      if (!rig.events.hasCoil)
        return { state, says: 'This washback has no coil: only the temperature it is set at can hold it.' };
      return isMark(action.to)
        ? { state: { ...state, cooling: action.to }, says: `Cooling at ${action.to}.` }
        : { state, says: 'The valve has marks from 0 to 10.' };
    case 'switcher':
      return {
        state: { ...state, isSwitching: action.on },
        says: action.on ? 'The switcher turns.' : 'The switcher stands.',
      };
    case 'pitch':
      return pitch(rig, state);
    case 'antifoam': {
      if (state.filled <= 0) return { state, says: 'There is nothing in the washback.' };
      const out = keepsOut(state);
      if (out) return out;
      const given = { ...state, antifoam: 1, doses: state.doses + 1, meteredAt: -1 };
      const says = 'A dose of antifoam goes in, by the hatch and at arm’s length.';
      return state.doses >= DOSES ? goneWrong(given, 'too-much', says) : { state: given, says };
    }
    case 'meter':
      return {
        state: { ...state, metered: state.ppm, meteredAt: state.step },
        says: `The meter at the door shows ${n(state.ppm, 0)} ppm of carbon dioxide. ${state.ppm > GAS_LIMIT ? 'Over the limit: nobody goes in.' : 'Under the limit.'}`,
      };
    case 'report':
      if (!state.isFanOff) return { state, says: 'The fan runs; there is nothing to report.' };
      if (state.reportedAt >= 0)
        return {
          state,
          says: 'It is reported already. The door stays shut until the fan runs and the meter says so.',
        };
      return {
        state: { ...state, reportedAt: hourSinceFirstWort(state) },
        says: 'You report the fan, shut the door and keep everybody out. Those whose work it is will see to it.',
      };
    case 'go-in':
      return keepsOut(state) ?? { state: { ...state, meteredAt: -1 }, says: 'You draw a sample.' };
    case 'let-in':
      return refusedAsWrong(
        { ...state, isAsked: false },
        'climbed',
        'Nobody goes into the washback, nor leans in: the gas in it kills in a breath or two. It is stopped in time.',
      );
    case 'refuse':
      return state.isAsked
        ? {
            state: { ...state, isAsked: false },
            says: 'You say no: nobody goes into a washback or leans in, but by a permit, emptied, aired, tested and watched.',
          }
        : { state, says: 'Nobody asks.' };
    case 'read': {
      const sample = sampleOfWash(rig, state);
      if (isRefusal(sample)) return { state, says: sample.refused };
      const { read, corrected } = action;
      const reading = {
        step: state.step,
        read,
        corrected,
        stood: sample.stands,
        was: sample.was,
        temperature: sample.temperature,
      };
      return {
        state: { ...state, readings: [...state.readings, reading] },
        says: 'The reading is in the log.',
      };
    }
    case 'hand-over':
      return handOver(rig, state);
  }
}

/** The rules of a shift at a washback; eight days at most. */
export const washbackCourse: Course<Rig, WashbackState, Action> = {
  begin: beginWashback,
  act: actAtWashback,
  step: stepWashback,
  longest: (8 * 24) / WASHBACK_STEP,
};
