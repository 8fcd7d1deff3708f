// What the README says of the project is so: its accuracy table, its commands, its pictures.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { accuracyTable } from './accuracy-table.ts';

const root = join(import.meta.dirname, '..');
const readme = readFileSync(join(root, 'README.md'), 'utf8');
const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
  scripts: Record<string, string>;
};
/** A line of a table without the spaces that only line its columns up. */
const bare = (line: string) => line.replace(/\s+/g, ' ').replace(/-{3,}/g, '---');

test('the accuracy table is the one that is computed', () => {
  const lines = readme.split('\n').map(bare);
  for (const line of accuracyTable) expect(lines).toContain(bare(line));
});

test('every command that the README names is there', () => {
  const named = [...readme.matchAll(/npm run ([a-z:-]+)/g)].map(([, name]) => name!);
  expect(named.length).toBeGreaterThan(10);
  for (const name of named) expect(Object.keys(scripts)).toContain(name);
});

test('every picture and file that the README points at is there', () => {
  const pointed = [...readme.matchAll(/\]\((?!http)([^)]+)\)/g)].map(([, path]) => path!);
  expect(pointed.length).toBeGreaterThan(3);
  for (const path of pointed) expect(existsSync(join(root, path)), path).toBe(true);
});

test('every file and folder that the guide to the book names is there', () => {
  const guide = readFileSync(join(root, 'DEVELOPERS.md'), 'utf8');
  const named = [...guide.matchAll(/`((?:src|tests|content|public)\/[^`*{}\s]+)`/g)].map(([, path]) => path!);
  expect(named.length).toBeGreaterThan(100);
  for (const path of named) expect(existsSync(join(root, path)), path).toBe(true);
});

test('every command of the package stands in the README', () => {
  const told = readme + readFileSync(join(root, 'DEVELOPERS.md'), 'utf8');
  for (const name of Object.keys(scripts)) expect(told, name).toMatch(new RegExp(`npm (run )?${name}\\b`));
});

test('every file of the tests that a file of the book names is there', () => {
  const named = readdirSync(join(root, 'src'), { recursive: true, encoding: 'utf8' })
    .filter((path) => /\.(?:tsx?|astro)$/.test(path))
    .flatMap((path) => [...readFileSync(join(root, 'src', path), 'utf8').matchAll(/\btests\/[\w/-]*\w(?:\.test)?(?:\.\w+)?/g)].map(([at]) => at)); // prettier-ignore
  expect(named.length).toBeGreaterThan(20);
  for (const path of named) expect(existsSync(join(root, path)), path).toBe(true);
});
