// Which build of the book this is, as it stands on whatever is printed; see build/stamp.ts.

declare const __BOOK__: string | undefined; // put there when the site is built

/** The stamp: “0.1.0-ab12cd”. Two builds with the same stamp reckon alike. */
export const bookStamp: string = typeof __BOOK__ === 'undefined' ? 'not built' : __BOOK__;

/** Whose figures, and by which book, in small print: “Harrowmere · book 0.1.0-ab12cd”. */
export const stampInWords = (house: string): string => `${house} · book ${bookStamp}`;
