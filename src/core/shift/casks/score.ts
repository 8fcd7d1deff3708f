// Points for two casks by a rule that is stated, and why each was lost.
import { formatNumber } from '../../format.ts';
import { portionOf } from '../../spirit/amounts.ts';
import {
  goalsFor,
  scoreRows,
  shareOfPoints,
  type Goal,
  type Score,
  type ScoreRow,
  type ScoreReason,
} from '../points.ts';
import { which, type CasksState, type Which, type Wrong } from './course.ts';
import { MONTHS, type Rig } from './rig.ts';

/** What may be had for each part; together a hundred. */
export const casksPoints = { firstBottles: 20, secondBottles: 20, firstAge: 10, secondAge: 10, regauge: 10, leak: 10, work: 10, care: 10 } as const; // prettier-ignore
/** How near counts in full, and how far for nothing; no source: a trainer's rule. */
const near = {
  bottles: [0, 0.1], // of the bottles wanted that are missing
  leak: [3, 20], // L that leaked
  work: [2, 6], // looks in a year, of both casks together
} as const;
const FRESH = 12; // months before the bottling in which a regauge counts

export const casksWrongs = {
  flame: ['danger', 'A flame was let near a cask. Say no: vapour at the bung burns.'],
  young: ['fault', 'A cask was bottled younger than is wanted. Its youngest drop gives the age.'],
  weak: ['fault', 'A cask was emptied that was weaker than the bottle. Regauge before you empty.'],
  dripping: ['fault', 'A cask leaked for more than two years before it was mended. Look at the casks each year.'],
} as const satisfies Record<Wrong, ScoreReason>; // prettier-ignore

type Part = keyof typeof casksPoints;
const n = (value: number, digits = 1) => formatNumber(value, digits);
const yearsOf = (months: number) => `${Math.floor(months / MONTHS)} years${months % MONTHS > 0 ? ` ${months % MONTHS} months` : ''}`; // prettier-ignore

/**
 * What each part asks for.
 * @example goalsOfCasks({ wanted: [300, 400], events: { age: 36 }, setup: { strength: 46 } }).reduce((sum, { of }) => sum + of, 0) // 100 (a hundred points in all)
 */
export function goalsOfCasks({ wanted, events, setup }: Rig): readonly Goal<Part>[] {
  const bottles = (i: Which) => `${n(wanted[i], 0)} at ${n(setup.strength)} % vol.`;
  const age = `${yearsOf(events.age)} at least.`;
  return goalsFor(casksPoints, {
    firstBottles: bottles(0),
    secondBottles: bottles(1),
    firstAge: age,
    secondAge: age,
    regauge: `Each in the ${FRESH} months before it is bottled.`,
    leak: `All up to ${near.leak[0]} L lost, none beyond ${near.leak[1]}: mend what is damp.`,
    work: `${near.work[0]} looks a year at both together; none beyond ${near.work[1]}.`,
  });
}

/**
 * The points of two casks against what is wanted of them.
 * @example scoreOfCasks({ wanted: [300, 400], events: { age: 36, leak: { cask: 0, from: 10 } }, setup: { strength: 46 } }, { step: 0, looks: 0, casks: [0, 1].map(() => ({ bottledAt: -1, bottles: 0, leaked: { ethanol: 0, water: 0 }, regauged: [], readings: [] })), wrong: [], happened: [], readings: [] }).total // 0 (nothing was done)
 */
export function scoreOfCasks(rig: Rig, state: CasksState): Score<Part> {
  const { wanted, events, setup } = rig;
  const bottles = (i: Which): ScoreRow<Part> => {
    const id = i === 0 ? 'firstBottles' : 'secondBottles';
    const cask = state.casks[i];
    const is = cask.bottledAt >= 0;
    return { id, points: is ? shareOfPoints(casksPoints[id], Math.max(0, 1 - cask.bottles / wanted[i]), near.bottles) : 0, of: casksPoints[id], why: is ? `${n(cask.bottles, 0)} bottles at ${n(setup.strength)} % vol; ${n(wanted[i], 0)} are wanted.` : 'It was not bottled.' };
  };
  const age = (i: Which): ScoreRow<Part> => {
    const id = i === 0 ? 'firstAge' : 'secondAge';
    const at = state.casks[i].bottledAt;
    return { id, points: at >= events.age ? casksPoints[id] : 0, of: casksPoints[id], why: at >= 0 ? `Bottled at ${yearsOf(at)}; ${yearsOf(events.age)} are wanted.` : 'It was not bottled.' };
  };
  const fresh = which.filter((i) => {
    const { regauged, bottledAt } = state.casks[i];
    return regauged.month >= 0 && bottledAt >= 0 && bottledAt - regauged.month <= FRESH;
  }).length;
  const leaked = portionOf(state.casks[events.leak.cask].leaked).volume;
  const perYear = state.step > 0 ? (MONTHS * state.looks) / state.step : 0;
  const isBegun = state.casks.some(({ bottledAt }) => bottledAt >= 0);
  const rows: ScoreRow<Part>[] = [
    bottles(0),
    bottles(1),
    age(0),
    age(1),
    { id: 'regauge', points: (casksPoints.regauge * fresh) / which.length, of: casksPoints.regauge, why: `${fresh} of 2 casks regauged in the year before they were bottled.` },
    { id: 'leak', points: isBegun ? shareOfPoints(casksPoints.leak, leaked, near.leak) : 0, of: casksPoints.leak, why: leaked > 0 ? `${n(leaked)} L leaked from the ${setup.stores[events.leak.cask].name}.` : 'Nothing leaked.' },
    { id: 'work', points: isBegun ? shareOfPoints(casksPoints.work, perYear, near.work) : 0, of: casksPoints.work, why: `${n(perYear)} looks a year at both casks; two are enough.` },
  ];
  return scoreRows(rows, state.wrong, casksWrongs, {
    of: casksPoints.care,
    isEarned: isBegun,
    unanswered: state.isAsked ? 'Somebody who asked for a flame got no answer.' : undefined,
  });
} // prettier-ignore
