// The list of what is asked, as the tests read it from content.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';
import type { AskedList, AskedEntry } from '../../src/asking/entry.ts';
import { termsAsked } from '../../src/asking/terms.ts';
import { chapterText } from '../../src/build/chapter-text.ts';
import { bookPassages } from '../../src/build/passages.ts';
import { addressOf, chapters } from '../content/read.ts';

const content = join(import.meta.dirname, '..', '..', 'content');
const read = (...path: string[]) => parse(readFileSync(join(content, ...path), 'utf8')) as unknown;

type Written = Readonly<Record<string, Omit<AskedEntry, 'id' | 'place'>>>;
const files = readdirSync(join(content, 'asked')).filter((file) => file.endsWith('.yaml'));

const written = files.flatMap((file) =>
  Object.entries(read('asked', file) as Written).map(([id, entry]) => ({
    ...entry,
    id,
    place: entry.at,
    file,
  })),
);
const terms = Object.entries(read('glossary.yaml') as Record<string, { term: string; says: string }>).map(([id, term]) => ({ id, ...term })); // prettier-ignore

/** Every entry with its file, the place by its address. */
export const entries = [
  ...written,
  ...termsAsked(terms, written).map((entry) => ({ ...entry, file: 'glossary.yaml' })),
];

const phrases = (file: string) => Object.fromEntries(
  Object.entries(read(file) as Record<string, { asked: string[] }>).map(([word, { asked }]) => [word, asked]),
); // prettier-ignore

/** Every page of every chapter, with the addresses of its headings. */
export const pages = chapters.flatMap((chapter) =>
  chapter.pages.map(({ part, front, body }) => ({
    at: addressOf(chapter.id, part),
    title: (front['title'] as string | undefined) ?? chapter.id,
    body,
    slugs: chapterText(body).headings.map(({ slug }) => slug),
  })),
);
const cautions = new Map(Object.entries(read('cautions.yaml') as Parameters<typeof bookPassages>[1] extends ReadonlyMap<string, infer C> ? Record<string, C> : never)); // prettier-ignore

export const list: AskedList = {
  entries,
  passages: bookPassages(pages, cautions, terms),
  words: phrases('asked-words.yaml'),
  foreign: phrases('asked-foreign.yaml'),
};
