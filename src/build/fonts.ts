// Cuts the book's faces down to the characters that it uses: `npm run fonts`.
import { readFile, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import subsetFont from 'subset-font';
import { accents, ascii, printedMarks, mathematics } from './characters.ts';

const { resolve } = createRequire(import.meta.url);

const serif = '@fontsource-variable/alegreya/files/alegreya-latin-wght-normal.woff2';
const italic = '@fontsource-variable/alegreya/files/alegreya-latin-wght-italic.woff2';
const sans = '@fontsource/alegreya-sans/files/alegreya-sans-latin-500-normal.woff2';
const stix = '@fontsource/stix-two-math/files/stix-two-math-latin-400-normal.woff2';

/** What the styles ask a face of the text for (figures that line up), and what a browser puts to use unasked. */
const keepFeatures = ['lnum', 'tnum', 'calt', 'ccmp', 'clig', 'kern', 'liga', 'locl', 'mark', 'mkmk', 'rlig'];
const ROMAN = { wght: { min: 400, max: 700 } };
const faces = [
  { from: serif, to: 'alegreya.woff2', characters: ascii + printedMarks, variationAxes: ROMAN },
  { from: serif, to: 'alegreya-accents.woff2', characters: accents, variationAxes: ROMAN },
  {
    from: italic,
    to: 'alegreya-italic.woff2',
    characters: ascii + printedMarks,
    variationAxes: { wght: 400 },
  },
  { from: sans, to: 'alegreya-sans.woff2', characters: ascii + printedMarks },
  { from: sans, to: 'alegreya-sans-accents.woff2', characters: accents },
  { from: stix, to: 'stix-two-math.woff2', characters: mathematics },
];

for (const { from, to, characters, variationAxes } of faces) {
  const cut = await subsetFont(await readFile(resolve(from)), characters, {
    targetFormat: 'woff2',
    ...(variationAxes && { variationAxes }),
    ...(from !== stix && { keepFeatures }),
  });
  await writeFile(new URL(`../styles/fonts/${to}`, import.meta.url), cut);
  console.log(`${to}: ${(cut.length / 1000).toFixed(1)} kB`);
}
