// Cuts the mathematics font down to the characters that formulas use: `npm run math-font`.
import { readFile, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import subsetFont from 'subset-font';

const whole = createRequire(import.meta.url).resolve(
  '@fontsource/stix-two-math/files/stix-two-math-latin-400-normal.woff2',
);
const cut = new URL('../styles/fonts/stix-two-math.woff2', import.meta.url);

/** The characters from one code point to another, both included. */
const span = (first: number, last: number) =>
  Array.from({ length: last - first + 1 }, (_, i) => String.fromCodePoint(first + i)).join('');

const characters = [
  span(0x20, 0x7e), // ASCII
  span(0x391, 0x3c9), // Greek
  span(0x1d434, 0x1d467) + 'ℎ', // slanted Latin letters, which browsers put for single-letter names
  span(0x1d6e2, 0x1d71b), // slanted Greek letters
  '×÷±−·⋅≈≤≥∫∑√∂∞→°′″…½%\u2061\u2062\u2063\u2064',
].join('');

await writeFile(cut, await subsetFont(await readFile(whole), characters, { targetFormat: 'woff2' }));
