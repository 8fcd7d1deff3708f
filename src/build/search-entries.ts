// Everything that the book can be searched for: sections, terms, calculators, questions; gathered when the site is built.
import type { MarkdownHeading } from 'astro';
import { calculators } from '../calculators/index.ts';
import { kinds } from '../exercises/kinds/index.ts';
import { topicTitles } from '../exercises/topics.ts';

export interface SearchEntry {
  readonly id: number;
  readonly title: string;
  /** What it is and where it stands: "Section of Malting". */
  readonly where: string;
  /** Address from the root of the site. */
  readonly at: string;
  readonly text: string;
}

/** A page of a chapter; `at` from the root of the site. */
interface Chapter {
  readonly id: string;
  readonly at: string;
  readonly title: string;
  readonly body: string;
  readonly headings: readonly MarkdownHeading[];
}
interface Term {
  readonly id: string;
  readonly term: string;
  readonly says: string;
}
type Found = Omit<SearchEntry, 'id'>;

/** MDX as plain words, without its components and formulas. */
export const plainWords = (mdx: string): string =>
  mdx
    .replace(/<Figure[^>]*>/g, '…')
    .replace(/<[^>]*>/g, ' ')
    .replace(/\$\$?[^$]*\$\$?/g, ' ')
    .replace(/\[([^\]]+)\]\([^)]*\)/g, '$1')
    .replace(/[*_`|#]|^\s*[-:]+\s*$/gm, ' ')
    .replace(/\s+/g, ' ')
    .trim();

function sectionsOf({ at, title, body, headings }: Chapter): Found[] {
  const slugs = headings.filter(({ depth }) => depth === 2 || depth === 3);
  const [opening, ...parts] = body.split(/^#{2,3} /m);
  const sections = parts.flatMap((part, i): Found[] => {
    const [heading = '', ...rest] = part.split('\n');
    const slug = slugs[i];
    if (!slug) throw new Error(`${at}: the heading “${heading}” has no place on the page.`);
    const isAsked = heading.trim().endsWith('?');
    return [
      {
        title: slug.text,
        where: isAsked ? `A visitor’s question, ${title}` : `Section of ${title}`,
        at: `${at}#${slug.slug}`,
        text: plainWords(rest.join('\n')),
      },
    ];
  });
  return [{ title, where: 'Chapter', at, text: plainWords(opening ?? '') }, ...sections];
}

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
export function searchEntries(chapters: readonly Chapter[], terms: readonly Term[]): readonly SearchEntry[] {
  const found: Found[] = [
    ...chapters.flatMap(sectionsOf),
    ...calculatorsFound(),
    ...terms.map(({ id, term, says }) => ({ title: term, where: 'Term', at: `glossary/#${id}`, text: says })),
    ...kinds.map(({ title, topic }) => ({
      title,
      where: `Question to practise, ${topicTitles[topic]}`,
      at: `practice/#topic=${topic}`,
      text: '',
    })),
  ];
  return found.map((entry, id) => ({ id, ...entry }));
}
