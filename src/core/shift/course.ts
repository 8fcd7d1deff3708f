// What every shift is: a course of equal steps, things done at them, and things that happen. A still, a washback, a tun and casks each have their own.
// A course is pure and has no clock: a number draws its events, the log of actions gives the same shift again, and only the log is kept. Raise the version of its text when a step, an action or a draw changes.
// A new kind is a folder here and in src/shift, its words (src/islands/shift-post.ts), a picture, an island, a page, a line in src/components/ShiftChoice.astro; tests in tests/shift and tests/core/shift.

export interface AtStep<T> {
  readonly step: number;
  readonly id: T;
}

/** A hydrometer read: the mark read, what was made of it at 20 °C, and what both truly were; °C of the sample. */
export interface HydrometerReading {
  readonly step: number;
  readonly read: number;
  readonly corrected: number;
  readonly stood: number;
  readonly was: number;
  readonly temperature: number;
}

/** What the state of any shift has. */
export interface Moment<Happening extends string = string, Wrong extends string = string> {
  readonly step: number;
  readonly isDone: boolean;
  readonly happened: readonly AtStep<Happening>[];
  readonly wrong: readonly AtStep<Wrong>[];
  readonly readings: readonly HydrometerReading[];
}

/** A line of one's own in the log, and a hydrometer read: what can be done in any shift. */
export type LogNote = { readonly do: 'note'; readonly text: string };
export type LogRead = { readonly do: 'read'; readonly read: number; readonly corrected: number };

/** An action at a step of the run: a shift is its set-up, its events and these. */
export interface Logged<Action> {
  readonly step: number;
  readonly action: Action;
}

export interface Acted<State> {
  readonly state: State;
  /** What came of it, a sentence; for a note nothing. */
  readonly says: string;
  /** True where it was not done. */
  readonly isRefused?: true;
}

/** The rules of a kind of shift: pure functions, so that a log gives the same shift again. */
export interface Course<Rig, State extends Moment, Action> {
  readonly begin: (rig: Rig) => State;
  readonly act: (rig: Rig, state: State, action: Action) => Acted<State>;
  readonly step: (rig: Rig, state: State) => State;
  /** Steps that a shift lasts at most. */
  readonly longest: number;
}

/**
 * Whether something has happened already.
 * @example hasHappened([{ step: 1, id: 'froth' }], 'froth') // true (it happened)
 */
export const hasHappened = <T>(list: readonly AtStep<T>[], id: T): boolean =>
  list.some((each) => each.id === id);
/**
 * When something last happened, or −1.
 * @example lastHappened([{ step: 1, id: 'froth' }, { step: 4, id: 'froth' }], 'froth') // 4 (the later of two)
 */
export const lastHappened = <T>(list: readonly AtStep<T>[], id: T): number => list.findLast((each) => each.id === id)?.step ?? -1; // prettier-ignore

/**
 * A state in which one more thing went wrong, and the sentence on it.
 * @example goneWrong({ step: 3, wrong: [] }, 'dry', 'It ran dry.') // { says: 'It ran dry.', state: { step: 3, wrong: [{ step: 3, id: 'dry' }] } } (one more thing)
 */
export const goneWrong = <State extends Moment>(state: State, id: State['wrong'][number]['id'], says: string): Acted<State> => ({
  state: { ...state, wrong: [...state.wrong, { step: state.step, id }] },
  says,
}); // prettier-ignore

/**
 * The same for what was tried and is not done.
 * @example refusedAsWrong({ step: 3, wrong: [] }, 'dry', 'Not so.').isRefused // true (it was tried, and is not done)
 */
export const refusedAsWrong = <State extends Moment>(state: State, id: State['wrong'][number]['id'], says: string): Acted<State> => ({
  ...goneWrong(state, id, says),
  isRefused: true,
}); // prettier-ignore

/**
 * Whether a valve or a scale of ten marks can be set to a number.
 * @example [isMark(10), isMark(10.5), isMark(11)] // [true, false, false] (whole marks from 0 to 10)
 */
export const isMark = (n: number): boolean => Number.isInteger(n) && n >= 0 && n <= 10;

/**
 * Runs a shift to a step, each action at its own; what comes before the step it stands at is done there.
 * @example replay({ begin: () => ({ step: 0 }), step: (_, { step }) => ({ step: step + 1 }), longest: 100 }, {}, [], 3).step // 3 (nothing was done on the way)
 */
export function replay<Rig, State extends Moment, Action>(
  course: Course<Rig, State, Action>,
  rig: Rig,
  log: readonly Logged<Action>[],
  until: number,
): State {
  let state = course.begin(rig);
  let next = 0;
  const last = Math.min(until, course.longest);
  for (;;) {
    for (; next < log.length && log[next]!.step <= state.step; next++)
      state = course.act(rig, state, log[next]!.action).state;
    if (state.step >= last || state.isDone) return state;
    state = course.step(rig, state);
  }
}
