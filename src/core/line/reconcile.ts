// Do the figures that a guide quotes agree? Each is judged by what the others, and the balances, say of it.
import { chanceAbove, normalLimit } from '../numerics/chi-square.ts';
import type { Refusal } from '../refusal.ts';
import { brokenBy, type Broken } from './broken.ts';
import { fitQuoted, knownAt, startOf, usualFor, type Fit } from './fit-quoted.ts';
import {
  canBe,
  measure,
  NINETY_FIVE,
  quotableFigures,
  quotableNames,
  vagueOwn,
  type Measured,
  type Quoted,
  type QuotableName,
} from './quoted.ts';

/** A figure with its standard uncertainty and the range that holds it 95 times in a hundred. */
export interface Estimate {
  readonly value: number;
  readonly standard: number;
  readonly low: number;
  readonly high: number;
}

/**
 * "disagrees": the others show it wrong, and it alone. "doubtful": it, or another with it, is likely wrong, and they
 * cannot be told apart; or most of a quoted range does not fit. "not checkable": nothing else quoted bears on it.
 */
export type Finding = 'agrees' | 'doubtful' | 'disagrees' | 'not checkable';
export type End = 'fits' | 'too low' | 'too high';

export interface JudgedFigure extends Measured {
  readonly finding: Finding;
  /** What to quote instead; of a figure that disagrees, what the others say it is. */
  readonly adjusted: Estimate;
  /** What the other figures say it is; left out where it is not checkable. */
  readonly fits?: Estimate;
  /** Adjustment over its own standard deviation; left out where it is not checkable. */
  readonly test?: number;
  /** Fall of chi-square when the figure is left out. */
  readonly fall?: number;
  /** Of a quoted range: does each end fit what the others say? */
  readonly ends?: { readonly low: End; readonly high: End };
}

/** The chi-square test: chance is how often sound figures would lie this far apart or farther; 1 when nothing is tested. */
export interface Test {
  readonly statistic: number;
  readonly freedom: number;
  readonly chance: number;
}

export interface Suspect {
  readonly figure: QuotableName;
  /** Fall of chi-square when it is left out, after those before it that disagree. */
  readonly fall: number;
  /** What it would have to be. */
  readonly needed: Estimate;
  /** The test of all the rest without it. */
  readonly without: Test;
}

export interface FilledFigure extends Estimate {
  readonly figure: QuotableName;
}

export interface Reconciliation {
  /** The quoted figures, in the order of the line. */
  readonly figures: readonly JudgedFigure[];
  /** The test of all that was quoted. */
  readonly overall: Test;
  /** The test without the figures that disagree. */
  readonly rest: Test;
  /** The figure whose change would mend most comes first. */
  readonly suspects: readonly Suspect[];
  /** Which relation each suspect, or the end of a range, breaks, with both sides' numbers. */
  readonly broken: readonly Broken[];
  /** Figures not quoted that those quoted determine; nothing here rests on a figure that is in doubt or disagrees. */
  readonly filled: readonly FilledFigure[];
  /** False when the search did not come to rest; the findings are then not to be trusted. */
  readonly settled: boolean;
}

const DOUBT = 0.05; // chance of a false alarm, of the whole and of all figures together; usual in statistics
const APART = 6; // by how much the fall of the first suspect must lead the next: odds of e³, 20 to 1, under the normal law
const MOST_WRONG = 3; // figures left out one after another; beyond that nothing is left to stand on
const MOST_SUSPECTS = 5; // told of at once
const LEAST_FREE = 1e-9; // of a row: below this rounding drowns it
const VAGUE = 0.25; // a prediction wider than this part of the figure checks nothing
const NOTHING_NEW = 0.9; // of what is known with nothing quoted: a prediction no better is no check
const FARTHEST = 20; // of a logarithm: as far as a straight line is followed to what others say of a figure
const TOLD = 0.1; // a figure not quoted is told of when it is known to this part
const NARROWED = 0.7; // and to this part of what would be known with nothing quoted

function estimate(value: number, standard: number): Estimate {
  return { value, standard, low: value - NINETY_FIVE * standard, high: value + NINETY_FIVE * standard };
}

/** The same for a figure that is positive and has a spread in parts: its ends are in proportion. */
function estimateOf(figure: QuotableName, value: number, standard: number): Estimate {
  if (quotableFigures[figure].spread.as === 'own') return estimate(value, standard);
  const times = Math.exp((NINETY_FIVE * standard) / value);
  return { value, standard, low: value / times, high: value * times };
}

const estimateIn = ({ values, sure }: Fit, figure: QuotableName): Estimate =>
  estimateOf(figure, values[figure], sure[figure].own);

function testOf({ squares, freedom }: Fit): Test {
  return { statistic: squares, freedom, chance: freedom === 0 ? 1 : chanceAbove(squares, freedom) };
}

const vague = (figure: QuotableName, { value, standard }: Estimate) =>
  standard > (vagueOwn[figure] ?? VAGUE * Math.abs(value));

interface Checked {
  readonly measured: Measured;
  readonly test: number;
  readonly fits: Estimate;
  /** False when no value that the figure can have would mend the rest. */
  readonly mendable: boolean;
}

/**
 * The measurement test of one figure, and what the others say it is; nothing when they say too little, or no more
 * than `bare`, what is known of any house.
 */
function check(measured: Measured, fit: Fit, current: readonly Measured[], bare: Fit['sure']): Checked | undefined {
  const { figure, value, spread } = measured;
  const free = 1 - (fit.sure[figure].own / (partly(figure) ? (spread / value) * fit.values[figure] : spread)) ** 2;
  if (!(free > LEAST_FREE)) return undefined;
  const off = partly(figure) ? Math.log(fit.values[figure] / value) : fit.values[figure] - value;
  const unit = partly(figure) ? spread / value : spread;
  const standard = unit * Math.sqrt(1 / free - 1);
  if (!(standard < NOTHING_NEW * bare[figure].own / (partly(figure) ? fit.values[figure] : 1))) return undefined;
  const middle = partly(figure) ? value * Math.exp(Math.max(-FARTHEST, Math.min(FARTHEST, off / free))) : value + off / free;
  const fits = estimateOf(figure, middle, partly(figure) ? middle * standard : standard);
  if (vague(figure, fits)) return undefined;
  return { measured, test: off / unit / Math.sqrt(free), fits, mendable: canBe(figure, [fits.low, fits.high], current) };
} // prettier-ignore
const partly = (figure: QuotableName) => quotableFigures[figure].spread.as === 'part';

const descending = (checked: readonly Checked[]) => checked.toSorted((a, b) => b.test ** 2 - a.test ** 2);

/** One round of judging: what is checked, and whether the whole or any figure is beyond chance. */
function round(current: readonly Measured[], fit: Fit, known: readonly Measured[]) {
  const bare = knownAt(known, fit.at);
  const found = current.flatMap((each) => check(each, fit, current, bare) ?? []);
  const mends = found.some(({ mendable, test }) => mendable && Math.abs(test) > NINETY_FIVE);
  const checked = mends ? found : found.map((each) => ({ ...each, mendable: true })); // where none would do, all stay in doubt
  const limit = checked.length === 0 ? Infinity : normalLimit(1 - (1 - DOUBT) ** (1 / checked.length)); // Šidák's share for each of them
  const [most] = descending(checked);
  const [first, second] = descending(checked.filter(({ mendable }) => mendable));
  const strange = most !== undefined && (testOf(fit).chance < DOUBT || Math.abs(most.test) > limit);
  const alone =
    mends &&
    first !== undefined &&
    Math.abs(first.test) > limit &&
    first.test ** 2 - (second?.test ?? 0) ** 2 > APART;
  return { checked, strange, wrong: alone ? first : undefined };
} // prettier-ignore

/** Leaves out, one after another, figures that the others show wrong. */
function setAside(measured: readonly Measured[], known: readonly Measured[], whole: Fit, centre: readonly number[]) {
  let [current, fit] = [measured, whole];
  const aside: { readonly measured: Measured; readonly checked: Checked; readonly fall: number; readonly without: Fit }[] = [];
  let judged = round(current, fit, known);
  while (judged.wrong && aside.length < MOST_WRONG) {
    const { measured: wrong } = judged.wrong;
    const rest = current.filter((each) => each !== wrong);
    const without = fitQuoted([...rest, ...known], centre, fit.at);
    aside.push({ measured: wrong, checked: judged.wrong, fall: fit.squares - without.squares, without });
    [current, fit] = [rest, without];
    judged = round(current, fit, known);
  }
  return { aside, current, fit, judged };
} // prettier-ignore

function endsOf({ said }: Measured, fits: Estimate): JudgedFigure['ends'] {
  if (said.as !== 'range') return undefined;
  const fit = (end: number): End => (end < fits.low ? 'too low' : end > fits.high ? 'too high' : 'fits');
  return { low: fit(said.low), high: fit(said.high) };
}

/** Figures that were not quoted and that those quoted determine: well, and far better than what is usual of any house. */
function fill(fit: Fit, quoted: ReadonlySet<QuotableName>, known: readonly Measured[]): FilledFigure[] {
  const bare = knownAt(known, fit.at);
  return quotableNames.flatMap((figure) => {
    const found = estimateIn(fit, figure);
    const sure =
      found.standard < (vagueOwn[figure] ?? TOLD * found.value) &&
      found.standard < NARROWED * bare[figure].own;
    return sure && !quoted.has(figure) ? [{ figure, ...found }] : [];
  });
}

/**
 * Holds quoted figures against each other: weighted least squares under the relations of the line, the chi-square test
 * of the whole, the measurement test of each figure, and each suspect's value as the others have it. In the units of
 * `kinds.ts`. A figure on which nothing else bears is never called wrong. Refuses a figure that cannot be, by name.
 * Source: adjustment of measurements by least squares with the tests of Almásy and Sztanó (1975) and of Mah and
 * Tamhane, AIChE Journal 28, 828–830 (1982), from memory; leaving out one figure after another, as is common practice.
 */
export function reconcile(quoted: Quoted): Reconciliation | Refusal {
  const measured = measure(quoted);
  if ('refused' in measured) return measured;
  const names = new Set(measured.map(({ figure }) => figure));
  const known = usualFor(names);
  const centre = startOf(measured);
  const whole = fitQuoted([...measured, ...known], centre);
  const { aside, current, fit, judged } = setAside(measured, known, whole, centre);
  const checkedNow = new Map(judged.checked.map((each) => [each.measured.figure, each]));

  const doubtful = ({ measured: { said, value }, test, fits, mendable }: Checked) =>
    mendable &&
    ((judged.strange && Math.abs(test) > NINETY_FIVE) ||
      (said.as === 'range' && (value < fits.low || value > fits.high)));
  const inDoubt = descending(judged.checked).filter(doubtful);
  const doubted = new Set(inDoubt.map((each) => each.measured));
  const trusted = current.filter((each) => !doubted.has(each));
  const sound = doubted.size === 0 ? fit : fitQuoted([...trusted, ...known], centre, fit.at);
  const left = inDoubt.slice(0, MOST_SUSPECTS).map(({ measured: each }) => {
    const without = fitQuoted([...current.filter((other) => other !== each), ...known], centre, fit.at);
    return { measured: each, fall: fit.squares - without.squares, without };
  });
  const suspected = [...aside, ...left.toSorted((a, b) => b.fall - a.fall)];
  const resolved = new Map(
    suspected.map(({ measured: { figure }, without }) => [figure, estimateIn(without, figure)]),
  );

  const figures = measured.map((each): JudgedFigure => {
    const { figure } = each;
    const wrong = aside.find((other) => other.measured === each);
    const found = wrong?.checked ?? checkedNow.get(figure);
    const adjusted = estimateIn(fit, figure);
    if (!found) return { ...each, finding: 'not checkable', adjusted };
    const fits = wrong ? adjusted : (resolved.get(figure) ?? found.fits);
    const ends = endsOf(each, fits);
    const finding = wrong ? 'disagrees' : doubtful(found) ? 'doubtful' : 'agrees';
    const fall = suspected.find((other) => other.measured === each)?.fall ?? found.test ** 2;
    return { ...each, finding, adjusted, fits, test: found.test, fall, ...(ends && { ends }) };
  });

  const suspects = suspected.map(({ measured: { figure }, fall, without }) => ({
    figure,
    fall: Math.max(0, fall),
    needed: estimateIn(without, figure),
    without: testOf(without),
  }));
  return {
    figures,
    overall: testOf(whole),
    rest: testOf(fit),
    suspects,
    broken: brokenBy(
      figures,
      new Map(suspected.map(({ measured: { figure }, without }) => [figure, without])),
      fit,
    ),
    filled: fill(sound, names, known),
    settled: whole.settled && fit.settled && sound.settled,
  };
}
