// Learns the first reading: logistic regression over the parts of the labels, with both penalties, by adaptive steps in a fixed order.
import {
  firstChances,
  partNames,
  placesOf,
  type FirstModel,
  type Learnt,
} from '../../../src/talk/first-reading.ts';
import type { LearntFirst } from '../../../src/talk/model-text.ts';
import type { Example, LearntTalk } from './talks.ts';

export interface Settings {
  readonly rounds: number;
  readonly step: number;
  /** Penalties on the size of weights and on their number. */
  readonly ridge: number;
  readonly lasso: number;
  /** Weights that are kept, and the rounds in which those are learnt again alone. */
  readonly keep: number;
  readonly again: number;
  /** Talks in which a sign must stand to be learnt. */
  readonly seen: number;
}
export const settings: Settings = {
  rounds: 20,
  step: 0.15,
  ridge: 2e-4,
  lasso: 4e-3,
  keep: 12_000,
  again: 10,
  seen: 3,
};

/** Signs that stand in enough talks. */
function signsOf(talks: readonly LearntTalk[], seen: number): Map<string, number> {
  const talksWith = new Map<string, number>();
  for (const { examples } of talks)
    for (const name of new Set(examples.flatMap(({ evidence }) => [...evidence.keys()])))
      talksWith.set(name, (talksWith.get(name) ?? 0) + 1);
  return new Map([...talksWith].filter(([, count]) => count >= seen).map(([name], i) => [name, i]));
}

interface Row {
  readonly signs: Int32Array;
  readonly strengths: Float64Array;
  readonly places: readonly (readonly number[])[];
  readonly sizes: readonly number[];
  readonly right: ReadonlySet<number>;
  /** The parts of any of its candidates. */
  readonly used: Int32Array;
}
function rowOf({ evidence, candidates, right }: Example, signs: ReadonlyMap<string, number>): Row {
  const known = [...evidence].filter(([name]) => signs.has(name));
  return {
    signs: Int32Array.from(known, ([name]) => signs.get(name)!),
    strengths: Float64Array.from(known, ([, strength]) => strength),
    places: candidates.map(({ label }) => placesOf.get(label)!),
    sizes: candidates.map(({ size }) => size),
    right: new Set(right),
    used: Int32Array.from(new Set(candidates.flatMap(({ label }) => placesOf.get(label)!))),
  };
}

/** Numbers from nought to one in an order that is always the same: Park and Miller's "minimal standard" of 1988. */
export function always(seed: number): () => number {
  let state = seed;
  return () => (state = (state * 48271) % 2147483647) / 2147483647;
}

/** A model of the first reading, learnt from talks. The same talks give the same model. */
export function learnFirst(talks: readonly LearntTalk[], { rounds, step, ridge, lasso, keep, again, seen }: Settings = settings): LearntFirst {
  const signs = signsOf(talks, seen);
  const rows = talks.flatMap(({ examples }) => examples.filter(({ right }) => right.length > 0).map((each) => rowOf(each, signs)));
  const count = partNames.length;
  const weights = new Float64Array(signs.size * count);
  const squares = new Float64Array(signs.size * count).fill(1e-2);
  let [size, sizeSquares] = [0.5, 1e-2];
  const votes = new Float64Array(count);
  const slopes = new Float64Array(count);
  const random = always(7);
  const order = rows.map((_, i) => i);
  const isKept = new Uint8Array(weights.length).fill(1);
  for (let round = 0; round < rounds + again; round++) {
    if (round === rounds) keepHeaviest(weights, squares, isKept, keep);
    for (let i = order.length - 1; i > 0; i--) {
      const j = Math.floor(random() * (i + 1));
      [order[i], order[j]] = [order[j]!, order[i]!];
    }
    const pace = round < rounds ? step * (1 - round / rounds) + 0.01 : 0.5 * step * (1 - (round - rounds) / again) + 0.01;
    const less = round < rounds ? lasso : 0;
    for (const at of order) {
      const row = rows[at]!;
      votes.fill(0);
      row.signs.forEach((sign, k) => {
        const [from, strength] = [sign * count, row.strengths[k]!];
        for (const part of row.used) votes[part]! += strength * weights[from + part]!;
      });
      const scores = row.places.map((places, i) => places.reduce((sum, part) => sum + votes[part]!, size * row.sizes[i]!));
      const most = Math.max(...scores);
      const parts = scores.map((score) => Math.exp(score - most));
      let [whole, good] = [0, 0];
      parts.forEach((part, i) => {
        whole += part;
        if (row.right.has(i)) good += part;
      });
      slopes.fill(0);
      let sizeSlope = 0;
      parts.forEach((part, i) => {
        const slope = part / whole - (row.right.has(i) ? part / good : 0);
        sizeSlope += slope * row.sizes[i]!;
        for (const place of row.places[i]!) slopes[place]! += slope;
      });
      sizeSquares += sizeSlope * sizeSlope;
      size = Math.max(0, size - (pace * sizeSlope) / Math.sqrt(sizeSquares));
      const moved = row.used.filter((part) => Math.abs(slopes[part]!) >= 1e-4);
      row.signs.forEach((sign, k) => {
        const [from, strength] = [sign * count, row.strengths[k]!];
        for (const part of moved) {
          const at = from + part;
          if (isKept[at] === 0) continue;
          const slope = strength * slopes[part]! + ridge * weights[at]!;
          squares[at]! += slope * slope;
          const rate = pace / Math.sqrt(squares[at]!);
          const next = weights[at]! - rate * slope;
          weights[at] = Math.sign(next) * Math.max(0, Math.abs(next) - rate * less);
        }
      });
    }
  }
  return { signs: kept(signs, weights), size };
} // prettier-ignore

/** Strikes out all but the weights that move the chances most: large ones, of signs that are often seen. */
function keepHeaviest(weights: Float64Array, squares: Float64Array, isKept: Uint8Array, keep: number): void {
  const heavy = weights.map((weight, at) => Math.abs(weight) * Math.sqrt(squares[at]!));
  const least = heavy.slice().sort().at(-keep) ?? 0;
  heavy.forEach((each, at) => {
    if (each >= least && each > 0) return;
    isKept[at] = 0;
    weights[at] = 0;
  });
}

const SMALL = 0.02; // a weight below it is dropped

function kept(signs: ReadonlyMap<string, number>, weights: Float64Array): Map<string, Learnt> {
  const learnt = new Map<string, Learnt>();
  for (const [name, at] of signs) {
    const own = [...weights.subarray(at * partNames.length, (at + 1) * partNames.length)];
    const parts = own.flatMap((weight, part) => (Math.abs(weight) >= SMALL ? [part] : []));
    if (parts.length > 0) learnt.set(name, { parts, weights: parts.map((part) => own[part]!) });
  }
  return learnt;
}

/** The chances of every quantity of a talk by a model. */
export const firstOf = (model: FirstModel, { examples }: LearntTalk): number[][] =>
  examples.map(({ evidence, candidates }) => firstChances(model, evidence, candidates));
