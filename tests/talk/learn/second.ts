// Learns a further reading: the network that makes of each thing weighed a chance, with some of its hidden units hidden at each look so that none is leant on, in a fixed order.
import type { Candidate } from '../../../src/talk/candidates.ts';
import { chancesOf } from '../../../src/talk/first-reading.ts';
import { HIDDEN, labelAt, parts } from '../../../src/talk/network.ts';
import { weighed } from '../../../src/talk/second-reading.ts';
import { always, shuffle } from './first.ts';

/** A quantity as the second reading sees it: a row for each candidate, one after another, and which are right. */
export interface Weighed {
  readonly rows: Float64Array;
  readonly candidates: readonly Candidate[];
  readonly right: readonly number[];
}

const ROUNDS = 8;
const STEP = 0.005;
const TOGETHER = 16; // quantities to a step
const DROPPED = 0.4; // part of the hidden units that are hidden at each look
const SHRINK = 0.05; // of each weight, times the step
const SHRINK_LABEL = 0.01;
const COUNT = weighed.length;

/** The things that show of one candidate, by their places, in steps of what each commonly comes to. */
interface Shown {
  readonly places: Int32Array;
  readonly sizes: Float64Array;
  readonly label: number;
}

/** What each thing weighed commonly comes to. */
function commonSizes(all: readonly Weighed[]): Float64Array {
  const squares = new Float64Array(COUNT);
  let rows = 0;
  for (const { rows: own } of all) {
    for (let i = 0; i < own.length; i++) squares[i % COUNT]! += own[i]! ** 2;
    rows += own.length / COUNT;
  }
  return squares.map((sum) => Math.max(0.1, Math.sqrt(sum / rows)));
}

function shownOf({ rows, candidates }: Weighed, common: Float64Array): Shown[] {
  return candidates.map((candidate, k) => {
    const own = rows.subarray(k * COUNT, (k + 1) * COUNT);
    const places = Int32Array.from([...own.keys()].filter((i) => own[i] !== 0));
    return { places, sizes: Float64Array.from(places, (i) => own[i]! / common[i]!), label: labelAt(candidate) };
  });
} // prettier-ignore

/** Adds the slopes of one quantity. */
function look(candidates: readonly Shown[], right: readonly number[], weights: Float64Array, slopes: Float64Array, seen: readonly number[]): void {
  const outs = candidates.map(() => new Float64Array(HIDDEN));
  const chances = chancesOf(
    candidates.map(({ places, sizes, label }, k) => {
      let score = weights[label]!;
      const units = weights.slice(parts.begins, parts.begins + HIDDEN);
      for (let i = 0; i < places.length; i++) {
        score += sizes[i]! * weights[places[i]!]!;
        const from = parts.hidden + places[i]! * HIDDEN;
        for (let unit = 0; unit < HIDDEN; unit++) units[unit]! += sizes[i]! * weights[from + unit]!;
      }
      for (const unit of seen) {
        outs[k]![unit] = Math.tanh(units[unit]!);
        score += (weights[parts.counts + unit]! * outs[k]![unit]!) / (1 - DROPPED);
      }
      return score;
    }),
  );
  const good = right.reduce((sum, k) => sum + chances[k]!, 0);
  const through = new Float64Array(HIDDEN);
  chances.forEach((chance, k) => {
    const slope = chance - (right.includes(k) ? chance / good : 0);
    if (Math.abs(slope) < STILL) return;
    const { places, sizes, label } = candidates[k]!;
    slopes[label]! += slope;
    for (const unit of seen) {
      const out = outs[k]![unit]!;
      slopes[parts.counts + unit]! += (slope * out) / (1 - DROPPED);
      through[unit] = ((slope * weights[parts.counts + unit]!) / (1 - DROPPED)) * (1 - out * out);
      slopes[parts.begins + unit]! += through[unit]!;
    }
    for (let i = 0; i < places.length; i++) {
      slopes[places[i]!]! += slope * sizes[i]!;
      const from = parts.hidden + places[i]! * HIDDEN;
      for (const unit of seen) slopes[from + unit]! += through[unit]! * sizes[i]!;
    }
  });
} // prettier-ignore

const STILL = 3e-4; // a slope below which nothing moves
const [MEAN, SQUARE] = [0.9, 0.999]; // of what was before, in the running means of the slopes: Kingma and Ba, 2014

/** The network that makes what is right likeliest. The same quantities give the same network. */
export function learnSecond(all: readonly Weighed[]): number[] {
  const told = all.filter(({ right }) => right.length > 0);
  const common = commonSizes(told);
  const shown = told.map((each) => shownOf(each, common));
  const random = always(11);
  const weights = new Float64Array(parts.all);
  for (let i = parts.hidden; i < parts.begins; i++) weights[i] = (random() - 0.5) / 4;
  for (let i = parts.counts; i < parts.labels; i++) weights[i] = (random() - 0.5) / 4;
  weights[0] = common[0]!; // the first reading as it is
  const [means, squares, slopes] = [new Float64Array(parts.all), new Float64Array(parts.all), new Float64Array(parts.all)];
  const order = told.map((_, i) => i);
  const steps = Math.ceil(order.length / TOGETHER);
  for (let step = 0; step < ROUNDS * steps; step++) {
    if (step % steps === 0) shuffle(order, random);
    const own = order.slice((step % steps) * TOGETHER, ((step % steps) + 1) * TOGETHER);
    slopes.fill(0);
    for (const at of own) {
      const seen = Array.from({ length: HIDDEN }, (_, unit) => unit).filter(() => random() >= DROPPED);
      look(shown[at]!, told[at]!.right, weights, slopes, seen);
    }
    const pace = STEP * (1.02 - step / (ROUNDS * steps));
    for (let i = 0; i < weights.length; i++) {
      const slope = slopes[i]! / own.length;
      means[i] = MEAN * means[i]! + (1 - MEAN) * slope;
      squares[i] = SQUARE * squares[i]! + (1 - SQUARE) * slope * slope;
      const moved = means[i]! / (1 - MEAN ** (step + 1)) / (Math.sqrt(squares[i]! / (1 - SQUARE ** (step + 1))) + 1e-6);
      const shrink = i >= parts.labels ? SHRINK_LABEL : i < parts.begins ? SHRINK : 0;
      weights[i]! -= pace * (moved + shrink * weights[i]!);
    }
  }
  for (let i = 0; i < COUNT; i++) {
    weights[i]! /= common[i]!;
    for (let unit = 0; unit < HIDDEN; unit++) weights[parts.hidden + i * HIDDEN + unit]! /= common[i]!;
  }
  return [...weights];
} // prettier-ignore
