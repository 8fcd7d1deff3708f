// What every chapter must have, and must not have: sections, length, terms, sources, live figures, short sentences.
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { quotableInProse, figureText } from '../../src/house/prose.ts';
import { builtInLine } from '../../src/house/line-of.ts';
import { stages } from '../../src/house/figures.ts';
import { chapterText, namedIn } from '../../src/build/chapter-text.ts';
import { sources } from '../../src/core/sources.ts';
import { chapters, glossary, plainText } from './read.ts';

/** What stands on each of a stage's four pages, in order. */
const SECTIONS = {
  explain: [/ for$/, /^What goes in, what comes out$/, /^What happens inside/, /flavour$/],
  work: [/^Your house’s figures$/, /^How it is run/, /^What can go wrong/, /^Sums for this stage$/],
  safe: [/^What can hurt you$/],
  check: [/^Figures to know$/, /^What visitors ask$/, /^Check yourself$/],
} as const;
const forms = new Set(
  Object.values(glossary).flatMap(({ term, forms = [] }) =>
    [term, ...forms].map((form) => form.toLowerCase()),
  ),
);

describe.each(chapters.map((chapter) => [chapter.id, chapter] as const))(
  '%s',
  (id, { front, body, pages }) => {
    const isStage = (stages as readonly string[]).includes(id);

    test('has a title, an order and a summary', () => {
      expect(front).toMatchObject({
        title: expect.any(String),
        order: expect.any(Number),
        summary: expect.stringMatching(/[.]$/),
      });
      expect(front['stage']).toBe(isStage ? id : undefined);
    });

    test.runIf(!isStage)('each page behind its first has a name for its tab, and a place', () => {
      for (const { part, front } of pages.filter(({ part }) => part !== 'index')) {
        expect(front['name'], `${id}/${part} has no name for its tab`).toEqual(expect.any(String));
        expect(front['place'], `${id}/${part} has no place`).toEqual(expect.any(Number));
      }
    });

    test('every bold word is in the glossary, or leads in a sentence', () => {
      const unknown = chapterText(body).bold.filter(
        (text) => !text.endsWith('.') && !forms.has(text.toLowerCase()),
      );
      expect(unknown, 'content/glossary.yaml explains every bold word').toEqual([]);
    });

    test('every source and figure it names exists', () => {
      for (const name of namedIn(body, 'Source')) expect(Object.keys(sources)).toContain(name);
      for (const name of namedIn(body, 'Figure'))
        expect([...quotableInProse, 'house.foreshotsBy', 'house.dilution']).toContain(name);
    });

    test('links lead to pages of the book', () => {
      const pages = [
        ...chapters.map((chapter) => chapter.id),
        ...readdirSync(join(import.meta.dirname, '../../src/pages')).map((file) => file.replace(/\..*$/, '')),
      ];
      for (const address of chapterText(body).links.filter((each) => each.startsWith('/')))
        expect(pages).toContain(address.split('/')[1]);
    });

    test('no figure of the house is typed where it should be live', () => {
      const live = new Set(
        quotableInProse
          .filter((name) => !name.startsWith('house.'))
          .map((name) => figureText(builtInLine(), name).replace(/[\u202f\u00a0]/g, ' '))
          .filter((text) => /^\d{1,3},\d{3}|^\d{3,}|\.\d/.test(text)),
      );
      // A row of a general table, and a sentence with a source, are about spirit at large and not about the house.
      const told = body
        .replace(/^\|(?!.*<Figure).*$/gm, '')
        .replace(/<details>[^]*?<\/details>/g, '')
        .replace(/[\u202f\u00a0]/g, ' ')
        .split(/(?<=[.!?])\s/)
        .filter((sentence) => !sentence.includes('<Source'));
      const holds = (sentence: string, text: string) => {
        const at = sentence.indexOf(text);
        return (
          at >= 0 &&
          !/[\d.,]$/.test(sentence.slice(0, at)) &&
          !/^[.,]?\d/.test(sentence.slice(at + text.length))
        );
      };
      const typed = [...live].filter((text) => told.some((sentence) => holds(sentence, text)));
      expect(typed, 'a figure of the house is a <Figure>').toEqual([]);
    });

    test('is written in short sentences', () => {
      const sentences = plainText(body)
        .split(/[.!?](?:\s|$)/)
        .map((s) => s.trim().split(/\s+/).length)
        .filter((n) => n > 2);
      const mean = sentences.reduce((sum, n) => sum + n, 0) / sentences.length;
      expect(mean).toBeLessThan(15);
    });

    test.runIf(isStage)('has its four pages, each with its sections in order, and five self-checks', () => {
      expect(pages.map(({ part }) => part)).toEqual(Object.keys(SECTIONS));
      for (const { part, body } of pages) {
        const headings = chapterText(body).headings.flatMap(({ depth, text }) => (depth === 2 ? text : []));
        const places = SECTIONS[part as keyof typeof SECTIONS].map((section) =>
          headings.findIndex((heading) => section.test(heading)),
        );
        expect(places, `${part}: ${headings.join('; ')}`).not.toContain(-1);
        expect(places, part).toEqual([...places].sort((a, b) => a - b));
      }
      expect(plainText(body).split(/\s+/).length).toBeLessThanOrEqual(3300);
      const check = body.slice(body.indexOf('## Check yourself'));
      expect(check.match(/<details>/g)).toHaveLength(5);
    });

    test('dangers carry their cautions', () => {
      if (isStage)
        expect(namedIn(pages.find(({ part }) => part === 'safe')!.body, 'Caution')).not.toEqual([]);
    });
  },
);

test('every term of the glossary is explained in whole sentences, and no form stands for two terms', () => {
  const all = Object.values(glossary)
    .flatMap(({ term, forms = [] }) => [term, ...forms])
    .map((form) => form.toLowerCase());
  expect(all.filter((form, i) => all.indexOf(form) !== i)).toEqual([]);
  for (const { term, says } of Object.values(glossary)) expect(says, term).toMatch(/^[A-Z0-9].*[.]$/s);
});
