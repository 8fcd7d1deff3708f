// What a person changed in a house, told from what only gave way to it; and the same changes put into another house.
import type { House } from '../core/line/house.ts';
import { waysOf } from '../core/line/change.ts';
import { isRefusal } from '../core/refusal.ts';
import type { WholeHouse } from '../house/codec.ts';
import { enterFigure } from '../house/entering.ts';
import { figureNames, type FigureName, type NumberName } from '../house/figures.ts';
import type { LineWay } from '../house/line-of.ts';
import { wayInBook } from '../house/line-with.ts';
import { knownOf } from '../house/parts/known.ts';

/** The figures that move others or give way to them, in the order in which they are put in. */
const moving: readonly FigureName[] = ['maltMoisture', 'solubleExtract', 'maltPerMash', 'wortVolume', 'originalGravity', 'fermentability', 'finalGravity']; // prettier-ignore
/** Those that may give way, the likeliest first. */
const yielding: readonly FigureName[] = ['finalGravity', 'originalGravity', 'wortVolume', 'solubleExtract', 'maltPerMash']; // prettier-ignore
/** What may be spared in turn, so that another than the usual figure gives way. */
const sparings: readonly (readonly FigureName[])[] = [[], ['originalGravity'], ['maltPerMash'], ['wortVolume']]; // prettier-ignore

/** What a person changed. */
export interface PersonalChanges {
  readonly figures: readonly FigureName[];
  /** What did not give way to them, where the usual figure would have. */
  readonly spared: readonly FigureName[];
}

/** Figures as `enterFigure` wants them: given, so that they do not move. */
const fixed = (names: readonly FigureName[]) => ({ given: Object.fromEntries(names.map((name) => [name, 'set' as const])), counted: {} }); // prettier-ignore

/**
 * A house with some figures as they are in another, one by one, each moving what gives way to it as if it were typed; or a
 * sentence why it cannot be so. What is `held` does not move; what is `spared` moves only where nothing else can.
 * `way` is how its line is reckoned.
 */
export function putInto(
  house: House,
  { figures, spared }: PersonalChanges,
  like: House,
  held: readonly FigureName[],
  way: LineWay,
): House | { readonly problem: string } {
  const alone = figures.filter((figure) => !moving.includes(figure));
  let now: House = { ...house, ...Object.fromEntries(alone.map((figure) => [figure, like[figure]])) };
  let still = held;
  for (const figure of moving.filter((each) => figures.includes(each))) {
    const all = [...still, ...spared];
    const isFree = waysOf(figure).some((way) => !all.includes(way));
    const entered = enterFigure(now, figure, like[figure], fixed(isFree ? all : still), way);
    if ('problem' in entered) return entered;
    now = entered.house;
    still = [...still, figure];
  }
  const result = way(now);
  return isRefusal(result) ? { problem: result.refused } : now;
}

const SAME = 1e-6; // of a figure: what finding a gravity again can differ by; what is typed differs by more
const isAlike = (a: unknown, b: unknown) =>
  a === b || (typeof a === 'number' && typeof b === 'number' && Math.abs(a - b) <= SAME * Math.abs(b));

/** How far a figure that differs is to be taken for given: 0 is one that nobody gave as it stands. */
function givenness(figure: FigureName, from: WholeHouse, to: WholeHouse): number {
  const isTyped = (of: WholeHouse) => (knownOf(of).given[figure as NumberName] ?? 'follows') !== 'follows';
  return isTyped(to) ? (isTyped(from) ? 1 : 2) : 0;
}

/** What a person changed from one state of a house to another, by the line of the house that it became. A figure that the other changes move to where it stands merely gave way. */
export function changesOf(from: WholeHouse, to: WholeHouse): PersonalChanges {
  const way = wayInBook(to);
  const spares = (figures: readonly FigureName[]) =>
    sparings.find((spared) => {
      const again = putInto(from.house, { figures, spared }, to.house, [], way);
      return !('problem' in again) && figureNames.every((each) => isAlike(again[each], to.house[each]));
    });
  let changes: PersonalChanges = {
    figures: figureNames.filter((figure) => from.house[figure] !== to.house[figure]),
    spared: [],
  };
  const inDoubt = yielding
    .filter((figure) => changes.figures.includes(figure))
    .sort((a, b) => givenness(a, from, to) - givenness(b, from, to));
  for (const figure of inDoubt)
    for (const gone of [[figure, 'finalGravity'], [figure]]) {
      const figures = changes.figures.filter((each) => !gone.includes(each));
      const spared = figures.length < changes.figures.length ? spares(figures) : undefined;
      if (spared) changes = { figures, spared };
    }
  return changes;
}
