// The search's index, made when the site is built.
import { chaptersOfBook } from '../build/book.ts';
import { getCollection } from 'astro:content';
import MiniSearch from 'minisearch';
import { searchEntries } from '../build/search-entries.ts';
import { searchOptions } from '../islands/search-options.ts';

const OPENING = 140; // characters of a text that are shown under its title

const opening = (text: string) =>
  text.length <= OPENING ? text : `${text.slice(0, text.lastIndexOf(' ', OPENING))} …`;

export async function GET(): Promise<Response> {
  const chapters = await chaptersOfBook();
  const read = chapters.flatMap((chapter) =>
    chapter.pages.map(({ at, title, entry }) => ({ id: chapter.id, at, title, body: entry.body ?? '' })),
  );
  const terms = (await getCollection('glossary')).map(({ id, data }) => ({
    id,
    term: data.term,
    says: data.says,
  }));
  const words = (await getCollection('searchWords')).map(({ id, data }) => ({ word: id, asked: data.asked }));
  const index = new MiniSearch(searchOptions);
  index.addAll(
    searchEntries(read, terms, words).map((entry) => ({
      ...entry,
      opening: opening(entry.open ?? entry.text),
    })),
  );
  return new Response(JSON.stringify(index));
}
