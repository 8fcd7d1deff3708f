// How the search reads words; the index and the page must read them alike.
import type { Options } from 'minisearch';

/** What stands in the index beside the words. */
export interface ShownPassage {
  readonly title: string;
  readonly where: string;
  readonly at: string;
  readonly opening: string;
}

/** Words of a question that say nothing of what is asked for; neither the index nor a search heeds them. */
const UNHEEDED = new Set(
  'a an and are at be by can do does for from has have how i if in into is it its many me much my of on or our s that the there they this to was we what when where which who why will with you your'.split(' '),
); // prettier-ignore

export const searchOptions = {
  fields: ['title', 'called', 'where', 'text', 'also'],
  storeFields: ['title', 'where', 'at', 'opening'],
  // A plural and its singular are one word to a reader.
  processTerm: (term) => {
    const word = term
      .toLowerCase()
      .normalize('NFKD')
      .replace(/[\u0300-\u036f’']/g, '');
    return UNHEEDED.has(word) ? null : word.replace(/(?<=\w{3})s$/, '');
  },
  searchOptions: {
    boost: { title: 4, called: 4 },
    prefix: true,
    fuzzy: (term) => (term.length > 4 ? 0.2 : false),
    combineWith: 'AND',
  },
} satisfies Options;
