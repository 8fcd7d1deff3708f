// What is weighed of each candidate as a chance: a sum, a few hidden units that see what stands together, and what is learnt of each label.
import { labels, type Candidate } from './candidates.ts';
import { chancesOf } from './first-reading.ts';
import { weighed } from './second-reading.ts';

export const HIDDEN = 24; // units
const COUNT = weighed.length;

/** Where the weights of a network stand: of the sum, of the hidden units thing by thing, where each unit begins, what it counts for, and of each label. */
export const parts = {
  sum: 0,
  hidden: COUNT,
  begins: COUNT + COUNT * HIDDEN,
  counts: COUNT + COUNT * HIDDEN + HIDDEN,
  labels: COUNT + COUNT * HIDDEN + 2 * HIDDEN,
  all: COUNT + COUNT * HIDDEN + 2 * HIDDEN + labels.length,
} as const;

const places = new Map(labels.map((label, i) => [label, i]));
/** Where the weight of a candidate's own label stands. */
export const labelAt = ({ label }: Candidate): number => parts.labels + places.get(label)!;

const units = new Float64Array(HIDDEN);
/** The chances of some candidates of one quantity by a network, from what is weighed of them, one after another. */
export function weighedChances(rows: Float64Array, candidates: readonly Candidate[], network: ArrayLike<number>): number[] {
  return chancesOf(
    candidates.map((candidate, k) => {
      let score = network[labelAt(candidate)]!;
      for (let unit = 0; unit < HIDDEN; unit++) units[unit] = network[parts.begins + unit]!;
      for (let i = 0, at = k * COUNT; i < COUNT; i++, at++) {
        const thing = rows[at]!;
        if (thing === 0) continue;
        score += thing * network[i]!;
        const from = parts.hidden + i * HIDDEN;
        for (let unit = 0; unit < HIDDEN; unit++) units[unit]! += thing * network[from + unit]!;
      }
      for (let unit = 0; unit < HIDDEN; unit++) score += network[parts.counts + unit]! * Math.tanh(units[unit]!);
      return score;
    }),
  );
} // prettier-ignore
