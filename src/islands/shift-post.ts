// What a kind of shift says of itself, so that one desk serves all: its rules, its clock, its words, its controls and its end.
import type { JSX } from 'solid-js';
import type { Course, Moment, LogNote, LogRead } from '../core/shift/course.ts';
import type { Goal, Score, ScoreReason } from '../core/shift/points.ts';
import type { Line } from '../core/line/line.ts';
import type { Refusal } from '../core/refusal.ts';
import type { KeptShift } from '../shift/kept.ts';

export interface Sign {
  readonly title: string;
  readonly usual: string;
}

/** A pace of the clock: steps of the run in a second of ours, and its name with what is said after it. */
export interface ClockPace {
  readonly steps: number;
  readonly name: string;
  readonly after: string;
}

/** Something to turn or to press; its keys stand on it. */
export type Control =
  | { readonly turn: string; readonly shows: string; readonly says: string; readonly up: string; readonly down: string; readonly far?: { readonly by: string; readonly up: string; readonly down: string } }
  | { readonly key: string; readonly label: readonly [string, string?]; readonly isOff?: boolean; readonly isMain?: boolean }; // prettier-ignore

/** A hydrometer in its jar: what it stands at and what that is at 20 °C, and how its stem is marked. */
export interface Jar {
  readonly stands: number;
  readonly was: number;
  readonly temperature: number;
  readonly at20: (shown: number) => number;
}
export interface Stem {
  readonly kind: 'strength' | 'gravity';
  readonly limits: readonly [number, number];
  /** What one mark is, how many marks to a printed figure, and decimals of a reading. */
  readonly mark: number;
  readonly printed: number;
  readonly digits: number;
  /** From one row of the table beside it to the next, and its first row. */
  readonly row: number;
  /** How the figure is named: “% vol”. */
  readonly unit: string;
  /** True where a denser liquid, in which the glass stands higher, shows the greater figure. */
  readonly isDenserMore: boolean;
}

export interface EndTold<D> {
  readonly score: Score;
  readonly done: D;
  /** What was made beside what the house makes. */
  readonly made: string;
  readonly compared: readonly (readonly [string, string, string])[];
  /** What carries over from round to round, and the table of them. */
  readonly rounds: string;
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export interface Post<
  R,
  S extends Moment,
  A extends LogNote | LogRead | { readonly do: string },
  D,
  K extends KeptShift<{ readonly name: string }, D, A>,
> {
  /** Its key in the browser, and its name in a sentence. */
  readonly id: string;
  readonly title: string;
  /** Where it begins, after the house's name, and its words in the line of a result. */
  readonly place: string;
  readonly words: { readonly at: string; readonly round: string };
  readonly course: Course<R, S, A>;
  /** Paces, fastest first; the third is the slow one. */
  readonly paces: readonly ClockPace[];
  readonly clock: (step: number) => string;
  readonly first: (seed: number, name: string, line: Line) => K | Refusal;
  readonly rig: (shift: K) => R | Refusal;
  readonly next: (shift: K, done: D) => K;
  readonly encode: (shift: K) => string;
  readonly decode: (text: string) => K | { readonly problem: string };
  readonly happenings: Readonly<Record<S['happened'][number]['id'], string>>;
  /** At which of these the clock stops. */
  readonly stops: readonly S['happened'][number]['id'][];
  readonly whys: Readonly<Record<S['wrong'][number]['id'], ScoreReason>>;
  /** Actions of which the log tells only the last of several at one time. */
  readonly turned: readonly string[];
  /** Actions that find something out: the log tells what came of them. */
  readonly told: readonly string[];
  readonly wordsOf: (action: A) => string;
  readonly signs: (rig: R, state: S) => readonly Sign[];
  /** What is said while nothing was done yet. */
  readonly opening: string;
  readonly gauges: (rig: R, state: S) => readonly (readonly [string, string])[];
  readonly gaugesName: string;
  readonly controls: (rig: R, state: S) => readonly (readonly Control[])[];
  /** What a key asks for as things stand, or nothing. */
  readonly keyed: (key: string, rig: R, state: S) => A | undefined;
  /** The hydrometer, where this shift has one. */
  readonly hydrometer?: {
    readonly stem: Stem;
    readonly jar: (rig: R, state: S) => Jar | Refusal;
    /** What fetching a sample is, where one has to go in for it: it may be wrong. */
    readonly fetch?: A;
  };
  readonly Picture: (props: { readonly rig: R; readonly state: S }) => JSX.Element;
  readonly names: Readonly<Record<string, string>>;
  /** What each part of the points asks for in this round. */
  readonly goals: (rig: R) => readonly Goal[];
  readonly end: (rig: R, state: S, shift: K) => EndTold<D>;
}
