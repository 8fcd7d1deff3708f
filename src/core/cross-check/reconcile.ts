// Do the figures that a guide quotes agree? Each is judged by what the others, and the balances, say of it.
// Weighted least squares over relations.ts, each relation exact or with a spread and why. A figure that nothing else bears on is never called wrong, and a card carries what was said, never an adjusted figure.
// Tested by tests/core/reconcile.test.ts and npm run planted; the last two hundred houses of tests/study are not for tuning.
import { chanceAbove, normalLimit } from '../numerics/chi-square.ts';
import { isRefusal, type Refusal } from '../refusal.ts';
import { figuresToAsk, type Ask } from './figures-to-ask.ts';
import { blamedFigures, type Accusation } from './blamed-figures.ts';
import { brokenBounds } from './bounds.ts';
import { brokenBy, type Broken } from './broken.ts';
import { checkFigure, estimateIn, type Checked, type Estimate } from './check-figure.ts';
import { nearerCustom } from './custom.ts';
import { fitQuoted, knownAt, startOfFit, usualFor, type QuotedFit } from './fit-quoted.ts';
import {
  measure,
  NINETY_FIVE,
  quotableNames,
  vagueOwn,
  type ImpossibleFigure,
  type Measured,
  type Quoted,
  type QuotableName,
} from './quoted.ts';
import { crossCheckRules, type Distilled, type Rules } from './distilled.ts';
import { sidesApart, type Decides } from './rounded.ts';

/**
 * "cannot be": beyond its limits, one of a pair the wrong way round, or more than there was. "disagrees": the others show
 * it wrong, and it alone. "doubtful": it, or another with it, is likely wrong, and they cannot be told apart; or most of
 * a quoted range does not fit. "not checkable": nothing else quoted bears on it.
 */
export type Finding = 'agrees' | 'doubtful' | 'disagrees' | 'not checkable' | 'cannot be';
export type HowItFits = 'fits' | 'too low' | 'too high';

export interface JudgedFigure extends Measured {
  readonly finding: Finding;
  /** Of a figure that cannot be: why, in a sentence. */
  readonly reason?: string;
  /** What to quote instead; of a figure that disagrees, what the others say it is. */
  readonly adjusted: Estimate;
  /** What the other figures say it is; left out where it is not checkable. */
  readonly fits?: Estimate;
  /** Adjustment over its own standard deviation; left out where it is not checkable. */
  readonly test?: number;
  /** Fall of chi-square when the figure is left out. */
  readonly fall?: number;
  /** Of a quoted range: does each end fit what the others say? */
  readonly ends?: { readonly low: HowItFits; readonly high: HowItFits };
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
  /** What cannot be, which comes before all else; figures that stand in one of these are named together. */
  readonly impossible: readonly Accusation[];
  /** The test of all that was quoted and can be. */
  readonly overall: Test;
  /** The test without the figures that disagree. */
  readonly rest: Test;
  /** The figure whose change would mend most comes first. */
  readonly suspects: readonly Suspect[];
  /** Which relation each suspect, or the end of a range, breaks, with both sides' numbers. */
  readonly broken: readonly Broken[];
  /** Figures not quoted that those quoted determine; nothing here rests on a figure that is in doubt or disagrees. */
  readonly filled: readonly FilledFigure[];
  /** The balance that decides, where what was said on its two sides differs by more than 4 %. */
  readonly decides?: Decides;
  /** What to say besides, so that more can be checked; left out where nothing would help much. */
  readonly ask?: Ask;
  /** False when the search did not come to rest; the findings are then not to be trusted. */
  readonly settled: boolean;
}

const DOUBT = 0.1; // chance of a false alarm, of the whole and of all figures together, from which figures are in doubt
const CALLED = 0.05; // and from which one is said to disagree; usual in statistics
const APART = 6; // by how much the fall of the first suspect must lead the next: odds of e³, 20 to 1, under the normal law
const MOST_WRONG = 3; // figures left out one after another; beyond that nothing is left to stand on
const MOST_SUSPECTS = 5; // told of at once
const TOLD = 0.1; // a figure not quoted is told of when it is known to this part
const NARROWED = 0.7; // and to this part of what would be known with nothing quoted

function testOf({ squares, freedom }: QuotedFit): Test {
  return { statistic: squares, freedom, chance: freedom === 0 ? 1 : chanceAbove(squares, freedom) };
}

const descending = (checked: readonly Checked[]) => checked.toSorted((a, b) => b.test ** 2 - a.test ** 2);

/** One round of judging: what is checked, and whether the whole or any figure is beyond chance. */
function round(current: readonly Measured[], fit: QuotedFit, known: readonly Measured[]) {
  const bare = knownAt(known, fit);
  const found = current.flatMap((each) => checkFigure(each, fit, current, bare) ?? []);
  const mends = found.some(({ mendable, test }) => mendable && Math.abs(test) > NINETY_FIVE);
  const checked = mends ? found : found.map((each) => ({ ...each, mendable: true })); // where none would do, all stay in doubt
  const limit = (doubt: number) => (checked.length === 0 ? Infinity : normalLimit(1 - (1 - doubt) ** (1 / checked.length))); // Šidák's share for each of them
  const [most] = descending(checked);
  const [first, second] = descending(checked.filter(({ mendable }) => mendable));
  const strange = most !== undefined && (testOf(fit).chance < DOUBT || Math.abs(most.test) > limit(DOUBT));
  const alone =
    mends &&
    first !== undefined &&
    Math.abs(first.test) > limit(CALLED) &&
    first.test ** 2 - (second?.test ?? 0) ** 2 > APART;
  return { checked, bare, strange, wrong: alone ? first : undefined };
} // prettier-ignore

/** Leaves out, one after another, figures that the others show wrong. */
function setAside(measured: readonly Measured[], known: readonly Measured[], whole: QuotedFit, centre: readonly number[]) {
  let [current, fit] = [measured, whole];
  const aside: { readonly measured: Measured; readonly checked: Checked; readonly fall: number; readonly without: QuotedFit }[] = [];
  let judged = round(current, fit, known);
  while (judged.wrong && aside.length < MOST_WRONG) {
    const { measured: wrong } = judged.wrong;
    const rest = current.filter((each) => each !== wrong);
    const without = fitQuoted([...rest, ...known], fit.rules, centre, fit.at);
    aside.push({ measured: wrong, checked: judged.wrong, fall: fit.squares - without.squares, without });
    [current, fit] = [rest, without];
    judged = round(current, fit, known);
  }
  return { aside, current, fit, judged };
} // prettier-ignore

function endsOf({ said }: Measured, fits: Estimate): JudgedFigure['ends'] {
  if (said.as !== 'range') return undefined;
  const fit = (end: number): HowItFits =>
    end < fits.low ? 'too low' : end > fits.high ? 'too high' : 'fits';
  return { low: fit(said.low), high: fit(said.high) };
}

/** Figures that cannot be by themselves, or as a pair, with their reasons: each reason once. */
function apart(impossible: readonly ImpossibleFigure[]): readonly Accusation[] {
  const reasons = [...new Set(impossible.map(({ reason }) => reason))];
  return reasons.map((says) => {
    const figures = impossible.filter(({ reason }) => reason === says).map(({ figure }) => figure);
    return { figures, marked: figures, says };
  });
}

/** True of a figure that others fix to a tenth or so. */
const isKnown = (figure: QuotableName, { value, standard }: Estimate) =>
  standard < (vagueOwn[figure] ?? TOLD * value);

/** Figures that were not quoted and that those quoted determine: well, and far better than what is usual of any house. */
function fill(fit: QuotedFit, quoted: ReadonlySet<QuotableName>, known: readonly Measured[]): FilledFigure[] {
  const bare = knownAt(known, fit);
  return quotableNames.flatMap((figure) => {
    const found = estimateIn(fit, figure);
    const sure = isKnown(figure, found) && found.standard < NARROWED * bare[figure].own;
    return sure && !quoted.has(figure) ? [{ figure, ...found }] : [];
  });
}

/**
 * Every figure that is named, the first to look at first.
 * @example accusedFigures({ impossible: [{ figures: ['heartVolume'] }], suspects: [] }) // ['heartVolume'] (it cannot be)
 */
export function accusedFigures({ impossible, suspects }: Reconciliation): readonly QuotableName[] {
  return [
    ...new Set([...impossible.flatMap(({ figures }) => figures), ...suspects.map(({ figure }) => figure)]),
  ];
}

/**
 * Holds quoted figures against each other: weighted least squares under the relations of the line, the chi-square test
 * of the whole, the measurement test of each figure, and each suspect's value as the others have it. In the units of
 * `kinds.ts`. A figure that cannot be is told so, with the reason, and the rest are judged without it; one on which
 * nothing bears is never called wrong. `distilled` says how the house distils; twice, if it is not told. Refuses only what has
 * no value, by name.
 * Source: adjustment of measurements by least squares with the tests of Almásy and Sztanó (1975) and of Mah and
 * Tamhane, AIChE Journal 28, 828–830 (1982), from memory; leaving out one figure after another, as is common practice.
 * @example reconcile({ nonsense: { as: 'exact', value: 1 } }) // refuses: No figure that can be quoted (there is none of that name)
 */
export function reconcile(
  quoted: Quoted,
  distilled: Distilled = { scheme: 'twice' },
): Reconciliation | Refusal {
  const heard = measure(quoted);
  return isRefusal(heard)
    ? heard
    : judgeAll(crossCheckRules(distilled), heard.measured, apart(heard.impossible), heard.impossible);
}

/** Judges what can be judged; `beyond` and the figures `set` apart for it only have their places in the answer. */
function judgeAll(rules: Rules, measured: readonly Measured[], beyond: readonly Accusation[], set: readonly Measured[]): Reconciliation {
  const names = new Set(measured.map(({ figure }) => figure));
  const known = usualFor(names, rules);
  const centre = startOfFit(measured, rules);
  const whole = fitQuoted([...measured, ...known], rules, centre);
  const { aside, current, fit, judged } = setAside(measured, known, whole, centre);
  const checkedNow = new Map(judged.checked.map((each) => [each.measured.figure, each]));

  const doubtful = ({ measured: { said, value }, test, fits, mendable }: Checked) =>
    mendable &&
    ((judged.strange && Math.abs(test) > NINETY_FIVE) ||
      (said.as === 'range' && (value < fits.low || value > fits.high)));
  const inDoubt = descending(judged.checked).filter(doubtful);
  const doubted = new Set(inDoubt.map((each) => each.measured));
  /** How much of chi-square a figure takes away; without end where it is shown wrong. */
  const suspicion = (figure: QuotableName) => {
    if (aside.some(({ measured: each }) => each.figure === figure)) return Infinity;
    return (checkedNow.get(figure)?.test ?? 0) ** 2;
  };
  const blamed = blamedFigures(brokenBounds(measured, rules), suspicion, APART);
  const single = blamed.find(({ figures: [figure, other] }) => other === undefined && suspicion(figure!) < Infinity);
  if (single) {
    const wrong = measured.filter(({ figure }) => single.figures.includes(figure));
    return judgeAll(rules, measured.filter((each) => !wrong.includes(each)), [...beyond, single], [...set, ...wrong]);
  }
  const likelihood = (figure: QuotableName) => {
    const rest = [...measured, ...set].find((each) => each.figure === figure);
    return rest ? suspicion(figure) + nearerCustom(rules, figure, rest.value, fit.values[figure]) : 0;
  };
  const impossible = [...beyond, ...blamed].map((each) => ({ ...each, figures: each.figures.toSorted((a, b) => likelihood(b) - likelihood(a)) }));
  const reasons = new Map(impossible.flatMap(({ figures, marked, says }) => figures.map((figure) => [figure, { says, alone: marked.includes(figure) }] as const)));
  const trusted = current.filter((each) => !doubted.has(each) && !reasons.has(each.figure));
  const sound = trusted.length === current.length ? fit : fitQuoted([...trusted, ...known], rules, centre, fit.at);
  const left = inDoubt.slice(0, MOST_SUSPECTS).map(({ measured: each }) => {
    const without = fitQuoted([...current.filter((other) => other !== each), ...known], rules, centre, fit.at);
    return { measured: each, fall: fit.squares - without.squares, without };
  });
  const weight = ({ measured: { figure, value }, fall, without }: (typeof left)[number]) => fall + nearerCustom(rules, figure, value, without.values[figure]);
  const suspected = [...aside, ...left.toSorted((a, b) => weight(b) - weight(a))];
  const resolved = new Map(
    suspected.map(({ measured: { figure }, without }) => [figure, estimateIn(without, figure)]),
  );

  const judge = (each: Measured): JudgedFigure => {
    const { figure } = each;
    const wrong = aside.find((other) => other.measured === each);
    const found = wrong?.checked ?? checkedNow.get(figure);
    const adjusted = estimateIn(fit, figure);
    const told = reasons.get(figure);
    const reason = told && { finding: told.alone ? ('cannot be' as const) : ('doubtful' as const), reason: told.says };
    if (!found) {
      if (!reason) return { ...each, finding: 'not checkable', adjusted };
      const fits = estimateIn(sound, figure);
      return { ...each, ...reason, adjusted: fits, ...(isKnown(figure, fits) && { fits }) };
    }
    const fits = wrong ? adjusted : (resolved.get(figure) ?? found.fits);
    const ends = endsOf(each, fits);
    const finding = wrong ? 'disagrees' : doubtful(found) ? 'doubtful' : 'agrees';
    const fall = suspected.find((other) => other.measured === each)?.fall ?? found.test ** 2;
    return { ...each, finding, adjusted, fits, test: found.test, fall, ...(ends && { ends }), ...reason };
  };
  const figures = [...measured, ...set]
    .toSorted((a, b) => quotableNames.indexOf(a.figure) - quotableNames.indexOf(b.figure))
    .map(judge);

  const suspects = suspected.map(({ measured: { figure }, fall, without }) => ({
    figure,
    fall: Math.max(0, fall),
    needed: estimateIn(without, figure),
    without: testOf(without),
  }));
  const quoted = new Set(figures.map(({ figure }) => figure));
  const unsure = current.filter((each) => doubted.has(each));
  const besides = figuresToAsk(unsure.length > 0 ? unsure : trusted, quotableNames.filter((name) => !quoted.has(name)), fit, knownAt(known, fit));
  const balance = sidesApart(measured.filter(({ figure }) => !reasons.has(figure)));
  return {
    figures,
    impossible,
    ...(balance && { decides: balance }),
    ...(besides && { ask: besides }),
    overall: testOf(whole),
    rest: testOf(fit),
    suspects,
    broken: brokenBy(
      figures,
      new Map(suspected.map(({ measured: { figure }, without }) => [figure, without])),
      fit,
    ),
    filled: fill(sound, quoted, known),
    settled: whole.settled && fit.settled && sound.settled,
  };
} // prettier-ignore
