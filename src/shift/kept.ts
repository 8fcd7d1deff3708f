// A reader's shift of any kind: its number, the house it is of, what each round made, and the log of the one that runs.
import type { Logged } from '../core/shift/course.ts';

export interface KeptShift<House, Done, Action> {
  readonly seed: number;
  readonly house: House;
  readonly done: readonly Done[];
  readonly log: readonly Logged<Action>[];
  /** Step to which the round has run. */
  readonly step: number;
}

/** The next round: what a round made is put to the others, and a new log begins. */
export const withNext = <K extends KeptShift<unknown, D, unknown>, D>(shift: K, made: D): K => ({ ...shift, done: [...shift.done, made], log: [], step: 0 }); // prettier-ignore
