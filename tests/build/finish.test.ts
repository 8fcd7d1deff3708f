// What the end of the build writes into a page, on pages written by hand.
import { expect, test } from 'vitest';
import { fetchedAhead, relative } from '../../src/build/finish.ts';

const island = (file: string) =>
  `<astro-island component-url="/_astro/${file}.js" renderer-url="/_astro/renderer.js"></astro-island>`;
const imports = new Map([
  ['_astro/Desk.js', ['_astro/field.js', '_astro/core.js']],
  ['_astro/field.js', ['_astro/core.js', '_astro/Desk.js']], // even in a circle
  ['_astro/other.js', []],
]);
const asked = (page: string) =>
  [...page.matchAll(/rel="modulepreload" href="([^"]+)"/g)].map(([, file]) => file);

test('a tool asks ahead for all that its islands import, each file once, and for nothing else', () => {
  const page = fetchedAhead(`<body data-tool>${island('Desk')}${island('Desk')}</body>`, imports);
  expect(asked(page)).toEqual([
    '/_astro/Desk.js',
    '/_astro/field.js',
    '/_astro/core.js',
    '/_astro/renderer.js',
  ]);
});

test('a tool without islands, and a page to read with them, stay as they are', () => {
  for (const page of ['<body data-tool>text</body>', `<body>${island('Desk')}</body>`])
    expect(fetchedAhead(page, imports)).toBe(page);
});

test('what a page asks for ahead is found from the folder that it stands in', () => {
  const page = relative(fetchedAhead(`<body data-tool>${island('other')}</body>`, imports), 2);
  expect(asked(page)[0]).toBe('../../_astro/other.js');
});
