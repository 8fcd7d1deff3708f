// The sections, cautions and long terms of the book as passages, from which a question is answered that the list has not got.
import type { Passage } from '../asking/entry.ts';
import { plainWords } from './search-entries.ts';

interface Page {
  /** From the root of the site. */
  readonly at: string;
  readonly title: string;
  readonly body: string;
  /** The address of each heading of the second and third depth, in order. */
  readonly slugs: readonly string[];
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
const sectionsOf = ({ at, title, body, slugs }: Page): readonly Passage[] =>
  body.split(/^#{2,3} /m).flatMap((part, i): Passage[] => {
    const heading = i === 0 ? title : part.slice(0, part.indexOf('\n')).trim();
    const text = plainWords(i === 0 ? part : part.slice(part.indexOf('\n')), true).replace(LABELS, '');
    if (text === '' || UNTOLD.test(heading)) return [];
    return [{ title: heading, text, at: i === 0 ? at : `${at}#${slugs[i - 1]!}`, place: i === 0 ? title : `${title}: ${heading}` }]; // prettier-ignore
  });

/** Each caution, where it stands whole for the first time. */
const cautionsOf = (pages: readonly Page[], cautions: ReadonlyMap<string, Caution>): readonly Passage[] =>
  [...cautions].flatMap(([id, { title, hazard, does, defers }]) => {
    const page = pages.find(({ body }) => new RegExp(`<Caution of="${id}"(?! brief)`).test(body));
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
