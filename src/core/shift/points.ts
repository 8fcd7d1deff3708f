// Points for a shift by a rule that is stated, the same for every kind: parts of a hundred, less what was wrong.
import type { AtStep } from './course.ts';

const DANGER = 20; // points for each danger, out of all; no source: a trainer's rule
const FAULT = 5; // points of care for each fault that is no danger; the same

/** Why a thing counts: a fault or a danger, and what to do another time. */
export type ScoreReason = readonly ['fault' | 'danger', string];

export interface ScoreRow<Id extends string = string> {
  readonly id: Id | 'danger';
  readonly points: number;
  readonly of: number;
  readonly why: string;
}
/** What a part of the points asks for, told before it is needed. */
export interface Goal<Id extends string = string> {
  readonly id: Id;
  readonly of: number;
  readonly goal: string;
}
/**
 * The goals of a shift in the order of its points, with what care asks for.
 * @example goalsFor({ heart: 20 }, { heart: 'At 62.' }) // [{ id: 'heart', of: 20, goal: 'At 62.' }] (as told)
 */
export const goalsFor = <Id extends string>(
  points: Readonly<Record<Id, number>>,
  goals: Readonly<Record<Exclude<Id, 'care'>, string>>,
): readonly Goal<Id>[] =>
  (Object.keys(points) as Id[]).map((id) => ({
    id,
    of: points[id],
    goal: id === 'care' ? `A fault takes ${FAULT} of these; a danger takes ${DANGER} of the whole.` : goals[id as Exclude<Id, 'care'>],
  })); // prettier-ignore

export interface Score<Id extends string = string> {
  readonly total: number;
  readonly rows: readonly ScoreRow<Id>[];
  /** Each thing that went wrong, when, and why it counts. */
  readonly wrong: readonly { readonly step: number; readonly isDanger: boolean; readonly why: string }[];
}

/**
 * All of `of` within the first miss, nothing from the second on, evenly between.
 * @example [shareOfPoints(20, 1, [1, 3]), shareOfPoints(20, 2, [1, 3]), shareOfPoints(20, 3, [1, 3])] // [20, 10, 0] (all, half and none)
 */
export function shareOfPoints(of: number, miss: number, [full, none]: readonly [number, number]): number {
  return of * Math.min(1, Math.max(0, (none - Math.abs(miss)) / (none - full)));
}

/** What care is worth: its points, less so much for each fault, the unanswered request among them. */
export interface Care {
  readonly of: number;
  readonly isEarned: boolean;
  /** The request that got no answer, as a sentence; undefined where none is open. */
  readonly unanswered?: string | undefined;
}

/**
 * The rows of a score with those for care and danger, and their sum, from 0 to a hundred.
 * @example scoreRows([{ id: 'heart', points: 20, of: 20, why: '' }], [], {}, { of: 10, isEarned: true }) // { total: 30 } (20 and 10)
 */
export function scoreRows<Id extends string, Wrong extends string>(
  rows: readonly ScoreRow<Id>[],
  happenedWrong: readonly AtStep<Wrong>[],
  whys: Readonly<Record<Wrong, ScoreReason>>,
  { of, isEarned, unanswered }: Care,
): Score<Id | 'care'> {
  const wrong = happenedWrong.map(({ step, id }) => ({ step, isDanger: whys[id][0] === 'danger', why: whys[id][1] })); // prettier-ignore
  const dangers = wrong.filter(({ isDanger }) => isDanger).length;
  const faults = wrong.length - dangers + (unanswered ? 1 : 0);
  const all: ScoreRow<Id | 'care'>[] = [
    ...rows,
    { id: 'care', points: Math.max(0, (isEarned ? of : 0) - FAULT * faults), of, why: unanswered ?? `${faults === 0 ? 'No fault' : faults === 1 ? 'One fault' : `${faults} faults`} beside dangers.` },
    { id: 'danger', points: dangers === 0 ? 0 : -DANGER * dangers, of: 0, why: dangers === 0 ? 'No danger.' : `${dangers === 1 ? 'One danger' : `${dangers} dangers`}, ${DANGER} points each.` },
  ]; // prettier-ignore
  return { total: Math.max(0, Math.round(all.reduce((sum, row) => sum + row.points, 0))), rows: all, wrong };
}

/**
 * How many readings are right, each at least `apart` steps after the last that counted: the same glass read twice is one.
 * @example rightReadings([{ step: 0, read: 60, stood: 60, corrected: 60, was: 60 }, { step: 1, read: 60, stood: 60, corrected: 60, was: 60 }], 0.5, 5) // 1 (the same glass read twice is one)
 */
export function rightReadings(
  readings: readonly ({ readonly step: number } & Parameters<typeof isReadRight>[0])[],
  within: number,
  apart: number,
): number {
  let [right, last] = [0, -Infinity];
  for (const each of readings)
    if (each.step - last >= apart && isReadRight(each, within)) [right, last] = [right + 1, each.step];
  return right;
}

/** True for a hydrometer read rightly: the mark, and what was made of it at 20 °C, each within so much. */
const isReadRight = (
  { read, stood, corrected, was }: { read: number; stood: number; corrected: number; was: number },
  within: number,
): boolean => Math.abs(read - stood) <= within && Math.abs(corrected - was) <= within;
