// What every page of src/pages must have: a title, a description, one heading of the first rank, and a way that leads to it.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { doors } from '../../src/layouts/doors.ts';

const root = join(import.meta.dirname, '..', '..');
const texts = ['src', 'content'].flatMap((folder) =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.(astro|tsx?|mdx)$/.test(file))
    .map((file) => join(folder, file).replaceAll('\\', '/'))
    .map((file) => ({ file, text: readFileSync(join(root, file), 'utf8') })),
);
const pages = texts.filter(({ file }) => file.startsWith('src/pages/') && file.endsWith('.astro'));
const behindDoors = new Set(doors.flatMap(({ groups }) => groups.flatMap(({ links }) => links.map(({ href }) => href)))); // prettier-ignore
/** Pages that are opened by the link that somebody is given, and the first of all. */
const given = ['/', '/sheet/', '/sheet/own/', '/sheet/sealed/'];

/** A page's own text with those of the layouts and components that it is made of. */
const withParts = (text: string): string =>
  [...text.matchAll(/from '[./]*\/(layouts|components|islands)\/([\w-]+\.(?:astro|tsx))'/g)]
    .map(([, folder, name]) => texts.find(({ file }) => file === `src/${folder}/${name}`)?.text ?? '')
    .concat(text)
    .join('\n');

test.each(pages.map(({ file, text }) => [file, text] as const))('%s', (file, text) => {
  const whole = withParts(text);
  expect(whole, `${file} is not in the frame src/layouts/Page.astro`).toMatch(/<Page\b/);
  const frame = /<Page\b(?:[^>]|=>)*>/.exec(text)?.[0] ?? whole;
  expect(frame, `${file} has no title`).toMatch(/\btitle\b/);
  expect(frame, `${file} has no description`).toMatch(/\bdescription\b/);
  expect(/<h1\b/.test(whole), `${file} has no h1`).toBe(true);
  expect((text.match(/<h1\b/g) ?? []).length, `${file} has more than one h1`).toBeLessThanOrEqual(1);

  const address = file.replace(/^src\/pages|(index)?\.astro$/g, '').replace(/\/?$/, '/');
  if (address.includes('[') || given.includes(address) || behindDoors.has(address)) return;
  const leads = texts.some((other) => other.file !== file && other.text.includes(address));
  expect(leads, `${file}: nothing leads to ${address}; put it behind its door in src/layouts/doors.ts`).toBe(true);
}); // prettier-ignore
