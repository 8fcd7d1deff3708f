// The list of what is asked, as the tests read it from content.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';
import type { AskedList, Entry } from '../../src/asking/entry.ts';
import { termsAsked } from '../../src/asking/terms.ts';
import { bookPassages } from '../../src/build/passages.ts';

const content = join(import.meta.dirname, '..', '..', 'content');
const read = (...path: string[]) => parse(readFileSync(join(content, ...path), 'utf8')) as unknown;

type Written = Readonly<Record<string, Omit<Entry, 'id' | 'place'>>>;
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

const chapters = join(content, 'chapters');
/** The address of a heading, as the site makes it. */
export const slugOf = (text: string) => text.toLowerCase().replace(/[\u2018\u2019]/g, '').replace(/[^\p{L}\p{N}\s-]/gu, '').trim().replace(/\s/g, '-').replace(/40--mean/, '40-mean'); // prettier-ignore
const pages = readdirSync(chapters).flatMap((chapter) =>
  readdirSync(join(chapters, chapter)).map((file) => {
    const [, head, body] = /^---\n([^]*?)\n---\n([^]*)$/.exec(readFileSync(join(chapters, chapter, file), 'utf8'))!;
    const part = file.replace('.mdx', '');
    const { title = chapter } = parse(head!) as { title?: string };
    return {
      at: `${chapter}/${/^(?:index|explain)$/.test(part) ? '' : `${part}/`}`,
      title,
      body: body!,
      slugs: [...body!.matchAll(/^#{2,3} (.*)$/gm)].map(([, heading]) => slugOf(heading!)),
    };
  }),
); // prettier-ignore
const cautions = new Map(Object.entries(read('cautions.yaml') as Parameters<typeof bookPassages>[1] extends ReadonlyMap<string, infer C> ? Record<string, C> : never)); // prettier-ignore

export const list: AskedList = {
  entries,
  passages: bookPassages(pages, cautions, terms),
  words: phrases('asked-words.yaml'),
  foreign: phrases('asked-foreign.yaml'),
};
