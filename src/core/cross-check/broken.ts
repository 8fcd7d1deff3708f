// Which relation a figure breaks, with the numbers of both sides, so that a sentence can be made of it.
import type { QuotedFit } from './fit-quoted.ts';
import { asPrinted, vagueOwn, type QuotableName } from './quoted.ts';
import type { JudgedFigure } from './reconcile.ts';
import type { RelationName } from './distilled.ts';
import type { Relation, Values } from './relations.ts';

export interface Broken {
  readonly figure: QuotableName;
  /** The quoted figure, or the end of a quoted range, that breaks the relation. */
  readonly quoted: number;
  readonly end?: 'low' | 'high';
  readonly relation: RelationName;
  /** The figures of the relation that the sides are reckoned from, as they are printed. */
  readonly from: Partial<Values>;
  /** Those of them that were not quoted as they are printed. */
  readonly reckoned: readonly QuotableName[];
  /** The two sides of the relation with what was quoted as it was quoted, and all else as it agrees without the figure. */
  readonly left: number;
  readonly right: number;
  /** What the left side would be if the relation held. */
  readonly expected: number;
  /** True when the left side cannot be above the right at all, and is. */
  readonly impossible: boolean;
  /** What would fit, from … to … */
  readonly fits: readonly [low: number, high: number];
}

/** Relations whose left side can never be above the right: nothing is made out of nothing. */
const conserving: readonly RelationName[] = [
  'mash',
  'extract',
  'washStill',
  'chargeHoldsLowWines',
  'chargeHoldsWhatComes',
  'charge',
  'chargeOfThree',
  'chargeOfPart',
  'spiritStill',
  'throughBothStills',
  'fromTheMalt',
  'filling',
];
const DETERMINED = 0.1; // part of a figure to which it must be known before a relation is told with it
const TELLING = 2; // spreads by which a relation must fail to be told

/** Distance of a relation from holding, in spreads that hold the doubt of the figures too; with its sides. */
function failure(relation: Relation, values: Values, { sure }: QuotedFit, figure: QuotableName) {
  const { sides, times = 1, spread, as, only } = relation;
  const [left, right] = sides(values);
  const gap = as === 'own' ? left - times * right : Math.log(left / (times * right));
  if (only === 'ceiling' && gap < 0) return { left, right, by: 0 };
  const doubt = relation.figures
    .filter((name) => name !== figure)
    .map((name) => (as === 'own' ? sure[name].own : sure[name].own / values[name]));
  return { left, right, by: Math.abs(gap) / Math.hypot(spread, Math.max(...doubt)) };
}

/** The relation that shows best what is wrong with one figure at one value. */
function tellingRelation(
  figure: QuotableName,
  quoted: number,
  without: QuotedFit,
  known: ReadonlyMap<QuotableName, number>,
): Omit<Broken, 'fits' | 'end'> | undefined {
  const values = { ...without.values, [figure]: quoted };
  const candidates = (Object.entries(without.rules.relations) as [RelationName, Relation][])
    .filter(([, { figures }]) => figures.includes(figure))
    .map(([name, relation]) => {
      const others = relation.figures.filter((other) => other !== figure);
      const vague = others.some(
        (other) =>
          without.sure[other].own > (vagueOwn[other] ?? DETERMINED * Math.abs(without.values[other])),
      );
      const { left, right, by } = failure(relation, values, without, figure);
      const impossible = conserving.includes(name) && left > right;
      const heard = others.filter((other) => known.has(other)).length / others.length;
      return { name, relation, left, right, by: vague ? 0 : by, impossible, heard };
    })
    .filter(({ by }) => by > TELLING);
  candidates.sort((a, b) => b.heard - a.heard || Number(b.impossible) - Number(a.impossible) || b.by - a.by);
  const best = candidates[0];
  if (!best) return undefined;
  const { name, relation } = best;
  const told = asTold(best, values, { ...values, ...Object.fromEntries(known), [figure]: quoted });
  const from = Object.fromEntries(
    relation.figures.map((each) => [each, asPrinted(each, told[each])]),
  ) as Values;
  const said = new Map([...known, [figure, quoted] as const]);
  const reckoned = relation.figures.filter((each) => said.get(each) !== told[each]);
  const [left, right] = relation.sides(from);
  const impossible = conserving.includes(name) && left > right;
  return {
    figure,
    quoted,
    relation: name,
    from,
    reckoned,
    left,
    right,
    expected: (relation.times ?? 1) * right,
    impossible,
  };
}

/** The figures as they were quoted, where the relation fails with those too; else as they were judged. */
function asTold(
  { relation, left, right }: { relation: Relation; left: number; right: number },
  judgedAt: Values,
  quotedAt: Values,
): Values {
  const told = relation.sides(quotedAt);
  const { times = 1, spread, as } = relation;
  const off = as === 'own' ? told[0] - times * told[1] : Math.log(told[0] / (times * told[1]));
  const judged = as === 'own' ? left - times * right : Math.log(left / (times * right));
  return Math.abs(off) > TELLING * spread && off * judged > 0 ? quotedAt : judgedAt;
}

/**
 * For each suspect, and each end of a range that does not fit, the relation that it breaks.
 * @example brokenBy([], new Map(), {}) // [] (nothing was quoted)
 */
export function brokenBy(
  figures: readonly JudgedFigure[],
  without: ReadonlyMap<QuotableName, QuotedFit>,
  all: QuotedFit,
): readonly Broken[] {
  const known = new Map(
    figures
      .filter(({ finding }) => finding !== 'disagrees' && finding !== 'cannot be')
      .map(({ figure, value }) => [figure, value]),
  );
  return figures.flatMap(({ figure, said, value, fits, ends }): Broken[] => {
    if (!fits) return [];
    const fit = without.get(figure) ?? all;
    const range = [fits.low, fits.high] as const;
    const told = (quoted: number, end?: 'low' | 'high'): Broken[] => {
      const found = tellingRelation(figure, quoted, fit, known);
      return found ? [{ ...found, ...(end && { end }), fits: range }] : [];
    };
    if (said.as === 'range' && ends)
      return (['low', 'high'] as const).flatMap((end) => (ends[end] === 'fits' ? [] : told(said[end], end)));
    return without.has(figure) ? told(value) : [];
  });
}
