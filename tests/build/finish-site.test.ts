// The end of the build on a small site written by hand: what it makes of the files, and what stops it.
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterEach, expect, test } from 'vitest';
import { finish } from '../../src/build/finish.ts';

const ISLANDS = 'astro-island,astro-slot,astro-static-slot{display:contents}';
const page = `<!doctype html><html><head><meta charset="utf-8"><link rel="icon" href="/icon.svg"><meta http-equiv="content-security-policy" content="script-src 'self' 'sha256-abc='"><style>${ISLANDS}</style></head><body data-tool><astro-island component-url="/_astro/Desk.js" renderer-url="/_astro/renderer.js"></astro-island><script>ask(document.baseURI)</script></body></html>`;
const whole = {
  'index.html': page,
  'sums/index.html': page,
  '_astro/base.css': 'a{b:url("/_astro/c.woff2")}',
  '_astro/c.woff2': 'letters',
};

const folders: string[] = [];
function site(files: Readonly<Record<string, string>>): string {
  const folder = mkdtempSync(join(tmpdir(), 'finish-'));
  folders.push(folder);
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(join(folder, name, '..'), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  return folder;
}
afterEach(() => folders.splice(0).forEach((folder) => rmSync(folder, { recursive: true })));

/** Ends a build in a folder as Astro does. */
async function end(folder: string): Promise<void> {
  const done = finish().hooks['astro:build:done'] as (at: { readonly dir: URL }) => Promise<void>;
  await done({ dir: pathToFileURL(`${folder}/`) });
}

// It comes first, as what was found is counted over the whole build.
test('a site in which something is no longer written as it was stops the build, and names it', async () => {
  const plain = page.replace(/<meta http-equiv[^>]*>/, '').replace(/<astro-island.*<\/astro-island>/, '');
  await expect(end(site({ ...whole, 'index.html': plain, 'sums/index.html': plain }))).rejects.toThrow(
    /found no policy of a page and no hash in a policy .*and no island in the whole site/,
  );
});

test('a whole site is ended: no inline script, relative addresses, one file of scripts for like pages, each file in the worker', async () => {
  const folder = site(whole);
  await end(folder);
  const read = (name: string) => readFileSync(join(folder, name), 'utf8');
  const [first, deeper] = [read('index.html'), read('sums/index.html')];
  for (const text of [first, deeper]) expect(text).not.toMatch(/<script>|<style>|sha256-|="\/(?!\/)/);
  const script = /src="\.\/(_astro\/islands\.[0-9a-f]{12}\.js)"/.exec(first)![1]!;
  expect(deeper).toContain(`src="../${script}"`);
  expect(read(script)).toBe('const islandsAt = document.currentScript.src;\nask(islandsAt)');
  expect(first).toContain('<link rel="icon" href="./icon.svg">');
  expect(deeper).toContain('<link rel="icon" href="../icon.svg">');
  expect(read('_astro/base.css')).toBe('a{b:url("./c.woff2")}');
  for (const at of ['./', 'sums/', '_astro/base.css', '_astro/c.woff2', script]) expect(read('offline.js')).toContain(`"${at}":`); // prettier-ignore
});

test('the worker changes when a file does, and only then', async () => {
  const workerOf = async (files: Readonly<Record<string, string>>) => {
    const folder = site(files);
    await end(folder);
    return readFileSync(join(folder, 'offline.js'), 'utf8');
  };
  const before = await workerOf(whole);
  expect(await workerOf({ ...whole })).toBe(before);
  expect(await workerOf({ ...whole, '_astro/c.woff2': 'other letters' })).not.toBe(before);
});
