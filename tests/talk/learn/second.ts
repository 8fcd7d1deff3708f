// Learns the second reading: what to make of each thing weighed, by the same steps as the first.
import { weighed, weighedChances } from '../../../src/talk/second-reading.ts';
import { always, shuffle } from './first.ts';

/** A quantity as the second reading sees it: a row for each candidate, one after another, and which are right. */
export interface Weighed {
  readonly rows: Float64Array;
  readonly right: readonly number[];
}

const ROUNDS = 25;
const STEP = 0.1;
const RIDGE = 1e-4;

/** The weights that make what is right likeliest. The same quantities give the same weights. */
export function learnSecond(all: readonly Weighed[]): number[] {
  const weights = weighed.map((_, i) => (i === 0 ? 1 : 0)); // the first reading as it is
  const squares = new Float64Array(weighed.length).fill(1e-2);
  const random = always(11);
  const order = all.flatMap(({ right }, i) => (right.length > 0 ? [i] : []));
  for (let round = 0; round < ROUNDS; round++) {
    shuffle(order, random);
    const pace = STEP * (1 - round / ROUNDS) + 0.003;
    for (const at of order) {
      const { rows, right } = all[at]!;
      const chances = weighedChances(rows, weights);
      const good = right.reduce((sum, k) => sum + chances[k]!, 0);
      const slopes = new Float64Array(weighed.length);
      chances.forEach((chance, k) => {
        const slope = chance - (right.includes(k) ? chance / good : 0);
        if (Math.abs(slope) > 1e-5)
          for (let i = 0; i < slopes.length; i++) slopes[i]! += slope * rows[k * slopes.length + i]!;
      });
      for (let i = 0; i < slopes.length; i++) {
        const slope = slopes[i]! + RIDGE * weights[i]!;
        squares[i]! += slope * slope;
        weights[i]! -= (pace * slope) / Math.sqrt(squares[i]!);
      }
    }
  }
  return weights;
}
