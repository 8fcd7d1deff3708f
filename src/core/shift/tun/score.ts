// Points for a shift at a mash tun by a rule that is stated, and why each was lost.
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
import { wortOf } from './act.ts';
import { TUN_STEP, type Rig } from './rig.ts';
import type { TunState, Wrong } from './state.ts';

/** What may be had for each part; together a hundred. */
export const tunPoints = { mash: 15, iodine: 5, bed: 10, gravity: 20, volume: 10, extract: 15, waters: 5, readings: 10, care: 10 } as const; // prettier-ignore
/** How near counts in full, and how far for nothing; no source: a trainer's rule. */
const near = {
  mash: [0.4, 2.5], // K from the house's mash
  gravity: [0.0007, 0.004], // of the wort from what the house collects
  volume: [0.01, 0.08], // of the litres
  extract: [0.01, 0.08], // of the house's extract that is missing
  waters: [2, 8], // K of a later water, the worse of the two
} as const;
const SET = 5; // points for each time that the bed sets
const READINGS = 2; // right readings for the whole
const RIGHT = 0.0011; // gravity to which a reading is right: a mark of the stem
const APART = 10 / TUN_STEP; // steps (ten minutes) after which the glass is read anew; no source

export const tunWrongs = {
  blue: ['fault', 'Wort went to the washback while the iodine still turned blue: starch goes along, which yeast cannot use. Test before the run-off.'],
  cloudy: ['fault', 'Cloudy wort went to the washback. Let it go back over the bed until it runs clear.'],
  'set-bed': ['fault', 'The bed set: it was drawn faster than it stands. Open the run-off by small steps and watch how it pulls.'],
  'let-in': ['danger', 'Somebody was let to the open tun. Say no: only locked off, empty, cool, and by the site’s procedure.'],
  'wet-draff': ['fault', 'The draff went out wet, with wort that could have been drained.'],
  mixed: ['fault', 'A water went in while wort still stood over the bed: the two mix, and rinse as one. Let the bed drain first.'],
  'not-rinsed': ['fault', 'The draff went out before all the waters were given: what they would have rinsed out is lost with it.'],
  forced: ['fault', 'A set bed was drawn harder. Shut the run-off and lift the bed from below.'],
} as const satisfies Record<Wrong, ScoreReason>; // prettier-ignore

type Part = keyof typeof tunPoints;
const n = (value: number, digits = 1) => formatNumber(value, digits);

/**
 * What each part asks for, by what the house would collect from the same grist and waters.
 * @example goalsOfTun({ goal: { gravity: 1.055, volume: 9000, wort: { extract: 1200 } }, setup: { mash: 64, second: 75, last: 85 } }).reduce((sum, { of }) => sum + of, 0) // 100 (a hundred points in all)
 */
export const goalsOfTun = ({ goal, setup }: Rig): readonly Goal<Part>[] =>
  goalsFor(tunPoints, {
    mash: `${n(setup.mash)} °C; all within ${near.mash[0]} K, none beyond ${near.mash[1]}.`,
    iodine: 'Its own colour, before any wort goes to the washback.',
    bed: 'It never sets.',
    gravity: `${n(goal.gravity, 4)} in the washback; all within ${near.gravity[0]}.`,
    volume: `${n(goal.volume, 0)} L; all within ${n(100 * near.volume[0], 0)} %.`,
    extract: `${n(goal.wort.extract, 0)} kg; all within ${n(100 * near.extract[0], 0)} %.`,
    waters: `The second at ${n(setup.second, 0)}, the last at ${n(setup.last, 0)} °C; all within ${near.waters[0]} K.`,
    readings: `${READINGS} hydrometer readings right to 0.001, brought to 20 °C, ten minutes apart.`,
  }); // prettier-ignore

/**
 * The points of a shift against what the house would collect from the same grist and waters.
 * @example scoreOfTun({ goal: { gravity: 1.055, volume: 9000, wort: { extract: 1200 } }, setup: { mash: 64, second: 75, last: 85 } }, { step: 0, stood: 0, temperatures: [], wort: { water: 0, extract: 0 }, weak: { water: 0, extract: 0 }, happened: [], wrong: [], readings: [] }).total // 0 (nothing was done)
 */
export function scoreOfTun(rig: Rig, state: TunState): Score<Part> {
  const { goal, setup } = rig;
  const made = wortOf(state.wort);
  const is = made.volume > 0;
  const mean = state.stood > 0 ? state.warmth / state.stood : 0;
  const [, second, last] = state.temperatures;
  const off = Math.max(second === undefined ? Infinity : Math.abs(second - setup.second), last === undefined ? Infinity : Math.abs(last - setup.last)); // prettier-ignore
  const sets = state.happened.filter(({ id }) => id === 'set').length;
  const right = rightReadings(state.readings, RIGHT, APART);
  const count = (id: keyof typeof near, miss: number, has = is) =>
    has ? shareOfPoints(tunPoints[id], miss, near[id]) : 0;
  const rows: ScoreRow<Part>[] = [
    { id: 'mash', points: count('mash', mean - setup.mash, mean > 0), of: tunPoints.mash, why: mean > 0 ? `The mash stood at ${n(mean)} °C; the house mashes at ${n(setup.mash)}.` : 'Nothing was mashed.' },
    { id: 'iodine', points: state.isTested ? tunPoints.iodine : 0, of: tunPoints.iodine, why: state.isTested ? 'The iodine was clear before anything was collected.' : 'No clear iodine test before the wort was collected.' },
    { id: 'bed', points: is ? Math.max(0, tunPoints.bed - SET * sets) : 0, of: tunPoints.bed, why: sets === 0 ? 'The bed never set.' : `The bed set ${sets === 1 ? 'once' : `${sets} times`}.` },
    { id: 'gravity', points: count('gravity', made.gravity - goal.gravity), of: tunPoints.gravity, why: is ? `Wort at ${n(made.gravity, 4)}; with this weak wort the house collects ${n(goal.gravity, 4)}.` : 'No wort was collected.' },
    { id: 'volume', points: count('volume', made.volume / goal.volume - 1), of: tunPoints.volume, why: `${n(made.volume, 0)} L; the house collects ${n(goal.volume, 0)}.` },
    { id: 'extract', points: count('extract', Math.max(0, 1 - state.wort.extract / goal.wort.extract)), of: tunPoints.extract, why: `${n(state.wort.extract, 0)} kg of extract; the house collects ${n(goal.wort.extract, 0)}.` },
    { id: 'waters', points: Number.isFinite(off) ? shareOfPoints(tunPoints.waters, off, near.waters) : 0, of: tunPoints.waters, why: Number.isFinite(off) ? `Later waters at ${n(second!)} and ${n(last!)} °C; the house gives them at ${n(setup.second)} and ${n(setup.last)}.` : 'Not all the waters were given.' },
    { id: 'readings', points: tunPoints.readings * Math.min(1, right / READINGS), of: tunPoints.readings, why: `${right} of ${state.readings.length} readings right to 0.001; ${READINGS} are asked for.` },
  ]; // prettier-ignore
  return scoreRows(rows, state.wrong, tunWrongs, {
    of: tunPoints.care,
    isEarned: is,
    unanswered: state.isAsked ? 'Somebody who asked to reach in got no answer.' : undefined,
  });
}
