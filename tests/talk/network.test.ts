// The network of a further reading: held against sums by hand, and learnt where no sum alone would do.
import { expect, test } from 'vitest';
import type { Candidate, Label } from '../../src/talk/candidates.ts';
import { HIDDEN, labelAt, parts, weighedChances } from '../../src/talk/network.ts';
import { weighed } from '../../src/talk/second-reading.ts';
import { always } from './learn/first.ts';
import { learnSecond, type Weighed } from './learn/second.ts';

const candidate = (label: Label): Candidate => ({ label, values: [], size: 0 });
const two = [candidate('washVolume'), candidate('lowWinesVolume')];
/** Rows of two candidates, each with two things weighed. */
function rowsOf([a, b]: readonly [number, number], [c, d]: readonly [number, number]): Float64Array {
  const rows = new Float64Array(2 * weighed.length);
  rows.set([a, b]);
  rows.set([c, d], weighed.length);
  return rows;
}

test('a label’s own weight and the sum count as they stand', () => {
  const network = new Float64Array(parts.all);
  const rows = rowsOf([0, 0], [0, 0]);
  expect(weighedChances(rows, two, network)).toEqual([0.5, 0.5]);
  network[labelAt(two[0]!)] = Math.log(3);
  expect(weighedChances(rows, two, network)[0]).toBeCloseTo(0.75, 12); // 3 to 1
  network[1] = Math.log(2);
  expect(weighedChances(rowsOf([0, 0], [0, 1]), two, network)[0]).toBeCloseTo(0.6, 12); // 3 to 2
});

test('a hidden unit counts by its hyperbolic tangent', () => {
  const network = new Float64Array(parts.all);
  network[parts.begins + 2] = -0.5;
  network[parts.hidden + HIDDEN + 2] = 1; // of the second thing
  network[parts.counts + 2] = 2;
  // tanh(0.5) = 0.46212 and tanh(−0.5) = −0.46212, each twice: e^0.92423 to e^−0.92423, as 2.5199 to 0.39684.
  expect(weighedChances(rowsOf([0, 1], [0, 0]), two, network)[0]).toBeCloseTo(2.5199 / (2.5199 + 0.39684), 4);
});

test('what is right only where two things differ is learnt, which no sum can tell', () => {
  const random = always(5);
  const all = Array.from({ length: 6000 }, (): Weighed => {
    const [a, c] = [Math.sign(random() - 0.5), Math.sign(random() - 0.5)];
    const right = random() < 0.5 ? 0 : 1;
    const pair = (first: number, differs: boolean) => [first, differs ? -first : first] as const;
    return { rows: rowsOf(pair(a, right === 0), pair(c, right === 1)), candidates: two, right: [right] };
  });
  const network = learnSecond(all);
  const chances = all.map(({ rows, candidates, right }) => weighedChances(rows, candidates, network)[right[0]!]!);
  expect(chances.filter((chance) => chance > 0.5).length / all.length).toBeGreaterThan(0.95); // one half by chance
}); // prettier-ignore
