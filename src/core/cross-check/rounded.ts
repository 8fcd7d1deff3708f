// The balance that decides, as a sum of what was said; and what must have been rounded when both sides agree only roughly.
import { formatNumber } from '../format.ts';
import { stationPairs, type LadderFall } from './ladder.ts';
import { asPrinted, plain, type Measured, type QuotableName } from './quoted.ts';
import type { Values } from './relations.ts';

export interface Decides {
  /** Every figure of both sides; all were quoted. */
  readonly figures: readonly QuotableName[];
  /** By how many times the later side is more than the earlier should have left; below 1 when it is less. */
  readonly off: number;
  /** Both sides as sums. */
  readonly says: string;
  /** What must have been rounded, and from what, for both sides to agree; left out where no rounding would do. */
  readonly onlyIf?: string;
}

const TELLING = 0.04; // difference of two sides, as a part, from which it is told
const WITHIN = 2; // standard spreads from what was said that a rounding may reach: a little over half a digit either way
const SHARE = 0.15; // of the difference, from which a figure counts as one that must have been rounded
const NUDGE = 1e-4; // of a figure, to see how it bears

const litres = (value: number) => formatNumber(value, value < 100 ? 1 : 0);
/** A figure to three figures, as a person would say from what it was rounded. */
const near = (figure: QuotableName, value: number) =>
  plain(figure, Math.abs(value) < 2 ? value : Number(value.toPrecision(3)));

function judge({ later, earlier, times, spread }: LadderFall, quoted: ReadonlyMap<QuotableName, Measured>): Decides | undefined {
  const figures = [...new Set([...later.figures, ...earlier.figures])];
  if (times === undefined || figures.some((figure) => !quoted.has(figure))) return undefined;
  const values = Object.fromEntries(figures.map((figure) => [figure, quoted.get(figure)!.value])) as Record<QuotableName, number>;
  const gap = () => Math.log(later.alcohol(values) / earlier.alcohol(values) / times);
  const off = gap();
  if (Math.abs(off) < TELLING + 2 * spread!) return undefined;
  const printed = Object.fromEntries(figures.map((figure) => [figure, asPrinted(figure, values[figure])])) as Values;
  const say = (figure: QuotableName) => plain(figure, values[figure]);
  const first = `${earlier.says(say)} ${litres(earlier.alcohol(printed))} L of pure alcohol`;
  const says = `${first[0]!.toUpperCase()}${first.slice(1)}; ${later.says(say)} ${litres(later.alcohol(printed))}.`;
  const onlyIf = rounding(figures, quoted, values, gap, Math.sign(off) * (Math.abs(off) - 2 * spread!));
  return { figures, off: Math.exp(off), says, ...(onlyIf && { onlyIf }) };
} // prettier-ignore

/** What closes a gap: one figure alone if that is within what was said, or several, each by its share. */
function rounding(
  figures: readonly QuotableName[],
  quoted: ReadonlyMap<QuotableName, Measured>,
  values: Record<QuotableName, number>,
  gap: () => number,
  close: number,
): string | undefined {
  const bearing = figures.map((figure) => {
    const [at, here] = [values[figure], gap()];
    values[figure] = at * (1 + NUDGE);
    const slope = (gap() - here) / NUDGE;
    values[figure] = at;
    return { figure, slope, part: quoted.get(figure)!.spread / Math.abs(at) };
  });
  const all = bearing.reduce((sum, { slope, part }) => sum + (slope * part) ** 2, 0);
  if (Math.abs(close) > WITHIN * Math.sqrt(all)) return undefined;
  const said = ({ figure, slope }: (typeof bearing)[number], share: number) => {
    const from = values[figure] * Math.exp((-close * share) / slope);
    return `${plain(figure, values[figure])} was rounded ${from > values[figure] ? 'down' : 'up'} from ${near(figure, from)}`;
  };
  const alone = bearing.filter(({ slope, part }) => Math.abs(close) <= WITHIN * Math.abs(slope) * part);
  const shared = bearing.map((each) => ({ each, share: (each.slope * each.part) ** 2 / all })).filter(({ share }) => share > SHARE);
  if (alone.length > 0) return `They agree only if ${alone.map((each) => said(each, 1)).join(', or ')}${shared.length > 1 ? ', or each was a little' : ''}.`;
  const [last, ...others] = shared.map(({ each, share }) => said(each, share)).toReversed();
  return `They agree only if ${[others.toReversed().join(', '), last].filter((part) => part !== '').join(' and ')}.`;
} // prettier-ignore

/**
 * The two sides, reckoned from quoted figures alone, that lie furthest apart for what is known of them; nothing when none does.
 * @example sidesApart([]) // undefined (nothing was quoted)
 */
export function sidesApart(measured: readonly Measured[]): Decides | undefined {
  const quoted = new Map(measured.map((each) => [each.figure, each]));
  const found = stationPairs.flatMap((fall) => judge(fall, quoted) ?? []);
  return found.toSorted((a, b) => Math.abs(Math.log(b.off)) - Math.abs(Math.log(a.off)) || a.figures.length - b.figures.length)[0];
} // prettier-ignore
