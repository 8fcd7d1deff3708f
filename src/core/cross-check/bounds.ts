// What cannot be, however few figures are quoted: nothing later in the line holds more than what went before.
import { formatNumber } from '../format.ts';
import { gravity } from '../quantity.ts';
import type { SourceId } from '../sources.ts';
import { attenuate } from '../wort/attenuation.ts';
import type { Rules } from './distilled.ts';
import { stationPairs } from './ladder.ts';
import { plain, quotableFigures, type Measured, type QuotableName } from './quoted.ts';
import type { Values } from './relations.ts';

/** One side of a bound: its value, and the clause that says it. */
interface Side {
  readonly figures: readonly QuotableName[];
  readonly value: (v: Values) => number;
  readonly says: (t: (figure: QuotableName) => string, value: number) => string;
}
interface Bound {
  readonly less: Side;
  readonly more: Side;
  /** By how many times the sums may show the lesser side above the greater before it cannot be. */
  readonly slack: number;
  /** True when nothing is assumed of a figure that was not quoted. */
  readonly asQuoted?: true;
  /** True when it holds only where all is distilled twice. */
  readonly ofTwo?: true;
}

/** A bound that what was quoted breaks. */
export interface BrokenBound {
  /** The quoted figures that bear on it. */
  readonly figures: readonly QuotableName[];
  readonly less: number;
  readonly more: number;
  /** Both sides as sums, in a sentence. */
  readonly says: string;
  /** How far each of `figures` could go, were the others right: at most, or at least; left out where that is beyond its own limits. */
  readonly limits: readonly {
    readonly figure: QuotableName;
    readonly most: boolean;
    readonly value: number;
  }[];
  /** How many figures had to be assumed. */
  readonly assumed: number;
}

/** The least or the most that is sensible of a figure which was not quoted, so that a bound holds whatever it is. */
const sensible: Partial<Readonly<Record<QuotableName, { least?: number; most?: number; why: string; source: SourceId }>>> = {
  solubleExtract: { most: 83, why: 'distilling malt is sold at 76 to 79 %, and the best at 82 (recalled)', source: 'memory' },
  fermentability: { most: 91, why: '86 to 88.5 % is usual (recalled)', source: 'memory' },
  finalGravity: { least: 0.99, why: '0.996 to 1.000 is usual (recalled)', source: 'memory' },
  heartStrength: { least: 60, why: 'new spirit is collected at 63 to 71 % vol', source: 'common-practice' },
  fillingStrength: { most: 75, why: '63.5 % vol is customary, and hearts as a whole seldom pass 72', source: 'common-practice' },
  bottlingStrength: { least: 40, why: 'no whisky is bottled below', source: 'eu-2019-787' },
  bottleSize: { least: 35, why: 'a half bottle', source: 'common-practice' },
  weeksPerYear: { most: 52.3, why: 'weeks in a year', source: 'derived' },
}; // prettier-ignore

const SURE = 3; // standard spreads of what was said, by which a bound must be passed: one in a thousand, were the truth at the bound
const NO_BEARING = 1e-3; // change of a bound's logarithm with that of a figure on both its sides
const NUDGE = 1e-4; // of a figure, to see which way it bears

const head = (figure: QuotableName) => quotableFigures[figure].label;
const one = (figure: QuotableName): Side => ({
  figures: [figure],
  value: (v) => v[figure],
  says: (t) => `${head(figure).toLowerCase()} is ${t(figure)}`,
});
const litres = (value: number) => formatNumber(value, value < 100 ? 1 : 0);

const orders = [
  ['heartStrength', 'heartBegins'],
  ['heartEnds', 'heartStrength'],
  ['fillingStrength', 'heartStrength'],
  ['fillingStrength', 'heartBegins'],
  ['washStrength', 'lowWinesStrength'],
  ['washStrength', 'chargeStrength'],
  ['lowWinesStrength', 'heartStrength'],
  ['chargeStrength', 'heartStrength'],
  ['chargeStrength', 'heartBegins'],
  ['lowWinesVolume', 'washVolume'],
  ['lowWinesVolume', 'wortVolume'],
  ['heartVolume', 'lowWinesVolume'],
  ['heartVolume', 'chargeVolume'],
  ['heartVolume', 'washVolume'],
] as const satisfies readonly (readonly [less: QuotableName, more: QuotableName])[];

const bounds: readonly Bound[] = [
  ...stationPairs.map(({ later, earlier, slack }): Bound => {
    const side = ({ figures, alcohol, says }: typeof later): Side => ({
      figures,
      value: alcohol,
      says: (t, value) => `${says(t)} ${litres(value)} L of pure alcohol`,
    });
    return { less: side(later), more: side(earlier), slack };
  }),
  ...orders.map(([less, more]): Bound => ({ less: one(less), more: one(more), slack: 1, asQuoted: true })),
  { less: one('lowWinesVolume'), more: one('chargeVolume'), slack: 1, asQuoted: true, ofTwo: true }, // a third distillation leaves water behind before the spirit still
  {
    less: one('washStrength'),
    more: {
      figures: ['originalGravity', 'finalGravity'],
      value: (v) =>
        attenuate({
          original: gravity(Math.min(1.149, v.originalGravity)),
          final: gravity(Math.min(v.finalGravity, v.originalGravity - 0.001)),
        }).strength,
      says: (t, value) => `wort of ${t('originalGravity')} that ends at ${t('finalGravity')} makes no more than ${formatNumber(value, 1)} % vol`,
    },
    slack: 1.05, // Balling's relation holds to about 2 %
  },
]; // prettier-ignore

/** What is broken of one bound; nothing when it is kept, or when too little is quoted to say. */
function judge({ less, more, slack, asQuoted }: Bound, quoted: ReadonlyMap<QuotableName, Measured>): BrokenBound | undefined {
  const figures = [...new Set([...less.figures, ...more.figures])];
  const heard = figures.filter((figure) => quoted.has(figure));
  if (asQuoted && heard.length < figures.length) return undefined;
  if (figures.some((figure) => !quoted.has(figure) && !sensible[figure] && !(less.figures.includes(figure) && more.figures.includes(figure)))) return undefined;
  const values = Object.fromEntries(figures.map((figure) => [figure, quoted.get(figure)?.value ?? quotableFigures[figure].typical])) as Record<QuotableName, number>;
  const gap = () => Math.log(less.value(values) / more.value(values) / slack);
  /** Change of the gap with the logarithm of a figure. */
  const slope = (figure: QuotableName) => {
    const [here, at] = [gap(), values[figure]];
    values[figure] = at * (1 + NUDGE);
    const there = gap();
    values[figure] = at;
    return (there - here) / NUDGE;
  };
  const assumed = new Map<QuotableName, string>();
  for (const figure of figures) {
    if (quoted.has(figure)) continue;
    const bearing = slope(figure);
    const cancels = Math.abs(bearing) < NO_BEARING;
    const limit = cancels ? values[figure] : bearing > 0 ? sensible[figure]?.least : sensible[figure]?.most;
    if (limit === undefined) return undefined;
    values[figure] = limit;
    assumed.set(figure, `${cancels ? 'say' : bearing > 0 ? 'no less than' : 'no more than'} ${plain(figure, limit)}`);
  }
  const doubt = Math.hypot(...heard.map((figure) => (slope(figure) * quoted.get(figure)!.spread) / values[figure]));
  if (!(gap() > SURE * doubt)) return undefined;
  const say = (figure: QuotableName) => assumed.get(figure) ?? plain(figure, values[figure]);
  const [least, most] = [less.value(values), more.value(values)];
  const [first, second] = [less.says(say, least), more.says(say, most)];
  const over = Math.log(least / most);
  const limits = heard.flatMap((figure) => {
    const [bearing, [low, high]] = [slope(figure), quotableFigures[figure].range];
    const value = values[figure] * Math.exp(-over / bearing);
    return value >= low && value <= high ? [{ figure, most: bearing > 0, value }] : [];
  });
  return { figures: heard.filter((figure) => Math.abs(slope(figure)) > NO_BEARING), less: least, more: most, limits, assumed: assumed.size, says: `${first[0]!.toUpperCase()}${first.slice(1)}, but ${second}.` };
} // prettier-ignore

/**
 * Every bound that the figures break, as they were said; with as few as one figure.
 * @example brokenBounds([], DISTILLED_TWICE) // [] (nothing was quoted)
 */
export function brokenBounds(measured: readonly Measured[], { scheme }: Rules): readonly BrokenBound[] {
  const quoted = new Map(measured.map((each) => [each.figure, each]));
  const holding = bounds.filter(({ ofTwo }) => ofTwo === undefined || scheme === 'twice');
  return holding.flatMap((bound) =>
    [...bound.less.figures, ...bound.more.figures].some((figure) => quoted.has(figure)) ? (judge(bound, quoted) ?? []) : [],
  );
} // prettier-ignore
