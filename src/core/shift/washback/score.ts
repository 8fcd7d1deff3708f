// Points for a shift at a washback by a rule that is stated, and why each was lost.
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
import { chargerFree, houseEnds, GAS_LIMIT, WASHBACK_STEP, type Rig } from './rig.ts';
import type { WashbackState, Wrong } from './state.ts';
import { hourSinceFirstWort, washOf } from './step.ts';

/** What may be had for each part; together a hundred. */
export const washbackPoints = { pitch: 15, dose: 10, peak: 15, alcohol: 20, hours: 10, finished: 10, readings: 10, care: 10 } as const; // prettier-ignore
/** How near counts in full, and how far for nothing; no source: a trainer's rule. */
const near = {
  pitch: [1.5, 4], // K from the house's set temperature
  dose: [0.05, 0.5], // of the house's dose
  peak: [0, 2], // K over the warmest that is allowed
  alcohol: [0.01, 0.06], // of the house's alcohol that is missing
  hours: [3, 15], // h from when the house hands over, or from when the charger has room
} as const;
const WARMEST = 34; // °C that a peak may come to; common practice
const READINGS = 3; // right readings for the whole
const RIGHT = 0.0011; // gravity to which a reading is right: a mark of the stem
const APART = 1 / WASHBACK_STEP; // steps (an hour) after which the glass is read anew; no source
const ALIKE = { gravity: 0.0011, apart: 3, before: 6 } as const; // two readings alike, so many h apart, the last so many h before: no source

export const washbackWrongs = {
  'dry-pitch': ['fault', 'The yeast went in before a third of the wort was there. Wait until it covers the floor well, so that it mixes.'],
  'hot-pitch': ['fault', 'The yeast went into wort over 30 °C, and half of it suffered. Set the cooler lower.'],
  unpitched: ['fault', 'The wort stood five hours without yeast, and other things began to grow in it.'],
  'frothed-over': ['fault', 'The washback frothed over, and wash ran off with it. Start the switcher as the froth rises, and antifoam if that is not enough.'],
  'too-much': ['fault', 'A third dose of antifoam: it goes on into the still.'],
  unmeasured: ['fault', 'Going in was tried without a reading of the gas for that entry, and refused. Read the meter first, each time.'],
  'went-in': ['danger', 'Going in was tried with the gas over the limit, and refused. Stay out, keep others out, report it, and wait until the meter is down.'],
  climbed: ['danger', 'Somebody was let to the open washback. Say no: only emptied, aired, tested, with a permit and somebody watching.'],
  'too-hot': ['fault', 'The wash passed 35 °C, where yeast suffers. Set it cooler, or cool sooner.'],
  early: ['fault', 'The wash still worked when it was handed over: its gas goes on in the charger, and its sugar is lost to the still.'],
} as const satisfies Record<Wrong, ScoreReason>; // prettier-ignore

type Part = keyof typeof washbackPoints;
const n = (value: number, digits = 1) => formatNumber(value, digits);

/** Whether the last two readings show that the gravity stands. */
function isSeenToStand({ readings, handedAt }: WashbackState): boolean {
  const [one, two] = readings.slice(-2);
  if (!one || !two) return false;
  return (
    Math.abs(one.corrected - two.corrected) <= ALIKE.gravity &&
    hourSinceFirstWort(two) - hourSinceFirstWort(one) >= ALIKE.apart - 1e-9 &&
    handedAt - hourSinceFirstWort(two) <= ALIKE.before
  );
}

/**
 * What each part asks for, by what the house makes of the same wort.
 * @example goalsOfWashback({ setup: { set: 20, yeast: 50, final: 0.998, hours: 60 }, peak: 30, goal: { alcohol: 700 }, events: { charger: 0 } }).reduce((sum, { of }) => sum + of, 0) // 100 (a hundred points in all)
 */
export const goalsOfWashback = (rig: Rig): readonly Goal<Part>[] =>
  goalsFor(washbackPoints, {
    pitch: `Wort at ${n(rig.setup.set)} °C; all within ${near.pitch[0]} K, none beyond ${near.pitch[1]}. Pitch between a third of the wort and five hours.`,
    dose: `${n(rig.setup.yeast, 0)} kg of yeast.`,
    peak: `Not over ${n(Math.max(WARMEST, rig.peak))} °C.`,
    alcohol: `${n(rig.goal.alcohol, 0)} L of pure alcohol; all within ${n(100 * near.alcohol[0], 0)} %.`,
    hours: `At ${n(houseEnds(rig), 0)} h, or when the charger has room; all within ${near.hours[0]} h.`,
    finished: `Two readings alike, ${ALIKE.apart} h apart, the last at most ${ALIKE.before} h before the end; the house ends at ${n(rig.setup.final, 3)}.`,
    readings: `${READINGS} readings right to 0.001, brought to 20 °C, an hour apart. Gas at the door first: over ${n(GAS_LIMIT, 0)} ppm nobody goes in.`,
  }); // prettier-ignore

/**
 * The points of a shift against what the house makes of the same wort.
 * @example scoreOfWashback({ setup: { set: 20, yeast: 50, final: gravity(1), hours: 60, wort: { volume: 9000, gravity: gravity(1.05) } }, peak: 30, mass: 9400, goal: { alcohol: 700, attenuation: { ethanol: 0.05 } }, events: { charger: 0 } }, { step: 0, part: 0, kept: 0, handedAt: -1, pitched: -1, readings: [], wrong: [], happened: [], meteredAt: -1, warmest: 20 }).total // 0 (nothing was done)
 */
export function scoreOfWashback(rig: Rig, state: WashbackState): Score<Part> {
  const wash = washOf(rig, state);
  const isHanded = state.handedAt >= 0;
  const missing = Math.max(0, 1 - wash.alcohol / rig.goal.alcohol);
  const allowed = Math.max(WARMEST, rig.peak);
  const due = Math.max(houseEnds(rig), chargerFree(rig));
  const right = rightReadings(state.readings, RIGHT, APART);
  const stands = isSeenToStand(state);
  const isIn = state.pitched >= 0;
  const count = (id: keyof typeof near, miss: number, is: boolean) =>
    is ? shareOfPoints(washbackPoints[id], miss, near[id]) : 0;
  const rows: ScoreRow<Part>[] = [
    { id: 'pitch', points: count('pitch', state.pitchedAt - rig.setup.set, isIn), of: washbackPoints.pitch, why: isIn ? `Pitched at ${n(state.pitchedAt)} °C, ${n(state.pitched)} h from the first wort; the house sets its wort at ${n(rig.setup.set)}.` : 'No yeast went in.' },
    { id: 'dose', points: count('dose', state.pitchedWith - 1, isIn), of: washbackPoints.dose, why: `${n(state.pitchedWith * rig.setup.yeast, 0)} kg of yeast; the house gives ${n(rig.setup.yeast, 0)}.` },
    { id: 'peak', points: count('peak', Math.max(0, state.warmest - allowed), isIn), of: washbackPoints.peak, why: `Warmest ${n(state.warmest)} °C; not over ${n(allowed)} is asked for.` },
    { id: 'alcohol', points: count('alcohol', missing, isHanded), of: washbackPoints.alcohol, why: `${n(wash.alcohol, 0)} L of pure alcohol; the house makes ${n(rig.goal.alcohol, 0)}.` },
    { id: 'hours', points: count('hours', state.handedAt - due, isHanded), of: washbackPoints.hours, why: isHanded ? `Handed over at ${n(state.handedAt)} h; due at ${n(due)}.` : 'It was not handed over.' },
    { id: 'finished', points: stands ? washbackPoints.finished : 0, of: washbackPoints.finished, why: stands ? 'Two readings alike, three hours apart, before it was called finished.' : 'The last two readings do not show that the gravity stood: alike to a mark, three hours apart, the last within six hours.' },
    { id: 'readings', points: washbackPoints.readings * Math.min(1, right / READINGS), of: washbackPoints.readings, why: `${right} of ${state.readings.length} readings right to 0.001; ${READINGS} are asked for.` },
  ]; // prettier-ignore
  return scoreRows(rows, state.wrong, washbackWrongs, {
    of: washbackPoints.care,
    isEarned: isIn,
    unanswered: state.isAsked ? 'Somebody who asked to be let in got no answer.' : undefined,
  });
}
