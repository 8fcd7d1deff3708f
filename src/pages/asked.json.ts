// What visitors ask, with the name of each place in the book; a link that leads nowhere fails the build.
import { getCollection } from 'astro:content';
import type { AskedList, AskedEntry } from '../asking/entry.ts';
import { termsAsked } from '../asking/terms.ts';
import { chaptersOfBook } from '../build/book.ts';
import { chapterText } from '../build/chapter-text.ts';
import { bookPassages } from '../build/passages.ts';
import { keepTogether } from '../core/keep-together.ts';
import { calculators } from '../calculators/index.ts';

/** Pages that are no chapter and no calculator. */
const others: Readonly<Record<string, string>> = {
  'house/': 'The figures of the house',
  'accuracy/': 'How far the figures agree',
  'cards/': 'Pocket cards',
  'script/': 'Check a talk',
  'practice/': 'Practice',
};

export async function GET(): Promise<Response> {
  const chapters = await chaptersOfBook();
  const pages = chapters.flatMap((chapter) =>
    chapter.pages.map(({ at, title, entry }) => ({ at, title, body: entry.body ?? '', of: chapter.title })),
  );
  /** What each address of the book is called. */
  const places = new Map([
    ...Object.entries(others),
    ...pages.flatMap(({ at, title, body, of }) => [
      [at, title] as const,
      ...chapterText(body).headings.map(
        ({ slug, text }) => [`${at}#${slug}`, `${of}: ${keepTogether(text)}`] as const,
      ),
    ]),
    ...calculators.map(({ id, title }) => [`sums/${id}/`, title] as const),
  ]);
  const files = await getCollection('asked');
  const entries = files.flatMap(({ data }) =>
    Object.entries(data).map(([id, entry]): AskedEntry => {
      const place = places.get(entry.at);
      if (place === undefined) throw new Error(`${id}: nothing in the book stands at ${entry.at}.`);
      return { id, ...entry, place };
    }),
  );
  const terms = (await getCollection('glossary')).map(({ id, data }) => ({ id, term: data.term, says: data.says })); // prettier-ignore
  const words = Object.fromEntries(
    (await getCollection('askedWords')).map(({ id, data }) => [id, data.asked]),
  );
  const foreign = Object.fromEntries(
    (await getCollection('askedForeign')).map(({ id, data }) => [id, data.asked]),
  );
  const cautions = new Map((await getCollection('cautions')).map(({ id, data }) => [id, data]));
  const passages = bookPassages(pages, cautions, terms);
  const all = [...entries, ...termsAsked(terms, entries)];
  return new Response(JSON.stringify({ entries: all, words, foreign, passages } satisfies AskedList));
}
