// Everything that the book can be searched for: sections, terms, calculators, questions; gathered when the site is built.
import type { MarkdownHeading } from 'astro';
import { calculators } from '../calculators/index.ts';
import type { Pace } from '../core/line/ledger.ts';
import { kinds } from '../exercises/kinds/index.ts';
import { topicTitles } from '../exercises/topics.ts';
import { withoutUnit } from '../house/without-unit.ts';
import { conditions, isCondition } from '../house/conditions.ts';
import { builtInLine } from '../house/line-of.ts';
import { holeFor } from '../house/open-figures.ts';
import { figureText } from '../house/prose.ts';

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
  readonly headings: readonly MarkdownHeading[];
}
interface Term {
  readonly id: string;
  readonly term: string;
  readonly says: string;
}
type Found = Omit<SearchEntry, 'id' | 'called' | 'also'>;

/** An attribute of a component, as it is written. */
const attribute = (of: string, tag: string): string | undefined =>
  new RegExp(`\\b${of}=["{]([^"}]*)["}]`).exec(tag)?.[1];

/** A figure as the built-in house has it. */
function figureOf(tag: string): string {
  const digits = attribute('digits', tag);
  const per = attribute('per', tag) as Pace | undefined;
  const text = figureText(builtInLine(), attribute('of', tag)!, per, digits ? Number(digits) : undefined);
  return / bare\b/.test(tag) ? withoutUnit(text) : text;
}

/** A figure as a hole, which the page fills from the reader’s house. */
function holeOf(tag: string): string {
  const [of, per = '', digits = ''] = ['of', 'per', 'digits'].map((each) => attribute(each, tag));
  return holeFor({ of: of!, per, digits, bare: / bare\b/.test(tag) });
}

/** A sentence that hangs on the house, or nothing where it is not true of the built-in one. */
function whenTrue(tag: string, told: string): string {
  const is = attribute('is', tag);
  return isCondition(is) && conditions[is](builtInLine(), []) ? told : '';
}

/** A row of a table: what it is about, and what is said of it. */
function rowOf(row: string): string {
  const [about, ...said] = row.split('|').flatMap((cell) => cell.trim() || []);
  const told = [about, said.join('; ')].filter(Boolean).join(': ');
  return /[.?!]$/.test(told) ? told : `${told}.`;
}

/**
 * MDX as plain words with the built-in house’s figures, without components, formulas, heads of tables and marks; or open,
 * with holes for the figures and without what is true of some houses only.
 */
export const plainWords = (mdx: string, isOpen = false): string =>
  mdx
    .replace(/<When([^>]*)>([^]*?)<\/When>/g, (_, tag: string, told: string) =>
      isOpen ? '' : whenTrue(tag, told),
    )
    .replace(/<Figure([^>]*)>/g, (_, tag: string) => (isOpen ? holeOf(tag) : figureOf(tag)))
    .replace(/<Source[^>]*>/g, '')
    .replace(/<[^>]*>/g, ' ')
    .replace(/\$\$[^$]*\$\$/g, ' ')
    .replace(/\$([^$\n]*)\$/g, (_, formula: string) => (/^\w+$/.test(formula) ? formula : ' '))
    .replace(/\[([^\]]+)\]\([^)]*\)/g, '$1')
    .replace(/^.*\n\s*\|[-:| ]+\|\s*$/gm, '')
    .replace(/^\s*\|(.*)\|\s*$/gm, (_, row: string) => rowOf(row))
    .replace(/^\s*(?:[-*>]|\d+\.)\s+/gm, '')
    .replace(/[*_`|#]/g, ' ')
    .replace(/\s+/g, ' ')
    .replace(/ (?=[,.;:?!)])/g, '')
    .trim();

/** What else readers call that which a text speaks of. */
const othersFor = (words: readonly SearchWord[], text: string): string =>
  words
    .filter(({ word }) => new RegExp(`\\b${word}s?\\b`, 'i').test(text))
    .flatMap(({ asked }) => asked)
    .join(' ');

/** A text closed, for the index, and open where it hangs on the house. */
const wordsOf = (mdx: string) => ({
  text: plainWords(mdx),
  ...(/<(?:Figure|When)\b/.test(mdx) && { open: plainWords(mdx, true) }),
});

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
        ...wordsOf(rest.join('\n')),
      },
    ];
  });
  return [{ title, where: 'Chapter', at, ...wordsOf(opening ?? '') }, ...sections];
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
export function searchEntries(
  chapters: readonly Chapter[],
  terms: readonly Term[],
  words: readonly SearchWord[],
): readonly SearchEntry[] {
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
  return found.map((entry, id) => ({
    id,
    ...entry,
    called: othersFor(words, entry.title),
    also: othersFor(words, entry.text),
  }));
}
