// A newer release put together with what its reader has given since the one before; what gave way to that is reckoned anew.
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
import { wayInBook } from '../house/line-with.ts';
import { houseParts } from '../house/parts/index.ts';
import { knownOf } from '../house/parts/known.ts';
import { isSamePart, partIds, type PartId } from '../house/parts/part.ts';
import { changesOf, putInto, type PersonalChanges } from './changed.ts';

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

/** What was counted and the parts, each with its values in the three. */
function besides({ had, yours, theirs }: Three): readonly (readonly [Changeable, Triple])[] {
  const [a, b, c] = [knownOf(had), knownOf(yours), knownOf(theirs)];
  return [
    ...(countedIds as readonly FigureId[]).map((id) => [id, [a.counted[id], b.counted[id], c.counted[id]]] as const),
    ...wholeParts.map((id) => [id, [had.parts[id], yours.parts[id], theirs.parts[id]]] as const),
  ]; // prettier-ignore
}

/** What of all this stands where: changed by both, by the reader alone, and by the release. */
export interface Offer {
  readonly clashes: readonly Clash[];
  readonly stays: readonly Stated[];
  readonly released: readonly Stated[];
  readonly changes: { readonly yours: PersonalChanges; readonly theirs: PersonalChanges };
}
/** A change as it is told; a part has no values. */
export interface Stated {
  readonly what: Changeable;
  readonly was: string;
  readonly is: string;
}

/** What a reader calls it. */
export function labelOfOffer(what: Changeable): string {
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

const stated = (what: Changeable, from: unknown, to: unknown): Stated =>
  isPart(what) ? { what, was: '', is: '' } : { what, was: said(what, from), is: said(what, to) };

/** What a newer release changes, what stays as the reader has it, and what he has to choose in. */
export function offerOf(three: Three): Offer {
  const { had, yours, theirs } = three;
  const changes = { yours: changesOf(had, yours), theirs: changesOf(had, theirs) };
  const [own, released] = [changes.yours.figures, changes.theirs.figures];
  const triples = [
    ...figureNames.map((each): readonly [Changeable, Triple] => {
      const [a, b, c] = [had.house[each], yours.house[each], theirs.house[each]];
      return [each, [a, own.includes(each) ? b : a, released.includes(each) ? c : a]];
    }),
    ...besides(three),
  ];
  return {
    changes,
    clashes: triples
      .filter(([, triple]) => isClash(triple))
      .map(([what, triple]) => {
        if (isPart(what)) return { what, was: '', yours: 'as you have it', theirs: 'as released' };
        const [was, yours, theirs] = triple.map((value) => said(what, value)) as [string, string, string];
        return { what, was, yours, theirs };
      }),
    stays: triples.flatMap(([what, all]) => (isReaders(all) ? [stated(what, all[0], all[1])] : [])),
    released: triples.flatMap(([what, [a, , c]]) => (isSamePart(a, c) ? [] : [stated(what, a, c)])),
  };
}

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
function knownTogether(
  { had, yours, theirs }: Three,
  keeps: readonly string[],
  own: readonly FigureName[],
): unknown {
  if ([had, yours, theirs].every(({ parts }) => parts.known === undefined)) return undefined;
  const [a, b, c] = [knownOf(had), knownOf(yours), knownOf(theirs)];
  return {
    given: {
      ...together(a.given, b.given, c.given, keeps),
      ...Object.fromEntries(Object.entries(b.given).filter(([name]) => own.includes(name as FigureName))),
    },
    counted: together(a.counted, b.counted, c.counted, keeps),
  };
}

/**
 * The release with what the reader gave, under his own name for the house; `keeps` names the clashes in which his own
 * holds. What gives way does so by what the house holds, and never a figure that the release changed. A sentence where
 * both together cannot be.
 */
export function mergedRelease(
  three: Three,
  keeps: readonly string[],
  { changes, clashes }: Offer = offerOf(three),
): WholeHouse | { readonly problem: string } {
  const { had, yours, theirs } = three;
  const given = clashes.map(({ what }) => what as string).filter((what) => !keeps.includes(what));
  const figures = changes.yours.figures.filter((figure) => !given.includes(figure));
  const held = changes.theirs.figures.filter((figure) => !figures.includes(figure));
  const { known: _, ...parts } = together(had.parts, yours.parts, theirs.parts, keeps);
  const way = wayInBook({ house: theirs.house, parts });
  const house = putInto(theirs.house, { ...changes.yours, figures }, yours.house, held, way);
  if ('problem' in house) return house;
  const known = knownTogether(three, keeps, figures);
  return { name: yours.name, house, parts: known === undefined ? parts : { ...parts, known } };
}
