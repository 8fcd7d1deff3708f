// The line that comes nearest to quoted figures: weighted least squares, with the relations as rows of known spread.
import { descend } from '../numerics/descent.ts';
import { leastSquares } from '../numerics/householder.ts';
import type { Rules } from './distilled.ts';
import { quotableFigures, quotableNames, type Measured, type QuotableName } from './quoted.ts';
import { AT_CEILING, FAR_BELOW, gapOf, type Relation, type Values } from './relations.ts';

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
const CUT = 0.5; // of a logarithm: no heart ends at half the usual strength
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
  if (figure === 'heartBegins' || figure === 'heartEnds') return logarithm(CUT);
  const amount = amounts.includes(quotableFigures[figure].kind) && figure !== 'weeksPerYear';
  return logarithm(amount ? AMOUNT : QUALITY);
}
const scales = quotableNames.map(scaleOf);
const place = Object.fromEntries(quotableNames.map((name, i) => [name, i])) as Record<QuotableName, number>;
const weighedIn = ({ relations }: Rules) =>
  Object.values(relations).filter(({ only }: Relation) => only !== 'told');

export interface QuotedFit {
  /** By which it was judged. */
  readonly rules: Rules;
  readonly at: readonly number[];
  readonly values: Values;
  /** Sum of the squares of all rows: chi-square. */
  readonly squares: number;
  /** Rows that are not used up in fixing figures. */
  readonly freedom: number;
  /** Standard uncertainty of every figure, as a part of `loose` and in its own unit. */
  readonly sure: Readonly<Record<QuotableName, { readonly loose: number; readonly own: number }>>;
  /** Covariance of the figures as they stand in the search. */
  readonly covariance: readonly (readonly number[])[];
  readonly settled: boolean;
}

interface Rows {
  readonly slopes: number[][];
  readonly misses: number[];
  /** Rows that count for the degrees of freedom: a ceiling does once it is passed. */
  bearing: number;
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
function squaresAt(measured: readonly Measured[], at: readonly number[], rules: Rules): number {
  const values = valuesAt(at);
  let sum = 0;
  for (const each of measured) sum += quotedRow(each, at[place[each.figure]]!)[0] ** 2;
  for (const relation of weighedIn(rules)) sum += gapOf(relation, values) ** 2;
  return sum;
}

/** All rows at a place: quoted and usual figures, relations that bear, and the loose rows that hold what nothing fixes. */
function rowsAt(measured: readonly Measured[], at: readonly number[], rules: Rules): Rows {
  const values = valuesAt(at);
  const rows: Rows = { slopes: [], misses: [], bearing: 0 };
  for (const each of measured) {
    const i = place[each.figure];
    const [miss, slope] = quotedRow(each, at[i]!);
    rows.slopes.push(quotableNames.map((_, j) => (j === i ? slope : 0)));
    rows.misses.push(-miss);
    rows.bearing++;
  }
  for (const relation of weighedIn(rules)) {
    const gap = gapOf(relation, values);
    if (relation.only === 'ceiling' && gap < FAR_BELOW) continue;
    if (relation.only !== 'ceiling' || gap > AT_CEILING) rows.bearing++;
    rows.slopes.push(slopesOf(relation, at, values));
    rows.misses.push(-gap);
  }
  return rows;
}

/**
 * The rows solved with the loose ones added, which hold what nothing fixes near `centre`; `damping` adds rows that
 * hold the search where it stands.
 */
function solve({ slopes, misses }: Rows, off: readonly number[], damping = 0) {
  const stiff = Math.sqrt(1 + damping);
  const loose = scales.map(({ loose }, i) => scales.map((_, j) => (j === i ? stiff / loose : 0)));
  return leastSquares(
    [...slopes, ...loose],
    [...misses, ...scales.map(({ loose }, i) => -off[i]! / loose / stiff)],
  );
}
const offFrom = (centre: readonly number[], at: readonly number[]) => at.map((x, i) => x - centre[i]!);
const pull = (off: readonly number[]) => off.reduce((sum, x, i) => sum + (x / scales[i]!.loose) ** 2, 0);

const MOST_STEPS = 40;
const MOST_DAMPING = 1e6; // a search held back so hard has lost its way
const STILL = 1e-6; // a fall of the sum of squares that counts as none: it moves no figure by a hundredth of its uncertainty
const NEARLY_STILL = 1e-3; // and one that no finding turns on

/**
 * Where the search begins: figures as quoted, all others typical.
 * @example startOfFit([], DISTILLED_TWICE).length === quotableNames.length // true (a start for each figure)
 */
export function startOfFit(measured: readonly Measured[], { typical }: Rules): readonly number[] {
  const quoted = new Map(measured.map(({ figure, value }) => [figure, value]));
  return quotableNames.map((name, i) =>
    scales[i]!.to(quoted.get(name) ?? typical[name] ?? quotableFigures[name].typical),
  );
}

/**
 * Figures not quoted of which it is known what they usually are.
 * @example usualFor(new Set(quotableNames), DISTILLED_TWICE) // [] (all are quoted)
 */
export function usualFor(quoted: ReadonlySet<QuotableName>, { usual }: Rules): readonly Measured[] {
  return quotableNames.flatMap((figure) => {
    const known = usual[figure];
    if (known === undefined || quoted.has(figure)) return [];
    const { value, spread } = known;
    return [{ figure, said: { as: 'about', value, spread } as const, value, spread }];
  });
}

/** What is known at a place, when the rows there are all there is. */
function describe(
  rows: readonly Measured[],
  rules: Rules,
  at: readonly number[],
  squares: number,
  settled: boolean,
): QuotedFit {
  const there = rowsAt(rows, at, rules);
  const { covariance } = solve(
    there,
    scales.map(() => 0),
  );
  const variance = scales.map((_, i) => covariance[i]![i]!);
  const fixed = variance.reduce((sum, v, i) => sum + 1 - v / scales[i]!.loose ** 2, 0);
  return {
    rules,
    at,
    values: valuesAt(at),
    squares,
    freedom: Math.max(0, Math.round(there.bearing - fixed)),
    sure: Object.fromEntries(
      quotableNames.map((name, i) => {
        const standard = Math.sqrt(variance[i]!);
        return [name, { loose: standard / scales[i]!.loose, own: standard * scales[i]!.slope(at[i]!) }];
      }),
    ) as QuotedFit['sure'],
    covariance,
    settled,
  };
}

/**
 * How well figures would be known at a place with only these rows: nothing is searched.
 * @example knownAt(usualFor(new Set(), DISTILLED_TWICE), fitQuoted(usualFor(new Set(), DISTILLED_TWICE), DISTILLED_TWICE)).heartStrength.own > 0 // true (no figure is known without doubt)
 */
export function knownAt(rows: readonly Measured[], { rules, at }: QuotedFit): QuotedFit['sure'] {
  return describe(rows, rules, at, 0, true).sure;
}

/** Fall of the sum of squares that a step would bring, were all rows straight. */
function promised({ slopes, misses }: Rows, off: readonly number[], move: readonly number[]): number {
  const fall = slopes.reduce((sum, row, i) => {
    const along = row.reduce((part, slope, j) => part + slope * move[j]!, 0);
    return sum + misses[i]! ** 2 - (misses[i]! - along) ** 2;
  }, 0);
  return fall + pull(off) - pull(off.map((x, i) => x + move[i]!));
}

/**
 * Gauss’s and Newton’s steps from `start`, held back harder where one would raise the sum of squares. What nothing
 * fixes stays near `centre`: the figures as quoted, and typical ones.
 * @example fitQuoted(usualFor(new Set(), DISTILLED_TWICE), DISTILLED_TWICE).values.heartStrength > 0 // true (a spirit has a strength)
 */
export function fitQuoted(
  measured: readonly Measured[],
  rules: Rules,
  centre: readonly number[] = startOfFit(measured, rules),
  start: readonly number[] = centre,
): QuotedFit {
  let last: { readonly at: readonly number[]; readonly rows: Rows } | undefined;
  const rowsOf = (at: readonly number[]) =>
    (last = last?.at === at ? last : { at, rows: rowsAt(measured, at, rules) }).rows;
  const { at, left, damping } = descend({
    start,
    squaresAt: (at) => squaresAt(measured, at, rules) + pull(offFrom(centre, at)),
    step: (at, damping, squares) => {
      const [rows, off] = [rowsOf(at), offFrom(centre, at)];
      const { solution: move } = solve(rows, off, damping);
      return { move, left: promised(rows, off, move) / (1 + squares) };
    },
    begins: 0,
    least: 1,
    mostSteps: MOST_STEPS,
    still: STILL,
    held: 1,
  });
  const settled = left < NEARLY_STILL && damping < MOST_DAMPING;
  return describe(measured, rules, at, squaresAt(measured, at, rules), settled);
}
