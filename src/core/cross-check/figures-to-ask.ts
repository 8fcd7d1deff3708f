// Which one or two further figures would let more be checked.
import { spreadInUnit, isTooVague, saidByOthers, spreadUnit } from './check-figure.ts';
import type { QuotedFit } from './fit-quoted.ts';
import { quotableFigures, quotableNames, type Measured, type QuotableName } from './quoted.ts';

export interface Ask {
  /** One figure or two that were not quoted. */
  readonly figures: readonly QuotableName[];
  /** Quoted figures that could then be checked and cannot now. */
  readonly checks: readonly QuotableName[];
  /** Where none could: the quoted figure whose check would gain most, and how many times as close it would be. */
  readonly sharpens?: { readonly figure: QuotableName; readonly times: number };
}

const LOOSELY = 30; // spreads of a figure to which it counts as told where nothing tells it
const WORTH = 1.5; // times as close, from which a further figure is worth asking for

/** What a fit knows of a pair of figures, and how that shrinks when others are said as “about”. */
function shrinking(fit: QuotedFit) {
  const place = Object.fromEntries(quotableNames.map((name, i) => [name, i])) as Record<QuotableName, number>;
  const between = (a: QuotableName, b: QuotableName) => fit.covariance[place[a]]![place[b]]!;
  /** Variances that figures said as “about” would bring, in the search's own scale. */
  const noises = new Map(
    quotableNames.map((figure) => {
      const { as, about } = quotableFigures[figure].spread;
      const own = as === 'part' ? about * fit.values[figure] : about;
      return [figure, (own / fit.sure[figure].own) ** 2 * between(figure, figure)] as const;
    }),
  );
  const noise = (figure: QuotableName) => noises.get(figure)!;
  /** Covariance of two figures once a third is said. */
  const after = (a: QuotableName, b: QuotableName, said: QuotableName) =>
    between(a, b) - (between(a, said) * between(b, said)) / (between(said, said) + noise(said));
  /** What part of a figure's uncertainty is left when one or two others are said. */
  return (figure: QuotableName, [first, second]: readonly QuotableName[]) => {
    const one = after(figure, figure, first!);
    const left = second === undefined ? one : one - after(figure, second, first!) ** 2 / (after(second, second, first!) + noise(second));
    return Math.sqrt(Math.max(0, left) / between(figure, figure));
  };
} // prettier-ignore

/**
 * The one or two unquoted figures that would turn most quoted figures from not checkable into checkable; where that is
 * none, the one that would tell a quoted figure most more closely. Nothing where neither is worth the asking.
 * @example ((fit) => figuresToAsk([], [], fit, fit.sure))(fitQuoted(usualFor(new Set(), DISTILLED_TWICE), DISTILLED_TWICE)) // undefined (no figure is left to ask for)
 */
export function figuresToAsk(
  measured: readonly Measured[],
  unsaid: readonly QuotableName[],
  fit: QuotedFit,
  bare: QuotedFit['sure'],
): Ask | undefined {
  const left = shrinking(fit);
  /** How closely the others would tell a figure. */
  const told = (each: Measured, sayings: readonly QuotableName[]) => {
    const { figure } = each;
    const part = sayings.length === 0 ? 1 : left(figure, sayings);
    const standard = saidByOthers(each, spreadInUnit(figure, part * fit.sure[figure].own, fit), spreadInUnit(figure, bare[figure].own, fit));
    const own = standard === undefined ? undefined : (standard * fit.sure[figure].own) / spreadInUnit(figure, fit.sure[figure].own, fit);
    return own === undefined || isTooVague(figure, fit.values[figure], own) ? undefined : standard! / spreadUnit(each);
  };
  const now = new Map(measured.map((each) => [each, told(each, [])]));
  const gain = (figures: readonly QuotableName[], among = measured) => {
    const then = among.map((each) => ({ figure: each.figure, now: now.get(each), then: told(each, figures) }));
    const sharper = then.flatMap((each) => (each.now && each.then ? [{ figure: each.figure, times: each.now / each.then }] : []));
    const checks = then.filter((each) => !each.now && each.then).map(({ figure }) => figure);
    const closer = then.reduce((sum, each) => sum + (each.then ? Math.log((each.now ?? LOOSELY) / each.then) : 0), 0);
    return { figures, checks, closer, sharper };
  };
  const better = (a: ReturnType<typeof gain>, b: ReturnType<typeof gain>) => b.checks.length - a.checks.length || b.closer - a.closer;
  const singles = unsaid.map((figure) => gain([figure]));
  const [one] = singles.toSorted(better);
  if (!one) return undefined;
  const unchecked = measured.filter((each) => !now.get(each));
  const pairs = one.checks.length >= unchecked.length ? [] : unsaid.flatMap((figure, i) => unsaid.slice(i + 1).map((other) => gain([figure, other], unchecked)));
  const [two] = pairs.toSorted(better);
  const best = two && two.checks.length > one.checks.length ? two : one;
  if (best.checks.length > 0) return { figures: best.figures, checks: best.checks };
  const sharpest = singles
    .flatMap(({ figures, sharper }) => sharper.map((each) => ({ figures, sharpens: each })))
    .toSorted((a, b) => b.sharpens.times - a.sharpens.times)[0];
  return sharpest && sharpest.sharpens.times >= WORTH ? { figures: sharpest.figures, checks: [], sharpens: sharpest.sharpens } : undefined;
} // prettier-ignore
