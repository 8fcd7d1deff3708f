// What the book says of its own changes: the version of the package has its entry, and they stand in order.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { parse } from 'yaml';

const root = join(import.meta.dirname, '..', '..');
const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };
const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as { version: string };
const changes = parse(readFileSync(join(root, 'content/changes.yaml'), 'utf8')) as readonly {
  version: string;
  date: string;
}[];
const inParts = (text: string) => text.split('.').map(Number);

test('the version of the package has its entry first', () => {
  expect(changes[0]!.version, `content/changes.yaml says nothing of version ${version}`).toBe(version);
  expect(lock.version).toBe(version);
});

test('versions and days only fall, and each version is a number of three parts', () => {
  for (const [i, { version, date }] of changes.entries()) {
    expect(version).toMatch(/^\d+\.\d+\.\d+$/);
    const newer = changes[i - 1];
    if (!newer) continue;
    expect(newer.date >= date, `${newer.version} is of a day before ${version}`).toBe(true);
    const at = inParts(newer.version).findIndex((part, k) => part !== inParts(version)[k]);
    expect(inParts(newer.version)[at]!, version).toBeGreaterThan(inParts(version)[at]!);
  }
});
