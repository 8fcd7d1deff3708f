// Everything that the book can be searched for: sections, terms, calculators, questions; gathered when the site is built.
import { calculators } from '../calculators/index.ts';
import { questionKinds } from '../exercises/kinds/index.ts';
import { keepTogether } from '../core/keep-together.ts';
import { topicTitles } from '../exercises/topics.ts';
import { chapterText, type Section } from './chapter-text.ts';
import { plainWordsOf } from './plain-words.ts';

export interface SearchEntry {
  readonly id: number;
  readonly title: string;
  /** What it is and where it stands: "Section of Malting". */
  readonly where: string;
  /** Address from the root of the site. */
  readonly at: string;
  readonly text: string;
  /** The same with holes for the figures of a house, as `house/open-figures.ts` fills them; nothing where it has none. */
  readonly open?: string;
  /** Other words for what its title and its text speak of. */
  readonly called: string;
  readonly also: string;
}

/** A word of the book, and what readers ask for in its place. */
interface SearchWord {
  readonly word: string;
  readonly asked: readonly string[];
}

/** A page of a chapter; `at` from the root of the site. */
interface Chapter {
  readonly id: string;
  readonly at: string;
  readonly title: string;
  readonly body: string;
}
interface Term {
  readonly id: string;
  readonly term: string;
  readonly says: string;
}
type Found = Omit<SearchEntry, 'id' | 'called' | 'also'>;

/** What else readers call that which a text speaks of. */
const othersFor = (words: readonly SearchWord[], text: string): string =>
  words
    .filter(({ word }) => new RegExp(`\\b${word}s?\\b`, 'i').test(text))
    .flatMap(({ asked }) => asked)
    .join(' ');

/** A text closed, for the index, and open where it hangs on the house. */
function wordsOf(nodes: Section['nodes']) {
  const [text, open] = [plainWordsOf(nodes), plainWordsOf(nodes, true)];
  return { text, ...(open !== text && { open }) };
}

const sectionsOf = ({ at, title, body }: Chapter): Found[] =>
  chapterText(body).sections.map(({ heading, nodes }) =>
    heading
      ? {
          title: keepTogether(heading.text),
          where: heading.text.endsWith('?') ? `A visitor’s question, ${title}` : `Section of ${title}`,
          at: `${at}#${heading.slug}`,
          ...wordsOf(nodes),
        }
      : { title, where: 'Chapter', at, ...wordsOf(nodes) },
  );

const calculatorsFound = (): Found[] =>
  calculators.map(({ id, title, purpose, stage, outputs }) => ({
    title,
    where: `Calculator, ${topicTitles[stage]}`,
    at: `sums/${id}/`,
    text: `${purpose} ${Object.values(outputs)
      .map(({ label }) => label)
      .join(', ')}`,
  }));

/** All that can be found, in a steady order. */
export function searchEntries(
  chapters: readonly Chapter[],
  terms: readonly Term[],
  words: readonly SearchWord[],
): readonly SearchEntry[] {
  const found: Found[] = [
    ...chapters.flatMap(sectionsOf),
    ...calculatorsFound(),
    ...terms.map(({ id, term, says }) => ({ title: term, where: 'Term', at: `glossary/#${id}`, text: says })),
    ...questionKinds.map(({ title, topic }) => ({
      title,
      where: `Question to practise, ${topicTitles[topic]}`,
      at: `practice/#topic=${topic}`,
      text: '',
    })),
  ];
  return found.map((entry, id) => ({
    id,
    ...entry,
    called: othersFor(words, entry.title),
    also: othersFor(words, entry.text),
  }));
}
