// What the end of the build writes into a page, on pages written by hand.
import { expect, test } from 'vitest';
import {
  fetchedAhead,
  policyFirst,
  relativePage,
  relativeStyle,
  withoutInline,
} from '../../src/build/finish.ts';
import { refuseUnfound, rewriting } from '../../src/build/rewriting.ts';

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
  const page = relativePage(fetchedAhead(`<body data-tool>${island('other')}</body>`, imports), 2);
  expect(asked(page)[0]).toBe('../../_astro/other.js');
});

test('the policy stands before all that it governs, and only once', () => {
  const policy = '<meta http-equiv="content-security-policy" content="x">';
  expect(policyFirst(`<meta charset="utf-8"><link><script src="a"></script>${policy}`)).toBe(
    `<meta charset="utf-8">${policy}<link><script src="a"></script>`,
  );
});

test('inline scripts and styles go into files, the script of hydration first, and their hashes go', () => {
  const { page, files } = withoutInline(
    `<head><meta content="script-src 'self' 'sha256-abc='"><style>b{c:d}</style></head><script>ask(document.baseURI)</script><script>window._$HY||1</script><script src="/kept.js"></script>`,
  );
  const names = Object.keys(files);
  const style = names.find((name) => name.endsWith('.css'))!;
  const script = names.find((name) => name.endsWith('.js'))!;
  expect(style).toMatch(/^_astro\/islands\.[0-9a-f]{12}\.css$/);
  expect(files[script]).toBe('const islandsAt = document.currentScript.src;\nwindow._$HY||1\nask(islandsAt)');
  expect(page).toBe(
    `<head><meta content="script-src 'self'"><link rel="stylesheet" href="/${style}"><script defer src="/${script}"></script></head><script src="/kept.js"></script>`,
  );
});

test('the style that Astro writes for islands goes, as the book’s own says it', () => {
  const of = '<style>astro-island,astro-slot,astro-static-slot{display:contents}</style>';
  expect(withoutInline(`<head></head>${of}`)).toEqual({ page: '<head></head>', files: {} });
});

test('addresses in a style sheet are found from its folder', () => {
  expect(relativeStyle('a{b:url("/_astro/c.woff2")}d{e:url(/_astro/f.svg)}')).toBe(
    'a{b:url("./c.woff2")}d{e:url(./f.svg)}',
  );
});

test('a pattern that found nothing stops the build by name', () => {
  const [one, other] = [rewriting('apple', /a(.)/g), rewriting('pear', /p/g)];
  expect(one.in('ab ac', (found, letter) => found + letter!)).toBe('abb acc');
  expect(one.found()).toBe(2);
  expect(() => refuseUnfound([one])).not.toThrow();
  expect(() => refuseUnfound([one, other])).toThrow('The end of the build found no pear in the whole site.');
});
