// What the build adds to an author's text, through both processors: that of Markdown and that of MDX.
import { markdownToHtml, mdxToJs, type CompileOptions } from 'satteri';
import { expect, test } from 'vitest';
import { formulas } from '../../src/build/katex.ts';
import { spaces } from '../../src/build/spaces.ts';
import { tables } from '../../src/build/tables.ts';
import { terms } from '../../src/build/terms.ts';
import { chapterText } from '../../src/build/chapter-text.ts';
import { plainWordsOf } from '../../src/build/plain-words.ts';

/** As astro.config.mjs has them. */
const options: CompileOptions = {
  features: { math: true },
  mdastPlugins: [formulas, terms, spaces],
  hastPlugins: [tables],
};
const processors = [
  ['Markdown', async (text: string) => (await markdownToHtml(text, options)).html],
  ['MDX', async (text: string) => (await mdxToJs(text, options)).code],
] as const;

test.each(processors)('%s: a number stays with its unit', async (_, written) => {
  expect(await written('Add 12 kg of it.')).toMatch(/12(?:\u00a0|\\xA0)kg/);
});

test.each(processors)('%s: the first bold use of a term brings its meaning, a second and any other word stay bold', async (_, written) => {
  const text = await written('The **wort** runs; the **wort** again, and **nothing** else.');
  expect(text.match(/term-says/g)).toHaveLength(1);
  expect(text.match(/\bid(?:=|: )"term-wort"/g)).toHaveLength(1);
  expect(text.match(/strong/g)!.length).toBeGreaterThanOrEqual(2);
}); // prettier-ignore

test.each(processors)('%s: a formula is set as MathML, on its own in a box that the keyboard reaches', async (_, written) => {
  expect(await written('Here $x$ is it.')).toMatch(/<math|"math"/);
  const own = await written('$$\nx = 1\n$$');
  expect(own).toContain('formula');
  expect(own).toMatch(/tab[iI]ndex/);
  await expect(written('$\\frac{1}$')).rejects.toThrow();
}); // prettier-ignore

test.each(processors)('%s: a table stands in a box of its own, and the corner above its row names heads nothing', async (_, written) => {
  const text = await written('| | litres |\n| --- | --- |\n| wash | 9000 |\n');
  expect(text).toMatch(/group/);
  expect(text.match(/<th>|_components\.th,/g)).toHaveLength(1);
}); // prettier-ignore

test('a chapter is read once: sections, addresses, components with what they are given, links and bold words', () => {
  const text = chapterText(
    '---\ntitle: A\n---\n\nOpening.\n\n## What 40 % vol is\n\nSee [it](/law/), **wort**.\n\n### Again\n\n<Caution of="drink" brief />\n\n## Again\n\n<Figure of="heart.volume" digits={1} /> here.\n',
  );
  expect(text.headings).toEqual([
    { depth: 2, text: 'What 40 % vol is', slug: expect.stringMatching(/^what-40/) },
    { depth: 3, text: 'Again', slug: 'again' },
    { depth: 2, text: 'Again', slug: 'again-1' },
  ]);
  expect(text.sections.map(({ heading }) => heading?.text)).toEqual([undefined, 'What 40 % vol is', 'Again', 'Again']); // prettier-ignore
  expect(text.components).toEqual([
    { name: 'Caution', attributes: { of: 'drink', brief: true } },
    { name: 'Figure', attributes: { of: 'heart.volume', digits: '1' } },
  ]);
  expect([text.links, text.bold]).toEqual([['/law/'], ['wort']]);
  expect(plainWordsOf(text.sections[0]!.nodes)).toBe('Opening.');
});
