// A newer release put together with what its reader has changed since the one he had, by the rules that two tabs keep.
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
import { isSamePart, partIds, type PartId } from '../house/parts/part.ts';

/** What both changed, each otherwise: the reader chooses. A part is chosen whole, and has no value that a line could show. */
export interface Clash {
  readonly what: FigureName | PartId;
  readonly label: string;
  readonly was: string;
  readonly yours: string;
  readonly theirs: string;
}

/** The three that are put together: the release the reader had, his house as it stands, and the newer release. */
export interface Three {
  readonly had: WholeHouse;
  readonly yours: WholeHouse;
  readonly theirs: WholeHouse;
}

const said = (figure: FigureName, house: WholeHouse['house']): string =>
  isChoiceName(figure)
    ? (choiceFigures[figure].options as Readonly<Record<string, string>>)[house[figure]]!
    : format(house[figure] as number, numberFigures[figure].kind);

/** What a reader calls a figure or a part. */
export function labelOf(what: FigureName | PartId): string {
  if ((partIds as readonly string[]).includes(what))
    return houseParts.find(({ id }) => id === what)?.title ?? what;
  const figure = what as FigureName;
  return isChoiceName(figure) ? choiceFigures[figure].label : numberFigures[figure].label;
}

/** All that both changed since the release the reader had, and not to the same. */
export function clashes({ had, yours, theirs }: Three): readonly Clash[] {
  const figures = figureNames
    .filter((each) => new Set([had.house[each], yours.house[each], theirs.house[each]]).size === 3)
    .map((each) => ({
      what: each,
      label: labelOf(each),
      was: said(each, had.house),
      yours: said(each, yours.house),
      theirs: said(each, theirs.house),
    }));
  const parts = partIds
    .filter((id) => {
      const [before, own, other] = [had.parts[id], yours.parts[id], theirs.parts[id]];
      return !isSamePart(before, own) && !isSamePart(before, other) && !isSamePart(own, other);
    })
    .map((id) => ({
      what: id,
      label: labelOf(id),
      was: '',
      yours: 'as you have it',
      theirs: 'as released',
    }));
  return [...figures, ...parts];
}

/** The figures and parts that the reader alone changed since the release he had: they stay. */
export const changedByReader = ({ had, yours, theirs }: Three): readonly (FigureName | PartId)[] => [
  ...figureNames.filter(
    (each) => had.house[each] !== yours.house[each] && had.house[each] === theirs.house[each],
  ),
  ...partIds.filter(
    (id) => !isSamePart(had.parts[id], yours.parts[id]) && isSamePart(had.parts[id], theirs.parts[id]),
  ),
];

/** Your house with some of its changes taken back to what the release had. */
function without(of: WholeHouse, had: WholeHouse, given: readonly string[]): WholeHouse {
  const taken = (values: object) => Object.entries(values).filter(([key]) => given.includes(key));
  const left = (values: object) => Object.entries(values).filter(([key]) => !given.includes(key));
  return {
    name: of.name,
    house: { ...of.house, ...Object.fromEntries(taken(had.house)) },
    parts: Object.fromEntries([...left(of.parts), ...taken(had.parts)]),
  };
}

/**
 * The house with both changes, under the reader's own name for it; `keeps` names the clashes in which his own holds. Where
 * both together cannot be, the release holds, and the house that gave way is told.
 */
export function merged({ had, yours, theirs }: Three, keeps: readonly string[]): Heard {
  const { name } = yours;
  const given = clashes({ had, yours, theirs })
    .map(({ what }) => what as string)
    .filter((what) => !keeps.includes(what));
  const told = { ...had, name };
  const here = without(yours, had, given);
  return hear({ here, told, stamps: {} }, { from: told, to: { ...theirs, name }, stamp: 1 });
}
