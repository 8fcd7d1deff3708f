// A kind whose words or numbers were mended: sheets of older generators go on drawing it as it was.
// A kind that was released keeps its id, its level and what older generators draw of it: `before` holds the old prompt and numbers, `renewed` the generator that first draws the new ones, `until` the last that draws the kind.
// Topics, forms and levels only grow at the end of their lists; a sheet is mixed by how many topics its generator knew (topics.ts).

import type { QuestionKind } from './question.ts';

/** The generator from which kinds are drawn as they are declared now. */
export const RENEWED_SINCE = 3;

/** A declaration as a generator draws by it: one `renewed` later than most goes on drawing its `before` until then. */
export const asGeneratorDraws = <
  T extends { readonly before?: object; readonly renewed?: number; readonly fits?: unknown },
>(
  of: T,
  generator: number,
): T => {
  if (generator >= (of.renewed ?? RENEWED_SINCE)) return of;
  const { fits: _, ...rest } = of;
  return { ...rest, ...of.before } as T;
};

/** How finely to answer, within a prompt: the line below it says so, and once is enough. */
const ROUNDING =
  /,? to (?:one decimal|two decimals|the (?:kilogram|litre|hundredth)|a tenth(?: of a (?:cask|year)| or better)?)(?=\?)/;
export const withoutRounding = (prompt: string, generator: number): string =>
  generator < RENEWED_SINCE ? prompt : prompt.replace(ROUNDING, '');

/** A kind that generators after this one do not draw. */
export const retiredAfter = (last: number, kind: QuestionKind): QuestionKind => ({ ...kind, until: last });
