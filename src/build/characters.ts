// The characters that the book's faces hold; after adding one, `npm run fonts`.

/** The characters from one code point to another, both included. */
const span = (first: number, last: number) =>
  Array.from({ length: last - first + 1 }, (_, i) => String.fromCodePoint(first + i)).join('');

export const ascii = span(0x20, 0x7e);
export const printedMarks = '\u00a0£§©«±·»¿‐‑–—‘’“”…†‡•′″⁄ \u202f\u2009−×÷≈≤≥½¼¾°ₐ₀₁₂₃₄²³→←↑↓œŒ';
export const accents = span(0xc0, 0xff); // in files of their own, which a page fetches only when it uses one
/** What formulas may use: brackets and signs that stretch are dear, so only those that occur. */
export const mathematics = [
  span(0x30, 0x39) + ' ()+,./=%\u00a0', // words in a formula are set in the face of the text
  span(0x1d434, 0x1d467) + 'ℎ', // slanted Latin letters, which browsers put for single-letter names
  'Δαρ𝛥𝛼𝜌',
  '×÷−·⋅≈≤≥∝∞⟶°\u2061\u2062\u2063\u2064',
].join('');
