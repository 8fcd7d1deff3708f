// What is done at a mash tun, and what comes of it: each action changes the shift, or is refused with the reason.
import { formatNumber as n } from '../../format.ts';
import { kilograms } from '../../quantity.ts';
import { isRefusal, refuse, type Refusal } from '../../refusal.ts';
import { asWort } from '../../mashing/waters.ts';
import { goneWrong, isMark, refusedAsWrong, type Acted as Any, type Course, type LogNote, type LogRead } from '../course.ts'; // prettier-ignore
import { jarOf, type GravitySample } from '../gravity-jar.ts';
import { TUN_STEP, type Rig } from './rig.ts';
import { beginTun, type Pool, type RunsTo, type TunState } from './state.ts';
import { drainable, warmedByWater, openToWater, stepTun } from './step.ts';

export const LIQUOR_RANGE = [50, 95] as const; // °C to which the hot liquor can be set, by halves
export const runsTo: readonly RunsTo[] = ['back', 'washback', 'weak'];
const ADDED = 0.01; // of the first water that goes in to warm or cool the mash; no source
const [HOT, COLD] = [90, 10]; // °C of what is added; no source
const UNDERLET = 0.02; // of the first water that lifts the bed from below; no source
const LIFTED = { tight: 0.1, cloud: 0.7 } as const; // what that leaves; no source
const WET = 0.1; // of the first water: with more left to drain, the draff is wet, and the next water mixes with it; no source

export type Action =
  | { readonly do: 'liquor' | 'valve'; readonly to: number }
  | { readonly do: 'run'; readonly to: RunsTo }
  | {
      readonly do:
        'mash-in' | 'water' | 'warm' | 'cool' | 'iodine' | 'underlet' | 'let-in' | 'refuse' | 'empty';
    }
  | LogRead
  | LogNote;
type Acted = Any<TunState>;

/**
 * Whether the hot liquor can be set to a temperature.
 * @example [isLiquorTemperature(64.5), isLiquorTemperature(64.3)] // [true, false] (half degrees)
 */
export const isLiquorTemperature = (to: number): boolean =>
  Number.isInteger(to * 2) && to >= LIQUOR_RANGE[0] && to <= LIQUOR_RANGE[1];

/**
 * A pool as wort: its volume at 20 °C, L, and its gravity.
 * @example wortOf({ water: 880, extract: 120 }) // { gravity: 1.0483, volume: 956 } (12 °P by Plato’s table, 1000 kg over 1.0464 kg/L)
 */
export function wortOf({ water, extract }: Pool): { readonly volume: number; readonly gravity: number } {
  if (water <= 0) return { volume: 0, gravity: 1 };
  const wort = asWort({ water: kilograms(water), extract: kilograms(extract) });
  return isRefusal(wort) ? { volume: 0, gravity: 1 } : wort;
}

/**
 * A jar of what has been collected. Refuses while nothing has.
 * @example sampleOfWort({}, { wort: { water: 0, extract: 0 } }) // refuses: Nothing has been collected (the underback is empty)
 */
export function sampleOfWort(rig: Rig, { wort }: TunState): GravitySample | Refusal {
  if (wort.water <= 0) return refuse('Nothing has been collected yet, so there is nothing to read.');
  const { gravity } = wortOf(wort);
  return jarOf(gravity as Parameters<typeof jarOf>[0], rig.events.jar);
}

const put = (rig: Rig, state: TunState, water: number, at: number): TunState => ({
  ...state,
  temperature: warmedByWater(rig, state, water, at),
  mobile: { ...state.mobile, water: state.mobile.water + water },
  extra: state.extra + water,
});

/**
 * Does an action. A shift that is done takes none but a note.
 * @example actAtTun({}, { isDone: true }, { do: 'valve', to: 5 }).says // 'The shift is done.' (it takes no more)
 */
export function actAtTun(rig: Rig, state: TunState, action: Action): Acted {
  if (action.do === 'note') return { state, says: '' };
  if (state.isDone) return { state, says: 'The shift is done.' };
  const isIn = state.waters > 0 && (state.waters > 1 || state.comes === 0);
  const first = rig.waters[0];
  switch (action.do) {
    case 'liquor':
      if (!isLiquorTemperature(action.to))
        return { state, says: `The liquor goes from ${LIQUOR_RANGE[0]} to ${LIQUOR_RANGE[1]} °C.` };
      return { state: { ...state, liquor: action.to }, says: `Hot liquor at ${n(action.to, 1)} °C.` };
    case 'valve':
      if (!isMark(action.to)) return { state, says: 'The valve has marks from 0 to 10.' };
      if (action.to > 0 && !isIn) return { state, says: 'The mash is not in yet; the run-off stays shut.' };
      if (state.isSet && action.to > state.valve)
        return goneWrong(
          { ...state, valve: action.to },
          'forced',
          'The bed is set: more pull only draws it tighter. Shut the run-off and underlet.',
        );
      return {
        state: { ...state, valve: action.to },
        says: action.to === 0 ? 'The run-off is shut.' : `Run-off at ${action.to}.`,
      };
    case 'run':
      return {
        state: { ...state, runsTo: action.to },
        says: {
          back: 'The run-off goes back over the bed.',
          washback: 'The run-off goes to the washback.',
          weak: 'The run-off goes to the tank for weak wort.',
        }[action.to],
      };
    case 'mash-in':
      if (state.waters > 0) return { state, says: 'The mash is in already.' };
      return {
        state: { ...state, waters: 1, comes: first, temperatures: [state.liquor] },
        says: `Grist and first water go in, the water at ${n(state.liquor, 1)} °C.`,
      };
    case 'water': {
      if (!isIn) return { state, says: 'The first water is not in yet.' };
      if (state.comes > 0) return { state, says: 'A water is still coming in.' };
      if (state.waters >= rig.waters.length) return { state, says: 'The last water has been given.' };
      const next: TunState = {
        ...openToWater(rig, state),
        waters: state.waters + 1,
        comes: rig.waters[state.waters]!,
        temperatures: [...state.temperatures, state.liquor],
      };
      const says = `The ${state.waters === 1 ? 'second' : 'last'} water comes in at ${n(state.liquor, 1)} °C.`;
      if (drainable(rig, state) <= WET * first) return { state: next, says };
      return goneWrong(next, 'mixed', `${says} It mixes with the wort that still stood over the bed.`);
    }
    case 'warm':
    case 'cool': {
      if (!isIn) return { state, says: 'The mash is not in yet.' };
      const at = action.do === 'warm' ? HOT : COLD;
      const next = put(rig, state, ADDED * first, at);
      return {
        state: next,
        says: `${n(ADDED * first, 0)} kg of water at ${at} °C go in; the mash stands at ${n(next.temperature, 1)} °C.`,
      };
    }
    case 'iodine':
      if (!isIn) return { state, says: 'The mash is not in yet.' };
      return state.converted < 1
        ? { state, says: 'The iodine turns blue-black: there is starch yet.' }
        : {
            state: { ...state, isTested: state.isTested || state.wort.water === 0 },
            says: 'The iodine keeps its own colour: no starch is left.',
          };
    case 'underlet': {
      if (!isIn) return { state, says: 'The mash is not in yet.' };
      if (state.valve > 0) return { state, says: 'Shut the run-off first.' };
      const lifted = put(rig, state, UNDERLET * first, state.liquor);
      return {
        state: {
          ...lifted,
          tight: Math.min(state.tight, LIFTED.tight),
          isSet: false,
          cloud: Math.max(state.cloud, LIFTED.cloud),
          happened: state.isSet ? [...state.happened, { step: state.step, id: 'freed' }] : state.happened,
        },
        says: 'Water lifts the bed from below. The run-off will be cloudy for a while.',
      };
    }
    case 'let-in':
      return refusedAsWrong(
        { ...state, isAsked: false },
        'let-in',
        'Nobody reaches into the tun: the rakes can turn, and the mash scalds. It is stopped in time.',
      );
    case 'refuse':
      return state.isAsked
        ? {
            state: { ...state, isAsked: false },
            says: 'You say no: not before the rakes are locked off and the tun is empty and cool, by the site’s own procedure.',
          }
        : { state, says: 'Nobody asks.' };
    case 'read': {
      const sample = sampleOfWort(rig, state);
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
    case 'empty': {
      if (!isIn || state.wort.water <= 0)
        return { state, says: 'Nothing has been collected; the tun stays full.' };
      if (state.valve > 0) return { state, says: 'Shut the run-off first.' };
      const done: TunState = { ...state, isDone: true, flow: 0 };
      const says = 'The draff goes out, and the shift is done.';
      if (drainable(rig, state) > WET * first) return goneWrong(done, 'wet-draff', says);
      return state.waters < rig.waters.length ? goneWrong(done, 'not-rinsed', says) : { state: done, says };
    }
  }
}

/** The rules of a shift at a mash tun; sixteen hours at most. */
export const tunCourse: Course<Rig, TunState, Action> = {
  begin: beginTun,
  act: actAtTun,
  step: stepTun,
  longest: (16 * 60) / TUN_STEP,
};
