// Cuts the book's faces down to the characters that it uses: `npm run fonts`.
import { readFile, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import subsetFont from 'subset-font';

const { resolve } = createRequire(import.meta.url);

/** The characters from one code point to another, both included. */
const span = (first: number, last: number) =>
  Array.from({ length: last - first + 1 }, (_, i) => String.fromCodePoint(first + i)).join('');

const latin = span(0x20, 0x7e) + span(0xa0, 0xff); // ASCII and the western accents
const marks = '‐‑–—‘’“”…†‡•′″⁄ \u202f\u2009−×÷≈≤≥½¼¾°ₐ₀₁₂₃₄²³→←↑↓œŒ';
const mathematics = [
  span(0x20, 0x7e),
  span(0x391, 0x3c9), // Greek
  span(0x1d434, 0x1d467) + 'ℎ', // slanted Latin letters, which browsers put for single-letter names
  span(0x1d6e2, 0x1d71b), // slanted Greek letters
  '×÷±−·⋅≈≤≥∫∑√∂∞→°′″…½%\u2061\u2062\u2063\u2064',
].join('');

const faces = [
  {
    from: '@fontsource-variable/alegreya/files/alegreya-latin-wght-normal.woff2',
    to: 'alegreya.woff2',
    characters: latin + marks,
  },
  {
    from: '@fontsource-variable/alegreya/files/alegreya-latin-wght-italic.woff2',
    to: 'alegreya-italic.woff2',
    characters: latin + marks,
  },
  {
    from: '@fontsource/alegreya-sans/files/alegreya-sans-latin-500-normal.woff2',
    to: 'alegreya-sans.woff2',
    characters: latin + marks,
  },
  {
    from: '@fontsource/stix-two-math/files/stix-two-math-latin-400-normal.woff2',
    to: 'stix-two-math.woff2',
    characters: mathematics,
  },
];

for (const { from, to, characters } of faces) {
  const isVariable = from.includes('wght');
  const cut = await subsetFont(await readFile(resolve(from)), characters, {
    targetFormat: 'woff2',
    ...(isVariable ? { variationAxes: { wght: { min: 400, max: 700 } } } : {}),
  });
  await writeFile(new URL(`../styles/fonts/${to}`, import.meta.url), cut);
  console.log(`${to}: ${(cut.length / 1000).toFixed(1)} kB`);
}
