// What the cross-check found, in plain sentences.
import { formatNumber } from '../format.ts';
import { kinds } from '../kinds.ts';
import type { Accusation } from './blamed-figures.ts';
import type { Broken } from './broken.ts';
import { plain, quotableFigures, type QuotableName } from './quoted.ts';
import type { JudgedFigure, Reconciliation, Suspect } from './reconcile.ts';
import type { RelationName } from './distilled.ts';
import type { Values } from './relations.ts';
import { setByTheHouse } from './set-by-the-house.ts';
import { sums } from './sums.ts';

/** A number with as many figures as it is worth when it was reckoned from rounded ones. */
function round(value: number): string {
  if (value >= 1000) return formatNumber(Number(value.toPrecision(4)), 0);
  return formatNumber(value, value % 1 === 0 || value >= 100 ? 0 : value >= 10 ? 1 : 2);
}

/**
 * Both ends of a range, rounded inwards by no more than a fifth of its width, with the unit.
 * @example rangeInWords('heartStrength', 68, 72) // '68.0 to 72.0 % vol' (both ends and the unit)
 */
export function rangeInWords(figure: QuotableName, low: number, high: number): string {
  const { kind } = quotableFigures[figure];
  const [bottom, top] = limits(figure, low, high);
  const width = Math.max(top - bottom, 1e-3 * (top > 0 ? top : quotableFigures[figure].range[1]));
  const size = 10 ** Math.floor(Math.log10(width / 5));
  const step = [5, 2, 1].map((times) => times * size).find((each) => each <= width / 5) ?? size;
  const digits = Math.max(kind === 'gravity' ? 3 : 0, -Math.floor(Math.log10(step) + 1e-9));
  const [from, to] = [Math.ceil(bottom / step - 1e-9) * step, Math.floor(top / step + 1e-9) * step];
  const unit = kinds[kind].unit;
  return `${formatNumber(from, digits)} to ${formatNumber(to, digits)}${unit === '' ? '' : ` ${unit}`}`;
}

/** A range cut to what the figure can be at all. */
function limits(figure: QuotableName, low: number, high: number): readonly [number, number] {
  const [least, most] = quotableFigures[figure].range;
  return [Math.min(most, Math.max(least, low)), Math.max(least, Math.min(most, high))];
}

/** What each relation says when its left side is too much, and when it is too little. */
const clauses: Readonly<Record<RelationName, (b: Broken) => string>> = {
  maltPerWeek: compare('the week’s malt is', 'the week’s mashes take', 'kg'),
  maltPerYear: compare('the year’s malt is', 'the year’s mashes take', 'kg'),
  mash: ({ left, right, impossible }) =>
    `the wort would hold ${round((100 * left) / right)} % of the extract in the malt${impossible ? ', more than there is' : '; a mash brings about 97 %'}`,
  extract: ({ left, right }) =>
    `the wort would hold ${round(left)} kg of extract, more than the ${round(right)} kg in the malt`,
  fermentable: compare('the wash holds', 'the wort’s fermentable extract gives', 'L of pure alcohol'),
  balling: compare('the wash is', 'the fall of gravity gives', '% vol'),
  washVolume: compare('the wash is', 'the wort makes', 'L'),
  washStill: through('the low wines', 'the wash'),
  lowWines: compare('the low wines are', 'this wash gives, run to the end,', '% vol'),
  charge: ofCharge('45 to 60 %'),
  chargeOfThree: ofCharge('75 to 90 %, where it is the third distillation,'),
  chargeOfPart: ofCharge('55 to 75 %, where a part is distilled three times,'),
  chargeHoldsLowWines: ({ left, right }) =>
    `the spirit charge, ${round(right)} L, would be less than the low wines that go into it, ${round(left)} L`,
  chargeHoldsWhatComes: ({ left, right }) =>
    `the spirit charge, ${round(right)} L, would be less than what goes into it, ${round(left)} L`,
  strongFeints: compare('the charge is', 'the strong feints of these low wines are', '% vol'),
  spiritStill: through('the heart', 'the low wines'),
  pureAlcohol: compare('the pure alcohol is', 'volume times strength makes', 'L'),
  cuts: compare('the heart as a whole is', 'its cuts make', '% vol'),
  spiritYield: compare('the yield is', 'the spirit and the malt make', 'L of pure alcohol a tonne'),
  throughBothStills: through('the new spirit', 'the wash'),
  fromTheMalt: through('the new spirit', '', 'the malt could give', 'all the malt could give'),
  alcoholPerWeek: compare('the week’s pure alcohol is', 'the week’s mashes make', 'L'),
  alcoholPerYear: compare('the year’s pure alcohol is', 'the year’s mashes make', 'L'),
  filling: ({ left, right }) =>
    `spirit of ${round(right)} % vol would be filled at ${round(left)} % vol; water cannot strengthen it`,
  casks: compare('the casks of a week hold', 'the spirit let down makes', 'L'),
  casksPerYear: compare('the year’s casks are', 'its weeks make', ''),
  store: compare('the store holds', 'the years of filling make', 'casks'),
  bottles: compare('the bottles from a cask hold', 'the years leave in it', 'L of pure alcohol'),
  bottlesPerYear: compare('the year’s bottles are', 'its casks make', ''),
};

/** The heart as a part of its charge. */
function ofCharge(usually: string) {
  return ({ left, right, impossible }: Broken) =>
    impossible
      ? `the heart would hold ${round(left)} L of pure alcohol, more than the ${round(right)} L in the charge`
      : `the heart would be ${round((100 * left) / right)} % of the charge’s alcohol; ${usually} is usual`;
}

/** Two sides that should be alike. */
function compare(one: string, other: string, unit: string) {
  const behind = unit === '' ? '' : ` ${unit}`;
  return ({ left, expected }: Broken) => `${one} ${round(left)}${behind}, but ${other} ${round(expected)}`;
}

/** Alcohol that goes from one vessel to another. */
function through(after: string, before: string, held = `${before} held`, more = `${before} did`) {
  return ({ left, right, impossible }: Broken) =>
    impossible
      ? `${after} would hold more alcohol than ${more}, ${round(left)} L against ${round(right)} L`
      : `${after} would hold ${round(left)} L of pure alcohol where ${held} ${round(right)} L`;
}

/** What would fit: a range, or the limit where the relation is a ceiling. */
function fitting({ figure, relation, left, right, fits }: Broken): string {
  if (relation !== 'filling' && relation !== 'chargeHoldsLowWines') return rangeInWords(figure, ...fits);
  const above = figure === 'fillingStrength' || figure === 'lowWinesVolume';
  return above ? `no more than ${plain(figure, right)}` : `no less than ${plain(figure, left)}`;
}

/** The sums behind a sentence, where a side is more than one figure. */
function sumsOf({ relation, from, reckoned, left, right }: Broken): string {
  const say = (figure: QuotableName) =>
    `${reckoned.includes(figure) ? 'about ' : ''}${plain(figure, from[figure]!)}`;
  const parts = sums[relation](say, from as Values);
  const told = parts.map((sum, i) => (sum === '' ? '' : `${sum} is ${round([left, right][i]!)}`));
  const all = told.filter((sum) => sum !== '').join('; ');
  return all === '' ? '' : ` (${all})`;
}

/**
 * The sentence on one broken relation: what was said, what follows by which sum, what would fit.
 * @example sentenceOf(reconcile({ heartVolume: { as: 'exact', value: 1000 }, heartStrength: { as: 'exact', value: 70 }, heartAlcohol: { as: 'exact', value: 900 } }).broken[0]).includes('700') // true (1000 × 0.7 is not 900)
 */
export function sentenceOf(broken: Broken): string {
  const { figure, quoted, end } = broken;
  const head = `${quotableFigures[figure].label}: ${end === 'low' ? 'at the low end, ' : end === 'high' ? 'at the high end, ' : 'at '}${plain(figure, quoted)}`;
  const mend = setByTheHouse.includes(figure)
    ? `check the ${nameOf(figure)}`
    : `if this one alone is wrong, ${fitting(broken)} would fit`;
  return `${head}, ${clauses[broken.relation](broken)}${sumsOf(broken)}; ${mend}.`;
}

const nameOf = (figure: QuotableName) => {
  const { label } = quotableFigures[figure];
  return label[0]!.toLowerCase() + label.slice(1);
};

function list(figures: readonly QuotableName[], and = ' and '): string {
  const names = figures.map(nameOf);
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')}${and}${names.at(-1)}`;
}

/** A suspect on which no relation was told. */
function needs({ figure, needed }: Suspect): string {
  const { label } = quotableFigures[figure];
  return setByTheHouse.includes(figure)
    ? `${label}: the other figures ask for another; check it.`
    : `${label}: if this one alone is wrong, ${rangeInWords(figure, needed.low, needed.high)} would fit.`;
}

/** Why figures cannot be, and what could be in the place of each. */
function cannotBe({ figures: named, says, limits }: Accusation, figures: readonly JudgedFigure[]): string {
  const mendable = limits?.filter(({ figure }) => named.length <= 2 || !setByTheHouse.includes(figure));
  const could = mendable?.map(
    ({ figure, most, value }, i) => `the ${nameOf(figure)}${i === 0 ? ' could be' : ''} no ${most ? 'more' : 'less'} than ${limitInWords(figure, value, most)}`,
  );
  const fits = figures.flatMap(({ figure, fits }) =>
    named.includes(figure) && fits && !setByTheHouse.includes(figure) ? [`${rangeInWords(figure, fits.low, fits.high)} for the ${nameOf(figure)}`] : [],
  );
  const mend = could && could.length > 0 ? ` With the rest as said, ${could.join(', or ')}.` : fits.length > 0 ? ` The others ask for ${fits.join(', or ')}.` : '';
  return `This cannot be. ${says}${mend}`;
} // prettier-ignore

/** A limit to three figures, rounded so that it holds. */
function limitInWords(figure: QuotableName, value: number, most: boolean): string {
  const step = quotableFigures[figure].kind === 'gravity' ? 0.001 : 10 ** (Math.floor(Math.log10(value)) - 2);
  const steps = value / step;
  return plain(
    figure,
    Number(((most ? Math.floor(steps + 1e-6) : Math.ceil(steps - 1e-6)) * step).toPrecision(6)),
  );
}

/** The balance that decides: what must have been rounded for it to hold; or, where figures are in doubt, the sum alone. */
function balance({ decides, figures }: Reconciliation): string[] {
  if (!decides) return [];
  const bad = figures.some(
    ({ figure, finding }) =>
      decides.figures.includes(figure) && finding !== 'agrees' && finding !== 'not checkable',
  );
  if (bad) return [`The sum: ${decides.says[0]!.toLowerCase()}${decides.says.slice(1)}`];
  return decides.onlyIf ? [`${decides.says} ${decides.onlyIf}`] : [];
}

/** What to say besides. */
function further({ ask }: Reconciliation): string[] {
  if (!ask) return [];
  const say = `If you also say the ${list(ask.figures, ' and the ')}`;
  if (ask.sharpens)
    return [
      `${say}, the ${nameOf(ask.sharpens.figure)} can be checked ${ask.sharpens.times < 1.75 ? 'half as closely again' : ask.sharpens.times < 2.5 ? 'twice as closely' : `about ${formatNumber(ask.sharpens.times, 0)} times as closely`}.`,
    ];
  return [`${say}, the ${list(ask.checks)} can be checked too.`];
}

function opening({ figures: all, overall, rest, suspects, impossible }: Reconciliation): string {
  const apart = new Set(impossible.flatMap((each) => each.figures));
  const figures = all.filter(({ figure }) => !apart.has(figure));
  const wrong = figures.filter(({ finding }) => finding === 'disagrees').map(({ figure }) => figure);
  const unsure = suspects
    .map(({ figure }) => figure)
    .filter((figure) => !wrong.includes(figure) && figures.some((each) => each.figure === figure));
  const checked = figures.filter(({ finding }) => finding !== 'not checkable').length;
  if (all.length === 0) return 'No figure was quoted.';
  if (figures.length === 0) return '';
  if (checked === 0)
    return overall.chance < 0.05 && impossible.length === 0
      ? 'None of these figures can be checked against the others, but they are far from what malt is known to give.'
      : `None of ${impossible.length > 0 ? 'the other' : 'these'} figures can be checked against the others.`;
  if (wrong.length === 0 && unsure.length === 0)
    return overall.chance < 0.05 && impossible.length === 0
      ? 'Taken together the figures lie further apart than their spreads allow, but none stands out.'
      : impossible.length === 0
        ? `The ${checked} figures that can be checked agree.`
        : `Apart from that, the ${checked === 1 ? 'one figure' : `${checked} figures`} that can be checked agree${checked === 1 ? 's' : ''}.`;
  const first = wrong.length === 0 ? '' : `Leave out ${list(wrong)} and the others agree.`;
  const then =
    unsure.length === 0
      ? ''
      : unsure.length === 1
        ? `Have a second look at ${list(unsure)}.`
        : `One of these is likely wrong, and nothing else quoted tells which: ${list(unsure)}.`;
  return [rest.chance < 0.05 && unsure.length === 0 ? first.replace('the others agree', 'the others agree better') : first, then].filter((part) => part !== '').join(' '); // prettier-ignore
}

/** Figures that nothing bears on, in one sentence. */
function unchecked(figures: readonly JudgedFigure[]): string[] {
  const left = figures.filter(({ finding }) => finding === 'not checkable').map(({ figure }) => figure);
  return left.length === 0 || left.length === figures.length
    ? []
    : [`Nothing else you quote checks ${list(left)}.`];
}

/**
 * The findings in plain sentences: what cannot be, the whole, each suspect, the balance that decides, what could not be
 * checked, and what to say besides.
 * @example findingSentences(reconcile({ heartStrength: { as: 'exact', value: 70 } })).length > 0 // true (it says at least that nothing could be checked)
 */
export function findingSentences(result: Reconciliation): readonly string[] {
  const apart = new Set(result.impossible.flatMap(({ figures }) => figures));
  const broken = result.broken.filter(({ figure }) => !apart.has(figure));
  const suspects = result.suspects.map(({ figure }) => figure).filter((figure) => !apart.has(figure));
  const rank = (figure: QuotableName) => (suspects.includes(figure) ? suspects.indexOf(figure) : suspects.length);
  const untold = result.suspects.filter(({ figure }) => suspects.includes(figure) && !broken.some((each) => each.figure === figure));
  return [
    ...result.impossible.map((each) => cannotBe(each, result.figures)),
    opening(result),
    ...broken.toSorted((a, b) => rank(a.figure) - rank(b.figure)).map(sentenceOf),
    ...untold.filter(({ figure }) => apart.size === 0 || !setByTheHouse.includes(figure)).map(needs),
    ...balance(result),
    ...unchecked(result.figures),
    ...further(result),
    ...(result.settled ? [] : ['The search for figures that agree did not finish, so take these findings with care.']),
  ].filter((sentence) => sentence !== '');
} // prettier-ignore
