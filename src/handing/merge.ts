// A newer release put together with what its reader has changed since the one before, by the rules that two tabs keep.
import { figureTable, headOf, type FigureId } from '../core/figures/index.ts';
import { countedIds } from '../core/figures/standing.ts';
import { format } from '../core/format.ts';
import type { WholeHouse } from '../house/codec.ts';
import {
  choiceFigures,
  figureNames,
  isChoiceName,
  numberFigures,
  type FigureName,
} from '../house/figures.ts';
import { hear, type Heard } from '../house/join.ts';
import { houseParts } from '../house/parts/index.ts';
import { knownOf } from '../house/parts/known.ts';
import { isSamePart, partIds, type PartId } from '../house/parts/part.ts';

/** A figure, a part, or what was counted of a computed figure. */
export type Changeable = FigureName | FigureId | PartId;

/** What both changed, each otherwise: the reader chooses. A part is chosen whole, and has no value that a line could show. */
export interface Clash {
  readonly what: Changeable;
  readonly was: string;
  readonly yours: string;
  readonly theirs: string;
}

/** The three that are put together: the release the reader had, the house as it stands, and the newer release. */
export interface Three {
  readonly had: WholeHouse;
  readonly yours: WholeHouse;
  readonly theirs: WholeHouse;
}

type Values = Readonly<Record<string, unknown>>;
/** One thing in each of the three. */
type Triple = readonly [had: unknown, yours: unknown, theirs: unknown];
const isClash = ([had, yours, theirs]: Triple) =>
  !isSamePart(had, yours) && !isSamePart(had, theirs) && !isSamePart(yours, theirs);
const isReaders = ([had, yours, theirs]: Triple) => !isSamePart(had, yours) && isSamePart(had, theirs);

/** The parts that are put together whole; what is known goes figure by figure. */
const wholeParts = partIds.filter((id) => id !== 'known');
const isCounted = (what: string): what is FigureId => (countedIds as readonly string[]).includes(what);
const isPart = (what: string): what is PartId => (partIds as readonly string[]).includes(what);

/** All that can clash, with its values in the three. */
function triples({ had, yours, theirs }: Three): readonly (readonly [Changeable, Triple])[] {
  const [a, b, c] = [knownOf(had), knownOf(yours), knownOf(theirs)];
  return [
    ...figureNames.map((each) => [each, [had.house[each], yours.house[each], theirs.house[each]]] as const),
    ...(countedIds as readonly FigureId[]).map((id) => [id, [a.counted[id], b.counted[id], c.counted[id]]] as const),
    ...wholeParts.map((id) => [id, [had.parts[id], yours.parts[id], theirs.parts[id]]] as const),
  ]; // prettier-ignore
}

/** What a reader calls it. */
export function labelOf(what: Changeable): string {
  if (isPart(what)) return houseParts.find(({ id }) => id === what)?.title ?? what;
  if (isCounted(what)) return `${headOf(what)}, as counted`;
  return isChoiceName(what) ? choiceFigures[what].label : numberFigures[what as 'yeast'].label;
}

function said(what: Changeable, value: unknown): string {
  if (value === undefined) return 'nothing';
  if (isCounted(what)) return format(value as number, figureTable[what].kind);
  return isChoiceName(what)
    ? (choiceFigures[what].options as Readonly<Record<string, string>>)[value as string]!
    : format(value as number, numberFigures[what as 'yeast'].kind);
}

/** All that both changed since the release the reader had, and not to the same. */
export const clashes = (three: Three): readonly Clash[] =>
  triples(three)
    .filter(([, triple]) => isClash(triple))
    .map(([what, triple]) => {
      if (isPart(what)) return { what, was: '', yours: 'as you have it', theirs: 'as released' };
      const [was, yours, theirs] = triple.map((value) => said(what, value)) as [string, string, string];
      return { what, was, yours, theirs };
    });

/** What the reader alone changed since then: it stays. */
export const changedByReader = (three: Three): readonly Changeable[] =>
  triples(three).flatMap(([what, triple]) => (isReaders(triple) ? [what] : []));

/** Values put together one by one: what one side changed; of what both did, the reader's where it is kept. */
function together(had: Values, yours: Values, theirs: Values, keeps: readonly string[]): Values {
  const names = [...new Set([had, yours, theirs].flatMap(Object.keys))];
  return Object.fromEntries(
    names
      .map((name) => {
        const triple: Triple = [had[name], yours[name], theirs[name]];
        return [name, isReaders(triple) || (isClash(triple) && keeps.includes(name)) ? triple[1] : triple[2]];
      })
      .filter(([, value]) => value !== undefined),
  );
}

/** What is known of the three together; nothing where none of them says it. */
function knownTogether({ had, yours, theirs }: Three, keeps: readonly string[]): unknown {
  if ([had, yours, theirs].every(({ parts }) => parts.known === undefined)) return undefined;
  const [a, b, c] = [knownOf(had), knownOf(yours), knownOf(theirs)];
  return {
    given: together(a.given, b.given, c.given, keeps),
    counted: together(a.counted, b.counted, c.counted, keeps),
  };
}

/** A house whose changes in which the release holds are taken back. */
function without(of: WholeHouse, had: WholeHouse, given: readonly string[]): WholeHouse {
  const taken = (values: object) => Object.entries(values).filter(([key]) => given.includes(key));
  const left = (values: object) => Object.entries(values).filter(([key]) => !given.includes(key));
  return {
    name: of.name,
    house: { ...of.house, ...Object.fromEntries(taken(had.house)) },
    parts: Object.fromEntries([...left(of.parts), ...taken(had.parts)]),
  };
}

const withKnown = (of: WholeHouse, known: unknown): WholeHouse => {
  const { known: _, ...parts } = of.parts;
  return { ...of, parts: known === undefined ? parts : { ...parts, known } };
};

/**
 * The house with both changes, under the reader's own name for it; `keeps` names the clashes in which the reader's own
 * holds. Where both together cannot be, the release holds, and the house that gave way is told.
 */
export function merged(three: Three, keeps: readonly string[]): Pick<Heard, 'here' | 'gaveWay'> {
  const { yours, theirs } = three;
  const { name } = yours;
  const given = clashes(three)
    .map(({ what }) => what as string)
    .filter((what) => !keeps.includes(what));
  const told = withKnown({ ...three.had, name }, undefined);
  const here = withKnown(without(yours, three.had, given), undefined);
  const to = withKnown({ ...theirs, name }, undefined);
  const heard = hear({ here, told, stamps: {} }, { from: told, to, stamp: 1 });
  return heard.gaveWay
    ? { here: withKnown(heard.here, theirs.parts.known), gaveWay: yours }
    : { here: withKnown(heard.here, knownTogether(three, keeps)) };
}
