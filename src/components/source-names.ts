// The short names of some sources, for an island that names them: a page then need not fetch all that is said of every source.
import { figureIds, figureTable } from '../core/figures/index.ts';
import { sources, type SourceId } from '../core/sources.ts';

export type SourceNames = Readonly<Partial<Record<SourceId, string>>>;

export const namesOf = (ids: readonly SourceId[]): SourceNames =>
  Object.fromEntries(ids.map((id) => [id, sources[id].short]));

/** The names of all that says what is usual for a figure. */
export const namesOfUsual = namesOf(figureIds.flatMap((id) => figureTable[id].usual?.source ?? []));
