// The stamp of a build, of a small project written by hand.
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, expect, test } from 'vitest';
import { stampOf } from '../../src/build/stamp.ts';

const folders: string[] = [];
afterEach(() => folders.splice(0).forEach((folder) => rmSync(folder, { recursive: true })));
const project = {
  'package.json': '{"version":"1.2.3"}',
  'src/core/deep/b.ts': 'export const b = 2;\n',
  'src/core/a.ts': 'export const a = 1;\n',
  'content/houses/h.json': '{"x":1}',
};
function stamp(files: Readonly<Record<string, string>>): string {
  const folder = mkdtempSync(join(tmpdir(), 'stamp-'));
  folders.push(folder);
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(join(folder, name, '..'), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  return stampOf(folder);
}

test('it is the version and the head of the SHA-256 of what figures are reckoned from', () => {
  // printf 'a.ts\nexport const a = 1;\ndeep/b.ts\nexport const b = 2;\nh.json\n{"x":1}' | sha256sum
  expect(stamp(project)).toBe('1.2.3-7b5ce5');
});

test('a text moves it not, a sum, its name, a table and the house do', () => {
  const before = stamp(project);
  expect(stamp({ ...project, 'src/core/note.md': 'New.', 'content/chapters/a.mdx': 'New.' })).toBe(before);
  const { 'src/core/a.ts': sum, ...others } = project;
  for (const changed of [
    { ...project, 'src/core/a.ts': 'export const a = 2;\n' },
    { ...others, 'src/core/c.ts': sum },
    { ...project, 'src/core/table.json': '{}' },
    { ...project, 'content/houses/h.json': '{"x":2}' },
  ])
    expect(stamp(changed)).not.toBe(before);
});
