// Class books in this browser: one open, others beside it. Two tabs write into one by putting both together, and what cannot be read is set aside, word for word.
import { freshBook, joinedBooks, settingsOf, type ClassBook } from '../exercises/class/book.ts';
import { bookText, readBook } from '../exercises/class/text.ts';
import { keepAside, keepText, keptText, storageKey, keysUnder } from '../browser/browser-store.ts';

const NOW = storageKey('class-now');
const PREFIX = storageKey('class/');
const ASIDE = storageKey('class-kept-aside');
const ID = /^[0-9a-z]{12}$/;

/** A name for a book or a sheet that nobody can guess: twelve signs made by chance. */
export const randomId = (length = 12): string =>
  Array.from(crypto.getRandomValues(new Uint8Array(length)), (byte) => (byte % 36).toString(36)).join('');

export interface KeptBook {
  readonly book: ClassBook;
  readonly problems: readonly string[];
}

function read(id: string): KeptBook {
  const text = keptText(PREFIX + id);
  if (text === null) return { book: freshBook(id), problems: [] };
  const found = readBook(text);
  const whole = typeof found === 'string' ? { book: freshBook(id), problems: [found] } : found;
  if (whole.problems.length === 0 && whole.book.id === id) return whole;
  const isAside = keepAside(ASIDE, text);
  return {
    book: whole.book.id === id ? whole.book : freshBook(id),
    problems: [...whole.problems, isAside ? 'What was kept is set aside in this browser, word for word.' : 'There is no room to set aside what was kept: save the book to a file before you change anything.'],
  };
} // prettier-ignore

/** The book that is open; a new one where there is none, which another tab then opens as well. */
export function keptBook(): KeptBook {
  const id = keptText(NOW) ?? '';
  if (ID.test(id)) return read(id);
  const book = freshBook(randomId());
  keepText(NOW, book.id);
  return { book, problems: [] };
}

/** Keeps a book, put together with what another tab has written meanwhile; the two together, and whether the browser kept them. */
export function keepBook(book: ClassBook): { readonly book: ClassBook; readonly isKept: boolean } {
  const both = keptText(PREFIX + book.id) === null ? book : joinedBooks(book, read(book.id).book);
  return { book: both, isKept: keepText(PREFIX + book.id, bookText(both)) && keepText(NOW, book.id) };
}

/** Calls back when another tab has written the book that is open. */
export function onBookChanged(id: () => string, take: (kept: KeptBook) => void): void {
  const look = () => keptText(PREFIX + id()) !== null && take(read(id()));
  addEventListener('storage', ({ key }) => key === PREFIX + id() && look());
  addEventListener('pageshow', ({ persisted }) => persisted && look());
}

/** The other books by their names. */
export const otherBooks = (id: string): readonly { readonly id: string; readonly name: string }[] =>
  keysUnder(PREFIX)
    .filter((each) => ID.test(each) && each !== id)
    .map((each) => ({ id: each, name: settingsOf(read(each).book).name }));

/** Opens another of them. */
export function openBook(id: string): KeptBook {
  keepText(NOW, id);
  return read(id);
}
