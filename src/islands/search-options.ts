// How the search reads words; the index and the page must read them alike.
import type { Options } from 'minisearch';

/** What stands in the index beside the words. */
export interface Shown {
  readonly title: string;
  readonly where: string;
  readonly at: string;
  readonly opening: string;
}

export const searchOptions = {
  fields: ['title', 'where', 'text'],
  storeFields: ['title', 'where', 'at', 'opening'],
  // A plural and its singular are one word to a reader.
  processTerm: (term) =>
    term
      .toLowerCase()
      .normalize('NFKD')
      .replace(/[\u0300-\u036f’']/g, '')
      .replace(/(?<=\w{3})s$/, ''),
  searchOptions: {
    boost: { title: 4 },
    prefix: true,
    fuzzy: (term) => (term.length > 4 ? 0.2 : false),
    combineWith: 'AND',
  },
} satisfies Options;
