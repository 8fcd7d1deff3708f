// What authors wrote, as the tests read it: chapters in paragraphs, the glossary, the names of sources.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';
import { chapterText } from '../../src/build/chapter-text.ts';
import { plainWordsOf } from '../../src/build/plain-words.ts';

const content = join(import.meta.dirname, '..', '..', 'content');

export interface ChapterPage {
  /** The file's name: a stage's part, or “index”. */
  readonly part: string;
  readonly front: Readonly<Record<string, unknown>>;
  readonly body: string;
}
export interface Chapter {
  readonly id: string;
  readonly pages: readonly ChapterPage[];
  /** The front matter of its first page. */
  readonly front: Readonly<Record<string, unknown>>;
  /** The text of all its pages. */
  readonly body: string;
}

const FIRST = ['explain', 'index'];
const order = ['explain', 'index', 'work', 'safe', 'check'];
const place = ({ part, front }: ChapterPage) => (front['place'] as number | undefined) ?? order.indexOf(part);

function readPage(chapter: string, file: string): ChapterPage {
  const [, front, body] = readFileSync(join(content, 'chapters', chapter, file), 'utf8').split(/^---$/m);
  return {
    part: file.replace('.mdx', ''),
    front: (parse(front!) ?? {}) as Record<string, unknown>,
    body: body!,
  };
}

/** Where a page of a chapter stands, from the root of the site. */
export const addressOf = (chapter: string, part: string) =>
  `${chapter}/${FIRST.includes(part) ? '' : `${part}/`}`;

/** Every chapter, its pages, their front matter and their text. */
export const chapters: readonly Chapter[] = readdirSync(join(content, 'chapters')).map((id) => {
  const pages = readdirSync(join(content, 'chapters', id))
    .map((file) => readPage(id, file))
    .sort((a, b) => place(a) - place(b));
  const first = pages.find(({ part }) => FIRST.includes(part))!;
  return { id, pages, front: first.front, body: pages.map(({ body }) => body).join('\n') };
});

interface Term {
  readonly term: string;
  readonly says: string;
  readonly forms?: readonly string[];
}
export const glossary = parse(readFileSync(join(content, 'glossary.yaml'), 'utf8')) as Readonly<
  Record<string, Term>
>;

/** The words of a chapter that a reader reads: no components, formulas or heads of tables. */
export const plainText = (body: string): string =>
  chapterText(body)
    .sections.map(({ heading, nodes }) => `${heading ? `${heading.text}. ` : ''}${plainWordsOf(nodes)}`)
    .join(' ');
