// What DEVELOPERS.md says of adding things, followed in a copy of the book: done whole it passes, and with anything left out a test says what is missing.
import { execFile } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { beforeAll, describe, expect, test } from 'vitest';
import { recipes } from './all.ts';
import type { Tried } from './try.ts';

const MINUTES = 6; // at most, on a machine that does other things as well
const guide = readFileSync(join(import.meta.dirname, '..', '..', 'DEVELOPERS.md'), 'utf8');
let tried: readonly Tried[] = [];

beforeAll(async () => {
  const clean = Object.entries(process.env).filter(([name]) => !/^VITEST|^FUZZ|^SEEDS/.test(name));
  const { stdout } = await promisify(execFile)(process.execPath, [join(import.meta.dirname, 'try.ts')], {
    env: { ...Object.fromEntries(clean), NO_COLOR: '1' },
    maxBuffer: 1e8,
  });
  tried = JSON.parse(stdout.trim().split('\n').at(-1)!) as Tried[];
}, MINUTES * 60_000);

/** The numbered items under a heading of DEVELOPERS.md, the first at 1. */
function itemsUnder(heading: string): readonly string[] {
  const section = guide.split(/^## /m).find((each) => each.startsWith(`${heading}\n`));
  if (!section) throw new Error(`DEVELOPERS.md has no heading “${heading}”.`);
  return section.split(/^(?=\d+\. )/m);
}
/** True when a text names a file, a folder that holds it, or its last name. */
const names = (text: string, file: string) =>
  [...text.matchAll(/`([\w/.-]+)`/g)].some(
    ([, named]) => named === file || file.startsWith(`${named}/`) || file.endsWith(`/${named}`),
  );

describe.each(recipes.map((recipe) => [recipe.adds, recipe] as const))('%s', (adds, recipe) => {
  const lefts = recipe.steps.flatMap(({ leftOut }) => leftOut);
  const found = (forgets?: string) => tried.find((each) => each.adds === adds && each.forgets === forgets)!;

  test('whole, it passes every test that bears on it', () => {
    expect(found().failed).toEqual([]);
    expect(found().passed).toBeGreaterThan(3);
  });

  test.each(lefts.map((left) => [left.forgets, left] as const))(
    'who forgets %s is told',
    (forgets, { says }) => {
      expect(found(forgets).failed.join('\n')).toMatch(says);
    },
  );

  test('it is the list of DEVELOPERS.md: each item is followed or not needed, and names the files it touches', () => {
    const items = itemsUnder(recipe.heading);
    const followed = new Set([
      ...recipe.steps.map(({ item }) => item),
      ...Object.keys(recipe.without).map(Number),
    ]);
    expect([...followed].sort()).toEqual(items.slice(1).map((_, i) => i + 1));
    for (const { item, edits, gathers, leftOut } of recipe.steps) {
      for (const { file } of edits) expect(names(items[item]!, file), `${item}. names ${file}`).toBe(true);
      if (gathers && item < 3) expect(items[item]).toContain('npm run gather');
      for (const { test: file } of leftOut)
        if (!file.startsWith('tests/build/'))
          expect(names(items.join(''), file), `it names ${file}`).toBe(true);
    }
  });
});
