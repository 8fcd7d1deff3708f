// Two casks through the years: what a month does, what is done at them, and what comes of it.
import { formatNumber as n } from '../../format.ts';
import { compareRegauge } from '../../maturing/regauge.ts';
import { percent } from '../../quantity.ts';
import { minus, plus, portionOf, type Amounts } from '../../spirit/amounts.ts';
import {
  goneWrong,
  refusedAsWrong,
  type Acted as Any,
  type AtStep,
  type Course,
  type Moment,
  type LogNote,
  type LogRead,
} from '../course.ts';
import { bottlesInCask, LONGEST_IN_STORE, MONTHS, SAMPLE_VOLUME, type Rig } from './rig.ts';

export type Happening = 'year' | 'age' | 'asks';
export type Wrong = 'flame' | 'young' | 'weak' | 'dripping';
export type Which = 0 | 1;
export const which: readonly Which[] = [0, 1];

/** One cask: what is in it, and where the rest went, kilomoles. */
export interface CaskState {
  readonly left: Amounts;
  readonly toAir: Amounts;
  readonly leaked: Amounts;
  readonly sampled: Amounts;
  readonly isMended: boolean;
  /** What a regauge found last, and in which month; −1 for never. */
  readonly regauged: { readonly month: number; readonly volume: number; readonly strength: number };
  /** Bottles filled, and in which month; −1 while it lies. */
  readonly bottles: number;
  readonly bottledAt: number;
  /** What came out of it. */
  readonly out: Amounts;
}
export interface CasksState extends Moment<Happening, Wrong> {
  readonly casks: readonly [CaskState, CaskState];
  /** Times that a cask was looked over, regauged or nosed. */
  readonly looks: number;
  readonly isAsked: boolean;
}

export type Action =
  | { readonly do: 'regauge' | 'look' | 'nose' | 'mend' | 'bottle'; readonly cask: Which }
  | { readonly do: 'flame' | 'refuse' }
  | LogRead
  | LogNote;
type Acted = Any<CasksState>;

const ALLOWED = percent(2); // % of the alcohol by which a cask may differ from what is expected; common practice, no source
const SHOWS = 2; // months of leaking until a stave is damp to the hand; no source
const NONE: Amounts = { ethanol: 0, water: 0 };

const begin = ({ casks }: Rig): CasksState => {
  const one = (i: Which): CaskState => ({ left: casks[i].filled, toAir: NONE, leaked: NONE, sampled: NONE, isMended: false, regauged: { month: -1, volume: 0, strength: 0 }, bottles: 0, bottledAt: -1, out: NONE }); // prettier-ignore
  return { step: 0, isDone: false, casks: [one(0), one(1)], looks: 0, isAsked: false, happened: [], wrong: [], readings: [] }; // prettier-ignore
};

/** Takes litres out of a cask as it is: what comes out, never more than is there. */
function drawn({ left }: CaskState, litres: number): Amounts {
  const { volume } = portionOf(left);
  const by = volume > 0 ? Math.min(1, litres / volume) : 0;
  return { ethanol: left.ethanol * by, water: left.water * by };
}

/**
 * True while a cask leaks.
 * @example isLeaking({ events: { leak: { cask: 0, from: 10 } } }, { casks: [{ isMended: false, bottledAt: -1 }] }, 0, 9) // false (the leak begins later)
 */
export const isLeaking = ({ events }: Rig, { casks }: CasksState, i: Which, month: number): boolean =>
  events.leak.cask === i && month > events.leak.from && !casks[i].isMended && casks[i].bottledAt < 0;

function month(rig: Rig, state: CasksState, i: Which): CaskState {
  const cask = state.casks[i];
  if (cask.bottledAt >= 0) return cask;
  const after = rig.casks[i].after(cask.left, 1 / MONTHS);
  const aged: CaskState = { ...cask, left: after, toAir: plus(cask.toAir, minus(cask.left, after)) };
  if (!isLeaking(rig, state, i, state.step + 1)) return aged;
  const out = drawn(aged, rig.events.leak.litres);
  return { ...aged, left: minus(aged.left, out), leaked: plus(aged.leaked, out) };
}

/** Goes on by a month. */
function step(rig: Rig, state: CasksState): CasksState {
  if (state.isDone) return state;
  const now = state.step + 1;
  const happened: AtStep<Happening>[] = [];
  if (now % MONTHS === 0) happened.push({ step: now, id: 'year' });
  if (now === rig.events.age) happened.push({ step: now, id: 'age' });
  const asks = rig.events.asks !== undefined && now === rig.events.asks.at;
  if (asks) happened.push({ step: now, id: 'asks' });
  return {
    ...state,
    step: now,
    casks: [month(rig, state, 0), month(rig, state, 1)],
    isAsked: state.isAsked || asks,
    isDone: now >= LONGEST_IN_STORE * MONTHS,
    happened: happened.length > 0 ? [...state.happened, ...happened] : state.happened,
  };
}

const withCask = (state: CasksState, i: Which, cask: CaskState): CasksState => ({
  ...state,
  casks: i === 0 ? [cask, state.casks[1]] : [state.casks[0], cask],
});
const sampled = (cask: CaskState): CaskState => {
  const out = drawn(cask, SAMPLE_VOLUME);
  return { ...cask, left: minus(cask.left, out), sampled: plus(cask.sampled, out) };
};

/** How it noses, in plain words: by years, quicker where it is warmer. Common practice, no source; the words are our own. */
function noseOf({ setup }: Rig, i: Which, months: number): string {
  const felt = (months / MONTHS) * 2 ** ((setup.stores[i].temperature - setup.foundAt) / 10);
  if (felt < 2) return 'sharp and grainy; new spirit still';
  if (felt < 5) return 'softer; the wood begins to show';
  if (felt < 9) return 'rounded; fruit, and sweet wood behind it';
  if (felt < 16) return 'rich and round; wood and spirit in balance';
  return 'wood before all else; it dries the mouth';
}

function bottle(rig: Rig, state: CasksState, i: Which): Acted {
  const cask = state.casks[i];
  const bottles = bottlesInCask(rig.setup, cask.left);
  const emptied: CaskState = { ...cask, left: NONE, out: cask.left, bottles, bottledAt: state.step };
  const next = withCask(state, i, emptied);
  const all = next.casks.every(({ bottledAt }) => bottledAt >= 0);
  const done: CasksState = { ...next, isDone: all, isAsked: all ? state.isAsked : next.isAsked };
  const says = `${n(bottles, 0)} bottles come of it; ${n(rig.wanted[i], 0)} are wanted.${all ? ' The shift is done.' : ''}`;
  if (portionOf(cask.left).strength < rig.setup.strength) return goneWrong(done, 'weak', 'The cask is weaker than the bottle: nothing can be bottled at that strength.');
  return state.step < rig.events.age ? goneWrong(done, 'young', says) : { state: done, says };
} // prettier-ignore

/** Does an action. A shift that is done takes none but a note. */
function act(rig: Rig, state: CasksState, action: Action): Acted {
  if (action.do === 'note' || action.do === 'read') return { state, says: '' };
  if (state.isDone) return { state, says: 'The shift is done.' };
  if (!('cask' in action)) {
    if (action.do === 'flame') return refusedAsWrong({ ...state, isAsked: false }, 'flame', 'No flame goes near a cask: the vapour at the bung burns. It is stopped in time.');
    return state.isAsked
      ? { state: { ...state, isAsked: false }, says: 'You say no: no flame and no lamp that is not made for it in the store.' }
      : { state, says: 'Nobody asks.' };
  }
  const i = action.cask;
  const cask = state.casks[i];
  if (cask.bottledAt >= 0) return { state, says: 'That cask is empty.' };
  const looked = { ...state, looks: state.looks + 1 };
  switch (action.do) {
    case 'look': {
      const isDamp = isLeaking(rig, state, i, state.step) && state.step - rig.events.leak.from >= SHOWS;
      return { state: looked, says: isDamp ? 'A stave is damp to the hand, and the floor under it is dark: it leaks.' : 'Dry staves, tight hoops: nothing to see.' };
    }
    case 'regauge': {
      const { volume, strength, alcohol } = portionOf(cask.left);
      const should = portionOf(rig.expected[i][state.step]!).alcohol;
      const { part, verdict } = compareRegauge(alcohol, should, ALLOWED);
      const found = { month: state.step, volume, strength };
      const said = verdict === 'too little' ? `${n(part, 1)} % less alcohol than expected: look for a leak.` : 'As expected.';
      return { state: withCask(looked, i, { ...sampled(cask), regauged: found }), says: `${n(volume, 1)} L at ${n(strength, 1)} % vol. ${said}` };
    }
    case 'nose':
      return { state: withCask(looked, i, sampled(cask)), says: `It noses ${noseOf(rig, i, state.step)}.` };
    case 'mend': {
      if (!isLeaking(rig, state, i, state.step)) return { state, says: 'The cooper finds nothing to mend.' };
      const isLate = state.step - rig.events.leak.from > 2 * MONTHS;
      const mended = withCask(state, i, { ...cask, isMended: true });
      const says = 'The cooper drives the hoops and the stave is tight.';
      return isLate ? goneWrong(mended, 'dripping', says) : { state: mended, says };
    }
    case 'bottle':
      return bottle(rig, state, i);
  }
} // prettier-ignore

/** The rules of a shift of two casks; thirty years at most. */
export const casksCourse: Course<Rig, CasksState, Action> = {
  begin,
  act,
  step,
  longest: LONGEST_IN_STORE * MONTHS,
};

/**
 * Kilomoles of a cask that do not add up: the filling less all that became of it.
 * @example unaccountedInCask({ casks: [{ filled: { ethanol: 3, water: 4 } }] }, { casks: [{ left: { ethanol: 2, water: 3 }, toAir: { ethanol: 1, water: 1 }, leaked: { ethanol: 0, water: 0 }, sampled: { ethanol: 0, water: 0 }, out: { ethanol: 0, water: 0 } }] }, 0) // { ethanol: 0, water: 0 } (2 + 1 and 3 + 1)
 */
export function unaccountedInCask({ casks }: Rig, state: CasksState, i: Which): Amounts {
  const { left, toAir, leaked, sampled, out } = state.casks[i];
  return minus(casks[i].filled, [left, toAir, leaked, sampled, out].reduce(plus));
}
