// What a guide quotes: the figures, how surely each is said, and the spread that goes with it.
import { formatNumber } from '../format.ts';
import { kinds, type KindName } from '../kinds.ts';
import { refuse, type Refusal } from '../refusal.ts';

export interface QuotableFigure {
  readonly kind: KindName;
  /** As it stands at the head of a sentence. */
  readonly label: string;
  /** What can be quoted at all; beyond it a figure is refused. */
  readonly range: readonly [number, number];
  /** Where the search begins; a figure that nothing fixes is never told. */
  readonly typical: number;
  readonly spread: Spread;
}

/**
 * Standard spread of a figure said as “about”, and of one said exactly, that is read from an instrument or a book.
 * `part`: of the figure itself; `own`: in the figure's own unit.
 */
export interface Spread {
  readonly as: 'part' | 'own';
  readonly about: number;
  readonly exact: number;
}

/** Common practice, no source: how far spoken figures of each sort lie from the book, and how well the book can know them. */
const spreads = {
  volume: { as: 'part', about: 0.03, exact: 0.005 }, // people round to the nearest five hundred litres; a dip or meter knows half a per cent
  mass: { as: 'part', about: 0.02, exact: 0.003 }, // a mash is said in half tonnes; a weigher knows three kilograms in a tonne
  alcohol: { as: 'part', about: 0.03, exact: 0.005 }, // a volume times a strength: the volume's spread governs
  yield: { as: 'part', about: 0.015, exact: 0.005 }, // “about 410” is meant to within six
  strength: { as: 'own', about: 0.5, exact: 0.1 }, // said to the half per cent; a hydrometer knows a tenth
  gravity: { as: 'own', about: 0.001, exact: 0.0003 }, // said to a degree; a saccharometer knows a third of it
  analysis: { as: 'own', about: 0.7, exact: 0.3 }, // from one delivery of malt to the next; repeat of one analysis
  working: { as: 'part', about: 0.05, exact: 0.002 }, // weeks and mashes missed; a plan that is kept
  casks: { as: 'part', about: 0.05, exact: 0.002 }, // counted by the hundred or thousand; counted
  caskSize: { as: 'part', about: 0.05, exact: 0.01 }, // mixed woods, no two alike; gauged
  years: { as: 'part', about: 0.05, exact: 0.01 }, // “ten years or so”; by the book, to the month
  loss: { as: 'own', about: 0.3, exact: 0.1 }, // “about two per cent”; from regauges of the same casks
  bottle: { as: 'part', about: 0.01, exact: 0.001 }, // what the glass says; what the filler gives
  bottles: { as: 'part', about: 0.05, exact: 0.005 }, // by the hundred; counted
} as const satisfies Record<string, Spread>;

// prettier-ignore
export const quotableFigures = {
  maltPerMash: { kind: 'mass', label: 'Malt a mash', range: [10, 100_000], typical: 8000, spread: spreads.mass },
  maltPerWeek: { kind: 'mass', label: 'Malt a week', range: [10, 5e6], typical: 80_000, spread: spreads.mass },
  maltPerYear: { kind: 'mass', label: 'Malt a year', range: [10, 2e8], typical: 3.7e6, spread: spreads.mass },
  mashesPerWeek: { kind: 'count', label: 'Mashes a week', range: [0.1, 100], typical: 10, spread: spreads.working },
  weeksPerYear: { kind: 'count', label: 'Weeks a year', range: [1, 52.3], typical: 46, spread: spreads.working },
  solubleExtract: { kind: 'percent', label: 'Soluble extract', range: [50, 90], typical: 77.5, spread: spreads.analysis },
  fermentability: { kind: 'percent', label: 'Fermentability', range: [50, 100], typical: 87, spread: spreads.analysis },
  spiritYield: { kind: 'yield', label: 'Spirit from a tonne of malt', range: [50, 560], typical: 395, spread: spreads.yield },
  wortVolume: { kind: 'volume20', label: 'Wort a mash', range: [20, 600_000], typical: 40_000, spread: spreads.volume },
  originalGravity: { kind: 'gravity', label: 'Original gravity', range: [1.02, 1.12], typical: 1.06, spread: spreads.gravity },
  finalGravity: { kind: 'gravity', label: 'Final gravity', range: [0.985, 1.04], typical: 0.998, spread: spreads.gravity },
  washVolume: { kind: 'volume20', label: 'Wash a mash', range: [20, 600_000], typical: 40_000, spread: spreads.volume },
  washStrength: { kind: 'strength', label: 'Wash strength', range: [2, 15], typical: 8.3, spread: spreads.strength },
  lowWinesVolume: { kind: 'volume20', label: 'Low wines from a mash', range: [5, 300_000], typical: 15_000, spread: spreads.volume },
  lowWinesStrength: { kind: 'strength', label: 'Low-wines strength', range: [8, 35], typical: 22, spread: spreads.strength },
  chargeVolume: { kind: 'volume20', label: 'Spirit charge for a mash', range: [5, 400_000], typical: 24_000, spread: spreads.volume },
  chargeStrength: { kind: 'strength', label: 'Spirit-charge strength', range: [10, 60], typical: 27, spread: spreads.strength },
  heartBegins: { kind: 'strength', label: 'Strength at which the heart begins', range: [40, 88], typical: 73, spread: spreads.strength },
  heartEnds: { kind: 'strength', label: 'Strength at which the heart ends', range: [25, 85], typical: 62, spread: spreads.strength },
  heartVolume: { kind: 'volume20', label: 'New spirit from a mash', range: [1, 150_000], typical: 4600, spread: spreads.volume },
  heartStrength: { kind: 'strength', label: 'Strength of the new spirit', range: [50, 87], typical: 68.7, spread: spreads.strength },
  heartAlcohol: { kind: 'alcohol', label: 'Pure alcohol from a mash', range: [1, 100_000], typical: 3160, spread: spreads.alcohol },
  alcoholPerWeek: { kind: 'alcohol', label: 'Pure alcohol a week', range: [1, 5e6], typical: 31_600, spread: spreads.alcohol },
  alcoholPerYear: { kind: 'alcohol', label: 'Pure alcohol a year', range: [1, 2e8], typical: 1.45e6, spread: spreads.alcohol },
  fillingStrength: { kind: 'strength', label: 'Filling strength', range: [35, 80], typical: 63.5, spread: spreads.strength },
  caskSize: { kind: 'volume', label: 'Mean size of the casks', range: [20, 700], typical: 225, spread: spreads.caskSize },
  casksPerWeek: { kind: 'count', label: 'Casks filled a week', range: [0.02, 50_000], typical: 220, spread: spreads.casks },
  casksPerYear: { kind: 'count', label: 'Casks filled a year', range: [1, 2e6], typical: 10_000, spread: spreads.casks },
  yearsInWood: { kind: 'years', label: 'Years in wood', range: [0.5, 60], typical: 10, spread: spreads.years },
  casksInStore: { kind: 'count', label: 'Casks in store', range: [1, 5e7], typical: 100_000, spread: spreads.casks },
  alcoholLoss: { kind: 'percent', label: 'Alcohol lost in a year', range: [0, 15], typical: 2, spread: spreads.loss },
  bottlingStrength: { kind: 'strength', label: 'Bottling strength', range: [35, 75], typical: 43, spread: spreads.strength },
  bottleSize: { kind: 'bottle', label: 'Bottle', range: [2, 500], typical: 70, spread: spreads.bottle },
  bottlesPerCask: { kind: 'count', label: 'Bottles from a cask', range: [5, 10_000], typical: 390, spread: spreads.bottles },
  bottlesPerYear: { kind: 'count', label: 'Bottles a year', range: [1, 2e9], typical: 3.9e6, spread: spreads.bottles },
} as const satisfies Record<string, QuotableFigure>;

export type QuotableName = keyof typeof quotableFigures;
export const quotableNames = Object.keys(quotableFigures) as readonly QuotableName[];

/** A figure as a guide says it, in the unit of its kind. */
export type Said =
  | { readonly as: 'exact'; readonly value: number }
  /** Rounded to its last digit: 42,500 to the hundred, 9 to the whole. `step` says otherwise: 9.0 has a step of 0.1. */
  | { readonly as: 'rounded'; readonly value: number; readonly step?: number }
  /** About so much; `spread`, a standard deviation in the figure's own unit, overrides the table. */
  | { readonly as: 'about'; readonly value: number; readonly spread?: number }
  /** From … to …; taken to hold the figure 95 times in a hundred. */
  | { readonly as: 'range'; readonly low: number; readonly high: number };

export type Quoted = Partial<Readonly<Record<QuotableName, Said>>>;

/** A quoted figure as a measurement: value and standard spread in its own unit. */
export interface Measured {
  readonly figure: QuotableName;
  readonly said: Said;
  readonly value: number;
  readonly spread: number;
}

/** Standard deviations from the middle to either end of an interval that holds 95 in a hundred. */
export const NINETY_FIVE = 1.96; // normal law

/** A figure with its unit, with as many decimals as it needs. */
export function plain(figure: QuotableName, value: number): string {
  const { kind } = quotableFigures[figure];
  const digits = kind === 'gravity' ? 3 : value % 1 === 0 || Math.abs(value) >= 1000 ? 0 : 1;
  return `${formatNumber(value, digits)} ${kinds[kind].unit}`.trim();
}

/** A figure as `plain` prints it, so that a sum of printed figures comes out as printed; one that would be printed as nothing stays. */
export function asPlain(figure: QuotableName, value: number): number {
  const digits = quotableFigures[figure].kind === 'gravity' ? 3 : Math.abs(value) >= 1000 ? 0 : 1;
  return Number(value.toFixed(digits)) || value;
}

/** Size of the last digit of a number as written: 100 for 42,500, 0.1 for 62.5. */
function lastDigit(value: number): number {
  const decimals = (String(value).split('.')[1] ?? '').length;
  if (decimals > 0) return 10 ** -decimals;
  let step = 1;
  while (value !== 0 && value % (10 * step) === 0) step *= 10;
  return step;
}

const numberIn = (value: unknown, [low, high]: readonly [number, number]) =>
  typeof value === 'number' && value >= low && value <= high;

/** What keeps one quoted figure from being read at all, in a sentence that names it; nothing when it has a value. */
function unreadable(figure: QuotableName, said: Said): string | undefined {
  const { label, range } = quotableFigures[figure];
  const numbers: readonly unknown[] = said?.as === 'range' ? [said.low, said.high] : [said?.value];
  const extra = (name: string, value: number | undefined) =>
    value === undefined || numberIn(value, [Number.MIN_VALUE, range[1]])
      ? undefined
      : `${label}: its ${name} is “${value}”; it must be above nothing and no more than the figure can be.`;
  if (!['exact', 'rounded', 'about', 'range'].includes(said?.as))
    return `${label}: it must be quoted as exact, rounded, about or a range.`;
  const none = numbers.find((value) => !Number.isFinite(value));
  if (numbers.includes(none))
    return `${label}: “${typeof none === 'number' ? none : (JSON.stringify(none) ?? 'nothing')}” was quoted, which is no number.`;
  if (said.as === 'rounded') return extra('step', said.step);
  return said.as === 'about' ? extra('spread', said.spread) : undefined;
}

/** Why one figure cannot be, whatever the others are, in a sentence that names it; nothing when it can. */
function beyond(figure: QuotableName, said: Said): string | undefined {
  const { label, range } = quotableFigures[figure];
  const ends = said.as === 'range' ? [said.low, said.high] : [said.value];
  const outside = ends.find((end) => !numberIn(end, range));
  if (outside !== undefined)
    return `${label}: ${plain(figure, outside)} was quoted; it can be from ${plain(figure, range[0])} to ${plain(figure, range[1])}.`;
  return said.as !== 'range' || said.low < said.high
    ? undefined
    : `${label}: the range from ${plain(figure, said.low)} to ${plain(figure, said.high)} does not rise; its low end must be below its high end.`;
}

/** The standard spread of what was said, in the figure's own unit: never less than a book can know. */
function spreadOf(figure: QuotableName, said: Said, value: number): number {
  const { as, about, exact } = quotableFigures[figure].spread;
  const own = (spread: number) => (as === 'part' ? spread * value : spread);
  if (said.as === 'about') return Math.max(own(exact), said.spread ?? own(about));
  if (said.as === 'rounded')
    return Math.max(own(exact), Math.min(own(about), (said.step ?? lastDigit(value)) / 2 / Math.sqrt(3))); // even over half a digit either way; JCGM 100:2008, 4.3.7; "10 years" is no looser than "about 10 years"
  if (said.as === 'range') return Math.max(own(exact), (said.high - said.low) / 2 / NINETY_FIVE);
  return own(exact);
}

/** Pairs that cannot be the other way round, whatever their spread. */
const order = [
  ['heartEnds', 'heartBegins', 'the strength falls as the heart runs'],
  ['finalGravity', 'originalGravity', 'wort that ferments grows lighter'],
] as const satisfies readonly (readonly [QuotableName, QuotableName, string])[];

/** Standard uncertainty beyond which a figure that may be near nothing, or is all but 1, counts as not known; others go by a part. */
export const vagueOwn: Partial<Readonly<Record<QuotableName, number>>> = {
  originalGravity: 0.006,
  finalGravity: 0.005,
  alcoholLoss: 1,
};

/** True when a figure could lie between two ends, beside the others as quoted: within what it can be, and in order. */
export function canBe(
  figure: QuotableName,
  [low, high]: readonly [number, number],
  measured: readonly Measured[],
): boolean {
  const [least, most] = quotableFigures[figure].range;
  const valueOf = (name: QuotableName) => measured.find((each) => each.figure === name)?.value;
  return (
    high >= least &&
    low <= most &&
    order.every(
      ([below, above]) =>
        (figure !== below || low < (valueOf(above) ?? Infinity)) &&
        (figure !== above || high > (valueOf(below) ?? -Infinity)),
    )
  );
}

/** A quoted figure that cannot be, with the sentence that says why. */
export interface Impossible extends Measured {
  readonly reason: string;
}

/** What was quoted: what can be held against the rest, and what cannot be; each in the order of the table. */
export interface Heard {
  readonly measured: readonly Measured[];
  readonly impossible: readonly Impossible[];
}

/**
 * The quoted figures as measurements. A figure beyond its limits, or a pair the wrong way round, is set apart with its
 * reason, so that the rest can be judged. Refuses only what has no value at all, by name.
 */
export function measure(quoted: Quoted): Heard | Refusal {
  const unknown = Object.keys(quoted).find((name) => !Object.hasOwn(quotableFigures, name));
  if (unknown !== undefined) return refuse(`No figure that can be quoted is called “${unknown}”.`);
  const heard: Measured[] = [];
  const reasons = new Map<QuotableName, string>();
  for (const figure of quotableNames) {
    const said = quoted[figure];
    if (said === undefined) continue;
    const problem = unreadable(figure, said);
    if (problem !== undefined) return refuse(problem);
    const value = said.as === 'range' ? (said.low + said.high) / 2 : said.value;
    heard.push({ figure, said, value, spread: Math.abs(spreadOf(figure, said, value)) });
    const reason = beyond(figure, said);
    if (reason !== undefined) reasons.set(figure, reason);
  }
  for (const [below, above, because] of order) {
    const [low, high] = [below, above].map((name) => heard.find(({ figure }) => figure === name)?.value);
    if (reasons.has(below) || reasons.has(above) || !(low! >= high!)) continue;
    const reason = `${quotableFigures[below].label} is ${plain(below, low!)} and ${quotableFigures[above].label.toLowerCase()} ${plain(above, high!)}; ${because}.`;
    reasons.set(below, reason).set(above, reason);
  }
  return {
    measured: heard.filter(({ figure }) => !reasons.has(figure)),
    impossible: heard.flatMap((each) => {
      const reason = reasons.get(each.figure);
      return reason === undefined ? [] : [{ ...each, reason }];
    }),
  };
}
