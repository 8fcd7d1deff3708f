// What a guide quotes: the figures, how surely each is said, and the spread that goes with it.
import { figureIds, figureTable, headOf, nameWhereSaid, type RangeEnds, type QuotableName, type QuotedAs } from '../figures/index.ts'; // prettier-ignore
import { formatNumber } from '../format.ts';
import { kinds, type KindName } from '../kinds.ts';
import { refuse, type Refusal } from '../refusal.ts';

export interface QuotableFigure extends QuotedAs {
  readonly kind: KindName;
  /** As it stands at the head of a sentence. */
  readonly label: string;
  /** What can be quoted at all; beyond it a figure is refused. */
  readonly range: RangeEnds;
}

export const quotableFigures = Object.fromEntries(
  figureIds.flatMap((id) => {
    const { kind, limits, quoted } = figureTable[id];
    return quoted ? [[nameWhereSaid(id), { kind, label: headOf(id), range: limits, ...quoted }]] : [];
  }),
) as unknown as Readonly<Record<QuotableName, QuotableFigure>>;

export type { QuotableName };
export const quotableNames = Object.keys(quotableFigures) as readonly QuotableName[];

/** A figure as a guide says it, in the unit of its kind. */
export type SaidValue =
  | { readonly as: 'exact'; readonly value: number }
  /** Rounded to its last digit: 42,500 to the hundred, 9 to the whole. `step` says otherwise: 9.0 has a step of 0.1. */
  | { readonly as: 'rounded'; readonly value: number; readonly step?: number }
  /** About so much; `spread`, a standard deviation in the figure's own unit, overrides the table. */
  | { readonly as: 'about'; readonly value: number; readonly spread?: number }
  /** From … to …; taken to hold the figure 95 times in a hundred. */
  | { readonly as: 'range'; readonly low: number; readonly high: number };

export type Quoted = Partial<Readonly<Record<QuotableName, SaidValue>>>;

/** A quoted figure as a measurement: value and standard spread in its own unit. */
export interface Measured {
  readonly figure: QuotableName;
  readonly said: SaidValue;
  readonly value: number;
  readonly spread: number;
}

/** Standard deviations from the middle to either end of an interval that holds 95 in a hundred. */
export const NINETY_FIVE = 1.96; // normal law

/**
 * A figure with its unit, with as many decimals as it needs.
 * @example plain('heartStrength', 70) // '70 % vol' (no more digits than it has)
 */
export function plain(figure: QuotableName, value: number): string {
  const { kind } = quotableFigures[figure];
  const digits = kind === 'gravity' ? 3 : value % 1 === 0 || Math.abs(value) >= 1000 ? 0 : 1;
  return `${formatNumber(value, digits)} ${kinds[kind].unit}`.trim();
}

/**
 * A figure as `plain` prints it, so that a sum of printed figures comes out as printed; one that would be printed as nothing stays.
 * @example asPrinted('heartStrength', 70.04) // 70 (to the tenth that is printed)
 */
export function asPrinted(figure: QuotableName, value: number): number {
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
function unreadable(figure: QuotableName, said: SaidValue): string | undefined {
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
function beyond(figure: QuotableName, said: SaidValue): string | undefined {
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
function spreadOf(figure: QuotableName, said: SaidValue, value: number): number {
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

/**
 * True when a figure could lie between two ends, beside the others as quoted: within what it can be, and in order.
 * @example canLieBetween('heartStrength', [200, 300], []) // false (beyond 100 % vol)
 */
export function canLieBetween(
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
export interface ImpossibleFigure extends Measured {
  readonly reason: string;
}

/** What was quoted: what can be held against the rest, and what cannot be; each in the order of the table. */
export interface HeardFigures {
  readonly measured: readonly Measured[];
  readonly impossible: readonly ImpossibleFigure[];
}

/**
 * The quoted figures as measurements. A figure beyond its limits, or a pair the wrong way round, is set apart with its
 * reason, so that the rest can be judged. Refuses only what has no value at all, by name.
 * @example measure({ nonsense: { as: 'exact', value: 1 } }) // refuses: No figure that can be quoted (there is none of that name)
 */
export function measure(quoted: Quoted): HeardFigures | Refusal {
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
