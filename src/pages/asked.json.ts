// What visitors ask, with the name of each place in the book; a link that leads nowhere fails the build.
import { getCollection, render } from 'astro:content';
import type { AskedList, Entry } from '../asking/entry.ts';
import { termsAsked } from '../asking/terms.ts';
import { chaptersOfBook } from '../build/book.ts';
import { bookPassages } from '../build/passages.ts';
import { calculators } from '../calculators/index.ts';

/** Pages that are no chapter and no calculator. */
const others: Readonly<Record<string, string>> = {
  'house/': 'The figures of the house',
  'accuracy/': 'How far the figures agree',
  'cards/': 'Pocket cards',
  'script/': 'Check a talk',
  'practice/': 'Practice',
};

/** What each address of the book is called. */
async function placesOfBook(): Promise<ReadonlyMap<string, string>> {
  const chapters = await chaptersOfBook();
  const pages = await Promise.all(
    chapters.flatMap(({ title, pages }) =>
      pages.map(async (page) => {
        const { headings } = await render(page.entry);
        return [
          [page.at, page.title],
          ...headings.map(({ slug, text }) => [`${page.at}#${slug}`, `${title}: ${text}`]),
        ] as [string, string][];
      }),
    ),
  );
  return new Map([
    ...Object.entries(others),
    ...pages.flat(),
    ...calculators.map(({ id, title }) => [`sums/${id}/`, title] as [string, string]),
  ]);
}

/** Every page of every chapter, with the addresses of its headings. */
async function pagesOfBook(): Promise<Parameters<typeof bookPassages>[0]> {
  const pages = (await chaptersOfBook()).flatMap((chapter) => chapter.pages);
  return Promise.all(
    pages.map(async ({ at, title, entry }) => ({
      at,
      title,
      body: entry.body ?? '',
      slugs: (await render(entry)).headings.filter(({ depth }) => depth === 2 || depth === 3).map(({ slug }) => slug), // prettier-ignore
    })),
  );
}

export async function GET(): Promise<Response> {
  const places = await placesOfBook();
  const files = await getCollection('asked');
  const entries = files.flatMap(({ data }) =>
    Object.entries(data).map(([id, entry]): Entry => {
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
  const passages = bookPassages(await pagesOfBook(), cautions, terms);
  const all = [...entries, ...termsAsked(terms, entries)];
  return new Response(JSON.stringify({ entries: all, words, foreign, passages } satisfies AskedList));
}
