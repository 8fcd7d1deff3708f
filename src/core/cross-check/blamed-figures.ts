// Which of the figures that together cannot be is to be told so.
import type { BrokenBound } from './bounds.ts';
import type { QuotableName } from './quoted.ts';
import { setByTheHouse } from './set-by-the-house.ts';

/** Figures that together cannot be, and the sentence that says why. */
export interface Accusation {
  readonly figures: readonly QuotableName[];
  /** Those of them of which it is said: one, or two that nothing tells apart; of more, all are only in doubt. */
  readonly marked: readonly QuotableName[];
  readonly says: string;
  /** How far each could go, were the others right; left out of figures beyond their own limits. */
  readonly limits?: BrokenBound['limits'];
}

/** One figure or two; of more, two that the house does not set, for what it sets it is likely to know. */
function markedOf(figures: readonly QuotableName[]): readonly QuotableName[] {
  if (figures.length <= 2) return figures;
  const reckoned = figures.filter((figure) => !setByTheHouse.includes(figure));
  return reckoned.length === 2 ? reckoned : [];
}

/** Those within `band` of the heaviest. */
const heaviest = (figures: readonly QuotableName[], weight: (figure: QuotableName) => number, band = 0) => {
  const top = Math.max(...figures.map(weight));
  return figures.filter((figure) => weight(figure) === top || weight(figure) >= top - band);
};

/**
 * The fewest figures that lie in every broken bound. `suspicion` is how much of chi-square each would take away, and
 * clears those that lie more than `band` below the heaviest. Those that nothing tells apart are named together.
 * @example blamedFigures([], () => 0, 1) // [] (no bound is broken)
 */
export function blamedFigures(
  bounds: readonly BrokenBound[],
  suspicion: (figure: QuotableName) => number,
  band: number,
): readonly Accusation[] {
  const found: Accusation[] = [];
  let left = bounds;
  while (left.length > 0) {
    const all = [...new Set(left.flatMap(({ figures }) => figures))];
    const shared = heaviest(all, (figure) => left.filter(({ figures }) => figures.includes(figure)).length);
    const convicted = all.filter((figure) => suspicion(figure) === Infinity);
    const figures = convicted.length > 0 ? convicted.slice(0, 1) : heaviest(shared, suspicion, band);
    const of = left.filter((bound) => figures.some((figure) => bound.figures.includes(figure)));
    const [plainest] = of.toSorted((a, b) => a.assumed - b.assumed || a.figures.length - b.figures.length || b.less / b.more - a.less / a.more);
    const limits = plainest!.limits.filter(({ figure }) => figures.includes(figure));
    found.push({ figures, marked: markedOf(figures), says: plainest!.says, limits });
    left = left.filter((bound) => !of.includes(bound));
  }
  return found;
} // prettier-ignore
