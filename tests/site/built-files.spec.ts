// The built files themselves: not one holds an address that starts at the root of the server, so any folder can hold the site.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from '@playwright/test';

const dist = join(import.meta.dirname, '..', '..', 'dist');
const files = readdirSync(dist, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile())
  .map((entry) => join(entry.parentPath, entry.name).slice(dist.length + 1));
const names = readdirSync(dist).map((name) => name.replace(/[.+]/g, '\\$&'));

/** A text in quotes or in `url()` that begins with a slash and something that stands at the root of the site. */
const FROM_ROOT = new RegExp(`["'\`(]/(?:${names.join('|')})(?=["'\`)/?#])`);
/** An attribute that begins with a slash, and a name that only the build has for the site. */
const IN_MARKUP = / [\w:-]+=["']?\/(?!\/)/;
const ELSEWHERE = /handbook\.invalid|localhost|127\.0\.0\.1/;

/** The first place in a file's text that only the root of a server could answer, with what stands around it. */
function fromRoot(file: string, text: string): string | undefined {
  const found = FROM_ROOT.exec(text) ?? (file.endsWith('.html') ? IN_MARKUP.exec(text) : null) ?? ELSEWHERE.exec(text);
  return found ? `${file}: ${text.slice(Math.max(0, found.index - 40), found.index + 60)}` : undefined;
} // prettier-ignore

test('no built file holds an address from the root of the server', () => {
  const texts = files.filter((file) => /\.(html|js|css|json|webmanifest|svg|xml|txt)$/.test(file));
  expect(texts.length).toBeGreaterThan(100);
  expect(texts.map((file) => fromRoot(file, readFileSync(join(dist, file), 'utf8'))).filter(Boolean)).toEqual(
    [],
  );
});

test('the search for such addresses is awake', () => {
  for (const [file, text] of [
    ['a.js', 'new Worker(new URL("/_astro/round-spread.worker-B2sBEmKy.js",``+import.meta.url))'],
    ['a.js', 'fetch(`/search-index.json`)'],
    ['a.css', 'url(/_astro/a.woff2)'],
    ['a.webmanifest', '{ "start_url": "/index.html" }'],
    ['a.html', '<a href="/">Home</a>'],
    ['a.html', '<a href=/malting/>Malting</a>'],
  ] as const)
    expect(fromRoot(file, text), text).toBeDefined();
  for (const [file, text] of [
    ['a.js', 'a.split("/");`/kg`'],
    ['a.html', '<a href="../malting/"></a>'],
  ] as const)
    expect(fromRoot(file, text), text).toBeUndefined();
});

test('every library that the scripts import is named with its licence', () => {
  const licences = readFileSync(join(dist, 'licences.txt'), 'utf8');
  const { dependencies } = JSON.parse(readFileSync(join(dist, '..', 'package.json'), 'utf8')) as {
    dependencies: Readonly<Record<string, string>>;
  };
  const atBuildTime = ['astro', '@astrojs/', 'satteri', 'katex', 'github-slugger']; // they make pages, and are not in them
  for (const name of Object.keys(dependencies))
    if (!atBuildTime.some((each) => name.startsWith(each)))
      expect(licences, name).toMatch(new RegExp(`^${name}: [^]*?(MIT|Apache|BSD|Open Font)`, 'm'));
  for (const face of ['alegreya', 'stix-two-math']) expect(licences).toContain(face);
});
