// What authors wrote, as the tests read it: chapters in paragraphs, the glossary, the names of sources.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';

const content = join(import.meta.dirname, '..', '..', 'content');

export interface Chapter {
  readonly id: string;
  readonly front: Readonly<Record<string, unknown>>;
  readonly body: string;
}

/** Every chapter, its front matter and its text. */
export const chapters: readonly Chapter[] = readdirSync(join(content, 'chapters')).map((id) => {
  const [, front, body] = readFileSync(join(content, 'chapters', id, 'index.mdx'), 'utf8').split(/^---$/m);
  return { id, front: parse(front!) as Record<string, unknown>, body: body! };
});

interface Term {
  readonly term: string;
  readonly says: string;
  readonly forms?: readonly string[];
}
export const glossary = parse(readFileSync(join(content, 'glossary.yaml'), 'utf8')) as Readonly<
  Record<string, Term>
>;

/** The words of a chapter that a reader reads: no components, formulas or table rules. */
export function plainText(body: string): string {
  return body
    .replace(/\$\$[^$]*\$\$|\$[^$\n]*\$/g, ' ')
    .replace(/<Figure[^>]*\/>/g, '7 L')
    .replace(/<[^>]*>/g, ' ')
    .replace(/^\|?[-| :]+\|$/gm, ' ')
    .replace(/[*#|>]/g, ' ');
}
