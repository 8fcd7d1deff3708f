// What search shows and finds: clean sentences with figures, readers' own words, and questions as they are asked.
import MiniSearch from 'minisearch';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { chapterText } from '../../src/build/chapter-text.ts';
import { plainWordsOf } from '../../src/build/plain-words.ts';
import { searchEntries } from '../../src/build/search-entries.ts';
import { searchOptions } from '../../src/islands/search-options.ts';
import { chapters, glossary } from './read.ts';

const root = join(import.meta.dirname, '..', '..');
const list = parse(readFileSync(join(root, 'content', 'search-words.yaml'), 'utf8')) as Readonly<
  Record<string, { readonly asked: readonly string[] }>
>;
const pages = chapters.flatMap(({ id, front, pages }) =>
  pages.map(({ part, body }) => ({
    id,
    at: `${id}/${part}/`,
    title: front['title'] as string,
    body,
  })),
);
const entries = searchEntries(
  pages,
  Object.entries(glossary).map(([id, { term, says }]) => ({ id, term, says })),
  Object.entries(list).map(([word, { asked }]) => ({ word, asked })),
);
const index = new MiniSearch(searchOptions);
index.addAll(entries.map((entry) => ({ ...entry, opening: '' })));
const wordsOf = (mdx: string) => plainWordsOf(chapterText(mdx).sections[0]!.nodes);
const found = (asked: string) => index.search(asked).map(({ id }) => entries[id as number]!);

test('no entry shows marks, rules of tables or empty figures', () => {
  for (const { at, text } of entries) {
    expect(text, at).not.toMatch(/---|\||\*\*|…|<[A-Za-z/]|\$|\{|\}| [,;:?!]|undefined/);
  }
});

test('a table is read row by row, with the figures of the built-in house in it', () => {
  const text = wordsOf(
    '| When | What |\n| --- | :-: |\n| Start | Wort at <Figure of="house.setTemperature" /> meets yeast<Source of="memory" /> |\n| Last<When is="young"> of a young one</When> | <Figure of="house.mashesPerWeek" digits={0} /> mashes |\n',
  );
  expect(text).toMatch(/^Start: Wort at \d+(\.\d)? °C meets yeast\. Last: \d+ mashes\.$/); // yeast goes in at so many degrees; Harrowmere keeps its casks over three years
});

test('letters of a formula stay in their sentence', () => {
  expect(wordsOf('$E$ is the extract, $M$ the wash.\n\n$$\nx = \\frac{1}{2}\n$$\n\n1. **Weigh** it.')).toBe(
    'E is the extract, M the wash. Weigh it.',
  );
});

describe('readers’ own words find what the book calls by others', () => {
  for (const [word, { asked }] of Object.entries(list)) {
    test.each(asked)(`%s finds ${word}`, (each) => {
      const about = found(each);
      expect(about.length).toBeGreaterThan(0);
      expect(
        about.slice(0, 10).some(({ title, text }) => `${title} ${text}`.toLowerCase().includes(word)),
      ).toBe(true);
    });
  }
});

test.each([
  ['why does it froth', /froth/i],
  ['foam', /froth/i],
  ['cut point', /\bcut/i],
  ['bottles from a hogshead', /bottles/i],
  ['how many bottles from a cask', /bottles/i],
  ['what is the angels’ share?', /angels/i],
])('“%s” finds something', (asked, about) => {
  const first = found(asked).slice(0, 5);
  expect(first.some(({ title, text }) => about.test(`${title} ${text}`))).toBe(true);
});

test('words of a question alone find nothing', () => {
  expect(found('what is it?')).toEqual([]);
});

test('arrow keys are told of only where a pointer hovers', () => {
  const page = readFileSync(join(root, 'src', 'pages', 'search.astro'), 'utf8');
  const style = readFileSync(join(root, 'src', 'styles', 'search.css'), 'utf8');
  expect(page).toMatch(/<span class="for-keys">The arrow keys/);
  expect(style).toMatch(/@media not \(hover: hover\) \{\s*\.for-keys \{\s*display: none/);
});
