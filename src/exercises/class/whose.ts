// Results whose version was given to somebody else by the list of who gets which: nothing is guessed, the trainer is asked.
import { handedOut } from '../handed-out.ts';
import { sameName, type ClassBook } from './book.ts';
import { idByName } from './names.ts';
import { putResults, type FoundResult } from './put-results.ts';

/** A result, and whom the list gives its version to. */
export interface Doubtful {
  readonly found: FoundResult;
  readonly listed: string;
}

const MOST_VERSIONS = 99; // of any sheet

/**
 * Parts what was found into what is sure and what is to be asked about, by the list of each sheet: names, one a line, nothing
 * where there is none. A result that already stands in the book under either name is not asked about again.
 */
export function doubtsIn(book: ClassBook, found: readonly FoundResult[], listOf: (found: FoundResult) => string): { readonly sure: readonly FoundResult[]; readonly doubtful: readonly Doubtful[] } {
  const people = idByName(book);
  const isOne = (a: string, b: string) => sameName(a) === sameName(b) || (people.has(sameName(a)) && people.get(sameName(a)) === people.get(sameName(b)));
  const stands = (each: FoundResult) => putResults(book, [each]).added === 0;
  const doubtful = found.flatMap((each): Doubtful[] => {
    const { version } = each.got;
    const listed = version < 1 ? undefined : handedOut(listOf(each), MOST_VERSIONS)[version - 1]?.name;
    if (listed === undefined || isOne(listed, each.name)) return [];
    return stands(each) || stands({ ...each, name: listed }) ? [] : [{ found: each, listed }];
  });
  const asked = new Set(doubtful.map(({ found }) => found));
  return { sure: found.filter((each) => !asked.has(each)), doubtful };
} // prettier-ignore

/** What is asked of such a result. */
export const whoseWords = ({ found: { got, name, work }, listed }: Doubtful): string =>
  `Version ${got.version} of “${work.title}” was given to ${listed}, and the name on it is ${name}. Whose is it?`;
