// Fits the weights of likeness (`match.ts`) to ways of asking that were held out, and prints them: node tests/asking/fit.ts
import { questionMatcher, MATCHING_SIGNS, WEIGHTS } from '../../src/asking/match.ts';
import { list } from './list.ts';

const FOLDS = 8;
const FEWEST = 4; // ways of an entry, of which one is held out
const RIVALS = 30; // entries that a held-out way is weighed against: those that are likeliest by the weights of before
const ROUNDS = 400;
const STEP = 0.5;
const RIDGE = 0.002; // holds weights small where the ways do not tell
const BY_HAND = MATCHING_SIGNS.indexOf('whole'); // no held-out way is whole

/** The signs of the entry that is meant, first, and of its rivals. */
type Case = readonly (readonly number[])[];

function casesOf(): Case[] {
  const cases: Case[] = [];
  for (let fold = 0; fold < FOLDS; fold++) {
    const isOut = (ways: number, i: number) => ways >= FEWEST && i > 0 && i % FOLDS === fold;
    const { signsOf } = questionMatcher({
      ...list,
      entries: list.entries.map((entry) => ({ ...entry, asked: entry.asked.filter((_, i) => !isOut(entry.asked.length, i)) })),
    });
    list.entries.forEach(({ asked }, own) =>
      asked.forEach((way, i) => {
        if (!isOut(asked.length, i)) return;
        const { signs } = signsOf(way);
        const row = (entry: number) => [...signs.slice(entry * MATCHING_SIGNS.length, (entry + 1) * MATCHING_SIGNS.length)];
        const sum = (entry: number) => WEIGHTS.reduce((total, weight, s) => total + weight * signs[entry * MATCHING_SIGNS.length + s]!, 0);
        const rivals = list.entries.map((_, entry) => [entry, sum(entry)] as const).filter(([entry]) => entry !== own).sort((a, b) => b[1] - a[1]).slice(0, RIVALS);
        cases.push([row(own), ...rivals.map(([entry]) => row(entry))]);
      }),
    );
  }
  return cases;
} // prettier-ignore

const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, each, i) => sum + each * b[i]!, 0);
const firstShare = (cases: readonly Case[], weights: readonly number[]) =>
  cases.filter(([own, ...rivals]) => rivals.every((rival) => dot(rival, weights) <= dot(own!, weights))).length / cases.length; // prettier-ignore

const cases = casesOf();
console.log(
  `${cases.length} ways held out; ${(100 * firstShare(cases, WEIGHTS)).toFixed(1)} % find their own entry by the weights of before`,
);
let weights = [...WEIGHTS];
const squares = weights.map(() => 1e-8);
for (let round = 0; round < ROUNDS; round++) {
  const slope = weights.map((weight) => -RIDGE * weight * cases.length);
  for (const rows of cases) {
    const sums = rows.map((row) => dot(row, weights));
    const most = Math.max(...sums);
    const parts = sums.map((sum) => Math.exp(sum - most));
    const all = parts.reduce((sum, part) => sum + part, 0);
    rows.forEach((row, r) =>
      row.forEach((sign, s) => (slope[s]! += sign * ((r === 0 ? 1 : 0) - parts[r]! / all))),
    );
  }
  weights = weights.map((weight, s) => {
    if (s === BY_HAND) return weight;
    squares[s]! += slope[s]! ** 2;
    return weight + (STEP * slope[s]!) / Math.sqrt(squares[s]!);
  });
}
console.log(`${(100 * firstShare(cases, weights)).toFixed(1)} % by the fitted ones:`);
console.log(`[${weights.map((weight) => Number(weight.toFixed(2))).join(', ')}]`);
console.log(MATCHING_SIGNS.join(', ')); // prettier-ignore
