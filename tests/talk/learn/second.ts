// Learns the second reading: what to make of each thing weighed, by the same steps as the first.
import { weighed } from '../../../src/talk/second-reading.ts';
import { always, shuffle } from './first.ts';

/** A quantity as the second reading sees it: a row for each candidate, and which are right. */
export interface Weighed {
  readonly rows: readonly Float64Array[];
  readonly right: readonly number[];
}

const ROUNDS = 25;
const STEP = 0.1;
const RIDGE = 1e-4;

/** The weights that make what is right likeliest. The same quantities give the same weights. */
export function learnSecond(all: readonly Weighed[]): number[] {
  const weights = new Float64Array(weighed.length);
  weights[0] = 1;
  const squares = new Float64Array(weighed.length).fill(1e-2);
  const random = always(11);
  const order = all.flatMap(({ right }, i) => (right.length > 0 ? [i] : []));
  for (let round = 0; round < ROUNDS; round++) {
    shuffle(order, random);
    const pace = STEP * (1 - round / ROUNDS) + 0.003;
    for (const at of order) {
      const { rows, right } = all[at]!;
      const scores = rows.map((row) => {
        let sum = 0;
        for (let i = 0; i < row.length; i++) sum += row[i]! * weights[i]!;
        return sum;
      });
      const most = Math.max(...scores);
      const parts = scores.map((score) => Math.exp(score - most));
      const whole = parts.reduce((sum, part) => sum + part, 0);
      const good = right.reduce((sum, k) => sum + parts[k]!, 0);
      const slopes = new Float64Array(weighed.length);
      parts.forEach((part, k) => {
        const slope = part / whole - (right.includes(k) ? part / good : 0);
        if (Math.abs(slope) > 1e-5)
          for (let i = 0; i < slopes.length; i++) slopes[i]! += slope * rows[k]![i]!;
      });
      for (let i = 0; i < slopes.length; i++) {
        const slope = slopes[i]! + RIDGE * weights[i]!;
        squares[i]! += slope * slope;
        weights[i]! -= (pace * slope) / Math.sqrt(squares[i]!);
      }
    }
  }
  return [...weights];
}
