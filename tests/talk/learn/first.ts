// Learns the first reading: logistic regression over the parts of the labels, most signs hidden at each look so that none is leant on, by adaptive steps in a fixed order.
import {
  chancesOf,
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
  /** The part of a quantity's signs that are hidden each time that it is looked at. */
  readonly hidden: number;
  readonly ridge: number;
  /** How many weights are kept, and from which round those alone are learnt on: fewer step by step. */
  readonly kept: readonly (readonly [round: number, weights: number])[];
  /** Talks, and their authors, in which a sign must stand to be learnt. */
  readonly seen: number;
  readonly authors: number;
}
export const settings: Settings = {
  rounds: 16,
  step: 0.04,
  hidden: 0.7,
  ridge: 1e-4,
  kept: [
    [4, 250_000],
    [6, 150_000],
    [8, 90_000],
  ],
  seen: 3,
  authors: 2,
};

/** Signs that stand in enough talks, by their numbers. */
function signsOf(talks: readonly LearntTalk[], { seen, authors }: Settings): Map<number, number> {
  const stands = new Map<number, { talks: number; authors: Set<string> }>();
  for (const { examples, author } of talks)
    for (const sign of new Set(examples.flatMap(({ evidence }) => evidence.signs))) {
      const there = stands.get(sign) ?? { talks: 0, authors: new Set() };
      there.talks++;
      there.authors.add(author);
      stands.set(sign, there);
    }
  const often = [...stands].filter(([, each]) => each.talks >= seen && each.authors.size >= authors);
  return new Map(often.map(([sign], i) => [sign, i]));
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
function rowOf({ evidence, candidates, right }: Example, signs: ReadonlyMap<number, number>): Row {
  const known = evidence.signs.flatMap((sign, k) => (signs.has(sign) ? [k] : []));
  return {
    signs: Int32Array.from(known, (k) => signs.get(evidence.signs[k]!)!),
    strengths: Float64Array.from(known, (k) => evidence.strengths[k]!),
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

const SURE = 1; // what each weight's squares begin with: small steps at first
const STILL = 1e-4; // a slope below which nothing moves

/** A model of the first reading, learnt from talks. The same talks give the same model. */
export function learnFirst(talks: readonly LearntTalk[], how: Settings = settings): LearntFirst {
  const { rounds, step, hidden, ridge } = how;
  const signs = signsOf(talks, how);
  const rows = talks.flatMap(({ examples }) => examples.filter(({ right }) => right.length > 0).map((each) => rowOf(each, signs)));
  const count = partNames.length;
  const weights = new Float32Array(signs.size * count);
  const squares = new Float32Array(signs.size * count).fill(SURE);
  let [size, sizeSquares] = [0.6, 1e-2];
  const votes = new Float64Array(count);
  const slopes = new Float64Array(count);
  const random = always(7);
  const order = rows.map((_, i) => i);
  let left: Left | undefined;
  for (let round = 0; round < rounds; round++) {
    const fewer = how.kept.find(([from]) => from === round);
    if (fewer) left = keepHeaviest(weights, squares, left, fewer[1]);
    shuffle(order, random);
    const pace = step * (1 - round / rounds) + step / 10;
    for (const at of order) {
      const { signs, strengths, places, sizes, right, used } = rows[at]!;
      const shown: number[] = [];
      for (let k = 0; k < signs.length; k++) if (random() >= hidden) shown.push(k);
      votes.fill(0);
      for (const k of shown) {
        const [from, strength] = [signs[k]! * count, strengths[k]! / (1 - hidden)];
        if (left) eachLeft(left, signs[k]!, (at) => (votes[at - from]! += strength * weights[at]!));
        else for (const part of used) votes[part]! += strength * weights[from + part]!;
      }
      const chances = chancesOf(places.map((own, i) => own.reduce((sum, part) => sum + votes[part]!, size * sizes[i]!)));
      const good = chances.reduce((sum, chance, i) => sum + (right.has(i) ? chance : 0), 0);
      slopes.fill(0);
      let sizeSlope = 0;
      chances.forEach((chance, i) => {
        const slope = chance - (right.has(i) ? chance / good : 0);
        sizeSlope += slope * sizes[i]!;
        for (const place of places[i]!) slopes[place]! += slope;
      });
      sizeSquares += sizeSlope * sizeSlope;
      size = Math.max(0, size - (pace * sizeSlope) / Math.sqrt(sizeSquares));
      const moved = used.filter((part) => Math.abs(slopes[part]!) >= STILL);
      for (const k of shown) {
        const [from, strength] = [signs[k]! * count, strengths[k]! / (1 - hidden)];
        const move = (at: number) => {
          const slope = strength * slopes[at - from]! + ridge * weights[at]!;
          squares[at]! += slope * slope;
          weights[at]! -= (pace * slope) / Math.sqrt(squares[at]!);
        };
        if (left) eachLeft(left, signs[k]!, (at) => Math.abs(slopes[at - from]!) >= STILL && move(at));
        else for (const part of moved) move(from + part);
      }
    }
  }
  return { signs: kept(signs, weights), size };
} // prettier-ignore

/** Puts an order into another. */
export function shuffle(order: number[], random: () => number): void {
  for (let i = order.length - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1));
    [order[i], order[j]] = [order[j]!, order[i]!];
  }
}

/** The weights that are left, one after another, and where those of each sign begin. */
interface Left {
  readonly places: Int32Array;
  readonly from: Int32Array;
}
function eachLeft({ places, from }: Left, sign: number, take: (at: number) => void): void {
  for (let i = from[sign]!; i < from[sign + 1]!; i++) take(places[i]!);
}

/** Strikes out all but the weights that move the chances most: large ones, of signs that are often seen. */
function keepHeaviest(weights: Float32Array, squares: Float32Array, left: Left | undefined, keep: number): Left {
  const places = left?.places ?? Int32Array.from(weights, (_, at) => at);
  const heavyAt = (at: number) => Math.abs(weights[at]!) * Math.sqrt(squares[at]!);
  const least = Float32Array.from(places, heavyAt).sort().at(-keep) ?? 0;
  const heaviest = places.filter((at) => Math.fround(heavyAt(at)) >= least && weights[at] !== 0);
  const from = new Int32Array(weights.length / partNames.length + 1);
  for (const at of heaviest) from[Math.floor(at / partNames.length) + 1]!++;
  for (let sign = 1; sign < from.length; sign++) from[sign]! += from[sign - 1]!;
  const isLeft = new Set(heaviest);
  for (const at of places) if (!isLeft.has(at)) weights[at] = 0;
  return { places: heaviest, from };
} // prettier-ignore

const SMALL = 0.02; // a weight below it is dropped

function kept(signs: ReadonlyMap<number, number>, weights: Float32Array): Map<number, Learnt> {
  const learnt = new Map<number, Learnt>();
  for (const [sign, at] of signs) {
    const own = [...weights.subarray(at * partNames.length, (at + 1) * partNames.length)];
    const parts = own.flatMap((weight, part) => (Math.abs(weight) >= SMALL ? [part] : []));
    if (parts.length > 0) learnt.set(sign, { parts, weights: parts.map((part) => own[part]!) });
  }
  return learnt;
}

/** The chances of every quantity of a talk by a model. */
export const firstOf = (model: FirstModel, { examples }: LearntTalk): number[][] =>
  examples.map(({ evidence, candidates }) => firstChances(model, evidence, candidates));
