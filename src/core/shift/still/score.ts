// Points for a shift by a rule that is stated, and why each was lost.
import { formatNumber } from '../../format.ts';
import {
  goalsFor,
  rightReadings,
  scoreRows,
  shareOfPoints,
  type Goal,
  type Score,
  type ScoreRow,
  type ScoreReason,
} from '../points.ts';
import { madeOf } from './made.ts';
import { STILL_STEP, type Rig } from './rig.ts';
import type { ShiftState, Wrong } from './state.ts';

/** What may be had for each part; together a hundred. */
export const stillPoints = { strength: 20, foreshots: 20, heart: 20, end: 10, kept: 10, readings: 10, care: 10 } as const; // prettier-ignore
/** How near counts in full, and how far for nothing; no source: a trainer's rule. */
const near = {
  strength: [0.3, 1.5], // % vol of the heart
  foreshots: [0.1, 0.5], // of the house's litres
  heart: [0.5, 3], // % vol at the cut
  end: [0.5, 2], // % vol at the safe
  past: [0.5, 0.75], // of the strength at which the house ends, that was lost by running on
  kept: [0.001, 0.01], // of the charge's alcohol
} as const;
const LEAST_FORESHOTS = 0.005; // of the charge's litres: of fewer, the miss is told by this
const RIGHT = 0.3; // % vol to which a reading, and what is made of it, is right
const APART = 300 / STILL_STEP; // steps (five minutes) after which the glass is read anew; no source
const READINGS = 2; // right readings for the whole

/** Why each counts. The last part of a danger is what to do another time. */
export const stillWrongs = {
  'open-steam': ['fault', 'Steam was asked for with the still open. Shut charging valve, air valve and manhole first.'],
  'carried-over': ['danger', 'The charge frothed over the neck, and boiling liquid went through the condenser. Take steam off as soon as froth rises in the sight glass, and bring a charge up slowly.'],
  vapour: ['danger', 'Vapour came to the safe, where a spark can light it. Put on water before the boil, and cut the steam when the condenser runs warm.'],
  'left-warm': ['fault', 'Spirit ran warm for ten minutes. More water or less steam cools it.'],
  relief: ['danger', 'The relief valve lifted: steam was left on against a blocked line. Steam off, keep all shut, and call those whose work it is.'],
  manhole: ['danger', 'The manhole was tried on a hot still.'],
  'air-hot': ['danger', 'The air valve was tried on a still under steam.'],
  'charging-hot': ['fault', 'The charging valve was tried on a hot still.'],
  vacuum: ['danger', 'The discharge was tried with the air valve shut: the still would have collapsed. Air first.'],
  bare: ['danger', 'So much was boiled off that the coil would lie bare. End the run where the feints end.'],
  'hazy-heart': ['fault', 'The heart began while a sample still turned hazy with water.'],
} as const satisfies Record<Wrong, ScoreReason>; // prettier-ignore

type Part = keyof typeof stillPoints;

const n = (value: number, digits = 1) => formatNumber(value, digits);

/**
 * What each part asks for, by the house's own cuts.
 * @example goalsOfStill({ goal: { heart: { strength: 70 }, foreshots: { volume: 30 } }, setup: { cuts: { heart: 62, feints: 1 } } }).reduce((sum, { of }) => sum + of, 0) // 100 (a hundred points in all)
 */
export const goalsOfStill = ({ goal, setup }: Rig): readonly Goal<Part>[] =>
  goalsFor(stillPoints, {
    strength: `${n(goal.heart.strength)} % vol; all within ${near.strength[0]}, none beyond ${near.strength[1]}.`,
    foreshots: `${n(goal.foreshots.volume, 0)} L, then the spout to spirit, once a sample stays clear.`,
    heart: `At ${n(setup.cuts.heart)} % vol in the safe; all within ${near.heart[0]}, none beyond ${near.heart[1]}.`,
    end: `At ${n(setup.cuts.feints)} % vol in the safe; all within ${near.end[0]}, none beyond ${near.end[1]}.`,
    kept: 'No spirit or vapour lost.',
    readings: `${READINGS} hydrometer readings right to ${RIGHT} % vol, brought to 20 °C, five minutes apart.`,
  }); // prettier-ignore

/**
 * The points of a shift against what the house would make of the same charge.
 * @example scoreOfStill({ goal: { heart: { volume: 700, strength: 70, alcohol: 490 }, foreshots: { volume: 30, alcohol: 22 }, feints: { alcohol: 100 }, residue: { alcohol: 1 } }, setup: { cuts: { heart: 62, feints: 1 }, charge: { volume: 2500 } } }, beginStill({ charge: { ethanol: 1, water: 9 }, filled: 25 })).total // 0 (nothing was done)
 */
export function scoreOfStill(rig: Rig, state: ShiftState): Score<Part> {
  const made = madeOf(state, STILL_STEP);
  const { goal, setup } = rig;
  const hasHeart = made.heart.volume > 0;
  const least = Math.max(goal.foreshots.volume, LEAST_FORESHOTS * setup.charge.volume);
  const foreshots = (made.foreshots.volume - goal.foreshots.volume) / least;
  const lost = made.lost.alcohol / (goal.heart.alcohol + goal.foreshots.alcohol + goal.feints.alcohol + goal.residue.alcohol); // prettier-ignore
  const right = rightReadings(state.readings, RIGHT, APART);
  const past = 1 - made.stopped / Math.max(setup.cuts.feints, made.stopped); // nothing where it ended sooner
  const count = (id: Exclude<keyof typeof near, 'past'>, miss: number, is = hasHeart) => is ? shareOfPoints(stillPoints[id], miss, near[id]) : 0; // prettier-ignore

  const rows: ScoreRow<Part>[] = [
    { id: 'strength', points: count('strength', made.heart.strength - goal.heart.strength), of: stillPoints.strength, why: hasHeart ? `Heart at ${n(made.heart.strength)} % vol; the house’s cuts give ${n(goal.heart.strength)}.` : 'No heart was taken.' },
    { id: 'foreshots', points: count('foreshots', foreshots), of: stillPoints.foreshots, why: `Foreshots ${n(made.foreshots.volume, 0)} L; the house takes ${n(goal.foreshots.volume, 0)} L.` },
    { id: 'heart', points: count('heart', made.ended - setup.cuts.heart, made.ended > 0), of: stillPoints.heart, why: made.ended > 0 ? `The heart ended at ${n(made.ended)} % vol; the house ends it at ${n(setup.cuts.heart)}.` : 'The spout was never turned back from the heart.' },
    { id: 'end', points: state.isDone && state.boiled > 0 ? Math.min(shareOfPoints(stillPoints.end, made.stopped - setup.cuts.feints, near.end), shareOfPoints(stillPoints.end, past, near.past)) : 0, of: stillPoints.end, why: state.boiled > 0 ? `The run ended at ${n(made.stopped)} % vol; the house ends it at ${n(setup.cuts.feints)}.` : 'Nothing was distilled.' },
    { id: 'kept', points: count('kept', lost, state.boiled > 0), of: stillPoints.kept, why: `${n(made.lost.alcohol)} L of pure alcohol got away.` },
    { id: 'readings', points: stillPoints.readings * Math.min(1, right / READINGS), of: stillPoints.readings, why: `${right} of ${state.readings.length} readings right to ${RIGHT} % vol; ${READINGS} are asked for.` },
  ]; // prettier-ignore
  return scoreRows(rows, state.wrong, stillWrongs, {
    of: stillPoints.care,
    isEarned: state.boiled > 0,
    unanswered: state.isAsked ? 'Somebody who asked for the manhole got no answer.' : undefined,
  });
}
