// The list of what is asked, as the tests read it from content.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';
import type { AskedList, Entry } from '../../src/asking/entry.ts';
import { termsAsked } from '../../src/asking/terms.ts';

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

export const list: AskedList = {
  entries,
  words: Object.fromEntries(
    Object.entries(read('asked-words.yaml') as Record<string, { asked: string[] }>).map(([word, { asked }]) => [word, asked]),
  ),
}; // prettier-ignore
