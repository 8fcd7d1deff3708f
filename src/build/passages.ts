// The sections, cautions and long terms of the book as passages, from which a question is answered that the list has not got.
import type { Passage } from '../asking/entry.ts';
import { cautionsIn, chapterText } from './chapter-text.ts';
import { plainWordsOf } from './plain-words.ts';

interface Page {
  /** From the root of the site. */
  readonly at: string;
  readonly title: string;
  readonly body: string;
}
interface Caution {
  readonly title: string;
  readonly hazard: string;
  readonly does: readonly string[];
  readonly defers: string;
}
interface Term {
  readonly id: string;
  readonly term: string;
  readonly says: string;
}

/** Sections that tell nothing by themselves. */
const UNTOLD = /^(?:Your house’s figures|Sums for this stage|Check yourself|What visitors ask)/;
const LABELS = /\bTo (?:say|understand)\. /g;

/** Every section of a page that tells something. */
const sectionsOf = ({ at, title, body }: Page): readonly Passage[] =>
  chapterText(body).sections.flatMap(({ heading, nodes }): Passage[] => {
    const text = plainWordsOf(nodes, true).replace(LABELS, '');
    const name = heading?.text ?? title;
    if (text === '' || UNTOLD.test(name)) return [];
    return [{ title: name, text, at: heading ? `${at}#${heading.slug}` : at, place: heading ? `${title}: ${name}` : title }]; // prettier-ignore
  });

/** Each caution, where it stands whole for the first time. */
const cautionsOf = (pages: readonly Page[], cautions: ReadonlyMap<string, Caution>): readonly Passage[] =>
  [...cautions].flatMap(([id, { title, hazard, does, defers }]) => {
    const page = pages.find(({ body }) => cautionsIn(body, 'whole').includes(id));
    const text = [hazard, ...does, defers].map((each) => each.trim()).join(' ');
    return page ? [{ title, text, at: page.at, place: `${page.title}: ${title}` }] : [];
  });

/** All that the book can be quoted by. */
export const bookPassages = (
  pages: readonly Page[],
  cautions: ReadonlyMap<string, Caution>,
  terms: readonly Term[],
): readonly Passage[] => [
  ...pages.filter(({ at }) => !at.startsWith('using/')).flatMap(sectionsOf),
  ...cautionsOf(pages, cautions),
  ...terms.map(({ id, term, says }) => ({ title: term, text: says, at: `glossary/#${id}`, place: `Glossary: ${term}` })),
]; // prettier-ignore
