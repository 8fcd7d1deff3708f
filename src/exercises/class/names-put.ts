// Names typed one after another and put into a class book: each once, with what is to be said of the rest.
import { oneLine } from '../own/one-line.ts';
import { sameName, withThings, type ClassBook, type Role, type Thing } from './book.ts';
import { freeId, idByName } from './names.ts';
import { LONGEST_PERSON_NAME } from './text.ts';

const MOST_TOLD = 10; // names

/** The book with the names of a text, which stand between commas, semicolons or on lines; and what came of it. The same book where none is new. */
export function withNames(book: ClassBook, text: string, role: Role): { readonly book: ClassBook; readonly says: string } {
  const there = idByName(book);
  const given = text.split(/[\n;,]/).map((each) => oneLine(each).slice(0, LONGEST_PERSON_NAME).trim()).filter((each) => each !== '');
  const first = new Map<string, string>();
  const [twice, known] = [new Set<string>(), new Set<string>()];
  for (const name of given) {
    const same = sameName(name);
    const before = first.get(same);
    if (there.has(same)) known.add(name);
    else if (before === undefined) first.set(same, name);
    else twice.add(before);
  }
  const listed = (names: ReadonlySet<string>) => [...names].slice(0, MOST_TOLD).join(', ');
  const says = [
    ...(first.size > 0 ? [`${first.size} ${first.size === 1 ? 'person was' : 'people were'} put in.`] : []),
    ...(known.size > 0 ? [`In the book already: ${listed(known)}.`] : []),
    ...(twice.size === 1 ? [`${listed(twice)} stands twice: put in once; write something behind the name if they are two.`] : []),
    ...(twice.size > 1 ? [`${listed(twice)} stand twice: each put in once; write something behind a name if they are two.`] : []),
  ].join(' ');
  const things = Object.fromEntries([...first.values()].map((name): [string, Thing] => [freeId(book, name), { is: 'person', name, role }]));
  return { book: first.size > 0 ? withThings(book, things) : book, says };
} // prettier-ignore
