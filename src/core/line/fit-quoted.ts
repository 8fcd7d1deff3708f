// The line that comes nearest to quoted figures: weighted least squares, with the relations as rows of known spread.
import { leastSquares } from '../numerics/orthogonal.ts';
import { quotableFigures, quotableNames, type Measured, type QuotableName } from './quoted.ts';
import { gapOf, relationNames, relations, usual, type Relation, type Values } from './relations.ts';

/** How a figure stands in the search: as its logarithm, so that balances are straight lines, or as it is. */
interface Scale {
  readonly to: (value: number) => number;
  readonly from: (x: number) => number;
  /** Change of the figure with x. */
  readonly slope: (x: number) => number;
  /** Standard deviation, in x, of a figure of which nothing is known; so wide that it weighs nothing. */
  readonly loose: number;
  readonly step: number;
}

const AMOUNT = 100; // of a logarithm: any size of house
const QUALITY = 1; // of a logarithm: a strength or a share is not known to a factor of 2.7
const logarithm = (loose: number): Scale => ({
  to: Math.log,
  from: Math.exp,
  slope: Math.exp,
  loose,
  step: 1e-5,
});
const straight = (times: number, loose: number): Scale => ({
  to: (value) => value * times,
  from: (x) => x / times,
  slope: () => 1 / times,
  loose,
  step: 1e-3,
}); // prettier-ignore
const degrees: Scale = {
  to: (gravity) => Math.log(1000 * (gravity - 1)),
  from: (x) => 1 + Math.exp(x) / 1000,
  slope: (x) => Math.exp(x) / 1000,
  loose: QUALITY,
  step: 1e-5,
};
const amounts = ['volume20', 'mass', 'alcohol', 'count'];

function scaleOf(figure: QuotableName): Scale {
  if (figure === 'originalGravity') return degrees;
  if (figure === 'finalGravity') return straight(1000, 20);
  if (figure === 'alcoholLoss') return straight(1, 5);
  const amount = amounts.includes(quotableFigures[figure].kind) && figure !== 'weeksPerYear';
  return logarithm(amount ? AMOUNT : QUALITY);
}
const scales = quotableNames.map(scaleOf);
const place = Object.fromEntries(quotableNames.map((name, i) => [name, i])) as Record<QuotableName, number>;
const weighed = relationNames.map((name): Relation => relations[name]).filter(({ only }) => only !== 'told');

export interface Fit {
  readonly at: readonly number[];
  readonly values: Values;
  /** Sum of the squares of all rows: chi-square. */
  readonly squares: number;
  /** Rows that are not used up in fixing figures. */
  readonly freedom: number;
  /** Standard uncertainty of every figure, as a part of `loose` and in its own unit. */
  readonly sure: Readonly<Record<QuotableName, { readonly loose: number; readonly own: number }>>;
  readonly settled: boolean;
}

interface Rows {
  readonly slopes: number[][];
  readonly misses: number[];
}

const valuesAt = (at: readonly number[]) =>
  Object.fromEntries(quotableNames.map((name, i) => [name, scales[i]!.from(at[i]!)])) as Record<QuotableName, number>; // prettier-ignore

/** Distance of a quoted figure from the line, in its spread, and the change of that with x. */
function quotedRow({ figure, value, spread }: Measured, x: number): readonly [miss: number, slope: number] {
  const scale = scales[place[figure]]!;
  if (quotableFigures[figure].spread.as === 'part') {
    const part = spread / value;
    return [(x - Math.log(value)) / part, 1 / part];
  }
  return [(scale.from(x) - value) / spread, scale.slope(x) / spread];
}

/** Change of a relation's gap with each of its figures, by a small step either way. */
function slopesOf(relation: Relation, at: readonly number[], values: Record<QuotableName, number>): number[] {
  const row = quotableNames.map(() => 0);
  for (const figure of relation.figures) {
    const i = place[figure];
    const { from, step } = scales[i]!;
    const here = values[figure];
    const gap = (x: number) => {
      values[figure] = from(x);
      return gapOf(relation, values);
    };
    row[i] = (gap(at[i]! + step) - gap(at[i]! - step)) / (2 * step);
    values[figure] = here;
  }
  return row;
}

/** Sum of the squares of all rows at a place. */
function squaresAt(measured: readonly Measured[], at: readonly number[]): number {
  const values = valuesAt(at);
  let sum = 0;
  for (const each of measured) sum += quotedRow(each, at[place[each.figure]]!)[0] ** 2;
  for (const relation of weighed) sum += gapOf(relation, values) ** 2;
  return sum;
}

/** All rows at a place: quoted and usual figures, relations that bear, and the loose rows that hold what nothing fixes. */
function rowsAt(measured: readonly Measured[], at: readonly number[]): Rows {
  const values = valuesAt(at);
  const rows: Rows = { slopes: [], misses: [] };
  for (const each of measured) {
    const i = place[each.figure];
    const [miss, slope] = quotedRow(each, at[i]!);
    rows.slopes.push(quotableNames.map((_, j) => (j === i ? slope : 0)));
    rows.misses.push(-miss);
  }
  for (const relation of weighed) {
    const gap = gapOf(relation, values);
    if (relation.only === 'ceiling' && gap === 0) continue;
    rows.slopes.push(slopesOf(relation, at, values));
    rows.misses.push(-gap);
  }
  return rows;
}

/** The rows solved with the loose ones added, which pull to where the search stands. */
function solve({ slopes, misses }: Rows) {
  const loose = scales.map(({ loose }, i) => scales.map((_, j) => (j === i ? 1 / loose : 0)));
  return leastSquares([...slopes, ...loose], [...misses, ...loose.map(() => 0)]);
}

const MOST_STEPS = 60;
const STILL = 1e-7; // a move, as a part of what is loose, that counts as none

/** Where the search begins: figures as quoted, all others typical. */
export function startOf(measured: readonly Measured[]): readonly number[] {
  const quoted = new Map(measured.map(({ figure, value }) => [figure, value]));
  return quotableNames.map((name, i) => scales[i]!.to(quoted.get(name) ?? quotableFigures[name].typical));
}

/** Figures not quoted of which it is known what they usually are. */
export function usualFor(quoted: ReadonlySet<QuotableName>): readonly Measured[] {
  return quotableNames.flatMap((figure) => {
    const known = usual[figure];
    if (known === undefined || quoted.has(figure)) return [];
    const { value, spread } = known;
    return [{ figure, said: { as: 'about', value, spread } as const, value, spread }];
  });
}

/** What is known at a place, when the rows there are all there is. */
function describe(rows: readonly Measured[], at: readonly number[], squares: number, settled: boolean): Fit {
  const there = rowsAt(rows, at);
  const { covariance } = solve(there);
  const variance = scales.map((_, i) => covariance[i]![i]!);
  const fixed = variance.reduce((sum, v, i) => sum + 1 - v / scales[i]!.loose ** 2, 0);
  return {
    at,
    values: valuesAt(at),
    squares,
    freedom: Math.max(0, Math.round(there.misses.length - fixed)),
    sure: Object.fromEntries(
      quotableNames.map((name, i) => {
        const standard = Math.sqrt(variance[i]!);
        return [name, { loose: standard / scales[i]!.loose, own: standard * scales[i]!.slope(at[i]!) }];
      }),
    ) as Fit['sure'],
    settled,
  };
}

/** How well figures would be known at a place with only these rows: nothing is searched. */
export function knownAt(rows: readonly Measured[], at: readonly number[]): Fit['sure'] {
  return describe(rows, at, 0, true).sure;
}

/** Gauss’s and Newton’s steps from `start`, each halved until the sum of squares no longer rises. */
export function fitQuoted(rows: readonly Measured[], start: readonly number[] = startOf(rows)): Fit {
  let at = start;
  let squares = squaresAt(rows, at);
  let settled = false;
  for (let step = 0; step < MOST_STEPS && !settled; step++) {
    const { solution } = solve(rowsAt(rows, at));
    settled = solution.every((move, i) => Math.abs(move) < STILL * scales[i]!.loose);
    let part = 1;
    let [next, there] = [at, Infinity];
    while (part > 1e-4 && !(there <= squares * (1 + 1e-12))) {
      next = at.map((x, i) => x + part * solution[i]!);
      there = squaresAt(rows, next);
      part /= 2;
    }
    if (!(there <= squares * (1 + 1e-12))) break;
    [at, squares] = [next, there];
  }
  return describe(rows, at, squares, settled);
}
